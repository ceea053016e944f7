/** A sentence with the places it rests on. */
import type { Place } from "../model.ts";

/** Words to be said or read, with the lines of the records they rest on. */
export interface Sentence {
  readonly text: string;
  /** In the order in which the sentence uses them; empty only when the absence of a record is what is said. */
  readonly sources: readonly Place[];
  /** Rests on something the person marked private: to be known, not to be said. */
  readonly private: boolean;
}

/** Whatever a sentence can rest on: an event, a change, a follow-up, a record, a fact. */
export interface Ground {
  readonly place?: Place | undefined;
  readonly note?: Place | undefined;
  readonly sources?: readonly Place[] | undefined;
  readonly private?: boolean | undefined;
}

/** A sentence resting on these; private as soon as one of them is. */
export function say(text: string, grounds: readonly (Ground | undefined)[]): Sentence {
  return { text, sources: sourcesOf(grounds), private: grounds.some((ground) => ground?.private === true) };
}

/** The lines that these rest on, each once: of a season's total there are thousands. */
export function sourcesOf(grounds: readonly (Ground | undefined)[]): readonly Place[] {
  const sources = new Map<string, Place>();
  for (const ground of grounds) {
    for (const place of ground?.sources ?? [ground?.place ?? ground?.note]) {
      if (place === undefined) continue;
      const line = `${place.line} ${place.file}`;
      if (!sources.has(line)) sources.set(line, place);
    }
  }
  return [...sources.values()];
}

/** Two or more sentences said in one breath. */
export function together(sentences: readonly Sentence[]): Sentence {
  return say(
    sentences.map((sentence) => sentence.text).join(" "),
    sentences.flatMap((sentence) => sentence.sources.map((place) => ({ place, private: sentence.private }))),
  );
}
