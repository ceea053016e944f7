/** What settling a line goes by, at the terminal and by tap: what is settled with it, and what its answer would say in the note. */
import type { Day, Event, LineReading, Problem } from "../model.ts";
import {
  answeredNote,
  type Block,
  blockAt,
  type Names,
  type OneNoteContext,
  printEvent,
  readOneNote,
} from "../records/index.ts";

/** A line that is asked about, where it stands. */
export interface AskedLines {
  readonly bytes: Uint8Array;
  readonly file: string;
  readonly line: number;
  readonly context: OneNoteContext;
  readonly names: Names;
}

/** What is settled together: the item, or all sentences of its paragraph. */
export function linesOf(block: Block, question: LineReading, { records }: OneNoteContext): readonly LineReading[] {
  if (block.isItem) return [question];
  return records.readings.filter(
    ({ place }) => place.file === question.place.file && block.line <= place.line && place.line <= block.lastLine,
  );
}

/** With the day, where that is not the note's: the plain line has to say all that the event says. */
export function plainLine(
  event: Event,
  { names, context: { records } }: Pick<AskedLines, "names" | "context">,
  noteDay: Day | undefined,
): string {
  const line = printEvent({ ...event, more: [] }, names, records.settings.units);
  return event.day === noteDay ? line : `${line} on ${event.day}`;
}

/** What the note would say with these plain lines below the words that are asked about. */
export function tried(plain: readonly string[], { bytes, file, line, context, names: known }: AskedLines): Tried {
  const nothing: Tried = { events: [], problems: [], names: known, isRead: false };
  const answered = plain.length === 0 ? undefined : answeredNote(bytes, line, plain);
  if (answered === undefined || "refused" in answered) return nothing;
  const block = blockAt(bytes, line);
  const { events, problems, names } = readOneNote(file, answered.text, context);
  const own = problems.filter(
    (problem) =>
      problem.line > (block?.lastLine ?? line) && problem.line <= (block?.lastLine ?? line) + plain.length + 1,
  );
  return {
    events: events.filter(({ place }) => place.line === (block?.line ?? line)),
    problems: own,
    names,
    isRead: !own.some(({ rule }) => rule === "note/settled-unread"),
  };
}

export interface Tried {
  readonly events: readonly Event[];
  readonly problems: readonly Problem[];
  /** With those that the plain lines name for the first time. */
  readonly names: Names;
  readonly isRead: boolean;
}
