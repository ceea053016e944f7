/** The speech in phrases: sentences where the captions have marks, else what is said between two breaths. */
import { endsSentence, type Speech, type Word } from "./spoken-words.ts";

export interface Phrase {
  /** First word, and after the last, in the speech. */
  readonly from: number;
  readonly to: number;
  /** Milliseconds. */
  readonly at: number;
}

/** Milliseconds from one word to the next that are a breath in captions without marks. */
const BREATH = 850;
/** Longest phrase, in words, before the next line of captions parts it, and before any word does. */
const LONG = 12;
const LONGEST = 20;

export function phrasesOf({ words, punctuated }: Speech): readonly Phrase[] {
  const phrases: Phrase[] = [];
  let from = 0;
  for (let at = 0; at < words.length; at += 1) {
    const [word, next] = [words[at] as Word, words[at + 1]];
    const length = at + 1 - from;
    const ends =
      next === undefined ||
      endsSentence(word) ||
      length >= LONGEST ||
      (!punctuated && length > 2 && next.at - word.at > BREATH + 60 * word.plain.length) ||
      (!punctuated && length >= LONG && next.cue !== word.cue);
    if (!ends) continue;
    phrases.push({ from, to: at + 1, at: (words[from] as Word).at });
    from = at + 1;
  }
  return phrases;
}

/** The words of a stretch of speech with their marks, as they were captioned. */
export function textOf(words: readonly Word[], from: number, to: number): string {
  return words
    .slice(from, to)
    .filter(({ text }) => text !== "")
    .map(({ text, mark }, index, all) => (index === all.length - 1 && mark === "," ? text : `${text}${mark}`))
    .join(" ");
}
