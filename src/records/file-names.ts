/** What file names say: ids, folders, endings. */
import type { Place } from "../model.ts";
import { idOfName } from "./names.ts";

export const recordEnding = /\.md$/i;
export const photoEnding = /\.(jpe?g|hei[cf]|png|webp|avif)$/i;
export const clipEnding = /\.(mov|mp4|m4v|3gp|mp)$/i;
/** What cameras write beside or instead of a picture that everybody can open. */
export const rawEnding = /\.(dng|cr[23]|nef|arw|raf|orf|rw2)$/i;
/** Texts that a person may have meant as words for a photo. */
export const textEnding = /\.(?:md\.\w+|markdown|mdown|mkdn?|mdx?|txt|text|rtf|ya?ml)$/i;
/** What programs write beside a photo: words and dates as XMP or as a takeout's JSON, the steps of an edit. */
export const asideEnding = /\.(?:xmp|json|aae)$/i;
/** What is spoken beside the beds, and the words of it as other programs write them down. */
export const soundEnding = /\.(?:m4a|mp3|wav|ogg|oga|opus|aac|amr)$/i;
export const transcriptEnding = /\.(?:txt|vtt|srt)$/i;
export const mediaEnding = new RegExp(
  [photoEnding, clipEnding, rawEnding, soundEnding].map(({ source }) => source).join("|"),
  "i",
);

/** Which file is which record, and the id its name gives it. */
export interface RecordPlace {
  readonly id: string;
  /** Relative to the records folder. */
  readonly file: string;
  /** Where it stands when it is a part of a file, such as a row. */
  readonly at?: Place | undefined;
}

/** Names in small letters, digits and hyphens are ids as they stand; others give one. Names come without ending. */
export function idOfFileName(name: string): string {
  return /^[\p{Ll}\p{Lo}\d]+(-[\p{Ll}\p{Lo}\d]+)*$/u.test(name) ? name : idOfName(name) || name;
}

/** The path below notes/ without ending. */
export function idOfNoteFile(file: string): string {
  return file.slice("notes/".length, -".md".length);
}

export function baseName(file: string): string {
  return file.slice(file.lastIndexOf("/") + 1);
}

export function splitFirst(path: string): [string, string | undefined] {
  const slash = path.indexOf("/");
  return slash < 0 ? [path, undefined] : [path.slice(0, slash), path.slice(slash + 1)];
}

/** A problem of a whole file points at its head. */
export function head(file: string) {
  return { file, line: 1, column: 1 };
}
