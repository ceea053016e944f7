/** Words put into a person's file between two of its bytes: in its own encoding and with its own line ends, all else as it was. */
import { byteOrderMark, encodeLike } from "./encode-text.ts";

export interface Addition {
  /** Offset in the text. */
  readonly at: number;
  readonly text: string;
}

export const otherEncoding =
  "This file is written in an old encoding that lacks a letter of what would be added. Save it as UTF-8, and ask again.";

/** Where the line ends, where the next begins (the same at the end of the text), and how lines end here. */
export function lineEnd(text: string, from: number) {
  const ends = /\r\n|\n|\r/g;
  ends.lastIndex = from;
  const found = ends.exec(text);
  if (found !== null) return { end: found.index, next: found.index + found[0].length, mark: found[0] };
  return { end: text.length, next: text.length, mark: /\r\n|\n|\r/.exec(text)?.[0] ?? "\n" };
}

/** A name may hold signs that Markdown takes for marks. */
export function escaped(line: string): string {
  return line.replace(/[\\`*_[\]<>&#]/g, "\\$&");
}

/** Undefined when the encoding of the file has no such letters. */
export function spliced(bytes: Uint8Array, text: string, { at, text: added }: Addition): Uint8Array | undefined {
  const before = encodeLike(bytes, text.slice(0, at));
  const middle = encodeLike(bytes, added);
  if (before === undefined || middle === undefined) return undefined;
  const cut = byteOrderMark(bytes) + before.length;
  const written = new Uint8Array(bytes.length + middle.length);
  written.set(bytes.subarray(0, cut));
  written.set(middle, cut);
  written.set(bytes.subarray(cut), cut + middle.length);
  return written;
}
