/** The words of pages, whole: what stands around the data, and the sentences the data is said in. */
import { deskWords } from "./desk-words.ts";
import { type FieldWords, fieldWords } from "./field-words.ts";
import { namingWords } from "./naming-words.ts";
import { type PageWords, pageWords } from "./page-words.ts";
import { ribbonWords } from "./ribbon-words.ts";
import { type Sentences, sentences } from "./sentences.ts";
import { walkWords } from "./walk-words.ts";
import { type WritingWords, writingWords } from "./writing-words.ts";

export interface Words extends PageWords {
  /** Of the private pages. */
  readonly field: FieldWords;
  /** Of the first of them. */
  readonly desk: typeof deskWords;
  /** Of the private page on which photos are named. */
  readonly naming: typeof namingWords;
  /** Of the box to write in. */
  readonly writing: WritingWords;
  /** Of a season drawn across a page. */
  readonly ribbon: typeof ribbonWords;
  /** Of a film's page. */
  readonly walk: typeof walkWords;
  /** Whole sentences from facts. */
  readonly sentences: Sentences;
}

export const siteWords: Words = {
  ...pageWords,
  field: fieldWords,
  desk: deskWords,
  naming: namingWords,
  writing: writingWords,
  ribbon: ribbonWords,
  walk: walkWords,
  sentences,
};
