/**
 * Runs of words that sound like a known name. Every run of up to eight words is compared with every name, first roughly
 * (how many consonants, and which) and what is left by all its sounds; a run of nothing but the commonest words is what it
 * seems.
 */
import { commonWords } from "./common-words.ts";
import {
  boneKey,
  type Candidates,
  candidatesOf,
  FEW,
  letterCodes,
  MOST_CONSONANTS,
  syllables,
  unary,
  withinSlips,
  withoutVowels,
} from "./consonants-alike.ts";
import type { KnownName } from "./known-names.ts";
import { joined, type Sound, soundLikeness, soundOfWord } from "./sound.ts";
import { endsSentence, isNumberWord, type Word } from "./spoken-words.ts";

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
/** Likeness from which all sounds of a name are heard. */
const WHOLE = 0.95;
/** Likeness below which nothing else could make it a name. */
const UNLIKE = 0.64;
/** What each syllable costs by which two differ: people swallow sounds, seldom whole beats. */
const SYLLABLE = 0.04;
/** Milliseconds of silence that no name goes on over. */
const SILENCE = 1500;

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
  return endsSentence(before) || word.at - before.at > SILENCE;
}

function compare(
  words: readonly Word[],
  sounds: readonly Sound[],
  run: RunOfWords,
  candidates: Candidates,
  found: SoundsLike[],
): void {
  const { length, letters } = run;
  const { whole } = candidates;
  if (length < FEW) {
    const [same, alike] = [whole.get(run.consonants), whole.get(boneKey(run.bones, length))];
    const these = same === undefined ? alike : alike === undefined ? same : [...new Set([...same, ...alike])];
    for (const at of these?.toSorted((a, b) => a - b) ?? []) weigh(words, sounds, run, at, candidates, found);
  }
  for (const one of withinSlips(length, letters, candidates)) weigh(words, sounds, run, one, candidates, found);
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
  const least = sound.full.length < SHORTEST ? WHOLE : UNLIKE;
  const one = likeness(words, to, full, sound.full, weights[at] as number, least);
  one.likeness -= SYLLABLE * Math.abs(run.beats - (beats[at] as number));
  const name = names[at] as KnownName;
  if (one.likeness < least || isItself(words, from, to, name)) return;
  found.push({ from, to, name, ...one, sounds: Math.min(full.length, sound.full.length) });
}

function likeness(
  words: readonly Word[],
  to: number,
  full: string,
  name: string,
  weight: number,
  least: number,
): { likeness: number; readonly ending: string } {
  const whole = soundLikeness(name, full, weight, least);
  if (!full.endsWith("s") || name.endsWith("s")) return { likeness: whole, ending: "" };
  const without = soundLikeness(name, full.slice(0, -1), weight, least);
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
