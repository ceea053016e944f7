/** "Put up bird netting over the figs": the thing that was put up or taken down, and what is said of where it went. */
import type { Word } from "../line-words.ts";
import { textOf } from "./find-mentions.ts";
import type { DayMention, Mention } from "./mention.ts";
import { gearAt } from "./vocabulary.ts";

export interface GearSaid {
  readonly what: string;
  /** What follows it: "over the figs". */
  readonly detail?: string | undefined;
}

const doing = new Set("put set rigged erected installed assembled took taken removed dismantled".split(" "));
const particles = new Set("up on in over out back down off away".split(" "));
/** "Netting went up over the figs." */
const goes = /^(?:went|goes|going|came|is|are|now)$/;
const begins = /^(?:the|a|an|some|my|our|this|that|those|these)$/;
const joins = /^(?:over|on|onto|in|into|round|around|across|along|above|against|between|under|by|from|off|to|for)$/;
/** No name of gear has more words: "a big piece of bird netting". */
const longest = 5;

/** Undefined where the words stand in another order, which are then kept whole. */
export function gearSaid(
  words: readonly Word[],
  { from, end, mentions }: { readonly from: number; readonly end: number; readonly mentions: readonly Mention[] },
): GearSaid | undefined {
  const lower = (at: number) => (at < end ? (words[at]?.lower ?? "") : "");
  let at = /^(?:i|we)$/.test(lower(from)) ? from + 1 : from;
  if (doing.has(lower(at))) at += particles.has(lower(at + 1)) ? 2 : 1;
  if (begins.test(lower(at))) at += 1;
  const thing = thingAt(words, at, end);
  if (thing === undefined) return undefined;
  const stop = withoutDay(words, mentions, end);
  let next = goes.test(lower(thing)) ? thing + 1 : thing;
  // "Put the netting up", "put canes in for the beans", but "put netting over the figs".
  if (particles.has(lower(next)) && (next + 1 >= stop || joins.test(lower(next + 1)))) next += 1;
  if (next >= stop) return { what: textOf(words, at, thing) };
  if (!joins.test(lower(next)) || words.slice(next, stop).some(({ kind, text }) => kind === "mark" && text !== ","))
    return undefined;
  // A bed alone is where it stands, and is said by the bed.
  const isBed = mentions.some((one) => one.type === "bed" && one.end === stop && one.from - next <= 2);
  return { what: textOf(words, at, thing), detail: isBed ? undefined : textOf(words, next, stop) };
}

/** The end of the gear whose words begin there, with what describes it. */
function thingAt(words: readonly Word[], from: number, end: number): number | undefined {
  for (let at = from; at < Math.min(end, from + longest); at++) {
    const gear = gearAt(words, at);
    if (gear !== undefined && gear.end <= end) return gear.end;
    if (words[at]?.kind === "mark" || joins.test(words[at]?.lower ?? "")) return undefined;
  }
  return undefined;
}

/** The end of the words before the marks and the day that close them. */
function withoutDay(words: readonly Word[], mentions: readonly Mention[], end: number): number {
  let stop = end;
  while (stop > 0 && /^[.!,;]$/.test(words[stop - 1]?.text ?? "")) stop -= 1;
  const day = mentions.find((one): one is DayMention => one.type === "day" && one.end === stop);
  if (day === undefined) return stop;
  return words[day.from - 1]?.lower === "on" ? day.from - 1 : day.from;
}
