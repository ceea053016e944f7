/** Making a sentence with the places it rests on. */
import type { Place } from "../model.ts";
import type { Sentence } from "./brief.ts";

/** Whatever a sentence can rest on: an event, a change, a follow-up, a record. */
export interface Ground {
  readonly place?: Place | undefined;
  readonly note?: Place | undefined;
  readonly private?: boolean | undefined;
}

/** A sentence resting on these; private as soon as one of them is. */
export function say(text: string, grounds: readonly (Ground | undefined)[]): Sentence {
  const sources: Place[] = [];
  let isPrivate = false;
  for (const ground of grounds) {
    if (ground === undefined) continue;
    isPrivate ||= ground.private === true;
    const place = ground.place ?? ground.note;
    if (place !== undefined && !sources.some((known) => known.file === place.file && known.line === place.line)) {
      sources.push(place);
    }
  }
  return { text, sources, private: isPrivate };
}

/** Two or more sentences said in one breath. */
export function together(sentences: readonly Sentence[]): Sentence {
  return say(
    sentences.map((sentence) => sentence.text).join(" "),
    sentences.flatMap((sentence) => sentence.sources.map((place) => ({ place, private: sentence.private }))),
  );
}

/**
 * Seconds to say a text aloud at a rate in words a minute. A word is what stands between spaces; a number with digits is
 * counted as two, because "24 May" and "2.5 kg" take about twice as long to say as to read (common practice of
 * narrators; the usual band is 120 to 160 words a minute).
 */
export function secondsToSay(text: string, wordsAMinute: number): number {
  let words = 0;
  for (const word of text.split(/\s+/)) {
    if (word !== "") words += /\d/.test(word) ? 2 : 1;
  }
  return Math.round((words * 60) / wordsAMinute);
}
