/** What the box to write in asks of whoever keeps the records. */
import { isDay } from "../calendar.ts";
import type { Day } from "../model.ts";
import type { TypedLine } from "../records/index.ts";
import type { Sent, TapAnswer } from "./workbench.ts";

/** What a line was shown to say. */
export type ShownLine = Pick<TypedLine, "as" | "says">;

export interface WritingAsk {
  /** Of this save: what is sent twice is written once. */
  readonly id: string;
  readonly day: Day;
  /** One of the notes of that day. */
  readonly file: string;
  /** What stood in it when the lines were typed. */
  readonly state: string;
  /** Id of the bed they speak of. */
  readonly bed?: string | undefined;
  readonly lines: readonly string[];
  readonly shown: readonly ShownLine[];
}

export interface WritingAnswer extends TapAnswer {
  /** In the note the lines say something else than was shown: what they say there, to be agreed to. */
  readonly reads?: readonly ShownLine[] | undefined;
}

/** A note of a day, or the one that would be begun. */
export interface NoteOfDay {
  readonly file: string;
  /** Empty when it is not there yet. */
  readonly state: string;
  /** Ids of the beds that lines without a bed speak of. */
  readonly beds: readonly string[];
}

export interface NoteWriting {
  /** The one that lines usually go to first. */
  notesOf(day: Day): Promise<{ readonly notes: readonly NoteOfDay[] }>;
  write(ask: WritingAsk): Promise<WritingAnswer>;
}

/** Lines of one save, and letters of a line: more than this nobody types. */
const MOST_LINES = 100;
const LONGEST_LINE = 1000;

/** What a page of our own sent; undefined when it is anything else. */
export function writingAsk({ id, day, file, state, bed, lines, shown }: Sent): WritingAsk | undefined {
  if (!isSaveId(id)) return undefined;
  if (typeof day !== "string" || !isDay(day) || typeof file !== "string" || typeof state !== "string") return undefined;
  if (bed !== undefined && typeof bed !== "string") return undefined;
  if (!isListOf(lines, isLine) || !isListOf(shown, isShown) || lines.length !== shown.length) return undefined;
  return { id, day, file, state, bed, lines, shown };
}

export function isSaveId(id: unknown): id is string {
  return typeof id === "string" && /^[\w-]{8,64}$/u.test(id);
}

function isListOf<One>(list: unknown, isOne: (one: unknown) => one is One): list is readonly One[] {
  return Array.isArray(list) && list.length > 0 && list.length <= MOST_LINES && list.every(isOne);
}

/** One line and no more: a line end would be another line of the note. */
export function isLine(line: unknown): line is string {
  return (
    typeof line === "string" &&
    line.trim() !== "" &&
    line.length <= LONGEST_LINE &&
    !/\p{Cc}|[\u2028\u2029]/u.test(line)
  );
}

export function isShown(one: unknown): one is ShownLine {
  if (typeof one !== "object" || one === null) return false;
  const { as, says } = one as Sent;
  return (
    (as === "facts" || as === "question" || as === "story") &&
    Array.isArray(says) &&
    says.every((said) => typeof said === "string")
  );
}
