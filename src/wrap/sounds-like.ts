/**
 * Runs of words that sound like a known name. Every run of up to eight words is compared with every name, first roughly
 * (how many consonants, and which) and what is left by all its sounds; a run of nothing but the commonest words is what it
 * seems. The rough look is what makes a film of four hours
 * a matter of a second, so it works on numbers only.
 */
import { distance } from "fastest-levenshtein";
import { commonWords } from "./common-words.ts";
import type { KnownName } from "./known-names.ts";
import { joined, type Sound, soundLikeness, soundOfWord, soundWeight } from "./sound.ts";
import { isNumberWord, type Word } from "./spoken-words.ts";

export interface SoundsLike {
  readonly from: number;
  readonly to: number;
  readonly name: KnownName;
  /** From 0 to 1, by sound alone. */
  readonly likeness: number;
  /** How many sounds the two have at least. */
  readonly sounds: number;
  readonly ending: string;
}

/** Longest run of words that is taken for one name. */
export const LONGEST_RUN = 8;
/** Sounds a name must have before anything else is taken for it, and one whose sounds must all be heard: "Rose" is heard in too much. */
const SHORTEST = 5;
const SHORTEST_WHOLE = 4;
/** Likeness from which all sounds of a name are heard. */
const WHOLE = 0.95;
/** Consonants beyond which no name goes. */
const MOST_CONSONANTS = 20;
/** Consonants that may differ for each that a name has; a name of few must have them all. */
const SLIPS = 0.3;
const FEW = 4;
/** What grew nowhere that day must be said more plainly. */
const SLIPS_ELSEWHERE = 0.2;
/** Likeness below which nothing else could make it a name. */
const UNLIKE = 0.64;
/** What each syllable costs by which two differ: people swallow sounds, seldom whole beats. */
const SYLLABLE = 0.04;
/** Milliseconds of silence that no name goes on over. */
const SILENCE = 1500;

/** What a run may be compared with, as columns, in order of `lengths`. */
interface Candidates {
  readonly names: readonly KnownName[];
  readonly sounds: readonly Sound[];
  readonly weights: Float64Array;
  readonly lengths: Uint8Array;
  readonly letters: Int32Array;
  readonly slips: Uint8Array;
  /** All sounds but the vowels. */
  readonly bones: readonly string[];
  /** By the number of a run's consonants: the first candidate that allows as many slips, and after the last. */
  readonly first: Uint16Array;
  readonly end: Uint16Array;
}

export function soundsLike(words: readonly Word[], names: readonly KnownName[]): readonly SoundsLike[] {
  const candidates = candidatesOf(names);
  const sounds = words.map(({ plain }) => soundOfWord(plain));
  const silent = words.map(
    ({ plain }, at) => (sounds[at] as Sound).full === "" || isNumberWord(plain) || /^[b-hj-np-z]$/.test(plain),
  );
  const common = words.map(({ plain }) => commonWords.has(plain));
  const found: SoundsLike[] = [];
  for (let from = 0; from < words.length; from += 1) {
    if (silent[from] === true) continue;
    let onlyCommon = true;
    let consonants = "";
    let letters = 0;
    for (let to = from + 1; to <= Math.min(words.length, from + LONGEST_RUN); to += 1) {
      if (to > from + 1 && isBroken(words[to - 2] as Word, words[to - 1] as Word)) break;
      consonants += (sounds[to - 1] as Sound).consonants;
      if (consonants.length > MOST_CONSONANTS) break;
      letters = unary((sounds[to - 1] as Sound).consonants, letters);
      onlyCommon &&= common[to - 1] === true;
      if (onlyCommon || consonants.length < 2 || silent[to - 1] === true) continue;
      compare(words, sounds, from, to, consonants, letters, candidates, found);
    }
  }
  return found;
}

function isBroken(before: Word, word: Word): boolean {
  return before.mark === "." || before.mark === "?" || before.mark === "!" || word.at - before.at > SILENCE;
}

function compare(
  words: readonly Word[],
  sounds: readonly Sound[],
  from: number,
  to: number,
  consonants: string,
  letters: number,
  { names, sounds: of, weights, lengths, letters: theirs, slips, bones, first, end }: Candidates,
  found: SoundsLike[],
): void {
  const length = consonants.length;
  const last = end[length] as number;
  let full: string | undefined;
  let ownBones: string | undefined;
  for (let at = first[length] as number; at < last; at += 1) {
    const allowed = slips[at] as number;
    const apart = Math.abs((lengths[at] as number) - length);
    if (apart > allowed) continue;
    const sound = of[at] as Sound;
    if (allowed === 0) {
      full ??= joined(sounds.slice(from, to).map((one) => one.full));
      ownBones ??= withoutVowels(full);
      if (consonants !== sound.consonants && ownBones !== bones[at]) continue;
    } else {
      if (bits(letters ^ (theirs[at] as number)) + apart > 2 * allowed) continue;
      if (distance(consonants, sound.consonants) > allowed) continue;
    }
    full ??= joined(sounds.slice(from, to).map((one) => one.full));
    const one = likeness(words, to, full, sound.full, weights[at] as number);
    const beats = Math.abs(syllables(full) - syllables(sound.full));
    one.likeness -= SYLLABLE * beats;
    const name = names[at] as KnownName;
    const least = sound.full.length < SHORTEST ? WHOLE : UNLIKE;
    if (one.likeness < least || isItself(words, from, to, name)) continue;
    found.push({ from, to, name, ...one, sounds: Math.min(full.length, sound.full.length) });
  }
}

function likeness(
  words: readonly Word[],
  to: number,
  full: string,
  name: string,
  weight: number,
): { likeness: number; readonly ending: string } {
  const whole = soundLikeness(name, full, weight);
  if (!full.endsWith("s") || name.endsWith("s")) return { likeness: whole, ending: "" };
  const without = soundLikeness(name, full.slice(0, -1), weight);
  if (without <= whole) return { likeness: whole, ending: "" };
  const owns = /['’]s$/.test((words[to - 1] as Word).text) || isVerbal(words[to]);
  return { likeness: without, ending: owns ? "'s" : "s" };
}

/** After "Kelvedon's" comes what it does: "Kelvedon's nearly there", "the Pink Fir Apple's still standing". */
const afterIs = new Set(
  "still nearly not never just been going getting coming the a an in on up out over done ready".split(" "),
);

function isVerbal(next: Word | undefined): boolean {
  return next !== undefined && afterIs.has(next.plain);
}

function isItself(words: readonly Word[], from: number, to: number, { key }: KnownName): boolean {
  let at = 0;
  for (let word = from; word < to; word += 1) {
    const { plain } = words[word] as Word;
    if (!key.startsWith(plain, at)) return false;
    at += plain.length;
  }
  return at === key.length;
}

function syllables(full: string): number {
  let count = 0;
  let inVowel = false;
  for (let at = 0; at < full.length; at += 1) {
    const isVowel = "aeiou".includes(full[at] as string);
    if (isVowel && !inVowel) count += 1;
    inVowel = isVowel;
  }
  return count;
}

function withoutVowels(full: string): string {
  return full.replace(/[aeiou]/g, "");
}

// ------------------------------------------------------------------------------------------------------ the rough look

function candidatesOf(names: readonly KnownName[]): Candidates {
  const rows = names
    .filter(({ name, sounds }) => sounds.some(({ full }) => full.length >= SHORTEST_WHOLE) && !/\d/.test(name))
    .flatMap((name) => name.sounds.map((sound) => ({ name, sound, length: sound.consonants.length })))
    .filter(({ length }) => length <= MOST_CONSONANTS)
    .sort((a, b) => a.length - b.length);
  const slips = rows.map(({ length, name }) =>
    length < FEW ? 0 : Math.round(length * (name.standing === "in the records" ? SLIPS_ELSEWHERE : SLIPS)),
  );
  const fits = (run: number) => (row: { readonly length: number }, at: number) =>
    Math.abs(row.length - run) <= (slips[at] as number);
  const runs = Array.from({ length: MOST_CONSONANTS + 1 }, (_, run) => run);
  return {
    names: rows.map(({ name }) => name),
    sounds: rows.map(({ sound }) => sound),
    weights: Float64Array.from(rows, ({ sound }) => soundWeight(sound.full)),
    lengths: Uint8Array.from(rows, ({ length }) => length),
    letters: Int32Array.from(rows, ({ sound }) => unary(sound.consonants)),
    slips: Uint8Array.from(slips),
    bones: rows.map(({ sound }) => withoutVowels(sound.full)),
    first: Uint16Array.from(runs, (run) => Math.max(0, rows.findIndex(fits(run)))),
    end: Uint16Array.from(runs, (run) => rows.findLastIndex(fits(run)) + 1),
  };
}

/** Place of each consonant of Double Metaphone, by the last six bits of its letter. */
const placeOf = new Int8Array(64).fill(-1);
for (const [place, letter] of [..."0FHJKLMNPRSTX"].entries()) placeOf[letter.charCodeAt(0) & 63] = place;

/**
 * How often each consonant occurs, counted to two in unary: 00, 01, 11. The bits in which two codes differ are then how
 * far their counts are apart, and no edit changes them by more than two. Counts on from the code of what came before.
 */
function unary(consonants: string, before = 0): number {
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
