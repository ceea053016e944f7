/** The body of a note: which list items are log lines, of which beds they speak, and the story that is left. */
import type { Day, Event, GardenSettings, LineReading, Note, Place, Problem } from "../model.ts";
import { wordsOf } from "./line-words.ts";
import type { Names } from "./names.ts";
import { newBedCalled } from "./new-beds.ts";
import type { LineContext, NoteLine } from "./note-line.ts";
import type { ItemPiece, NoteTree, SettledLine, StoryPiece } from "./note-tree.ts";
import { headingSaysPrivate, leadsPrivate, saysPrivate } from "./private-lines.ts";
import { problem } from "./problem-rules.ts";
import { questionProblem } from "./question-problem.ts";
import { dayOfHeading, linesOf, verbOfHeading } from "./reading/note-lines.ts";
import { type LineRead, type ReadingContext, readLine } from "./reading/read-line.ts";
import { readSettled } from "./settled-lines.ts";
import { writesMonthFirst } from "./slashed-days.ts";
import { verbsAt } from "./verb-forms.ts";

export interface NoteBodyContext {
  readonly note: { readonly id: string; readonly day: Day; readonly private: boolean };
  /** Ids of the beds that lines without a bed speak of. */
  readonly beds: readonly string[];
  readonly names: Names;
  readonly settings: Pick<GardenSettings, "units" | "southern" | "language">;
}

export interface NoteBody {
  readonly story: Note["story"];
  readonly events: readonly Event[];
  readonly problems: readonly Problem[];
  /** Every line with what it is taken to say, in order. */
  readonly readings: readonly LineReading[];
  /** The beds that lines speak of from a line on; undefined where no heading of the note is a bed's name. */
  readonly bedsFrom?: Note["bedsFrom"];
  /** Parts of the text that nobody else is to see, by offset; undefined where there are none. */
  readonly privateSpans?: readonly { readonly from: number; readonly to: number }[];
}

type Piece = ItemPiece | StoryPiece;

/** `text` is the whole text of the file, which the pieces' offsets count in. */
export function readNoteBody(file: string, text: string, tree: NoteTree, context: NoteBodyContext): NoteBody {
  const { note, names, settings } = context;
  const { southern } = settings;
  const events: Event[] = [];
  const problems: Problem[] = [];
  const told: Piece[] = [];
  const bedsFrom: { readonly line: number; readonly beds: readonly string[] }[] = [{ line: 1, beds: context.beds }];
  const readings: LineReading[] = [];

  /** True when the item or one below it is a log line; an item that is none is told by the caller. */
  function log(item: ItemPiece, given: ReadingContext): boolean {
    // What stands below a private line is private with it.
    const context = seenAs(item.text, given);
    if (item.settled === undefined && opensList(item) && logList(item, context)) return true;
    if (item.text === "")
      for (const { line, column } of item.settled ?? []) problems.push(nothingAbove({ file, line, column }));
    // "Long Bed:" with lines below it: the lines speak of that bed, and say nothing themselves.
    const bed =
      item.items.length === 0
        ? undefined
        : (names.find("bed", item.text) ?? newBedCalled(item.text, names, placeOf(item)));
    if (bed === undefined && item.text !== "" && take(readItem(item, item.text, context))) {
      // "Tulips planted on the step:" tells something, and the lines below it more.
      if (leads(item)) for (const inner of item.items) if (!log(inner, context)) told.push(inner);
      return true;
    }
    const below = bed === undefined ? context : { ...context, beds: [bed] };
    const untold = item.items.filter((inner) => !log(inner, below));
    if (untold.length === item.items.length) return false;
    const [first] = item.items;
    if (bed === undefined && item.text !== "" && first !== undefined) told.push({ ...item, to: first.from });
    told.push(...untold);
    return true;
  }

  function readItem(item: ItemPiece, words: string, context: ReadingContext): LineRead {
    const line = { text: words, more: leads(item) ? [] : item.more, place: placeOf(item) };
    const seen = seenAs([words, ...line.more].join("\n"), context);
    if (item.settled !== undefined) return settledBy(line, item.lastLine, item.settled, seen);
    return readLine(line, seen, { prose: false, lastLine: item.lastLine, head });
  }

  /** Words that say so are seen by nobody else. */
  function seenAs(words: string, context: ReadingContext): ReadingContext {
    return saysPrivate(words) ? { ...context, note: { ...context.note, private: true } } : context;
  }

  function settledBy(
    line: NoteLine,
    lastLine: number,
    settled: readonly SettledLine[],
    context: LineContext,
  ): LineRead {
    const read = readSettled(line, settled, context);
    const as = read.events.length > 0 ? "facts" : "story";
    const reading: LineReading = {
      place: line.place,
      lastLine,
      text: line.text,
      as,
      events: read.events,
      readings: [],
      private: context.note.private,
      settled: true,
    };
    return { reading, problems: read.problems };
  }

  /** Keeps what was read of a line; false when that is no event. */
  function take({ reading, problems: found }: LineRead): boolean {
    for (const event of reading.events) events.push(event);
    for (const one of found) problems.push(one);
    const asked = questionProblem(reading);
    if (asked !== undefined) problems.push(asked);
    readings.push(reading);
    return reading.as === "facts";
  }

  function placeOf({ line, column }: Pick<Piece, "line" | "column">): Place {
    return { file, line, column };
  }

  /** "Sowed:" over a list of plants: each item goes on with the words above it. False when that gives no plant. */
  function logList(item: ItemPiece, context: ReadingContext): boolean {
    const above = item.text.replace(/(?<!\s)\s*:$/, "");
    const marks: { readonly inner: ItemPiece; readonly read: LineRead; readonly joined: boolean }[] = [];
    const before = names.mark();
    for (const inner of item.items) {
      const isOwn = inner.settled !== undefined || verbsAt(wordsOf(inner.text)).length > 0;
      const own = isOwn ? readItem(inner, inner.text, context) : undefined;
      if (own?.reading.as === "facts") marks.push({ inner, read: own, joined: false });
      else
        marks.push({
          inner,
          read: ownWords(readItem(inner, `${above}: ${inner.text}`, context), inner.text),
          joined: true,
        });
    }
    const plants = ({ read, joined }: (typeof marks)[number]) =>
      joined && read.reading.events.some(({ variety, crop }) => variety !== undefined || crop !== undefined);
    if (!marks.some(plants)) {
      names.backTo(before);
      return false;
    }
    for (const one of marks) if (!take(one.read)) told.push(one.inner);
    return true;
  }

  /** A paragraph: of lines a note each, of sentences, or of the rows of a table. It stays story, whatever is read in it. */
  function tell(piece: StoryPiece, given: ReadingContext): void {
    if (piece.paragraph === undefined) return;
    const context = seenAs(piece.paragraph, given);
    if (piece.settled !== undefined) {
      take(
        settledBy({ text: piece.paragraph, more: [], place: placeOf(piece) }, piece.lastLine, piece.settled, context),
      );
      return;
    }
    for (const { text: said, line, column, prose, head: over } of linesOf(piece)) {
      take(
        readLine({ text: said, more: [], place: placeOf({ line, column }) }, context, {
          prose,
          lastLine: piece.lines === undefined ? piece.lastLine : line,
          head: over ?? head,
        }),
      );
    }
  }

  // A heading that is a bed's name, a day, or what was done, begins that part of the note, up to the next heading of its level.
  const whole: ReadingContext = {
    note,
    beds: context.beds,
    names,
    units: settings.units,
    southern,
    monthFirst: writesMonthFirst(settings),
  };
  let parts: readonly {
    readonly level: number;
    readonly bed?: string | undefined;
    readonly day?: Day | undefined;
    readonly verb?: string | undefined;
    readonly private: boolean;
  }[] = [];
  // Below a heading that says so, and below a line that says nothing else, all is private up to the next part.
  let isLed = false;
  const secret = new Set<Piece>();
  let head: string | undefined;
  let isHeaded = false;
  /** Of a note that names no bed, a heading that is neither bed, day nor work. */
  let unknown: { readonly title: string; readonly place: Place; readonly from: number } | undefined;
  const askUnknown = () => {
    if (unknown !== undefined && readings.slice(unknown.from).some(wantsBed))
      problems.push(headingAsked(unknown.title, unknown.place));
    unknown = undefined;
  };
  for (const piece of tree.pieces) {
    const bed = parts.findLast((part) => part.bed !== undefined)?.bed;
    const day = parts.findLast((part) => part.day !== undefined)?.day;
    head = parts.findLast((part) => part.verb !== undefined)?.verb;
    const isSecret = isLed || parts.some((part) => part.private);
    const here: ReadingContext = {
      ...whole,
      beds: bed === undefined ? context.beds : [bed],
      note: { ...note, ...(day !== undefined && { day }), private: note.private || isSecret },
    };
    if (piece.kind === "item" || piece.paragraph !== undefined) problems.push(...marksWithoutDash(file, text, piece));
    if (isSecret && !("heading" in piece && piece.heading)) secret.add(piece);
    if (piece.kind === "item") {
      isLed ||= piece.items.length === 0 && leadsPrivate(piece.text);
      if (piece.isMark) problems.push(nothingAbove(placeOf(piece)));
      else if (log(piece, here)) continue;
      told.push(piece);
      continue;
    }
    told.push(piece);
    if (piece.heading === undefined) {
      isLed ||= leadsPrivate(piece.paragraph ?? "");
      tell(piece, here);
      continue;
    }
    const { level, text: title } = piece.heading;
    askUnknown();
    const known = names.find("bed", title);
    const isPart = headingSaysPrivate(title, known !== undefined);
    const named = known ?? (isPart ? undefined : newBedCalled(title, names, placeOf(piece)));
    isLed = false;
    const part = {
      level,
      bed: named,
      day: dayOfHeading(title, note.day, whole.monthFirst),
      verb: named === undefined ? verbOfHeading(title) : undefined,
      private: isPart,
    };
    parts = [...parts.filter((one) => one.level < level), part];
    if (parts.some((one) => one.private)) secret.add(piece);
    isHeaded ||= named !== undefined;
    const under = parts.findLast((one) => one.bed !== undefined)?.bed;
    bedsFrom.push({ line: piece.line, beds: under === undefined ? context.beds : [under] });
    const says = under ?? part.day ?? part.verb;
    if (says === undefined && context.beds.length === 0 && !isPart && mayNameBed(title))
      unknown = { title, place: placeOf(piece), from: readings.length };
  }
  askUnknown();
  const asked = new Set(readings.flatMap(({ as, place }) => (as === "question" ? [place.line] : [])));
  const privateSpans = tree.pieces.flatMap((piece) => spansIn(piece, secret));
  const isHidden = ({ from }: Piece) => privateSpans.some((span) => from >= span.from && from < span.to);
  return {
    story: storyOf(file, text, told, { asked, isHidden }),
    ...{ events, problems, readings },
    ...(isHeaded && { bedsFrom }),
    ...(privateSpans.length > 0 && { privateSpans }),
  };
}

/** A line read with the words above it, told by its own. */
function ownWords({ reading, problems }: LineRead, text: string): LineRead {
  const own = (event: Event) => ({ ...event, text });
  const readings = reading.readings.map((one) => ({ ...one, events: one.events.map(own) }));
  return { reading: { ...reading, text, events: reading.events.map(own), readings }, problems };
}

/** "= story" on a line of its own, where a list item was meant: it is read as more words of the line above it. */
function marksWithoutDash(file: string, text: string, { from, wordsTo, line }: Piece): readonly Problem[] {
  return text
    .slice(from, wordsTo)
    .split(/\r\n?|\n/)
    .flatMap((said, at) => {
      const [, mark = "", words] = /^([ \t]*)=(?![=>])[ \t]*(\S.*)$/.exec(said) ?? [];
      if (words === undefined) return [];
      return [
        problem(
          "note/settled-no-dash",
          { file, line: line + at, column: mark.length + 1 },
          'A line that begins with "=" says how the line above it is read only where it is a list item, and this one is none.',
          `Begin it with a hyphen: - = ${words.length > 60 ? `${words.slice(0, 60)}…` : words}`,
        ),
      ];
    });
}

/** Kinds that are of plants in a bed, or of a bed. */
const ofBeds: ReadonlySet<Event["kind"]> = new Set([
  ...(["planted", "sowed", "up", "thinned", "flowered", "fruited", "picked", "came back", "doing"] as const),
  ...(["trouble", "cured", "lost", "cleared", "moved"] as const),
]);

/** A line of plants that stand in a bed, and no bed that it says. */
function wantsBed({ as, events, readings }: LineReading): boolean {
  const [likeliest] = readings;
  const told = as === "facts" ? events : as === "question" ? (likeliest?.events ?? []) : [];
  return told.some(
    ({ kind, bed, variety, crop }) =>
      bed === undefined &&
      ofBeds.has(kind) &&
      (kind === "planted" || kind === "sowed" || (variety ?? crop) !== undefined),
  );
}

/** What notes are divided by that is no bed. */
const notBeds =
  /^(?:notes?|jobs?|weather|pests?|harvests?|picked|picking|tasks?|todo|done|loss(?:es)?|problems?|troubles?|diary|log|summary|today|yesterday|morning|afternoon|evening|film|filming|video|other|others|misc|general|garden|seeds?|news|update|updates|week|month|everything|rest)$/;

/** A name is short and begins with a capital letter, as "Gravy" and "Kitchen Side" do. */
function mayNameBed(title: string): boolean {
  const words = wordsOf(title).filter(({ kind }) => kind === "word");
  if (words.length === 0 || notBeds.test(words[0]?.lower ?? "")) return false;
  return words.length <= 4 && /^\p{Lu}/u.test(title) && !/[?!]$/u.test(title);
}

function headingAsked(title: string, place: Place): Problem {
  const name = title.replace(/:$/u, "").trimEnd();
  return problem(
    "note/heading-not-bed",
    place,
    `Is "${name}" a bed? No file describes one of that name, so the lines below this heading have no bed.`,
    `If it is: plotreel new bed "${name}". If not, name the bed in the lines.`,
  );
}

function nothingAbove(place: Place): Problem {
  return problem(
    "note/settled-unread",
    place,
    'A line that begins with "=" says how the line above it is read, and no line stands above this one.',
    'Put it right below the line it is about, or take the "=" away.',
  );
}

/** Whether what stands below an item is announced by it. */
function leads({ text, items }: ItemPiece): boolean {
  return items.length > 0 && /:\s*$/.test(text);
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

/**
 * Story in the order of the note; list items that stand together stay together, unless viewers see one of them and not the
 * other, because it is a question or says that it is private.
 */
function storyOf(
  file: string,
  text: string,
  told: readonly Piece[],
  { asked, isHidden }: { readonly asked: ReadonlySet<number>; readonly isHidden: (piece: Piece) => boolean },
): Note["story"] {
  const asks = (piece: Piece): boolean => piece.kind === "item" && (asked.has(piece.line) || piece.items.some(asks));
  const parts: (Piece & { readonly asks: boolean; readonly private: boolean })[] = [];
  for (const piece of told.toSorted((a, b) => a.from - b.from)) {
    const seen = { asks: asks(piece), private: isPrivate(piece) || isHidden(piece) };
    const before = parts.at(-1);
    const joins =
      before?.kind === "item" &&
      piece.kind === "item" &&
      before.asks === seen.asks &&
      before.private === seen.private &&
      text.slice(before.to, piece.from).trim() === "";
    if (joins) parts[parts.length - 1] = { ...before, to: piece.to };
    else parts.push({ ...piece, ...seen });
  }
  const settled = told.flatMap(settledIn).toSorted((a, b) => a.from - b.from);
  return parts.map(({ from, to, line, column, asks, private: hidden }) => ({
    text: asWritten(text, from, to, settled),
    place: { file, line, column },
    ...(asks && { asks }),
    ...(hidden && { private: hidden }),
  }));
}

/** Whether an item, what stands below it, or a paragraph says that it is private. */
function isPrivate(piece: Piece): boolean {
  return saysPrivate(piece.kind === "item" ? [piece.text, ...piece.more].join("\n") : (piece.paragraph ?? ""));
}

/** What of a piece nobody else is to see: all of it, or items of it. */
function spansIn(piece: Piece, secret: ReadonlySet<Piece>): readonly { readonly from: number; readonly to: number }[] {
  if (secret.has(piece) || isPrivate(piece)) return [{ from: piece.from, to: piece.to }];
  return piece.kind === "item" ? piece.items.flatMap((item) => spansIn(item, secret)) : [];
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
