/** A diary taken apart into days, its lines as they stand; what stands before the first day, or below a doubtful one, is told. */
import { daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import { type DayOrder, provenOrder } from "./cell-days.ts";
import { dayOfMark, markOf, spanHeading, type WrittenMark } from "./day-marks.ts";
import type { Told } from "./new-file.ts";

export interface DiaryDay {
  readonly day: Day;
  /** Where its first words stand. */
  readonly line: number;
  readonly lines: readonly string[];
}

export interface Diary {
  readonly days: readonly DiaryDay[];
  readonly told: readonly Told[];
}

export interface DiaryContext {
  readonly today: Day;
  readonly year: number | undefined;
  readonly order: DayOrder | undefined;
}

/** Days by which a mark that nothing sets off may be later than the entry before it. */
const soon = 120;

/** Words that begin a stretch of several days, of which no line says which day it is of. */
const severalDays = /^(?:w\/[ec]|week (?:of|ending|beginning|commencing)|weekend of)\b/i;

export function readDiary(text: string, context: DiaryContext): Diary {
  const lines = text.split(/\r\n|\n|\r/);
  const marks = lines.map(markOf);
  const order =
    context.order ?? provenOrder(marks.flatMap((mark) => (mark?.pair === undefined ? [] : [mark.pair.join("/")])));
  const days: { day: Day; line: number; lines: string[] }[] = [];
  const told: Told[] = [];
  let open: string[] | undefined;
  let before: Day | undefined;
  let { year } = context;
  let month: number | undefined;
  let why = "stands before the first day";
  for (const [index, written] of lines.entries()) {
    const line = index + 1;
    const mark = marks[index];
    const span = spanHeading(written);
    if (span !== undefined && mark?.day === undefined && mark?.pair === undefined) {
      ({ month } = span);
      if (span.year !== undefined) {
        ({ year } = span);
        before = undefined;
      }
      continue;
    }
    const found =
      mark === undefined ? undefined : dayOfMark(mark, { order, today: context.today, before, year, month });
    if (mark !== undefined && found !== undefined && begins(mark, found, before)) {
      open = undefined;
      if ("day" in found) {
        before = found.day;
        if (mark.day === undefined && mark.pair === undefined)
          told.push({
            line,
            what: `"${mark.text}" was taken for ${found.day}, the next one after the entry before it`,
            isLoss: false,
          });
        const same = days.at(-1)?.day === found.day ? days.at(-1) : undefined;
        open = same?.lines ?? [];
        if (same === undefined) days.push({ day: found.day, line, lines: open });
      } else {
        why = found.doubt;
        if (mark.rest === "") told.push({ line, what: found.doubt });
      }
      if (mark.rest !== "") keep(mark.rest, line);
      continue;
    }
    if (severalDays.test(written.trim())) {
      open = undefined;
      why = `"${written.trim()}" is of several days`;
    }
    keep(written, line);
  }
  return { days: days.flatMap(({ lines: own, ...day }) => (said(own) ? [{ ...day, lines: trimmed(own) }] : [])), told };

  function keep(words: string, line: number): void {
    if (open !== undefined) open.push(plain(words));
    else if (said([words])) told.push({ line, what: `${why}: ${words.trim()}` });
  }
}

/** A mark that nothing sets off counts only when it leads on from the entry before. */
function begins(mark: WrittenMark, found: ReturnType<typeof dayOfMark>, before: Day | undefined): boolean {
  if (!mark.bare) return true;
  if (!("day" in found)) return false;
  return before === undefined || (found.day > before && daysBetween(before, found.day) <= soon);
}

const rule = /^\s*(?:[-=_*~#]\s*){3,}$/;

function said(lines: readonly string[]): boolean {
  return lines.some((line) => line.trim() !== "" && !rule.test(line));
}

/** Blanks before a line would make it code in Markdown; those before a list's inner item belong to it. A drawn rule says nothing. */
function plain(line: string): string {
  if (rule.test(line)) return "";
  return /^\s*(?:[-*+]|\d+[.)])\s/.test(line) ? line.trimEnd() : line.trim();
}

function trimmed(lines: readonly string[]): readonly string[] {
  const first = lines.findIndex((line) => line.trim() !== "");
  return lines.slice(first, lines.findLastIndex((line) => line.trim() !== "") + 1);
}
