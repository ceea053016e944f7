/** One note read by itself with the names and words of its garden, as an answer is tried before it is written. */
import type { Day, Records } from "../model.ts";
import { idOfNoteFile } from "./file-names.ts";
import { frontMatterPlaces } from "./front-matter.ts";
import { namesOfGarden } from "./garden-names.ts";
import type { Names } from "./names.ts";
import { ownWords, wordsFile, writtenWords } from "./own-words.ts";
import { parseText } from "./parsed-files.ts";
import { type ReadNote, readNote } from "./read-notes.ts";

export interface OneNoteContext {
  readonly records: Records;
  /** Text of the garden's own words, where there is such a file. */
  readonly words: string | undefined;
  readonly today: Day;
}

export interface ReadOneNote extends ReadNote {
  /** With those that the note names for the first time. */
  readonly names: Names;
}

export function readOneNote(file: string, text: string, { records, words, today }: OneNoteContext): ReadOneNote {
  const parsed = { ...parseText(text, "note"), file, text, key: "", places: () => frontMatterPlaces(text) };
  const names = namesOfGarden(records);
  names.learn(ownWords(writtenWords(wordsFile, words ?? "").words, names).words);
  const read = readNote({ file, id: idOfNoteFile(file) }, parsed, {
    names,
    namesKey: "",
    settings: records.settings,
    today,
    photos: new Set(records.photoFiles),
  });
  return { ...read, names };
}
