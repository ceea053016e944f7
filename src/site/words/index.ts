/**
 * The words of pages, by the garden's language. A new language: a twin of each English file here, a row in this table, and a
 * twin of the speech in src/timeline/speech. The shape is English's own, so that a missing word does not compile.
 */
import { type Language, languageOf } from "../../timeline/index.ts";
import { english, type PageWords } from "./english.ts";
import { englishField, type FieldWords } from "./english-field.ts";
import { englishSentences, type Sentences } from "./english-sentences.ts";
import { german } from "./german.ts";
import { germanField } from "./german-field.ts";
import { germanSentences } from "./german-sentences.ts";

export interface Words extends PageWords {
  /** Of the private pages. */
  readonly field: FieldWords;
  /** Whole sentences from facts. */
  readonly sentences: Sentences;
}

const tables: Readonly<Record<Language, Words>> = {
  en: { ...english, field: englishField, sentences: englishSentences },
  de: { ...german, field: germanField, sentences: germanSentences },
};

/** `language` is the garden's tag; English where there are no words in its own. */
export function wordsIn(language: string): Words {
  return tables[languageOf(language)];
}
