/**
 * The weights of the opinion as they are kept: in few letters, because every browser that reads notes loads them. A feature
 * is a word or two; words are sorted, and whatever belongs to one is told by gaps. A weight is one of a ladder of steps, each
 * 16 % above the one below. `scripts/reading/pack-opinion.ts` packs them.
 */
import type { OpinionWeights } from "./opinion.ts";

export interface PackedOpinion {
  readonly labels: readonly string[];
  readonly bias: readonly number[];
  /** The words of the features, in order: a capital letter for how many letters are the last word's, and the others; "'" before a capital. */
  readonly words: string;
  /** For each word, the words behind it in a feature; the empty word where it is one alone. */
  readonly pairs: string;
  /** For each feature in that order, its labels. */
  readonly rows: string;
  /** For each label in that order, its weight. */
  readonly steps: string;
}

/** One digit a letter, and none that has to be written otherwise in JSON, a script or a page. */
export const digits = Array.from({ length: 87 }, (_, at) => String.fromCharCode(40 + at))
  .filter((letter) => letter !== "<" && letter !== "\\")
  .join("");

/** Digits from here on say that more of the number follows. */
export const single = 60;

/** Steps of the ladder above and below nothing. */
export const steps = digits.length >> 1;

/** Weight of a step, in hundredths. */
export function weightOf(step: number): number {
  return Math.round(5 * Math.exp(0.15 * step));
}

/** What stands between the words of a feature: nothing behind "0:", which says where the other stands. */
export function featureOf(first: string, second: string): string {
  if (second === "") return first;
  return /^\d:$/.test(first) ? `${first}${second}` : `${first} ${second}`;
}

export function unpackedOpinion({ labels, bias, words, pairs, rows, steps }: PackedOpinion): OpinionWeights {
  const vocabulary = unpackedWords(words);
  const weights: Record<string, readonly number[]> = {};
  const behind = new Gaps(pairs);
  const told = new Gaps(rows);
  let at = 0;
  for (const first of vocabulary) {
    for (const second of behind.next()) {
      const row: number[] = [];
      for (const label of told.next()) {
        const digit = digits.indexOf(steps.charAt(at));
        at += 1;
        row.push(label, digit % 2 === 0 ? weightOf(digit >> 1) : -weightOf(digit >> 1));
      }
      weights[featureOf(first, vocabulary[second] as string)] = row;
    }
  }
  return { labels, bias, weights };
}

function unpackedWords(packed: string): readonly string[] {
  let before = "";
  return [...packed.matchAll(/([A-Z])([^A-Z]*)/g)].map(([, shared = "A", rest = ""]) => {
    before = before.slice(0, shared.charCodeAt(0) - 65) + rest;
    return before.replace(/'(.)/g, (_, letter: string) => letter.toUpperCase());
  });
}

/** Lists of rising numbers, each as its distance from the one before; nothing ends a list. */
class Gaps {
  readonly #text: string;
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  next(): readonly number[] {
    const list: number[] = [];
    let last = -1;
    for (let gap = this.#number(); gap > 0; gap = this.#number()) {
      last += gap;
      list.push(last);
    }
    return list;
  }

  #number(): number {
    const digit = digits.indexOf(this.#text.charAt(this.#at));
    this.#at += 1;
    return digit < single ? digit : digit + (digits.length - single) * this.#number();
  }
}
