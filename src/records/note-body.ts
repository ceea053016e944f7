/** The body of a note: which list items are log lines, of which beds they speak, and the story that is left. */
import type { Day, Event, GardenSettings, LineReading, Note, Place, Problem } from "../model.ts";
import { wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";
import { type ReadLine, readNoteLine } from "./note-line.ts";
import type { ItemPiece, NoteTree, SettledLine, StoryPiece } from "./note-tree.ts";
import type { OwnWord } from "./own-words.ts";
import { problem } from "./problem-rules.ts";
import { readSettled } from "./settled-lines.ts";
import { verbsAt } from "./verb-forms.ts";

export interface NoteBodyContext {
  readonly note: { readonly id: string; readonly day: Day; readonly private: boolean };
  /** Ids of the beds that lines without a bed speak of. */
  readonly beds: readonly string[];
  readonly names: Names;
  readonly settings: Pick<GardenSettings, "units" | "position">;
  /** The garden's own words; `names` knows those that are names. */
  readonly words: readonly OwnWord[];
}

export interface NoteBody {
  readonly story: Note["story"];
  readonly events: readonly Event[];
  readonly problems: readonly Problem[];
  /** Every line with what it is taken to say, in order. */
  readonly readings: readonly LineReading[];
  /** Beds whose names are headings of the note. */
  readonly bedsOfHeadings: readonly string[];
}

type Piece = ItemPiece | StoryPiece;

/** `text` is the whole text of the file, which the pieces' offsets count in. */
export function readNoteBody(file: string, text: string, tree: NoteTree, context: NoteBodyContext): NoteBody {
  const { note, names, settings } = context;
  const southern = (settings.position?.latitude ?? 0) < 0;
  const events: Event[] = [];
  const problems: Problem[] = [];
  const told: Piece[] = [];
  const bedsOfHeadings: string[] = [];
  const readings: LineReading[] = [];

  /** True when the item or one below it is a log line; an item that is none is told by the caller. */
  function log(item: ItemPiece, beds: readonly string[]): boolean {
    if (item.settled === undefined && opensList(item) && logList(item, beds)) return true;
    if (item.text === "")
      for (const { line, column } of item.settled ?? []) problems.push(nothingAbove({ file, line, column }));
    // A line with a slip is reported and stays story.
    if (item.text !== "" && take(item, item.text, readItem(item, item.text, beds))) return true;
    // "Long Bed:" with lines below it: the lines speak of that bed.
    const bed = item.items.length === 0 ? undefined : names.find("bed", item.text);
    const untold = item.items.filter((inner) => !log(inner, bed === undefined ? beds : [bed]));
    if (untold.length === item.items.length) return false;
    const [first] = item.items;
    if (bed === undefined && item.text !== "" && first !== undefined) told.push({ ...item, to: first.from });
    told.push(...untold);
    return true;
  }

  function readItem(item: ItemPiece, words: string, beds: readonly string[]): ReadLine | undefined {
    if (item.settled !== undefined) return settledBy(item, item.settled, item.text, item.more, beds);
    return readNoteLine({ text: words, more: item.more, place: placeOf(item) }, contextFor(beds));
  }

  function settledBy(
    piece: Piece,
    settled: readonly SettledLine[],
    words: string,
    more: readonly string[],
    beds: readonly string[],
  ): ReadLine {
    return readSettled({ text: words, more, place: placeOf(piece) }, settled, contextFor(beds));
  }

  /** Keeps what was read of a line; false when that is no event. */
  function take(piece: Piece, text: string, read: ReadLine | undefined): boolean {
    const found = read?.events ?? [];
    for (const event of found) events.push(event);
    for (const one of read?.problems ?? []) problems.push(one);
    const as = found.length > 0 ? "facts" : "story";
    const place = placeOf(piece);
    readings.push({ place, lastLine: piece.lastLine, text, as, events: found, readings: [], private: note.private });
    return found.length > 0;
  }

  function placeOf({ line, column }: Piece): Place {
    return { file, line, column };
  }

  function contextFor(beds: readonly string[]) {
    return { note, beds, names, units: settings.units, southern };
  }

  /** "Sowed:" over a list of plants: each item goes on with the words above it. False when that gives no plant. */
  function logList(item: ItemPiece, beds: readonly string[]): boolean {
    const above = item.text.replace(/\s*:$/, "");
    const reads = item.items.map((inner) => {
      const isOwn = inner.settled !== undefined || verbsAt(wordsOf(inner.text)).length > 0;
      const own = isOwn ? readItem(inner, inner.text, beds) : undefined;
      if (own !== undefined) return { inner, read: own, joined: false };
      return { inner, read: readItem(inner, `${above}: ${inner.text}`, beds), joined: true };
    });
    const plants = ({ read, joined }: (typeof reads)[number]) =>
      joined && read?.events.some(({ variety, crop }) => variety !== undefined || crop !== undefined) === true;
    if (!reads.some(plants)) return false;
    for (const one of reads) {
      const read = one.joined && !plants(one) ? undefined : one.read;
      if (!take(one.inner, one.inner.text, read)) told.push(one.inner);
    }
    return true;
  }

  // A heading that is a bed's name begins that bed's part of the note, up to the next heading of its level.
  let part: { readonly bed: string; readonly level: number } | undefined;
  for (const piece of tree.pieces) {
    const beds = part === undefined ? context.beds : [part.bed];
    if (piece.kind === "item") {
      if (piece.isMark) problems.push(nothingAbove(placeOf(piece)));
      else if (log(piece, beds)) continue;
      told.push(piece);
      continue;
    }
    told.push(piece);
    const { paragraph, settled } = piece;
    if (paragraph !== undefined && settled !== undefined)
      take(piece, paragraph, settledBy(piece, settled, paragraph, [], beds));
    if (piece.heading === undefined) continue;
    const { level, text: title } = piece.heading;
    const bed = names.find("bed", title);
    if (bed !== undefined) {
      part = { bed, level };
      bedsOfHeadings.push(bed);
    } else if (part !== undefined && level <= part.level) part = undefined;
  }
  return { story: storyOf(file, text, told), events, problems, readings, bedsOfHeadings };
}

function nothingAbove(place: Place): Problem {
  return problem(
    "note/settled-unread",
    place,
    'A line that begins with "=" says how the line above it is read, and no line stands above this one.',
    'Put it right below the line it is about, or take the "=" away.',
  );
}

/** Nothing but a verb that takes plants, or a line of it that ends with a colon, with items below. */
function opensList({ text, items }: ItemPiece): boolean {
  if (items.length === 0) return false;
  const words = wordsOf(text);
  return verbsAt(words).some(
    ({ verb, end }) =>
      (verb.shape === "plants" || verb.shape === "trouble") && (end === words.length || words.at(-1)?.text === ":"),
  );
}

/** Story in the order of the note; list items that stand together stay together. */
function storyOf(file: string, text: string, told: readonly Piece[]): Note["story"] {
  const parts: Piece[] = [];
  for (const piece of told.toSorted((a, b) => a.from - b.from)) {
    const before = parts.at(-1);
    if (before?.kind === "item" && piece.kind === "item" && text.slice(before.to, piece.from).trim() === "") {
      parts[parts.length - 1] = { ...before, to: piece.to };
    } else parts.push(piece);
  }
  const settled = told.flatMap(settledIn).toSorted((a, b) => a.from - b.from);
  return parts.map(({ from, to, line, column }) => ({
    text: asWritten(text, from, to, settled),
    place: { file, line, column },
  }));
}

function settledIn(piece: Piece): readonly SettledLine[] {
  return [...(piece.settled ?? []), ...(piece.kind === "item" ? piece.items.flatMap(settledIn) : [])];
}

/** Markdown of a piece, moved to the left edge when it stood below another item; what settles its lines is no story. */
function asWritten(text: string, from: number, to: number, settled: readonly SettledLine[]): string {
  const indent = from - (text.lastIndexOf("\n", from - 1) + 1);
  let words = "";
  let at = from;
  for (const line of settled) {
    if (line.from < at || line.to > to) continue;
    words += text.slice(at, text.lastIndexOf("\n", line.from - 1) + 1);
    const next = text.indexOf("\n", line.to);
    at = next < 0 ? to : Math.min(to, next + 1);
  }
  const written = `${words}${text.slice(at, to)}`.replaceAll("\r\n", "\n").trimEnd();
  return indent === 0 ? written : written.replace(new RegExp(`\n {1,${indent}}`, "g"), "\n");
}
