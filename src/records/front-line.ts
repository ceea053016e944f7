/**
 * One line put into a record's front matter, as a person would write it: a key with its value, or one more text of a list. All
 * that stood there stays; a file whose front matter would read otherwise than meant is refused.
 */
import { stringify } from "yaml";
import { decodeText } from "./decode-text.ts";
import { readFrontMatter } from "./front-matter.ts";
import { lineEnd, otherEncoding, spliced } from "./spliced-text.ts";

export interface FrontLine {
  readonly key: string;
  readonly value: string;
  /** The key holds a list, and this is one more of it. */
  readonly inList?: true | undefined;
}

export type FrontWritten = { readonly bytes: Uint8Array; readonly text: string } | { readonly refused: string };

const notHere = "Its front matter is written in a way that no line can be added to. Add it yourself.";

export function withFrontLine(bytes: Uint8Array, { key, value, inList }: FrontLine): FrontWritten {
  const { text } = decodeText(bytes);
  if (text === undefined) return { refused: "This file is no text." };
  const before = readFrontMatter(text);
  const head = lineEnd(text, 0);
  if (!text.startsWith("---") || before.bodyAt === 0 || before.problems.length > 0) return { refused: notHere };
  const had = before.data[key];
  if (had !== undefined && inList !== true) return { refused: `“${key}” stands in it already.` };
  const at = had === undefined ? closeOf(text, before.bodyAt) : afterList(text, before.bodyAt, key);
  if (at === undefined) return { refused: notHere };
  const item = `  - ${stringify(value, { lineWidth: 0 }).trim()}`;
  const lines = inList === true ? (had === undefined ? [`${key}:`, item] : [item]) : [lineOf(key, value)];
  const added = lines.map((line) => `${line}${head.mark}`).join("");
  const after = text.slice(0, at) + added + text.slice(at);
  const read = readFrontMatter(after);
  const wanted = inList === true ? [...listOf(had), value] : value;
  const others = Object.keys(before.data).every((one) => one === key || same(read.data[one], before.data[one]));
  if (read.problems.length > 0 || !same(read.data[key], wanted) || !others) return { refused: notHere };
  const written = spliced(bytes, text, { at, text: added });
  return written === undefined ? { refused: otherEncoding } : { bytes: written, text: after };
}

function lineOf(key: string, value: string): string {
  return stringify({ [key]: value }, { lineWidth: 0 }).trimEnd();
}

function listOf(had: unknown): readonly unknown[] {
  return Array.isArray(had) ? had : had === undefined ? [] : [had];
}

function same(one: unknown, other: unknown): boolean {
  // A value at the end of a line may hold a piece of the line end.
  const plain = (value: unknown) => JSON.stringify(value)?.replaceAll("\\r", "");
  return plain(one) === plain(other);
}

/** Where the closing hyphens begin. */
function closeOf(text: string, bodyAt: number): number | undefined {
  const close = /(?:^|\r\n|\n|\r)(---[ \t]*)(?:\r\n|\n|\r)?$/.exec(text.slice(0, bodyAt));
  return close === null ? undefined : close.index + close[0].indexOf("---");
}

/** Behind the last item of a list that stands item below item, each with two blanks before its hyphen. */
function afterList(text: string, bodyAt: number, key: string): number | undefined {
  const close = closeOf(text, bodyAt) ?? 0;
  let inKey = false;
  let end: number | undefined;
  for (let at = lineEnd(text, 0).next; at < close; ) {
    const line = lineEnd(text, at);
    const said = text.slice(at, line.end).trimEnd();
    if (inKey && /^ {2}- /.test(said)) end = line.next;
    else inKey = said === `${key}:`;
    at = line.next;
  }
  return end;
}
