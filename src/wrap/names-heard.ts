/**
 * Names in the speech: those the captions have right, and those a captioner wrote other words for. Of everything that may
 * be one, the runs of words that do not overlap and together say most are kept.
 */
import { commonWords, smallWords } from "./common-words.ts";
import type { KnownName } from "./known-names.ts";
import { LONGEST_RUN, type SoundsLike, soundsLike } from "./sounds-like.ts";
import { isNumberWord, type Speech, type Word } from "./spoken-words.ts";

/** A name in the speech; `from` and `to` (after the last) count in its words. */
export interface NameHeard {
  readonly from: number;
  readonly to: number;
  readonly name: KnownName;
  /** 1 when the captions have it right. */
  readonly confidence: number;
  readonly right: boolean;
  /** "'s" or "s" that was heard after the name. */
  readonly ending: string;
  /** How much of a name it is, beside others in the same words. */
  readonly worth: number;
}

/** Runs heard with less confidence are not even proposed. */
export const PROPOSE_FROM = 0.8;
/** Corrections from this confidence on are made in the corrected copy; the rest is left to the person. */
export const APPLY_FROM = 0.86;

/** Words before and after within which the name itself, said right, shows that the first try was no name at all. */
const SAID_RIGHT_NEAR = 5;
/** The most that the first of two tries at a name is worth. */
const FIRST_TRY = 0.8;
/** A name in its own letters, only with the spaces elsewhere: "long or". */
const OWN_LETTERS = 0.96;

/** Confidence that is worth nothing, and what being written right is worth besides. */
const NOTHING = 0.6;
const RIGHT = 0.15;
/** A name said for short is less sure to be all of it. */
const SHORT = -0.1;

/** Which bed the speech is at, by word, once that is known. */
export type BedAt = (word: number) => string | undefined;

/** What in the speech may be a name, whatever bed it is said at: found once, weighed as often as more is known. */
export interface MaybeNames {
  readonly speech: Speech;
  readonly written: readonly Written[];
  readonly alike: readonly SoundsLike[];
}

interface Written {
  readonly from: number;
  readonly to: number;
  /** Names so written; several when varieties share one. */
  readonly names: readonly KnownName[];
  readonly ending: string;
}

export function maybeNames(speech: Speech, names: readonly KnownName[]): MaybeNames {
  return { speech, written: inOwnLetters(speech, names), alike: soundsLike(speech.words, names) };
}

export function namesHeard({ speech, written, alike }: MaybeNames, bedAt?: BedAt): readonly NameHeard[] {
  const { words } = speech;
  const found: NameHeard[] = [];
  for (const one of written) {
    const heard = weighWritten(one, speech, bedAt);
    if (heard !== undefined) found.push(heard);
  }
  for (const { from, to, name, likeness, sounds, ending } of alike) {
    const confidence = likeness + evidence(words, from, to, name, bedAt);
    if (confidence < PROPOSE_FROM) continue;
    const worth = (confidence - NOTHING) * sounds;
    found.push({ from, to, name, confidence: Math.min(0.99, confidence), right: false, ending, worth });
  }
  const best = mostSaid(found);
  return best
    .filter((one) => one.right || !(isSlipOrJoke(one, best) || isSaidAsWritten(one, words)))
    .map((one, index, all) =>
      isFirstTry(one, all[index + 1]) ? { ...one, confidence: Math.min(one.confidence, FIRST_TRY) } : one,
    );
}

// ----------------------------------------------------------------------------------------------------- in own letters

function inOwnLetters({ words }: Speech, names: readonly KnownName[]): readonly Written[] {
  const byKey = new Map<string, KnownName[]>();
  const beginnings = new Set<string>();
  for (const name of names) {
    byKey.set(name.key, [...(byKey.get(name.key) ?? []), name]);
    for (let length = 1; length <= name.key.length; length += 1) beginnings.add(name.key.slice(0, length));
  }
  const found: Written[] = [];
  for (let from = 0; from < words.length; from += 1) {
    let key = "";
    for (let to = from + 1; to <= Math.min(words.length, from + LONGEST_RUN); to += 1) {
      const word = words[to - 1] as Word;
      key += word.plain;
      const owned = key.endsWith("s") ? byKey.get(key.slice(0, -1)) : undefined;
      const own = byKey.get(key);
      if (own !== undefined) found.push({ from, to, names: own, ending: "" });
      else if (owned !== undefined) {
        found.push({ from, to, names: owned, ending: /['’]s$/i.test(word.text) ? "'s" : "s" });
      }
      if (/[.?!]/.test(word.mark) || !beginnings.has(key)) break;
    }
  }
  return found;
}

function weighWritten(
  { from, to, names, ending }: Written,
  { words, cased }: Speech,
  bedAt: BedAt | undefined,
): NameHeard | undefined {
  const here = bedAt?.(from);
  const name = names.find(({ beds }) => here !== undefined && beds.has(here)) ?? (names[0] as KnownName);
  const window = words.slice(from, to);
  if (!isMeant(name, window, cased)) return undefined;
  const right = isWrittenSo(name, window);
  const confidence = right ? 1 : OWN_LETTERS + evidence(words, from, to, name, bedAt);
  if (confidence < PROPOSE_FROM) return undefined;
  const worth = (confidence - NOTHING + (right ? (name.short ? SHORT : RIGHT) : 0)) * name.key.length;
  return { from, to, name, confidence: right ? 1 : Math.min(0.99, confidence), right, ending, worth };
}

/** Whether a name of everyday words is meant as one: by its capitals, or in captions without any by where it grows. */
function isMeant(name: KnownName, window: readonly Word[], cased: boolean): boolean {
  if (name.kind !== "variety") return true;
  if (cased) return /^\p{Lu}/u.test(window[0]?.text ?? "");
  return (
    name.standing === "in the film" || (!name.ordinary && (window.length > 1 || name.standing === "in the garden"))
  );
}

/** Whether words begin and end where the name has them; a hyphen or an apostrophe more or less does not matter. */
function isWrittenSo({ name }: KnownName, window: readonly Word[]): boolean {
  const asWritten = name.replace(/^(?:the|our|my) (?=.)/i, "").split(/[\s\-‐‑/]+/).length;
  const asHeard = window.reduce((sum, { text }) => sum + text.split(/[-‐‑/]/).length, 0);
  return asWritten === asHeard || asHeard === 1;
}

// ----------------------------------------------------------------------------------------------------------- evidence

/** What speaks for a name, or against it, besides its sound. Set on half of the demo's films: scripts/bench-wrap.ts. */
const speaksFor = {
  bedAtHand: 0.08,
  "in the film": 0.03,
  "in the garden": 0,
  "in the records": -0.05,
  cropNear: 0.04,
  counted: 0.03,
  allCommon: -0.12,
  smallWordAtEdge: -0.04,
  oneWord: -0.06,
  bedOrGear: -0.1,
} as const;

/** Words around a name among which its crop may be said. */
const NEAR = 5;

function evidence(words: readonly Word[], from: number, to: number, name: KnownName, bedAt: BedAt | undefined): number {
  const here = bedAt?.(from);
  const [first, last] = [words[from] as Word, words[to - 1] as Word];
  let sum: number = here !== undefined && name.beds.has(here) ? speaksFor.bedAtHand : speaksFor[name.standing];
  for (let at = Math.max(0, from - NEAR); name.crops.size > 0 && at < Math.min(words.length, to + NEAR); at += 1) {
    if ((at < from || at >= to) && name.crops.has((words[at] as Word).plain)) {
      sum += speaksFor.cropNear;
      break;
    }
  }
  if (isNumberWord(words[from - 1]?.plain ?? "")) sum += speaksFor.counted;
  if (isAllCommon(words, from, to)) sum += speaksFor.allCommon;
  if (smallWords.has(first.plain)) sum += speaksFor.smallWordAtEdge;
  if (smallWords.has(last.plain)) sum += speaksFor.smallWordAtEdge;
  if (to - from === 1) sum += speaksFor.oneWord;
  if (name.kind === "bed" || name.kind === "gear") sum += speaksFor.bedOrGear;
  return sum;
}

function isAllCommon(words: readonly Word[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (!commonWords.has((words[at] as Word).plain)) return false;
  return true;
}

// ----------------------------------------------------------------------------------------------------------- choosing

/** The runs that do not overlap and together say most: weighted interval scheduling. */
function mostSaid(found: readonly NameHeard[]): readonly NameHeard[] {
  const inOrder = [...found].sort((a, b) => a.to - b.to || a.from - b.from);
  const worth: number[] = [0];
  const taken: boolean[] = [false];
  const before: number[] = [0];
  inOrder.forEach((one, index) => {
    let low = 0;
    let high = index;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if ((inOrder[middle] as NameHeard).to <= one.from) low = middle + 1;
      else high = middle;
    }
    const value = (worth[low] as number) + one.worth;
    taken.push(value > (worth[index] as number));
    before.push(low);
    worth.push(Math.max(value, worth[index] as number));
  });
  const best: NameHeard[] = [];
  for (let at = inOrder.length; at > 0; ) {
    if (taken[at] === true) {
      best.push(inOrder[at - 1] as NameHeard);
      at = before[at] as number;
    } else at -= 1;
  }
  return best.reverse();
}

/** "Red Barn, Red Baron, sorry" and "the Cheeky Curry, I call it. Uchiki Kuri": what is said right at once was no mis-hearing before. */
function isSlipOrJoke(one: NameHeard, all: readonly NameHeard[]): boolean {
  return all.some(
    (other) =>
      other.right &&
      other.name.record === one.name.record &&
      other.from < one.to + SAID_RIGHT_NEAR &&
      other.to > one.from - SAID_RIGHT_NEAR,
  );
}

/** "Rose duh lo-TREK": how to say a name, as the records spell it out, is no mis-hearing of it. */
function isSaidAsWritten({ name, from, to }: NameHeard, words: readonly Word[]): boolean {
  const heard = words
    .slice(from, to)
    .map(({ plain }) => plain)
    .join("");
  return name.spelledOut.includes(heard);
}

/** A name tried twice in a row was a slip the first time, or a name and how it is said: only the person knows. */
function isFirstTry(one: NameHeard, next: NameHeard | undefined): boolean {
  if (next === undefined || one.right || next.right) return false;
  return next.name.key === one.name.key && next.from - one.to < SAID_RIGHT_NEAR;
}
