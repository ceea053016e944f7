/**
 * Lines that a person typed, written into the note of their day: list items at the end of what is said of that bed, below its
 * heading or one that is added. Every byte that stood there before stays; lines that would change how anything else is taken
 * apart, or would not be taken for what they are, are refused.
 */
import type { Bed, GardenSettings } from "../model.ts";
import { decodeText } from "./decode-text.ts";
import type { Names } from "./names.ts";
import type { NoteTree } from "./note-tree.ts";
import { type ParsedNote, parseText } from "./parsed-files.ts";
import { dayOfHeading, verbOfHeading } from "./reading/note-lines.ts";
import { type Addition, escaped, lineEnd, otherEncoding, spliced } from "./spliced-text.ts";

export interface LinesToAdd {
  readonly lines: readonly string[];
  /** Of which they speak; without one they speak of the note's own beds. */
  readonly bed?: Pick<Bed, "id" | "title"> | undefined;
}

export interface AddedContext {
  readonly names: Names;
  readonly day: string;
  readonly settings: Pick<GardenSettings, "language">;
}

export type Added =
  /** `at` are the lines of the file where they stand now. */
  { readonly bytes: Uint8Array; readonly text: string; readonly at: readonly number[] } | { readonly refused: string };

/** `bytes` is undefined of a note that is begun with these lines. */
export function withAddedLines(bytes: Uint8Array | undefined, adding: LinesToAdd, context: AddedContext): Added {
  const { text } = decodeText(bytes ?? new Uint8Array());
  if (text === undefined) return { refused: "This file is no text." };
  const parsed = parseText(text, "note");
  const before = parsed.tree as NoteTree;
  const place = placeFor(parsed, adding, context);
  for (const lines of [adding.lines, adding.lines.map(escaped), adding.lines.map(escapedFromTheFirst)]) {
    const addition = additionAt(text, place, lines);
    const after = text.slice(0, addition.at) + addition.text + text.slice(addition.at);
    const tree = parseText(after, "note").tree as NoteTree;
    const at = addedAt(before, tree, text, after, { ...adding, isUnderNewHeading: place.heading !== undefined });
    if (at === undefined) continue;
    const written = spliced(bytes ?? new Uint8Array(), text, addition);
    return written === undefined ? { refused: otherEncoding } : { bytes: written, text: after, at };
  }
  return {
    refused: "Markdown would take these words for something else than lines. Write them into the file yourself.",
  };
}

/** Ids of the beds in a note's front matter: what a line without a bed speaks of. */
export function bedsOfFront(bytes: Uint8Array | undefined, names: Names): readonly string[] {
  const { text } = decodeText(bytes ?? new Uint8Array());
  return text === undefined ? [] : bedsSaid(parseText(text, "note"), names);
}

function bedsSaid({ data: { bed, beds } }: ParsedNote, names: Names): readonly string[] {
  const named = [bed, ...(Array.isArray(beds) ? beds : [beds])].filter((name) => typeof name === "string");
  return [...new Set(named.flatMap((name) => names.find("bed", name) ?? []))];
}

type Piece = NoteTree["pieces"][number];

interface PlaceToAdd {
  /** The piece they stand below; undefined at the front of the body. */
  readonly below: Piece | undefined;
  /** Where the body begins. */
  readonly bodyAt: number;
  /** The heading they need. */
  readonly heading?: { readonly level: number; readonly title: string } | undefined;
}

/** The last part of the note that speaks of the bed and of no other day or work. */
function placeFor(parsed: ParsedNote, { bed }: LinesToAdd, context: AddedContext): PlaceToAdd {
  const { names, day, settings } = context;
  const { bodyAt } = parsed;
  const { pieces } = parsed.tree as NoteTree;
  const own = bedsSaid(parsed, names);
  let parts: readonly { readonly level: number; readonly bed?: string | undefined; readonly isOther: boolean }[] = [];
  let found: PlaceToAdd | undefined;
  const look = (below: Piece | undefined) => {
    const here = parts.findLast((part) => part.bed !== undefined)?.bed;
    const isMeant =
      bed === undefined ? here === undefined : (here ?? (own.length === 1 ? own[0] : undefined)) === bed.id;
    if (isMeant && !parts.some(({ isOther }) => isOther)) found = { below, bodyAt };
  };
  look(undefined);
  for (const piece of pieces) {
    if (piece.kind === "story" && piece.heading !== undefined) {
      const { level, text: title } = piece.heading;
      const named = names.find("bed", title);
      const isOther =
        dayOfHeading(title, day, settings.language === "en-US") !== undefined ||
        (named === undefined && verbOfHeading(title) !== undefined);
      parts = [...parts.filter((one) => one.level < level), { level, bed: named, isOther }];
    }
    look(piece);
  }
  if (found !== undefined || bed === undefined) return found ?? { below: undefined, bodyAt };
  const level = Math.min(2, ...pieces.flatMap((piece) => (piece.kind === "story" ? (piece.heading?.level ?? []) : [])));
  return { below: pieces.at(-1), bodyAt, heading: { level, title: bed.title } };
}

function additionAt(text: string, { below, bodyAt, heading }: PlaceToAdd, lines: readonly string[]): Addition {
  const items = lines.map((line) => `${markOf(text, below)} ${line}`);
  if (heading !== undefined) items.unshift(`${"#".repeat(heading.level)} ${heading.title}`, "");
  if (below === undefined) {
    const { mark } = lineEnd(text, text.length);
    const [front, rest] = [text.slice(0, bodyAt), text.slice(bodyAt)];
    // A free line below the front matter and above what follows.
    const lead = front === "" ? "" : /[\r\n]$/.test(front) ? mark : mark + mark;
    const tail = rest.trim() === "" || /^[\r\n]/.test(rest) ? mark : mark + mark;
    return { at: bodyAt, text: lead + items.join(mark) + tail };
  }
  const { end, next, mark } = lineEnd(text, below.to);
  // An item follows an item; below anything else people leave a line free.
  if (below.kind !== "item" || heading !== undefined) items.unshift("");
  return next === end ? { at: end, text: mark + items.join(mark) } : { at: next, text: items.join(mark) + mark };
}

/** As the list above has it, where it has one of the three marks. */
function markOf(text: string, below: Piece | undefined): string {
  const mark = below?.kind === "item" ? text.charAt(below.from) : "";
  return /[-*+]/.test(mark) ? mark : "-";
}

/** What begins like a list item of its own, a rule or a fence. */
function escapedFromTheFirst(line: string): string {
  return escaped(line)
    .replace(/^\d{1,9}(?=[.)])/, "$&\\")
    .replace(/^[-+=~]/, "\\$&");
}

interface Expected extends LinesToAdd {
  readonly isUnderNewHeading: boolean;
}

/** The lines of the file at which they stand, when all else is taken apart as before; else undefined. */
function addedAt(
  before: NoteTree,
  after: NoteTree,
  textBefore: string,
  textAfter: string,
  { lines, bed, isUnderNewHeading }: Expected,
): readonly number[] | undefined {
  const count = lines.length + (isUnderNewHeading ? 1 : 0);
  const from = after.pieces.findIndex((piece, at) => {
    const old = before.pieces[at];
    return old === undefined || outline(old, textBefore) !== outline(piece, textAfter);
  });
  if (from < 0) return undefined;
  // Of lines that stand there already the last are the new ones.
  for (let at = from; at >= 0; at -= 1) {
    const rest = [...after.pieces.slice(0, at), ...after.pieces.slice(at + count)];
    const isRest =
      rest.length === before.pieces.length &&
      rest.every((piece, index) => outline(piece, textAfter) === outline(before.pieces[index] as Piece, textBefore));
    if (!isRest) continue;
    const added = after.pieces.slice(at, at + count);
    const items = isUnderNewHeading ? added.slice(1) : added;
    const head = added[0];
    if (isUnderNewHeading && !(head?.kind === "story" && head.heading?.text === bed?.title)) continue;
    const isWritten = items.every(
      (piece, index) =>
        piece.kind === "item" &&
        piece.text === lines[index] &&
        piece.items.length === 0 &&
        piece.more.length === 0 &&
        piece.settled === undefined &&
        piece.isMark === undefined,
    );
    if (isWritten) return items.map(({ line }) => line);
  }
  return undefined;
}

/** What a piece says, without where it stands. */
function outline(piece: Piece, text: string): string {
  return JSON.stringify([piece.kind, text.slice(piece.from, piece.to).trimEnd()]);
}
