/** Parsed notes to notes and events: which list items are log lines, and which beds they speak of. */
import { parseDay, writeDay } from "../calendar.ts";
import type { Day, Event, GardenSettings, Note, Place, Problem } from "../model.ts";
import { linkedPhotos } from "./linked-photos.ts";
import type { Names } from "./names.ts";
import { readNoteLine } from "./note-line.ts";
import type { ItemPiece, NoteTree, StoryPiece } from "./note-tree.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { problem } from "./problem-rules.ts";
import { checkRecord } from "./record-fronts.ts";
import type { RecordPlace } from "./record-places.ts";
import { noteSchema } from "./schemas/note.ts";

export interface NotesContext {
  readonly names: Names;
  readonly settings: Pick<GardenSettings, "units" | "position">;
  readonly today: Day;
  readonly photos: ReadonlySet<string>;
}

export interface ReadNote {
  /** Undefined when the note has no day. */
  readonly note: Note | undefined;
  readonly events: readonly Event[];
  readonly problems: readonly Problem[];
}

export function readNote(place: RecordPlace, parsed: ParsedFile, context: NotesContext): ReadNote {
  const checked = checkRecord(noteSchema, "a note", parsed);
  const problems = [...checked.problems];
  const front = checked.front ?? {};
  const day = dayOfNote(parsed, front.date, "date" in parsed.data, problems);
  if (day === undefined) return { note: undefined, events: [], problems };
  if (day > context.today) problems.push(futureNote(parsed, day, "date" in parsed.data, context.today));
  const beds = bedsOfNote(front, parsed, context.names, problems);
  const said = { id: place.id, day, private: checked.private };
  const body = readBody(parsed, said, beds, context, problems);
  const photos = linkedPhotos(parsed, context.photos, problems);
  const note: Note = {
    ...said,
    title: front.title,
    beds: [...new Set([...beds, ...body.bedsOfHeadings])],
    story: body.story,
    photos,
    place: { file: parsed.file, line: 1, column: 1 },
  };
  return { note, events: body.events, problems };
}

/** The day of the front matter, else of the file name. */
function dayOfNote(
  parsed: ParsedFile,
  written: Day | undefined,
  hasKey: boolean,
  problems: Problem[],
): Day | undefined {
  const head: Place = { file: parsed.file, line: 1, column: 1 };
  const name = parsed.file.slice(parsed.file.lastIndexOf("/") + 1);
  const prefix = /^\d+[-_.]\d{1,2}[-_.]\d{1,2}(?!\d)/.exec(name)?.[0];
  const reading = prefix === undefined ? undefined : parseDay(prefix.replace(/[_.]/g, "-"));
  const named = reading && "day" in reading ? reading.day : undefined;
  if (written !== undefined) {
    if (named !== undefined && named !== written) {
      problems.push(
        problem(
          "note/two-dates",
          { file: parsed.file, ...parsed.places().value(["date"]) },
          `This date, ${writeDay(written)}, differs from the ${writeDay(named)} of the file name; the note was read as of ${writeDay(written)}.`,
          "Correct the one that is wrong.",
        ),
      );
    }
    return written;
  }
  // A refused date in the front matter is reported already; the file's name may still tell the day.
  if (named !== undefined) return named;
  if (reading && "refused" in reading) {
    problems.push(
      problem(
        `date/${reading.refused.replaceAll(" ", "-") as "not-a-date"}`,
        head,
        reading.what,
        `${reading.fix} The date is the one at the front of the file's name.`,
      ),
    );
  } else if (!hasKey) {
    problems.push(
      problem(
        "note/no-date",
        head,
        "This note has no date, so nothing in it could be placed in the season.",
        'Begin the file name with the day, for example "2026-05-16-", or add a line "date: 2026-05-16" to its front matter.',
      ),
    );
  }
  return undefined;
}

function futureNote(parsed: ParsedFile, day: Day, hasKey: boolean, today: Day): Problem {
  const place = hasKey ? parsed.places().value(["date"]) : { line: 1, column: 1 };
  return problem(
    "note/future",
    { file: parsed.file, ...place },
    `This note is dated ${writeDay(day)}, and today is ${writeDay(today)}.`,
    "Correct the date if it is a slip; what it says counts from that day on.",
  );
}

function bedsOfNote(
  front: { readonly bed?: string | undefined; readonly beds?: readonly string[] | undefined },
  parsed: ParsedFile,
  names: Names,
  problems: Problem[],
): readonly string[] {
  const named: [string, readonly PropertyKey[]][] = (front.beds ?? []).map((bed, index) => [bed, ["beds", index]]);
  if (front.bed !== undefined) named.unshift([front.bed, ["bed"]]);
  const ids: string[] = [];
  for (const [name, path] of named) {
    const known = names.find("bed", name);
    if (known !== undefined) {
      ids.push(known);
      continue;
    }
    const place: Place = { file: parsed.file, ...parsed.places().value(path) };
    const near = names.nearest("bed", name);
    if (near !== undefined) {
      problems.push(
        problem(
          "link/unknown-bed",
          place,
          `No bed is called "${name}", so this note was read without it.`,
          `Did you mean "${near}"?`,
        ),
      );
      continue;
    }
    const taken = names.takeBed(name, place);
    if (taken !== undefined) ids.push(taken);
  }
  return [...new Set(ids)];
}

/** Markdown of a piece, moved to the left edge when it stood below another item. */
function asWritten(text: string, from: number, to: number): string {
  const indent = from - (text.lastIndexOf("\n", from - 1) + 1);
  const written = text.slice(from, to).replaceAll("\r\n", "\n").trimEnd();
  return indent === 0 ? written : written.replace(new RegExp(`\n {1,${indent}}`, "g"), "\n");
}

interface Body {
  readonly story: readonly { readonly text: string; readonly place: Place }[];
  readonly events: readonly Event[];
  readonly bedsOfHeadings: readonly string[];
}

function readBody(
  parsed: ParsedFile,
  note: { readonly id: string; readonly day: Day; readonly private: boolean },
  beds: readonly string[],
  { names, settings }: NotesContext,
  problems: Problem[],
): Body {
  const story: { text: string; place: Place }[] = [];
  const events: Event[] = [];
  const bedsOfHeadings: string[] = [];
  let section: { readonly beds: readonly string[]; readonly level: number } | undefined;
  let endsInItem = false;
  const { units } = settings;
  const southern = (settings.position?.latitude ?? 0) < 0;

  function tell(piece: ItemPiece | StoryPiece, item: boolean): void {
    const text = asWritten(parsed.text, piece.from, piece.to);
    const before = story.at(-1);
    // Neighbouring items of one list stay one list.
    if (item && endsInItem && before !== undefined && "follows" in piece && piece.follows) before.text += `\n${text}`;
    else story.push({ text, place: { file: parsed.file, line: piece.line, column: piece.column } });
    endsInItem = item;
  }

  /** True when the item or one below it is a log line. */
  function log(item: ItemPiece, spokenOf: readonly string[]): boolean {
    const place: Place = { file: parsed.file, line: item.line, column: item.column };
    const read =
      item.text === ""
        ? undefined
        : readNoteLine({ text: item.text, more: item.more, place }, { note, beds: spokenOf, names, units, southern });
    if (read !== undefined) {
      events.push(...read.events);
      problems.push(...read.problems);
      // A slip in the verb is told and the item stays story.
      if (read.events.length > 0) return true;
    }
    if (item.items.length === 0) return false;
    // "Long Bed:" with lines below it: the lines speak of that bed.
    const bed = names.find("bed", item.text.replace(/:$/, ""));
    const logged = item.items.map((inner) => log(inner, bed === undefined ? spokenOf : [bed]));
    if (!logged.includes(true)) return false;
    if (bed === undefined && item.text !== "") tell({ ...item, to: item.items[0]?.from ?? item.to }, false);
    for (const [index, inner] of item.items.entries()) if (logged[index] === false) tell(inner, true);
    return true;
  }

  for (const piece of (parsed.tree as NoteTree).pieces) {
    if (piece.kind === "item") {
      if (!log(piece, section?.beds ?? beds)) tell(piece, true);
      else endsInItem = false;
      continue;
    }
    if (piece.heading !== undefined) {
      const bed = names.find("bed", piece.heading.text);
      // A heading that is a bed's name begins that bed's part of the note, up to the next heading of its level.
      if (bed !== undefined) {
        section = { beds: [bed], level: piece.heading.level };
        bedsOfHeadings.push(bed);
      } else if (section !== undefined && piece.heading.level <= section.level) section = undefined;
    }
    tell(piece, false);
  }
  return { story, events, bedsOfHeadings };
}
