/**
 * A person's answer to a question, written into their note: plain lines marked by "=" below their own words. Every byte
 * that stood there before stays, in its place; an answer that would change how anything else is taken apart is refused.
 */
import { decodeText } from "./decode-text.ts";
import type { ItemPiece, NoteTree, StoryPiece } from "./note-tree.ts";
import { parseText } from "./parsed-files.ts";
import { noFact } from "./settled-lines.ts";
import { type Addition, escaped, lineEnd, otherEncoding, spliced } from "./spliced-text.ts";

/** The lines of a note that one answer settles together: an item, or a whole paragraph. */
export interface Block {
  readonly line: number;
  readonly lastLine: number;
  /** Its words, plain, on one line. */
  readonly text: string;
  readonly isItem: boolean;
}

type Piece = ItemPiece | StoryPiece;

/** The item or paragraph that a line of a note belongs to; undefined when it is in neither, as a row of a table is. */
export function blockAt(bytes: Uint8Array, line: number): Block | undefined {
  const text = decodeText(bytes).text ?? "";
  const piece = pieceAt(treeOf(text).pieces, line);
  if (piece === undefined) return undefined;
  const isItem = piece.kind === "item";
  const words = isItem ? piece.text : (piece.paragraph ?? "");
  return { line: piece.line, lastLine: piece.lastLine, text: words, isItem };
}

export type Answered = { readonly bytes: Uint8Array; readonly text: string } | { readonly refused: string };

/** `plain` are the plain lines; none says that the line holds no fact. */
export function answeredNote(bytes: Uint8Array, line: number, plain: readonly string[]): Answered {
  const { text } = decodeText(bytes);
  const tree = text === undefined ? undefined : treeOf(text);
  const piece = tree === undefined ? undefined : pieceAt(tree.pieces, line);
  if (text === undefined || tree === undefined || piece === undefined) return { refused: notABlock };
  if (piece.settled !== undefined) return { refused: "This line is settled already." };
  const lines = plain.length === 0 ? [noFact] : plain;
  for (const said of [lines, lines.map(escaped)]) {
    const added = addition(text, piece, said);
    const after = text.slice(0, added.at) + added.text + text.slice(added.at);
    if (!isOnlySettled(tree, treeOf(after), text, after, piece, lines)) continue;
    const written = spliced(bytes, text, added);
    return written === undefined ? { refused: otherEncoding } : { bytes: written, text: after };
  }
  return { refused: notABlock };
}

const notABlock =
  "Below this line no answer can be written so that it belongs to it. Write the plain line as a list item of its own.";

function treeOf(text: string): NoteTree {
  return parseText(text, "note").tree as NoteTree;
}

function pieceAt(pieces: readonly Piece[], line: number): Piece | undefined {
  for (const piece of pieces) {
    const isBlock = piece.kind === "item" ? piece.text !== "" : piece.paragraph !== undefined;
    if (isBlock && piece.line <= line && line <= piece.lastLine) return piece;
    const inner = piece.kind === "item" ? pieceAt(piece.items, line) : undefined;
    if (inner !== undefined) return inner;
  }
  return undefined;
}

/** Below the words, nested in an item; below a paragraph as a list of its own, an empty line between. */
function addition(text: string, piece: Piece, lines: readonly string[]): Addition {
  const { end, next, mark } = lineEnd(text, piece.wordsTo);
  const items = lines.map((line) => `${piece.kind === "item" ? indentOf(text, piece) : ""}- = ${line}`);
  if (piece.kind !== "item") items.unshift("");
  return next === end ? { at: end, text: mark + items.join(mark) } : { at: next, text: items.join(mark) + mark };
}

/** As far in as the item's own words: what stands before them on their line, as blanks. */
function indentOf(text: string, { from, text: words }: ItemPiece): string {
  const start = Math.max(text.lastIndexOf("\n", from - 1), text.lastIndexOf("\r", from - 1)) + 1;
  const mark = /^(?:[-*+]|\d{1,9}[.)])[ \t]*/.exec(text.slice(from))?.[0] ?? (words === "" ? "" : "- ");
  return (text.slice(start, from) + mark).replace(/^\ufeff/, "").replace(/[^\t]/g, " ");
}

/** Whether the new text says what the old one said, and beside it only that these lines settle that piece. */
function isOnlySettled(
  before: NoteTree,
  after: NoteTree,
  textBefore: string,
  textAfter: string,
  piece: Piece,
  lines: readonly string[],
): boolean {
  const old = before.pieces.map((one) => outline(one, textBefore, piece, lines));
  return JSON.stringify(old) === JSON.stringify(after.pieces.map((one) => outline(one, textAfter)));
}

/** What a piece says, without where it stands. */
function outline(piece: Piece, text: string, answered?: Piece, lines: readonly string[] = []): unknown {
  const settled =
    piece === answered ? lines : (piece.settled ?? []).map((line) => [line.text, ...line.more].join("\n"));
  if (piece.kind === "story") return [settled, piece.heading?.level, text.slice(piece.from, piece.wordsTo).trimEnd()];
  return [settled, piece.text, piece.more, piece.items.map((inner) => outline(inner, text, answered, lines))];
}
