/**
 * The rough look at a run of words: which names have about the same consonants. It is what makes a film of four hours a matter of
 * a second, so it works on numbers only.
 */
import type { KnownName } from "./known-names.ts";
import { type Sound, soundWeight } from "./sound.ts";

/** Sounds a name must have at least. */
const SHORTEST_WHOLE = 4;
/** Consonants beyond which no name goes. */
export const MOST_CONSONANTS = 20;
/** Consonants that may differ for each that a name has; a name of few must have them all. */
const SLIPS = 0.3;
export const FEW = 4;
/** What grew nowhere that day must be said more plainly. */
const SLIPS_ELSEWHERE = 0.2;
/** What a run may be compared with, as columns. */
export interface Candidates {
  readonly names: readonly KnownName[];
  readonly sounds: readonly Sound[];
  readonly weights: Float64Array;
  readonly slips: Uint8Array;
  /** Of each, where in its consonants each letter stands, as bits, by the last six bits of the letter. */
  readonly masks: Int32Array;
  readonly lengths: Uint8Array;
  readonly beats: Uint8Array;
  /** Those that allow no slip: by their consonants, and by all sounds but the vowels. */
  readonly whole: ReadonlyMap<string, readonly number[]>;
  /** The others, by the number of a run's consonants. */
  readonly near: readonly Near[];
  /** Which of those are within their slips of a short run, by its consonants: what a film says in few words it says often. */
  readonly within: Map<number, Uint16Array>;
}

/** Candidates that allow as many slips as a run of so many consonants needs. */
export interface Near {
  readonly at: Uint16Array;
  readonly letters: Int32Array;
  /** Most bits by which the two may differ in their letters, wherever the name stands. */
  readonly bits: Int8Array;
  /** Those that are left, by a run's letters: the longer a film, the more of its runs have the letters of an earlier one. */
  readonly left: Map<number, Uint16Array>;
}

/** Sets of letters that are remembered for each number of consonants. */
const REMEMBERED = 20_000;

/** The last six bits of each consonant of the run at hand: one list for all, because it is read some million times. */
export const letterCodes = new Uint8Array(MOST_CONSONANTS);

/** What is the same for all films of a garden, whose names sound alike whatever stood where that day. */
interface EveryFilm extends Omit<Candidates, "names" | "slips" | "within"> {
  /** Which of the names each is, and the slips it allows where it stands. */
  readonly of: readonly number[];
  readonly most: Uint8Array;
}

let last: { readonly names: readonly KnownName[]; readonly every: EveryFilm } | undefined;

export function candidatesOf(names: readonly KnownName[]): Candidates {
  const isSame =
    last?.names.length === names.length && names.every(({ sounds }, at) => sounds === last?.names[at]?.sounds);
  const every = isSame && last !== undefined ? last.every : everyFilm(names);
  last = { names, every };
  const these = every.of.map((at) => names[at] as KnownName);
  return {
    ...every,
    names: these,
    slips: Uint8Array.from(these, ({ standing }, at) =>
      standing === "in the records"
        ? slipsOf(every.lengths[at] as number, SLIPS_ELSEWHERE)
        : (every.most[at] as number),
    ),
    within: new Map(),
  };
}

function slipsOf(length: number, share: number): number {
  return length < FEW ? 0 : Math.round(length * share);
}

function everyFilm(known: readonly KnownName[]): EveryFilm {
  const rows = [...known.entries()]
    .filter(([, { name, sounds }]) => sounds.some(({ full }) => full.length >= SHORTEST_WHOLE) && !/\d/.test(name))
    .flatMap(([of, { sounds }]) => sounds.map((sound) => ({ of, sound, length: sound.consonants.length })))
    .filter(({ length }) => length <= MOST_CONSONANTS)
    .sort((a, b) => a.length - b.length);
  const most = rows.map(({ length }) => slipsOf(length, SLIPS));
  const whole = new Map<string, number[]>();
  const add = (key: string, at: number) => {
    const same = whole.get(key);
    if (same === undefined) whole.set(key, [at]);
    else same.push(at);
  };
  rows.forEach(({ sound, length }, at) => {
    if (most[at] !== 0) return;
    add(sound.consonants, at);
    add(boneKey(withoutVowels(sound.full), length), at);
  });
  const masks = new Int32Array(rows.length * 64);
  rows.forEach(({ sound: { consonants } }, row) => {
    for (let at = 0; at < consonants.length; at += 1) {
      const slot = (row << 6) | (consonants.charCodeAt(at) & 63);
      masks[slot] = (masks[slot] as number) | (1 << at);
    }
  });
  const letters = rows.map(({ sound }) => unary(sound.consonants));
  const near = Array.from({ length: MOST_CONSONANTS + 1 }, (_, run): Near => {
    const apart = (at: number) => Math.abs((rows[at]?.length ?? 0) - run);
    const at = Uint16Array.from([...rows.keys()].filter((one) => most[one] !== 0 && apart(one) <= (most[one] ?? 0)));
    return {
      at,
      letters: Int32Array.from(at, (one) => letters[one] as number),
      bits: Int8Array.from(at, (one) => 2 * (most[one] as number) - apart(one)),
      left: new Map(),
    };
  });
  return {
    of: rows.map(({ of }) => of),
    most: Uint8Array.from(most),
    sounds: rows.map(({ sound }) => sound),
    weights: Float64Array.from(rows, ({ sound }) => soundWeight(sound.full)),
    masks,
    lengths: Uint8Array.from(rows, ({ length }) => length),
    beats: Uint8Array.from(rows, ({ sound }) => syllables(sound.full)),
    whole,
    near,
  };
}

/** Place of each consonant of Double Metaphone, by the last six bits of its letter. */
const placeOf = new Int8Array(64).fill(-1);
for (const [place, letter] of [..."0FHJKLMNPRSTX"].entries()) placeOf[letter.charCodeAt(0) & 63] = place;

/**
 * How often each consonant occurs, counted to two in unary: 00, 01, 11. The bits in which two codes differ are then how
 * far their counts are apart, and no edit changes them by more than two. Counts on from the code of what came before.
 */
export function unary(consonants: string, before = 0): number {
  let code = before;
  for (let at = 0; at < consonants.length; at += 1) {
    const shift = 2 * (placeOf[consonants.charCodeAt(at) & 63] as number);
    if (shift >= 0) code |= (code >>> shift) & 1 ? 2 << shift : 1 << shift;
  }
  return code;
}

function bits(mask: number): number {
  let n = mask - ((mask >>> 1) & 0x55555555);
  n = (n & 0x33333333) + ((n >>> 2) & 0x33333333);
  return (((n + (n >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24;
}

const none = new Uint16Array(0);

/** Consonants of a run whose code is one small number, and how many such runs are remembered. */
const CODED = 7;
const CODES = 200_000;

/** Candidates within their slips of the run at hand, whose consonants are so many and `letters` of each. */
export function withinSlips(length: number, letters: number, candidates: Candidates): Uint16Array {
  const code = length > CODED ? 0 : codeOf(length);
  const known = code === 0 ? undefined : candidates.within.get(code);
  if (known !== undefined) return known;
  const these: number[] = [];
  for (const one of leftOf(candidates.near[length] as Near, letters))
    if (isWithin(candidates.slips[one] as number, one, length, candidates)) these.push(one);
  const found = these.length === 0 ? none : Uint16Array.from(these);
  if (code === 0) return found;
  if (candidates.within.size > CODES) candidates.within.clear();
  candidates.within.set(code, found);
  return found;
}

/** The run's consonants, four bits each; 0 when one of them has no place. */
function codeOf(length: number): number {
  let code = 0;
  for (let at = 0; at < length; at += 1) {
    const place = placeOf[letterCodes[at] as number] as number;
    if (place < 0) return 0;
    code = (code << 4) | (place + 1);
  }
  return code;
}

function leftOf({ at, letters: theirs, bits: most, left }: Near, letters: number): Uint16Array {
  const known = left.get(letters);
  if (known !== undefined) return known;
  const these: number[] = [];
  for (let index = 0; index < at.length; index += 1) {
    if (bits(letters ^ (theirs[index] as number)) <= (most[index] as number)) these.push(at[index] as number);
  }
  const found = these.length === 0 ? none : Uint16Array.from(these);
  if (left.size > REMEMBERED) left.clear();
  left.set(letters, found);
  return found;
}

/**
 * Whether so few changes, at most, make the run's consonants a candidate's: the edit distance column by column, all rows of
 * one at once as bits (Myers, Journal of the ACM 46:395-415, 1999), left as soon as it can only be more.
 */
function isWithin(most: number, one: number, length: number, { masks, lengths }: Candidates): boolean {
  let apart = lengths[one] as number;
  const last = 1 << (apart - 1);
  let more = -1;
  let less = 0;
  for (let at = 0; at < length; at += 1) {
    let same = masks[(one << 6) | (letterCodes[at] as number)] as number;
    const either = same | less;
    same |= ((same & more) + more) ^ more;
    less |= ~(same | more);
    more &= same;
    if ((less & last) !== 0) apart += 1;
    if ((more & last) !== 0) apart -= 1;
    if (apart - (length - 1 - at) > most) return false;
    less = (less << 1) | 1;
    more = (more << 1) | ~(either | less);
    less &= either;
  }
  return apart <= most;
}

/** Small letters, as consonants by Double Metaphone are none; a name with as many consonants only. */
export function boneKey(bones: string, consonants: number): string {
  return `${bones} ${consonants}`;
}

export function syllables(full: string): number {
  let count = 0;
  let inVowel = false;
  for (let at = 0; at < full.length; at += 1) {
    const isVowel = "aeiou".includes(full[at] as string);
    if (isVowel && !inVowel) count += 1;
    inVowel = isVowel;
  }
  return count;
}

export function withoutVowels(full: string): string {
  return full.replace(/[aeiou]/g, "");
}
