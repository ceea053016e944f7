/** How each plant of a clause does: of "kale is knee high, the leeks thin" the kale's own words are "knee high". */
import type { Word } from "../line-words.ts";
import type { Clause } from "./clauses.ts";
import { textOf } from "./find-mentions.ts";
import type { Mention, PlantMention } from "./mention.ts";

/** Undefined where the plants are told of together: "kale and leeks look well". */
export function statesOf(
  words: readonly Word[],
  clause: Clause,
  plants: readonly PlantMention[],
): ReadonlyMap<PlantMention, string> | undefined {
  const own = plants.toSorted((a, b) => a.from - b.from);
  const cuts = own.slice(1).map((one, index) => jointBefore(words, own[index]?.end ?? clause.from, one.from));
  if (cuts.some((cut) => cut === undefined)) return undefined;
  const begins = [opening(words, clause), ...cuts.map((cut) => (cut ?? clause.from) + 1)];
  const states = own.map((one, index) => {
    const end = cuts[index] ?? clause.end;
    return [one, textOf(words, behindName(words, one, begins[index] ?? clause.from, end), end)] as const;
  });
  return states.every(([, said]) => /\p{L}/u.test(said)) ? new Map(states) : undefined;
}

/** Behind "Tunnel:", for the bed is said anyway. */
function opening(words: readonly Word[], { from, mentions }: Clause): number {
  const bed = mentions.find((one: Mention) => one.type === "bed" && one.from <= from + 1);
  return bed !== undefined && words[bed.end]?.text === ":" ? bed.end + 1 : from;
}

/** A name with words of its own behind it parts from the next at a comma, an "and" or a "but". */
function jointBefore(words: readonly Word[], after: number, before: number): number | undefined {
  for (let at = before - 1; at > after; at--)
    if (/^(?:,|;|and|but|while|whereas)$/.test(words[at]?.lower ?? "")) return at;
  return undefined;
}

/** "the kale is knee high" is said of the kale: "knee high"; words before the name are kept with it. */
function behindName(words: readonly Word[], plant: PlantMention, from: number, end: number): number {
  const first = /^(?:the|my|our|all)$/.test(words[from]?.lower ?? "") ? from + 1 : from;
  if (plant.from !== first) return from;
  const next = /^(?:is|are|[:–—-])$/.test(words[plant.end]?.lower ?? "") ? plant.end + 1 : plant.end;
  const isSaid = words[next]?.kind === "word" && next < end && words[next]?.lower !== "not";
  return isSaid ? next : from;
}
