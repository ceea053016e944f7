/** What chapters are called where no bed names them, by the garden's language: they are read by viewers. */
import { type Language, languageOf } from "../timeline/index.ts";

interface ChapterWords {
  readonly first: string;
  readonly between: string;
  readonly last: string;
  /** A bed whose name is kept back. */
  readonly anotherBed: string;
  again(name: string): string;
  gear(title: string): string;
}

const tables: Readonly<Record<Language, ChapterWords>> = {
  en: {
    first: "Hello",
    between: "On the way",
    last: "Last words",
    anotherBed: "One more bed",
    again: (name) => `${name}, again`,
    gear: (title) => `the ${title.toLowerCase()}`,
  },
  de: {
    first: "Hallo",
    between: "Unterwegs",
    last: "Zum Schluss",
    anotherBed: "Noch ein Beet",
    again: (name) => `${name}, noch einmal`,
    gear: (title) => title,
  },
};

export function chapterWordsIn(language: string): ChapterWords {
  return tables[languageOf(language)];
}
