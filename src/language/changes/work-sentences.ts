/**
 * Work as one sentence. Notes say it without a person ("pruned side shoots, all tomatoes"); a sentence for viewers says what
 * the work was done to: "Side shoots were pruned on the tomatoes."
 */
import type { Event, PlantsThen } from "../../model.ts";
import { endsPlural, type Names } from "../names.ts";
import { plantsMeant, type Subject, sentence } from "./sentence-parts.ts";

interface Work {
  /** "pinched out", "weeded and hoed". */
  readonly verb: string;
  /** What was worked on beside the plants: "side shoots". */
  readonly object?: string | undefined;
  /** How: "with seaweed". */
  readonly how?: string | undefined;
}

/** Past forms that do not end in -ed, with the participle they are said with. */
const irregular: ReadonlyMap<string, string> = new Map(
  Object.entries({
    cut: "cut",
    put: "put",
    set: "set",
    fed: "fed",
    dug: "dug",
    hung: "hung",
    laid: "laid",
    spread: "spread",
    swept: "swept",
    strung: "strung",
    wound: "wound",
    bound: "bound",
    made: "made",
    built: "built",
    split: "split",
    took: "taken",
    gave: "given",
    wove: "woven",
    drew: "drawn",
    redid: "redone",
  }),
);

/** Particles that can also begin where the work was done: "hung in the tunnel". */
const placing = /^(in|on|over|through|round)$/i;

const particles = "in|out|up|on|off|back|down|over|through|round|away";
const particle = new RegExp(`^(?:${particles})$`, "i");

/** "the tips out", "the rest back to the clean": a short object, the verb's particle, and how. */
const objectThenParticle = new RegExp(
  `^((?:(?!that\\b|which\\b)\\S+\\s+){0,3}?\\S+)\\s+(${particles})(?:\\s+(.*))?$`,
  "i",
);

/** "the lower leaves against blight" */
const objectThenWhy = /^(\S+(?: \S+){0,3}) ((?:against|because|before|after|so that|to keep)\b.*)$/i;

const how =
  /^(with|to|for|at|from|by|against|under|into|onto|on|around|after|before|over|using|every|each|twice|once|well|lightly|hard|thoroughly|deeply|again|in|between|along|early|late|gently|properly|as|because|until|till|where|while)\b/i;

/** `named` are the events of the line whose plants stand in this bed; none when the work is the bed's own. */
export function sayWork(
  names: Names,
  event: Event,
  {
    bed,
    named,
    plantings,
  }: { readonly bed: string; readonly named: readonly Event[]; readonly plantings: readonly PlantsThen[] },
): string {
  const said = saidWork(event);
  // "pinched out the Moneymakers", "earthed up spuds": a name in its plural is the same name.
  const spellings = [...named, ...plantings].flatMap(names.spellings).flatMap((name) => [name, `${name}s`]);
  const bare = (text: string) => without(without(text, [names.bed(bed)], beforeBed), spellings, beforePlants);
  const [head = "", ...tail] = said.split(/(?:(?<!\s)\s+)?,\s*/);
  const rest = tail.filter((part) => bare(part) !== "");
  // "Watered everything, four cans to the beans": the beans are not what the work was done to, only a part of it.
  const inPassing =
    rest.length === tail.length && without(head, spellings, beforePlants) === head && bare(said) !== said;
  const only = named.length === 1 ? named[0] : undefined;
  const plants = plantings.length === 0 || inPassing ? undefined : plantsMeant(names, only ?? {}, plantings);
  const more = event.detail === undefined || said.includes(event.detail) ? undefined : event.detail;
  const ofBed = { name: names.bed(bed), were: names.bedWas(bed) };
  const [first, ...others] = rest;
  // "Cut back the leeks, to clean leaf" is one phrase once the leeks have gone to the front.
  const joins =
    first !== undefined &&
    /^(with|to|into|against|under)\b/i.test(first) &&
    takeApart(bare(head))?.object === undefined;
  return joins
    ? sentence(sayHead(`${bare(head)} ${first}`, plants, ofBed), ...others, more)
    : sentence(sayHead(bare(head), plants, ofBed), ...rest, more);
}

/** The work with its verb: "pruned" alone when the line was "pruned Black Beauty". */
function saidWork({ verb, what }: Event): string {
  if (what === undefined || what === "") return verb;
  if (/\bw\//i.test(what)) return saidWork({ verb, what: what.replace(/\bw\/ ?/gi, "with ") } as Event);
  return verb === "did" || what.toLowerCase().startsWith(verb) ? what : `${verb} ${what}`;
}

function sayHead(text: string, plants: Subject | undefined, bed: Pick<Subject, "name" | "were">): string {
  const work = takeApart(text);
  const subject = plants ?? bed;
  if (work === undefined) return `work on ${subject.name}${text === "" ? "" : `: ${text}`}`;
  const how = work.how === undefined ? "" : ` ${work.how}`;
  if (work.object === undefined) return `${subject.name} ${subject.were} ${work.verb}${how}`;
  // "took the lower leaves off the tomatoes": off them, and not on them.
  const on = plants === undefined ? "" : work.verb.endsWith(" off") ? ` ${plants.name}` : ` on ${plants.name}`;
  return `${work.object} ${endsPlural(work.object) ? "were" : "was"} ${work.verb}${on}${how}`;
}

/** Verb, object and manner of a phrase; undefined when it does not begin with a verb in the past. */
function takeApart(text: string): Work | undefined {
  const words = text.split(/\s+/);
  const verbs: string[] = [];
  let at = 0;
  for (;;) {
    const participle = participleOf(words[at]);
    if (participle === undefined) break;
    verbs.push(participle);
    at += 1;
    const place = placing.test(words[at] ?? "") && /^(the|a|an|my|our|all)$/i.test(words[at + 1] ?? "");
    if (particle.test(words[at] ?? "") && !place) {
      verbs.push(words[at] ?? "");
      at += 1;
    }
    if (words[at]?.toLowerCase() !== "and" || participleOf(words[at + 1]) === undefined) break;
    verbs.push("and");
    at += 1;
  }
  if (verbs.length === 0) return undefined;
  const verb = verbs.join(" ");
  const rest = words.slice(at).join(" ");
  if (rest === "") return { verb };
  if (how.test(rest)) return { verb, how: rest };
  const apart = verbs.length === 1 ? objectThenParticle.exec(rest) : null;
  if (apart !== null) return { verb: `${verb} ${apart[2]}`, object: apart[1], how: apart[3] };
  const [, object = rest, why] = objectThenWhy.exec(rest) ?? [];
  return { verb, object, how: why };
}

function participleOf(word: string | undefined): string | undefined {
  const lower = word?.toLowerCase() ?? "";
  return irregular.get(lower) ?? (/[a-z]ed$/.test(lower) ? lower : undefined);
}

/** The words that join a name to what stands before it, at the end of that. */
const beforeBed =
  /(?<!\s)(?:\s*,)?(?:\s*\b(?:and|in|on|of|at|from|to|round)\b)?\s*(?:\ball\s+)?(?:\bof\s+)?(?:\b(?:the|my|our)\s+)?$/i;
const beforePlants =
  /(?<!\s)(?:\s*,)?(?:\s*\b(?:and|on|of|from|for|to)\b)?\s*(?:\ball\s+)?(?:\bof\s+)?(?:\b(?:the|my|our)\s+)?$/i;

const letter = /[\p{L}\p{N}]/u;

/** A text without names that its sentence says by itself, and without the words that joined them to it. */
function without(text: string, names: readonly string[], joined: RegExp): string {
  let rest = text;
  for (const name of [...new Set(names)].sort((a, b) => b.length - a.length)) {
    for (let at = find(rest, name, 0); at !== undefined; at = find(rest, name, at)) {
      const before = rest.slice(0, at).replace(joined, "");
      rest = `${before},${rest.slice(at + name.length)}`;
      at = before.length;
    }
  }
  if (rest === text) return text;
  return rest
    .replace(/(?<!\s)(?:\s*,)+/g, ",")
    .replace(/,\s*(?=(?:with|to|for|by|into|under|against|again|twice|once|every)\b)/gi, " ")
    .replace(/^,\s*|(?:(?<!\s)\s+)?,\s*$/g, "")
    .trim();
}

/** Where a name stands as a word of its own, from some letter on. */
function find(text: string, name: string, from: number): number | undefined {
  if (name === "") return undefined;
  const [all, one] = [text.toLowerCase(), name.toLowerCase()];
  // A few letters of other scripts grow when made small, and places would no longer agree.
  if (all.length !== text.length) return undefined;
  for (let at = all.indexOf(one, from); at >= 0; at = all.indexOf(one, at + 1)) {
    if (!letter.test(text[at - 1] ?? "") && !letter.test(text[at + name.length] ?? "")) return at;
  }
  return undefined;
}
