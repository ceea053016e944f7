/** The sentences of a recap by the garden's language. */
import { type Language, languageOf } from "../../timeline/index.ts";
import { english, type RecapWords } from "./english.ts";
import { german } from "./german.ts";

const tables: Readonly<Record<Language, RecapWords>> = { en: english, de: german };

export function recapWords({ language }: { readonly language: string }): RecapWords {
  return tables[languageOf(language)];
}
