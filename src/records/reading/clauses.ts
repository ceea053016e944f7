/**
 * Clauses of a line. A sentence end always parts two; a comma or an "and" does when something else is done behind it:
 * "cleared peas and sowed phacelia" are two, "sowed leeks, onions and peas" one.
 */
import type { Word } from "../line-words.ts";
import type { Mention } from "./mention.ts";

export interface Clause {
  readonly from: number;
  readonly end: number;
  readonly mentions: readonly Mention[];
}

/** A full stop behind these ends no sentence. */
const short = /^(?:mrs?|ms|dr|st|no|nr|approx|ca|vs|var|spp?|cv|in|ins|ft|lb|lbs|oz|poss|ext|rev|prof|jr|sr|etc|wk|yr|mth|hr|min|max|temp|cm|mm|kg|g|m|x|e|i|b\/w)$/;

function endsSentence(words: readonly Word[], at: number): boolean {
  const word = words[at];
  const before = words[at - 1];
  const after = words[at + 1];
  if (word === undefined) return false;
  if (/^[;!?]$/.test(word.text)) return true;
  if (/^[—–→|]$/.test(word.text)) return true;
  if (word.text === "-") return before !== undefined && after !== undefined && before.end < word.start && word.end < after.start;
  if (word.text !== ".") return false;
  if (before === undefined || after === undefined) return true;
  if (word.end === after.start) return false;
  // "Mrs. X" and "Thomas A. X" go on; "in." and "lb." do before a small letter.
  if (/^(?:mrs?|ms|dr|st|no|approx|ca|cv|var)$/.test(before.lower)) return false;
  if (before.text.length === 1 && before.text === before.text.toUpperCase() && /^\p{Lu}/u.test(after.text) && before.kind === "word")
    return false;
  return !(short.test(before.lower) && !/^\p{Lu}/u.test(after.text));
}

export function clausesOf(words: readonly Word[], mentions: readonly Mention[]): readonly Clause[] {
  const cuts: number[] = [];
  const inside = new Uint8Array(words.length + 1);
  for (const { from, end, type } of mentions) if (type === "plant" || type === "amount" || type === "day") inside.fill(1, from + 1, end);
  const brackets = bracketed(words);
  for (let at = 0; at < words.length; at++) {
    if (inside[at] === 1) continue;
    if (endsSentence(words, at)) cuts.push(at);
  }
  cuts.push(words.length);
  const clauses: Clause[] = [];
  let from = 0;
  for (const cut of cuts) {
    if (cut > from) clauses.push(...softly(words, mentions, from, cut, inside, brackets));
    from = cut + 1;
  }
  return clauses;
}

function bracketed(words: readonly Word[]): Uint8Array {
  const inside = new Uint8Array(words.length);
  let depth = 0;
  for (const [at, { text }] of words.entries()) {
    if (text === "(" || text === "[") depth += 1;
    if (depth > 0) inside[at] = 1;
    if ((text === ")" || text === "]") && depth > 0) depth -= 1;
  }
  return inside;
}

const joints = /^(?:,|and|&|\+|but|then|so|also|plus|while|whereas|though|\()$/;

/** Parts at commas and conjunctions behind which another thing is done. */
function softly(
  words: readonly Word[],
  mentions: readonly Mention[],
  from: number,
  end: number,
  inside: Uint8Array,
  brackets: Uint8Array,
): Clause[] {
  const within = (a: number, b: number) => mentions.filter((mention) => mention.from >= a && mention.end <= b);
  const says = (a: number, b: number) => within(a, b).some((one) => one.type === "verb" && !one.weak);
  const speaks = (a: number, b: number) => within(a, b).some((one) => one.type === "verb" || one.type === "plant" || one.type === "amount" || one.type === "cause");
  const out: Clause[] = [];
  let start = from;
  for (let at = from; at < end; at++) {
    if (inside[at] === 1 || !joints.test(words[at]?.lower ?? "")) continue;
    if (words[at]?.text === "(" ? false : brackets[at] === 1) continue;
    // Verbs like "and" that belong to a form of several words are covered by it.
    if (mentions.some((one) => one.type === "verb" && one.from < at && one.end > at)) continue;
    let next = at + 1;
    while (next < end && /^(?:,|and|&|then|also|so|but|i|we|they|he|she|has|have|had|was|were|been|got|now|just)$/.test(words[next]?.lower ?? "")) next += 1;
    let stop = next;
    while (stop < end && !(joints.test(words[stop]?.lower ?? "") && inside[stop] !== 1 && brackets[stop] !== 1)) stop += 1;
    if (!says(next, stop) || !speaks(start, at)) continue;
    if (!says(start, at) && !beginsWithVerb(mentions, next) && !plantThenVerb(mentions, next, stop)) continue;
    if (!beginsWithVerb(mentions, next) && !plantThenVerb(mentions, next, stop)) continue;
    out.push({ from: start, end: at, mentions: within(start, at) });
    start = words[at]?.text === "(" ? at : at + 1;
  }
  out.push({ from: start, end, mentions: within(start, end) });
  return out;
}

function beginsWithVerb(mentions: readonly Mention[], at: number): boolean {
  return mentions.some((one) => one.type === "verb" && !one.weak && one.from >= at && one.from <= at + 1);
}

/** "…, leeks in", "… and 12 toms potted up" */
function plantThenVerb(mentions: readonly Mention[], from: number, end: number): boolean {
  const verb = mentions.find((one) => one.type === "verb" && !one.weak && one.from >= from && one.end <= end);
  return verb !== undefined && mentions.some((one) => (one.type === "plant" || one.type === "cause" || one.type === "gear") && one.from >= from && one.end <= verb.from);
}
