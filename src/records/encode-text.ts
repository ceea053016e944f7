/** Text back to bytes, the way a file is written: the other side of decode-text.ts. */
import { isUtf8 } from "node:buffer";

type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** The bytes of `text` in the encoding of a file, without a byte-order mark; undefined when it has no such letters. */
export function encodeLike(file: Uint8Array, text: string): Uint8Array | undefined {
  switch (encodingOf(file)) {
    case "utf-8":
      return new TextEncoder().encode(text);
    case "utf-16le":
      return new Uint8Array(Buffer.from(text, "utf16le"));
    case "utf-16be":
      return new Uint8Array(Buffer.from(text, "utf16le").swap16());
    case "windows-1252":
      return inWindows1252(text);
  }
}

/** Bytes of the mark in front of a file's text. */
export function byteOrderMark(file: Uint8Array): number {
  if (encodingOf(file) === "utf-8") return file[0] === 0xef && file[1] === 0xbb && file[2] === 0xbf ? 3 : 0;
  return encodingOf(file) === "windows-1252" ? 0 : 2;
}

function encodingOf(file: Uint8Array): Encoding {
  if (isUtf8(file)) return "utf-8";
  if (file[0] === 0xff && file[1] === 0xfe) return "utf-16le";
  return file[0] === 0xfe && file[1] === 0xff ? "utf-16be" : "windows-1252";
}

function inWindows1252(text: string): Uint8Array | undefined {
  const all = new TextDecoder("windows-1252").decode(Uint8Array.from({ length: 256 }, (_, byte) => byte));
  const bytes = Array.from(text, (letter) => all.indexOf(letter));
  return bytes.includes(-1) ? undefined : Uint8Array.from(bytes);
}
