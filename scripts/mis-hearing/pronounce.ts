/**
 * How words sound, as phonemes of the CMU Pronouncing Dictionary without stress. Names it does not have are spoken from
 * their "say it as", or by the letters.
 *
 * It is on purpose another idea of sound than the one by which the wrap finds names: a test must not use the rule it tests.
 */
import { dictionary } from "cmu-pronouncing-dictionary";

export type Phoneme = string;

export function pronounce(word: string): readonly Phoneme[] | undefined {
  const known = dictionary[word];
  return known === undefined ? undefined : phonemes(known);
}

export function phonemes(written: string): readonly Phoneme[] {
  return written.replace(/\d/g, "").split(" ");
}

/** The sounds of a name: every word from the dictionary where all are known, else from the respelling, else by letters. */
export function pronounceName(name: string, sayAs: string | undefined): readonly Phoneme[] {
  const words = plain(name).split(/[\s-]+/);
  const known = words.map((word) => pronounce(word) ?? possessive(word));
  if (known.every((sounds) => sounds !== undefined)) return known.flat() as Phoneme[];
  if (sayAs !== undefined) return byLetters(plain(sayAs.split(",")[0] ?? "").replace(/[\s-]+/g, " "));
  return words.flatMap((word, index) => known[index] ?? byLetters(word));
}

function possessive(word: string): readonly Phoneme[] | undefined {
  const owner = /^(.+)'s$/.exec(word)?.[1];
  const sounds = owner === undefined ? undefined : (pronounce(owner) ?? byLetters(owner));
  return sounds && [...sounds, "Z"];
}

export function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").replaceAll("’", "'").toLowerCase();
}

/** Letters to sounds, the longest first. The first column is how people respell names for one another. */
const letterSounds: readonly (readonly [letters: string, sounds: string])[] = [
  ["eye", "AY"],
  ["air", "EH R"],
  ["tch", "CH"],
  ["igh", "AY"],
  ["ee", "IY"],
  ["ea", "IY"],
  ["oo", "UW"],
  ["ou", "UW"],
  ["ay", "EY"],
  ["ai", "EY"],
  ["oh", "OW"],
  ["oa", "OW"],
  ["ah", "AA"],
  ["aw", "AO"],
  ["au", "AO"],
  ["uh", "AH"],
  ["ew", "UW"],
  ["ow", "AW"],
  ["oy", "OY"],
  ["oi", "OY"],
  ["er", "ER"],
  ["ir", "ER"],
  ["or", "AO R"],
  ["ar", "AA R"],
  ["ch", "CH"],
  ["sh", "SH"],
  ["zh", "ZH"],
  ["th", "TH"],
  ["ph", "F"],
  ["ck", "K"],
  ["qu", "K W"],
  ["ng", "NG"],
  ["a", "AE"],
  ["b", "B"],
  ["c", "K"],
  ["d", "D"],
  ["e", "EH"],
  ["f", "F"],
  ["g", "G"],
  ["h", "HH"],
  ["i", "IH"],
  ["j", "JH"],
  ["k", "K"],
  ["l", "L"],
  ["m", "M"],
  ["n", "N"],
  ["o", "AA"],
  ["p", "P"],
  ["r", "R"],
  ["s", "S"],
  ["t", "T"],
  ["u", "AH"],
  ["v", "V"],
  ["w", "W"],
  ["x", "K S"],
  ["z", "Z"],
];

function byLetters(text: string): readonly Phoneme[] {
  const sounds: Phoneme[] = [];
  for (const part of text.replace(/[^a-z ]/g, "").split(" ")) {
    const word = part.replace(/([bcdfgklmnprstvz])\1/g, "$1").replace(/([^aeiou])e$/, "$1");
    let at = 0;
    while (at < word.length) {
      if (word[at] === "y") {
        sounds.push(at === 0 ? "Y" : "IY");
        at += 1;
        continue;
      }
      const rule = letterSounds.find(([letters]) => word.startsWith(letters, at));
      at += rule?.[0].length ?? 1;
      if (rule !== undefined) sounds.push(...rule[1].split(" "));
    }
    if (word.endsWith("a") && word.length > 1) sounds[sounds.length - 1] = "AH";
  }
  return sounds;
}

/** Sounds that a microphone in the wind takes for one another. */
const alike: readonly string[] = [
  "IY IH",
  "IH EH AH",
  "EH AE",
  "AE AA AH",
  "AA AO AH",
  "AO OW",
  "UW UH",
  "UH AH",
  "AH ER",
  "EY EH",
  "AY AA",
  "AW AA",
  "OY AO",
  "P B",
  "T D",
  "K G",
  "F V TH",
  "S Z",
  "SH ZH CH",
  "CH JH",
  "JH ZH",
  "S SH",
  "M N",
  "N NG",
  "L W",
  "W V",
  "TH DH T",
  "DH D",
  "Y IY",
];

const neighbours = new Map<Phoneme, readonly Phoneme[]>();
for (const group of alike) {
  const sounds = group.split(" ");
  for (const sound of sounds) {
    neighbours.set(sound, [...(neighbours.get(sound) ?? []), ...sounds.filter((other) => other !== sound)]);
  }
}

export function soundsLike(sound: Phoneme): readonly Phoneme[] {
  return neighbours.get(sound) ?? [];
}

const vowels = new Set("AA AE AH AO AW AY EH ER EY IH IY OW OY UH UW".split(" "));

/** What it costs to hear one sound as another, from 0 to 1. */
export function confusion(said: Phoneme, heard: Phoneme): number {
  if (said === heard) return 0;
  if (neighbours.get(said)?.includes(heard) === true) return 0.35;
  return vowels.has(said) === vowels.has(heard) ? 0.75 : 1.2;
}

/** What it costs not to hear a sound, or to hear one that nobody made. */
export function slip(sound: Phoneme): number {
  return sound === "AH" || sound === "HH" || sound === "R" ? 0.45 : 0.8;
}
