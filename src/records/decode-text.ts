/**
 * Bytes to text: UTF-8, with or without a byte-order mark, with any line ends. Other encodings are read as well as they
 * can be and reported, so that no fact is lost to an old editor's habit.
 */
import { isUtf8 } from "node:buffer";
import type { FileProblem } from "./file-problem.ts";

const utf8 = new TextDecoder("utf-8");

export interface DecodedText {
  /** Without a byte-order mark; line ends as written. Undefined when the file is no text at all. */
  readonly text: string | undefined;
  readonly problems: readonly FileProblem[];
}

export function decodeText(bytes: Uint8Array): DecodedText {
  if (isUtf8(bytes)) return { text: utf8.decode(bytes), problems: isHoled(bytes) ? [holed] : [] };
  const byteOrder =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? "utf-16le"
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? "utf-16be"
        : undefined;
  if (byteOrder !== undefined) {
    return {
      text: new TextDecoder(byteOrder).decode(bytes),
      problems: [notUtf8(1, 1, "UTF-16")],
    };
  }
  if (bytes.includes(0)) {
    return {
      text: undefined,
      problems: [
        {
          rule: "text/not-text",
          line: 1,
          column: 1,
          what: "This file is not text, so nothing was read from it.",
          fix: "Move it out of the records, or give it the ending that tells what it is.",
        },
      ],
    };
  }
  const { line, column } = firstBadByte(bytes);
  return { text: new TextDecoder("windows-1252").decode(bytes), problems: [notUtf8(line, column, "Windows-1252")] };
}

/** A crash leaves runs of zero bytes where words were; what is left is read, and nobody knows what is lost. */
function isHoled(bytes: Uint8Array): boolean {
  return bytes[0] === 0 || (bytes.includes(0) && Buffer.from(bytes).includes(Buffer.alloc(4)));
}

const holed: FileProblem = {
  rule: "text/not-text",
  line: 1,
  column: 1,
  what: "This file holds bytes that are no text, so part of what it said may be lost.",
  fix: "Bring it back from a copy, or save it again as plain text.",
};

function notUtf8(line: number, column: number, readAs: string): FileProblem {
  return {
    rule: "text/not-utf8",
    line,
    column,
    what: `This file is not UTF-8; it was read as ${readAs}, and letters such as "é" or "°" may be wrong.`,
    fix: "Save it again as UTF-8.",
  };
}

/** A lenient decoding, encoded again, differs from the original first where a byte could not stand. */
function firstBadByte(bytes: Uint8Array): { readonly line: number; readonly column: number } {
  const again = new TextEncoder().encode(new TextDecoder("utf-8", { ignoreBOM: true }).decode(bytes));
  const at = bytes.findIndex((byte, index) => byte !== again[index]);
  const before = utf8.decode(bytes.subarray(0, at)).split(/\r\n|\n|\r/);
  return { line: before.length, column: Array.from(before.at(-1) ?? "").length + 1 };
}
