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
export const APPLY_FROM = 0.88;

/** Words between two tries at one name, and between a name and its saying spelled out. */
const SAID_TWICE_NEAR = 5;
const SPELLED_OUT_NEAR = 12;
/** The most that the first of two tries at a name is worth. */
const FIRST_TRY = 0.8;
/** What is more likely a plain word than a name said for short. */
const ASKED = 0.85;
/** A name in its own letters, only with the spaces elsewhere: "long or". */
const OWN_LETTERS = 0.96;

/** Confidence that is worth nothing, and what being written right is worth besides. */
const NOTHING = 0.6;
const RIGHT = 0.15;
/** A name said for short is less sure to be all of it. */
const SHORT = -0.1;

/** Sounds from which a name is looked for in other beds than its own. */
const ENOUGH_SOUNDS = 5;

/** Which bed the speech is at, by word, once that is known. */
export type BedAt = (word: number) => string | undefined;

/** What in the speech may be a name, whatever bed it is said at: found once, weighed as often as more is known. */
export interface MaybeNames {
  readonly speech: Speech;
  /** Words this person writes and everybody says. */
  readonly everyday: ReadonlySet<string>;
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

export function maybeNames(
  speech: Speech,
  names: readonly KnownName[],
  ownWords: ReadonlySet<string> = new Set(),
): MaybeNames {
  const written = inOwnLetters(speech, names);
  const alike = soundsLike(speech.words, names);
  const everyday = new Set([...ownWords, ...commonWords]);
  return { speech, everyday, written, alike: alike.filter(notOnlyMore(written, speech.words.length)) };
}

/**
 * "Kg greyhound" sounds like Greyhound because it holds the name as it is written. A run that holds its name right is that
 * name and some other words, unless it is a longer form of it: "bishop off lamb deaf".
 */
function notOnlyMore(written: readonly Written[], words: number): (one: SoundsLike) => boolean {
  const at: (Written[] | undefined)[] = new Array(words);
  for (const one of written) {
    for (let word = one.from; word < one.to; word += 1) at[word] = [...(at[word] ?? []), one];
  }
  return ({ from, to, name }) => {
    for (let word = from; word < to; word += 1) {
      for (const { names } of at[word] ?? []) {
        if (names.some((own) => own.record === name.record && own.key.length + LONGER > name.key.length)) return false;
      }
    }
    return true;
  };
}

/** Letters by which a form of a name must be longer than another to hold more of it. */
const LONGER = 3;

export function namesHeard(maybe: MaybeNames, bedAt?: BedAt): readonly NameHeard[] {
  const { speech, written, alike, everyday } = maybe;
  const { words } = speech;
  const found: NameHeard[] = [];
  for (const one of written) {
    const heard = weighWritten(one, maybe, bedAt);
    if (heard !== undefined) found.push(heard);
  }
  for (const { from, to, name, likeness, sounds, ending } of alike) {
    // "Molly" is Mollie where she stands.
    if (sounds < ENOUGH_SOUNDS && !name.beds.has(bedAt?.(from) ?? "")) continue;
    const sum = likeness + evidence(words, from, to, name, bedAt, everyday);
    if (sum < PROPOSE_FROM) continue;
    // "Under the glass" may be Reine des Glaces said for short, and only the person knows.
    const isPlain = name.short && to - from === 1 && everyday.has((words[from] as Word).plain);
    const confidence = isPlain ? Math.min(sum, ASKED) : sum;
    const worth = (confidence - NOTHING) * sounds;
    found.push({ from, to, name, confidence: Math.min(0.99, confidence), right: false, ending, worth });
  }
  return settled(mostSaid(found), words);
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
  { speech: { words, cased }, everyday }: MaybeNames,
  bedAt: BedAt | undefined,
): NameHeard | undefined {
  const here = bedAt?.(from);
  const name = names.find(({ beds }) => here !== undefined && beds.has(here)) ?? (names[0] as KnownName);
  const window = words.slice(from, to);
  if (!isMeant(name, window, cased)) return undefined;
  const right = isWrittenSo(name, window);
  const confidence = right ? 1 : OWN_LETTERS + evidence(words, from, to, name, bedAt, everyday);
  if (confidence < PROPOSE_FROM) return undefined;
  const worth = (confidence - NOTHING + (right ? (name.short ? SHORT : RIGHT) : 0)) * name.key.length;
  return { from, to, name, confidence: right ? 1 : Math.min(0.99, confidence), right, ending, worth };
}

/** Whether a name of everyday words is meant as one: by its capitals, or in captions without any by where it grows. Who types
 * capitals still writes "the jalapeños" and "the pinkeye purple hulls". */
function isMeant(name: KnownName, window: readonly Word[], cased: boolean): boolean {
  if (name.kind !== "variety") return true;
  if (cased && /^\p{Lu}/u.test(window[0]?.text ?? "")) return true;
  if (cased)
    return (
      name.unmistakable &&
      !name.short &&
      (name.standing === "in the film" || (window.length > 1 && name.standing === "in the garden"))
    );
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
  bedAtHand: 0.1,
  "in the film": 0.03,
  "in the garden": 0,
  "in the records": -0.05,
  cropNear: 0.04,
  counted: 0.03,
  allCommon: -0.12,
  /** Words that all occur in the person's own notes. */
  allOwn: -0.06,
  /** Several words, none of them one that is said or written every day: "shrimp ski". */
  unusual: 0.04,
  smallWordAtEdge: -0.04,
  oneWord: -0.08,
  bedOrGear: -0.14,
  short: -0.06,
  /** After "to", "i", "would" comes what somebody does, seldom a name. */
  verbDue: -0.08,
  ordinaryName: -0.06,
} as const;

const beforeVerbs = new Set(
  "to i we you they it he she would could can will should might must dont didnt cant wont ill youll theyll itll well".split(
    " ",
  ),
);

/** Words around a name among which its crop may be said. */
const NEAR = 5;

function evidence(
  words: readonly Word[],
  from: number,
  to: number,
  name: KnownName,
  bedAt: BedAt | undefined,
  everyday: ReadonlySet<string>,
): number {
  const here = bedAt?.(from);
  const [first, last] = [words[from] as Word, words[to - 1] as Word];
  let sum: number = here !== undefined && name.beds.has(here) ? speaksFor.bedAtHand : speaksFor[name.standing];
  for (let at = Math.max(0, from - NEAR); name.crops.size > 0 && at < Math.min(words.length, to + NEAR); at += 1) {
    if ((at < from || at >= to) && name.crops.has((words[at] as Word).plain)) {
      sum += speaksFor.cropNear;
      break;
    }
  }
  const before = words[from - 1]?.plain ?? "";
  if (isNumberWord(before)) sum += speaksFor.counted;
  if (beforeVerbs.has(before) && !(before === "to" && words[from - 2]?.plain === "next")) sum += speaksFor.verbDue;
  if (areAll(commonWords, words, from, to)) sum += speaksFor.allCommon;
  else if (areAll(everyday, words, from, to)) sum += speaksFor.allOwn;
  else if (to - from > 1 && !words.slice(from, to).some(({ plain }) => everyday.has(plain))) sum += speaksFor.unusual;
  if (smallWords.has(first.plain)) sum += speaksFor.smallWordAtEdge;
  if (smallWords.has(last.plain)) sum += speaksFor.smallWordAtEdge;
  if (to - from === 1) sum += speaksFor.oneWord;
  if (name.kind === "bed" || name.kind === "gear") sum += speaksFor.bedOrGear;
  if (name.short) sum += speaksFor.short;
  if (name.ordinary) sum += speaksFor.ordinaryName;
  return sum;
}

function areAll(known: ReadonlySet<string>, words: readonly Word[], from: number, to: number): boolean {
  for (let at = from; at < to; at += 1) if (!known.has((words[at] as Word).plain)) return false;
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

/**
 * A name said twice in a few words. "Rose de Lautrec. Rose duh lo-TREK": how to say it, spelled out, is no mis-hearing.
 * "Red Barn, Red Baron, sorry", "the Cheeky Curry, I call it. Uchiki Kuri": beside the name said right the other was a slip
 * or a joke and stays. Of two tries of which neither is right only the person knows: the
 * first is left to them, and of "Lucullus, or Luculus" both.
 */
function settled(all: readonly NameHeard[], words: readonly Word[]): readonly NameHeard[] {
  const spelledOut = (one: NameHeard) => one.name.spelledOut.includes(lettersOf(words, one.from, one.to));
  return all.flatMap((one, index) => {
    if (one.right) return [one];
    const [before, after] = [all[index - 1], all[index + 1]];
    const twin = (other: NameHeard | undefined, near: number) =>
      other !== undefined && other.name.key === one.name.key && gap(one, other) < near;
    const sayingOf = before?.name.record === one.name.record && gap(one, before) < SPELLED_OUT_NEAR;
    if (spelledOut(one) && sayingOf) return [];
    if (twin(before, SAID_TWICE_NEAR) && before?.right === true) return [];
    if (twin(after, SAID_TWICE_NEAR) && after?.right === true) return [];
    const firstTry = twin(after, SAID_TWICE_NEAR) && !spelledOut(after as NameHeard);
    const either = twin(before, SAID_TWICE_NEAR) && words[one.from - 1]?.plain === "or";
    return [firstTry || either ? { ...one, confidence: Math.min(one.confidence, FIRST_TRY) } : one];
  });
}

function gap(a: NameHeard, b: NameHeard): number {
  return a.from < b.from ? b.from - a.to : a.from - b.to;
}

function lettersOf(words: readonly Word[], from: number, to: number): string {
  let letters = "";
  for (let at = from; at < to; at += 1) letters += (words[at] as Word).plain;
  return letters;
}
