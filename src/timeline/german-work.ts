/**
 * Work as one German sentence. Notes begin it with an English verb ("watered the beans, two cans"); the verb is said in
 * German, and what follows it is the person's own.
 */
import type { Event, Planting } from "../model.ts";
import { meant } from "./german-parts.ts";
import type { Names } from "./names.ts";
import { sentence } from "./sentence-parts.ts";

/** Verbs of work as notes write them. What is missing here is said as it was written. */
const participles: Readonly<Record<string, string>> = {
  pruned: "geschnitten",
  pinched: "ausgegeizt",
  "pinched out": "ausgegeizt",
  staked: "gestützt",
  tied: "angebunden",
  "tied in": "angebunden",
  "tied up": "angebunden",
  fed: "gedüngt",
  fertilised: "gedüngt",
  fertilized: "gedüngt",
  watered: "gegossen",
  mulched: "gemulcht",
  weeded: "gejätet",
  netted: "mit Netz abgedeckt",
  covered: "abgedeckt",
  uncovered: "aufgedeckt",
  hoed: "gehackt",
  "earthed up": "angehäufelt",
  sprayed: "gespritzt",
  trained: "aufgeleitet",
  "cut back": "zurückgeschnitten",
  deadheaded: "Verblühtes entfernt",
  "dead-headed": "Verblühtes entfernt",
  raked: "gerecht",
  turned: "umgesetzt",
  "dug over": "umgegraben",
  aired: "gelüftet",
  ventilated: "gelüftet",
  "hardened off": "abgehärtet",
  composted: "kompostiert",
  divided: "geteilt",
  grafted: "veredelt",
  limed: "gekalkt",
  swept: "gefegt",
  cleaned: "geputzt",
  repaired: "repariert",
  built: "gebaut",
  filled: "gefüllt",
};

/** The longest first, so that "tied in" is not read as "tied". */
const verbs = Object.keys(participles).sort((a, b) => b.length - a.length);

/** `named` are the events of the line whose plants stand in this bed; none when the work is the bed's own. */
export function sayGermanWork(
  names: Names,
  event: Event,
  {
    bed,
    named,
    plantings,
  }: { readonly bed: string; readonly named: readonly Event[]; readonly plantings: readonly Planting[] },
): string {
  const written = event.what ?? "";
  const said =
    event.verb === "did" || written.toLowerCase().startsWith(event.verb) ? written : `${event.verb} ${written}`;
  const verb = verbs.find((one) => said.toLowerCase() === one || said.toLowerCase().startsWith(`${one} `));
  const rest = (verb === undefined ? said : said.slice(verb.length)).replace(/^[\s,:]+/u, "").trim();
  const only = named.length === 1 ? named[0] : undefined;
  const subject = plantings.length === 0 ? names.bed(bed) : meant(names, only ?? {}, plantings);
  const more = event.detail === undefined || said.includes(event.detail) ? undefined : event.detail;
  if (verb === undefined) return sentence(rest === "" ? subject : rest, more);
  const spellings = [...named, ...plantings].flatMap(names.spellings).concat(names.bed(bed));
  const isName = spellings.some((name) => name.toLowerCase() === rest.toLowerCase());
  return sentence(`${participles[verb]}: ${rest === "" || isName ? subject : rest}`, more);
}
