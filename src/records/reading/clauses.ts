/**
 * Clauses of a line. A sentence end always parts two; a comma or an "and" does when something else is done behind it:
 * "cleared peas and sowed phacelia" are two, "sowed leeks, onions and peas" one.
 */
import type { Word } from "../line-words.ts";
import { isVerb, type Mention } from "./mention.ts";

export interface Clause {
  readonly from: number;
  readonly end: number;
  readonly mentions: readonly Mention[];
}

/** A full stop behind these ends no sentence. */
const short =
  /^(?:mrs?|ms|dr|st|no|nr|approx|ca|vs|var|spp?|cv|in|ins|ft|lb|lbs|oz|poss|ext|rev|prof|jr|sr|etc|wk|yr|mth|hr|min|max|temp|cm|mm|kg|g|m|x|e|i|b\/w)$/;

function endsSentence(words: readonly Word[], at: number): boolean {
  const word = words[at];
  const before = words[at - 1];
  const after = words[at + 1];
  if (word === undefined) return false;
  if (/^[;!?]$/.test(word.text)) return true;
  if (/^[—–→|]$/.test(word.text)) return true;
  if (word.text === "-")
    return before !== undefined && after !== undefined && before.end < word.start && word.end < after.start;
  if (word.text !== ".") return false;
  if (before === undefined || after === undefined) return true;
  if (word.end === after.start) return false;
  // "Mrs. X" and "Thomas A. X" go on; "in." and "lb." do before a small letter.
  if (/^(?:mrs?|ms|dr|st|no|approx|ca|cv|var)$/.test(before.lower)) return false;
  if (
    before.text.length === 1 &&
    before.text === before.text.toUpperCase() &&
    /^\p{Lu}/u.test(after.text) &&
    before.kind === "word"
  )
    return false;
  return !(short.test(before.lower) && !/^\p{Lu}/u.test(after.text));
}

/** `fine` parts at every joint between two things that may be told of, as dictation and telegrams want it. */
export function clausesOf(words: readonly Word[], mentions: readonly Mention[], fine = false): readonly Clause[] {
  // A row of a table is one thing told, whatever stands in its cells.
  if (words[0]?.text === "|") return [{ from: 0, end: words.length, mentions }];
  const cuts: number[] = [];
  const inside = new Uint8Array(words.length + 1);
  for (const { from, end, type } of mentions)
    if (type === "plant" || type === "amount" || type === "day") inside.fill(1, from + 1, end);
  const brackets = bracketed(words);
  for (let at = 0; at < words.length; at++) {
    if (inside[at] === 1) continue;
    if (endsSentence(words, at)) cuts.push(at);
  }
  cuts.push(words.length);
  const clauses: Clause[] = [];
  let from = 0;
  for (const cut of cuts) {
    if (cut > from) clauses.push(...(fine ? finely : softly)(words, mentions, from, cut, inside, brackets));
    from = cut + 1;
  }
  return withStrayAmounts(clauses);
}

/** "Leeks planted! 42.": a number alone belongs to what was said before it. */
function withStrayAmounts(clauses: readonly Clause[]): readonly Clause[] {
  const out: Clause[] = [];
  for (const clause of clauses) {
    const before = out.at(-1);
    const has = (one: Clause, type: Mention["type"]) =>
      one.mentions.some((mention) => mention.type === type && (mention.type !== "verb" || isVerb(mention)));
    const stray =
      has(clause, "amount") &&
      !has(clause, "verb") &&
      !has(clause, "plant") &&
      !has(clause, "cause") &&
      !has(clause, "gear") &&
      !has(clause, "bed");
    if (
      stray &&
      before !== undefined &&
      clause.end - clause.from <= 6 &&
      has(before, "plant") &&
      !has(before, "amount")
    )
      out[out.length - 1] = { from: before.from, end: clause.end, mentions: [...before.mentions, ...clause.mentions] };
    else out.push(clause);
  }
  return out;
}

/** Parts at every joint where something is told of on both sides, and before a verb that follows another thing told. */
function finely(
  words: readonly Word[],
  mentions: readonly Mention[],
  from: number,
  end: number,
  inside: Uint8Array,
): Clause[] {
  const within = (a: number, b: number) => mentions.filter((mention) => mention.from >= a && mention.end <= b);
  const tells = (a: number, b: number) =>
    within(a, b).some((one) => isVerb(one) || one.type === "cause") ||
    (within(a, b).some(({ type }) => type === "plant") && within(a, b).some(({ type }) => type === "amount"));
  const out: Clause[] = [];
  let start = from;
  for (let at = from + 1; at < end; at++) {
    if (inside[at] === 1) continue;
    const joint = fineJoints.test(words[at]?.lower ?? "");
    const verb = mentions.some((one) => isVerb(one) && one.from === at);
    if (mentions.some((one) => one.type === "verb" && one.from < at && one.end > at)) continue;
    if (joint) {
      let stop = at + 1;
      while (stop < end && !(fineJoints.test(words[stop]?.lower ?? "") && inside[stop] !== 1)) stop += 1;
      if (!tells(start, at) || !tells(at + 1, stop)) continue;
      out.push({ from: start, end: at, mentions: within(start, at) });
      start = at + 1;
    } else if (verb) {
      // "pulled the garlic hung it in the shed": a second verb behind a plant begins a clause of its own.
      const before = within(start, at);
      const hasVerb = before.some(isVerb);
      const hasPlant = before.some(({ type }) => type === "plant" || type === "cause" || type === "amount");
      if (!hasVerb || !hasPlant) continue;
      out.push({ from: start, end: at, mentions: before });
      start = at;
    }
  }
  out.push({ from: start, end, mentions: within(start, end) });
  return out;
}

const fineJoints = /^(?:,|and|&|\+|but|then|so|also|plus|while|\(|\)|with|from|w|:|rest|\/|because|cos|as|for|where)$/;

/** Sentences of a paragraph, as offsets into its text. */
export function sentencesOf(text: string, words: readonly Word[]): readonly string[] {
  const out: string[] = [];
  let from = 0;
  for (const [at, word] of words.entries()) {
    if (!/^[.!?]$/.test(word.text) || !endsSentence(words, at)) continue;
    // "!!!" and ".)" end one sentence.
    const next = words[at + 1];
    if (next !== undefined && (next.start === word.end || !/^[\p{Lu}\d"“'‘([]/u.test(next.text))) continue;
    out.push(text.slice(from, word.end).trim());
    from = word.end;
  }
  out.push(text.slice(from).trim());
  return out.filter((sentence) => sentence !== "");
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
  const says = (a: number, b: number) => within(a, b).some(isVerb);
  const speaks = (a: number, b: number) =>
    within(a, b).some(
      (one) => one.type === "verb" || one.type === "plant" || one.type === "amount" || one.type === "cause",
    );
  const out: Clause[] = [];
  let start = from;
  for (let at = from; at < end; at++) {
    if (inside[at] === 1 || !joints.test(words[at]?.lower ?? "")) continue;
    if (words[at]?.text === "(" ? false : brackets[at] === 1) continue;
    // Verbs like "and" that belong to a form of several words are covered by it.
    if (mentions.some((one) => one.type === "verb" && one.from < at && one.end > at)) continue;
    let next = at + 1;
    while (
      next < end &&
      /^(?:,|and|&|then|also|so|but|i|we|they|he|she|has|have|had|was|were|been|got|now|just)$/.test(
        words[next]?.lower ?? "",
      )
    )
      next += 1;
    let stop = next;
    while (stop < end && !(joints.test(words[stop]?.lower ?? "") && inside[stop] !== 1 && brackets[stop] !== 1))
      stop += 1;
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
  return mentions.some((one) => isVerb(one) && one.from >= at && one.from <= at + 1);
}

/** "…, leeks in", "… and 12 toms potted up" */
function plantThenVerb(mentions: readonly Mention[], from: number, end: number): boolean {
  const verb = mentions.find((one) => isVerb(one) && one.from >= from && one.end <= end);
  return (
    verb !== undefined &&
    mentions.some(
      (one) =>
        (one.type === "plant" || one.type === "cause" || one.type === "gear") &&
        one.from >= from &&
        one.end <= verb.from,
    )
  );
}
