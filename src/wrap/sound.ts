/**
 * How words sound, roughly, so that a name can be found in the words a captioner wrote for it: Double Metaphone
 * (L. Philips, C/C++ Users Journal 18(6), 2000) for the consonants, and a code of our own that keeps the vowels too, since
 * short names have little else. Both are taken word by word and joined, so that where words begin and end does not matter.
 */
import { doubleMetaphone } from "double-metaphone";

export interface Sound {
  /** Consonants, by Double Metaphone. */
  readonly consonants: string;
  /** All sounds, one small letter each: vowels a e i o u, consonants in groups that are easily taken for one another. */
  readonly full: string;
}

/** English spellings that say other than they are written, before any code is made; in this order. */
const respellings: readonly (readonly [RegExp, string])[] = [
  [/^(?:kn|gn|pn)/, "n"],
  [/^wr/, "r"],
  [/^(?:ps|sc(?=[eiy]))/, "s"],
  [/^wh(?=o)/, "h"],
  [/wh/, "w"],
  [/oroughs?$/, "oro"],
  [/burghs?$/, "bura"],
  [/(?:au|ou)ght/, "ort"],
  [/(?:ough|oughs)$/, "o"],
  [/augh/, "arf"],
  [/eigh/, "ay"],
  [/igh/, "y"],
  [/gh(?=t)/, ""],
  [/sc(?=le)/, "s"],
  [/st(?=le|en$)/, "s"],
  [/mb(?=s?$)/, "m"],
  [/(?<=[ao])l(?=[kmf])/, ""],
  [/ould/, "ud"],
  [/tch/, "ch"],
  [/dge?/, "j"],
  [/[ts]ion/, "shun"],
  [/(?<=[aeiou])s?ure$/, "zur"],
  [/ph/, "f"],
  [/qu?e$/, "k"],
  [/eaux?$/, "o"],
  [/(?<=[aeiou].*[^dt])ed$/, "d"],
];

/** Spelling to the letters of the full code. Groups: p (p b), t (t d th), k (k g), f (f v), s (s z), x (sh ch j). */
const sounds: readonly (readonly [RegExp, string])[] = [
  [/ch|sh|zh|j|(?<=.)g(?=[eiy])|^g(?=e[mnor]|i[an]|y)/g, "x"],
  [/ck|c(?![eiy])|q|g(?!h)/g, "k"],
  [/c(?=[eiy])|z/g, "s"],
  [/x(?=$)/g, "x"],
  [/th|d/g, "t"],
  [/b/g, "p"],
  [/v/g, "f"],
  [/gh/g, ""],
  [/ai|ay/g, "e"],
  [/(?<=.)(?:ee|ea|ie|ei|ey|y)|^(?:ee|ea)/g, "i"],
  [/oo|ou|ew|ue|ui/g, "u"],
  [/oa|ow|aw|au|oe/g, "o"],
  [/(?<=[aeiou][^aeiou]+)e$/g, ""],
  [/h(?![aeiouy])|(?<=[^aeiou])h/g, ""],
  [/(.)\1+/g, "$1"],
];

const known = new Map<string, Sound>();

/** The sound of one word of small letters without accents; asked for again and again, so kept. */
export function soundOfWord(word: string): Sound {
  let sound = known.get(word);
  if (sound === undefined) {
    let spelled = word.replace(/[^a-z]/g, "");
    for (const [from, to] of respellings) spelled = spelled.replace(from, to);
    let full = spelled.replace(/x/g, "ks");
    for (const [from, to] of sounds) full = full.replace(from, to);
    sound = { consonants: doubleMetaphone(spelled)[0].replace(/^A/, ""), full };
    if (known.size > 100_000) known.clear();
    known.set(word, sound);
  }
  return sound;
}

export function soundOf(words: readonly string[]): Sound {
  const all = words.map(soundOfWord);
  return {
    consonants: all.map(({ consonants }) => consonants).join(""),
    full: joined(all.map(({ full }) => full)),
  };
}

/** Two words run together where one ends and the next begins in the same sound. */
export function joined(parts: readonly string[]): string {
  let text = "";
  for (const part of parts) text += text !== "" && text.at(-1) === part[0] ? part.slice(1) : part;
  return text;
}

/** What it costs to hear one sound for another: vowels are heard badly, and so are these pairs; others cost 1. */
const pairs: Readonly<Record<string, number>> = {
  ...{ ae: 0.4, ai: 0.4, ao: 0.3, au: 0.4, ei: 0.3, eo: 0.4, eu: 0.4, io: 0.4, iu: 0.4, ou: 0.3 },
  ...{ pf: 0.6, pm: 0.7, tx: 0.5, ts: 0.7, sx: 0.4, kx: 0.6, mn: 0.4, lr: 0.6, lw: 0.6, wf: 0.5 },
  ...{ wu: 0.3, wo: 0.4, yi: 0.2, tk: 0.8, fs: 0.8 },
};

/** What it costs to miss a sound or to hear one too many; 0.9 for those not named. */
const slips: Readonly<Record<string, number>> = {
  a: 0.4,
  e: 0.4,
  i: 0.45,
  o: 0.45,
  u: 0.45,
  h: 0.3,
  r: 0.5,
  w: 0.5,
  y: 0.4,
};

const LETTERS = 26;
const indexOf = (letter: string) => letter.charCodeAt(0) - 97;

const changeCost = new Float64Array(LETTERS * LETTERS).fill(1);
for (let letter = 0; letter < LETTERS; letter += 1) changeCost[letter * LETTERS + letter] = 0;
for (const [pair, cost] of Object.entries(pairs)) {
  const [a, b] = [indexOf(pair), indexOf(pair.slice(1))];
  changeCost[a * LETTERS + b] = cost;
  changeCost[b * LETTERS + a] = cost;
}
const slipCost = new Float64Array(LETTERS).fill(0.9);
for (const [letter, cost] of Object.entries(slips)) slipCost[indexOf(letter)] = cost;

/** One row of sums, kept because it is needed some hundred thousand times for a long film. */
let row = new Float64Array(64);

/** How far two full codes are from one another, as a sum of slips: the edit distance with these costs. Beyond `most` only that it is. */
function soundDistance(a: string, b: string, most: number): number {
  if (row.length <= b.length) row = new Float64Array(2 * b.length);
  row[0] = 0;
  for (let i = 0; i < b.length; i += 1) row[i + 1] = (row[i] as number) + (slipCost[b.charCodeAt(i) - 97] as number);
  for (let j = 0; j < a.length; j += 1) {
    const said = a.charCodeAt(j) - 97;
    const missed = slipCost[said] as number;
    let corner = row[0] as number;
    let left = corner + missed;
    row[0] = left;
    let least = left;
    for (let i = 0; i < b.length; i += 1) {
      const heard = b.charCodeAt(i) - 97;
      const above = row[i + 1] as number;
      left = Math.min(
        corner + (changeCost[said * LETTERS + heard] as number),
        above + missed,
        left + (slipCost[heard] as number),
      );
      corner = above;
      row[i + 1] = left;
      if (left < least) least = left;
    }
    if (least > most) return Number.POSITIVE_INFINITY;
  }
  return row[b.length] as number;
}

/** The most that two codes can differ: all of the first one missed. */
export function soundWeight(code: string): number {
  let weight = 0;
  for (let i = 0; i < code.length; i += 1) weight += slipCost[code.charCodeAt(i) - 97] as number;
  return weight;
}

/** Room for sums that are rounded otherwise. */
const ROUNDED = 1e-9;

/** How alike two full codes are, from 0 to 1, by the weight of what the name has to say; 0 may stand for all that is below `least`. */
export function soundLikeness(name: string, heard: string, weight = soundWeight(name), least = 0): number {
  return weight === 0 ? 0 : Math.max(0, 1 - soundDistance(name, heard, (1 - least) * weight + ROUNDED) / weight);
}
