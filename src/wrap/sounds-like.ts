/**
 * Runs of words that sound like a known name. Every run of up to eight words is compared with every name, first roughly
 * (how many consonants, and which) and what is left by all its sounds; a run of nothing but the commonest words is what it
 * seems. The rough look is what makes a film of four hours
 * a matter of a second, so it works on numbers only.
 */
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

/** What a run may be compared with, as columns. */
interface Candidates {
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
}

/** Candidates that allow as many slips as a run of so many consonants needs. */
interface Near {
  readonly at: Uint16Array;
  readonly letters: Int32Array;
  /** Most bits by which the two may differ in their letters. */
  readonly bits: Int8Array;
}

/** A run of words as it grows, and what it sounds like. */
interface RunOfWords {
  readonly from: number;
  to: number;
  /** Consonants so far. */
  length: number;
  letters: number;
  /** While there are few of them, those consonants, and all sounds but the vowels. */
  consonants: string;
  bones: string;
  /** The last sound so far. */
  last: string | undefined;
  /** All sounds and their beats, made when they are first asked for: few runs are like a name. */
  full: string | undefined;
  beats: number;
}

/** The last six bits of each consonant of the run at hand: one list for all, because it is read some million times. */
const letterCodes = new Uint8Array(MOST_CONSONANTS);

export function soundsLike(words: readonly Word[], names: readonly KnownName[]): readonly SoundsLike[] {
  const candidates = candidatesOf(names);
  const sounds = words.map(({ plain }) => soundOfWord(plain));
  const bones = new Map<Sound, readonly [whole: string, joinedOn: string]>();
  for (const sound of sounds)
    if (!bones.has(sound)) bones.set(sound, [withoutVowels(sound.full), withoutVowels(sound.full.slice(1))]);
  const silent = words.map(
    ({ plain }, at) => (sounds[at] as Sound).full === "" || isNumberWord(plain) || /^[b-hj-np-z]$/.test(plain),
  );
  const common = words.map(({ plain }) => commonWords.has(plain));
  const found: SoundsLike[] = [];
  for (let from = 0; from < words.length; from += 1) {
    if (silent[from] === true) continue;
    let onlyCommon = true;
    const run: RunOfWords = {
      from,
      to: from,
      length: 0,
      letters: 0,
      consonants: "",
      bones: "",
      last: undefined,
      full: undefined,
      beats: 0,
    };
    for (let to = from + 1; to <= Math.min(words.length, from + LONGEST_RUN); to += 1) {
      if (to > from + 1 && isBroken(words[to - 2] as Word, words[to - 1] as Word)) break;
      const sound = sounds[to - 1] as Sound;
      if (run.length + sound.consonants.length > MOST_CONSONANTS) break;
      run.to = to;
      run.full = undefined;
      for (let at = 0; at < sound.consonants.length; at += 1)
        letterCodes[run.length + at] = sound.consonants.charCodeAt(at) & 63;
      run.length += sound.consonants.length;
      run.letters = unary(sound.consonants, run.letters);
      if (run.length < FEW) {
        const [whole, joinedOn] = bones.get(sound) as readonly [string, string];
        run.consonants += sound.consonants;
        run.bones += run.last !== undefined && run.last === sound.full[0] ? joinedOn : whole;
        run.last = sound.full.at(-1) ?? run.last;
      }
      onlyCommon &&= common[to - 1] === true;
      if (onlyCommon || run.length < 2 || silent[to - 1] === true) continue;
      compare(words, sounds, run, candidates, found);
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
  run: RunOfWords,
  candidates: Candidates,
  found: SoundsLike[],
): void {
  const { length, letters } = run;
  const { slips, whole, near } = candidates;
  if (length < FEW) {
    const [same, alike] = [whole.get(run.consonants), whole.get(boneKey(run.bones, length))];
    const these = same === undefined ? alike : alike === undefined ? same : [...new Set([...same, ...alike])];
    for (const at of these?.toSorted((a, b) => a - b) ?? []) weigh(words, sounds, run, at, candidates, found);
  }
  const { at, letters: theirs, bits: most } = near[length] as Near;
  for (let index = 0; index < at.length; index += 1) {
    if (bits(letters ^ (theirs[index] as number)) > (most[index] as number)) continue;
    const one = at[index] as number;
    if (!isWithin(slips[one] as number, one, length, candidates)) continue;
    weigh(words, sounds, run, one, candidates, found);
  }
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

function weigh(
  words: readonly Word[],
  said: readonly Sound[],
  run: RunOfWords,
  at: number,
  { names, sounds, weights, beats }: Candidates,
  found: SoundsLike[],
): void {
  const { from, to } = run;
  if (run.full === undefined) {
    run.full = joined(said.slice(from, to).map((one) => one.full));
    run.beats = syllables(run.full);
  }
  const { full } = run;
  const sound = sounds[at] as Sound;
  const one = likeness(words, to, full, sound.full, weights[at] as number);
  one.likeness -= SYLLABLE * Math.abs(run.beats - (beats[at] as number));
  const name = names[at] as KnownName;
  const least = sound.full.length < SHORTEST ? WHOLE : UNLIKE;
  if (one.likeness < least || isItself(words, from, to, name)) return;
  found.push({ from, to, name, ...one, sounds: Math.min(full.length, sound.full.length) });
}

/** Small letters, as consonants by Double Metaphone are none; a name with as many consonants only. */
function boneKey(bones: string, consonants: number): string {
  return `${bones} ${consonants}`;
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
  const whole = new Map<string, number[]>();
  const add = (key: string, at: number) => whole.set(key, [...(whole.get(key) ?? []), at]);
  rows.forEach(({ sound, length }, at) => {
    if (slips[at] !== 0) return;
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
    const at = Uint16Array.from([...rows.keys()].filter((one) => slips[one] !== 0 && apart(one) <= (slips[one] ?? 0)));
    return {
      at,
      letters: Int32Array.from(at, (one) => letters[one] as number),
      bits: Int8Array.from(at, (one) => 2 * (slips[one] as number) - apart(one)),
    };
  });
  return {
    names: rows.map(({ name }) => name),
    sounds: rows.map(({ sound }) => sound),
    weights: Float64Array.from(rows, ({ sound }) => soundWeight(sound.full)),
    slips: Uint8Array.from(slips),
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
