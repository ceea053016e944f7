/**
 * Work as one sentence. Notes say it without a person ("pruned side shoots, all tomatoes"); a sentence for viewers says what
 * the work was done to: "Side shoots were pruned on the tomatoes."
 */
import type { Event, Planting } from "../model.ts";
import { endsPlural, type Names } from "./names.ts";
import { plantsMeant, type Subject, sentence } from "./sentence-parts.ts";

interface WorkPhrase {
  /** "pinched out", "weeded and hoed". */
  readonly verb: string;
  /** What was worked on beside the plants: "side shoots". */
  readonly object?: string | undefined;
  /** How: "with seaweed". */
  readonly how?: string | undefined;
}

/** Past forms that do not end in -ed, with the participle they are said with. */
const irregular: Readonly<Record<string, string>> = {
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
  tied: "tied",
};

const particles = new Set("in out up on off back down over through together round away".split(" "));

const howWords =
  /^(with|to|for|at|from|by|against|under|into|onto|on|around|after|before|over|using|every|each|twice|once|well|lightly|hard|thoroughly|deeply|again|in|between|along|early|late|all over|gently|properly|as|because|until|till|where|while)\b/i;

export function sayWork(
  names: Names,
  event: Event,
  { bed, plantings }: { readonly bed: string; readonly plantings: readonly Planting[] },
): string {
  const said = saidWork(event);
  const named = event.variety !== undefined || event.crop !== undefined;
  const plants = named ? plantsMeant(names, event, plantings) : undefined;
  const work = workPhrase(withoutPlants(said, names, event, plantings));
  const detail = event.detail === undefined || said.includes(event.detail) ? undefined : event.detail;
  return sentence(say(work, plants, names.bed(bed)), detail);
}

/** The work with its verb: "pruned" alone when the line was "pruned Black Beauty". */
function saidWork({ verb, what }: Event): string {
  if (what === undefined || what === "") return verb;
  return verb === "did" || what.toLowerCase().startsWith(verb) ? what : `${verb} ${what}`;
}

function say(work: WorkPhrase | string, plants: Subject | undefined, bed: string): string {
  if (typeof work === "string") return `work on ${plants?.name ?? bed}: ${work}`;
  const { verb, object } = work;
  const how = work.how === undefined ? "" : ` ${work.how}`;
  if (object === undefined) return `${plants?.name ?? bed} ${plants?.were ?? "was"} ${verb}${how}`;
  return `${object} ${endsPlural(object) ? "were" : "was"} ${verb}${plants === undefined ? "" : ` on ${plants.name}`}${how}`;
}

/** Takes a phrase apart; gives it back as it is when it does not begin with a verb in the past. */
function workPhrase(text: string): WorkPhrase | string {
  const words = text.split(/\s+/);
  const verb: string[] = [];
  let at = 0;
  for (;;) {
    const word = words[at]?.toLowerCase() ?? "";
    const participle = irregular[word] ?? (/[a-z]ed$/.test(word) ? word : undefined);
    if (participle === undefined) break;
    verb.push(participle);
    at += 1;
    const particle = words[at]?.toLowerCase() ?? "";
    if (particles.has(particle) && !/^(the|a|an|my)$/i.test(words[at + 1] ?? "")) {
      verb.push(particle);
      at += 1;
    } else if (particles.has(particle) && /^(out|off|up|back|down)$/.test(particle)) {
      verb.push(particle);
      at += 1;
    }
    const next = words[at + 1]?.toLowerCase() ?? "";
    if (words[at]?.toLowerCase() !== "and" || (irregular[next] === undefined && !/[a-z]ed$/.test(next))) break;
    verb.push("and");
    at += 1;
  }
  if (verb.length === 0) return text;
  const rest = words
    .slice(at)
    .join(" ")
    .replace(/^[,:;]\s*/, "");
  if (rest === "") return { verb: verb.join(" ") };
  return howWords.test(rest) ? { verb: verb.join(" "), how: rest } : { verb: verb.join(" "), object: rest };
}

/** "pruned side shoots, all tomatoes" without the tomatoes, which the sentence names by itself. */
function withoutPlants(text: string, names: Names, event: Event, plantings: readonly Planting[]): string {
  const known = [event, ...plantings].flatMap((ids) => [names.plants(ids), names.plants(ids, 1), names.title(ids)]);
  if (event.crop !== undefined) known.push(names.plants({ crop: event.crop }), names.plants({ crop: event.crop }, 1));
  let rest = text;
  for (const name of [...new Set(known)].sort((a, b) => b.length - a.length)) {
    if (name === "") continue;
    rest = rest.replace(
      new RegExp(
        `(?:[,;]?\\s*)\\b(?:on |of |off |from |for |to )?(?:all )?(?:of )?(?:the |my |our )?${escaped(name)}(?![\\p{L}\\p{N}])`,
        "iu",
      ),
      "",
    );
  }
  return rest.trim();
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
