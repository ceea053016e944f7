/**
 * The days that stand at the head of a diary's entries, as people write them: on a line of their own or before the entry's
 * first words, with the year or without, by month and day, by the day of the month below a month's heading, or by a weekday
 * that follows the day before it.
 */
import { addDays, dayOf, daysBetween, monthNumber, monthOf, weekday, weekdayNumber, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";
import { type DayOrder, fullYear } from "./cell-days.ts";

/** What a line begins with, before it is known which day that is. */
export interface WrittenMark {
  readonly weekday?: number | undefined;
  readonly year?: number | undefined;
  readonly month?: number | undefined;
  readonly day?: number | undefined;
  /** "19" of "12 March '19". */
  readonly shortYear?: string | undefined;
  /** "3/4": which is the month hangs on the file. */
  readonly pair?: readonly [number, number] | undefined;
  /** The mark itself. */
  readonly text: string;
  /** The entry's words behind it on the same line. */
  readonly rest: string;
  /** Nothing sets the mark off from the words behind it, so they may belong together: "3 May sowings are up". */
  readonly bare: boolean;
}

const leading = /^(?:#{1,6} |[-*+•>] |\*\*|__)+/;
const weekdayWord = /^([a-z]{3,9})\b[.,:]? ?/i;
const isoDay = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?!\d)/;
const dayMonth =
  /^(?:the )?(\d{1,2})(?:st|nd|rd|th)?(?: of)?[ -]([a-z]{3,9})\b\.?(?:,?[ -]'?(\d{4})(?!\d)|,?[ -]'?(\d{2})(?= ?(?:[:–—|-]|$)))?/i;
const monthDay = /^([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?(?![\d:])(?:,? (\d{4})(?!\d))?/i;
const pairs = /^(\d{1,2})[./-](\d{1,2})(?:[./-](\d{4}|\d{2}))?(?![\d.,/-])/;
const dayOnly = /^(?:the )?(\d{1,2})(?:st|nd|rd|th)\b/i;
const dayBehindWeekday = /^(?:the )?(\d{1,2})(?:st|nd|rd|th)?(?!\d)(?= ?(?:[:;,–—|.-]|$))/i;
const setsOff = /^ ?(?:[:;,–—|.)]|-(?= |$)|\*\*|__| {2}|\t|$)/;

/** Undefined when the line begins with no day. */
export function markOf(line: string): WrittenMark | undefined {
  const plain = line.trim().replace(leading, "").replace(/\s+/g, " ");
  const named = weekdayWord.exec(plain);
  const number = named?.[1] === undefined ? undefined : weekdayNumber(named[1]);
  const at = number === undefined ? 0 : (named?.[0].length ?? 0);
  const found = dayIn(plain.slice(at), number !== undefined);
  if (found === undefined && number === undefined) return undefined;
  const end = found === undefined ? plain.slice(0, at).trimEnd().length : at + found.length;
  const behind = plain.slice(end);
  const off = setsOff.exec(behind);
  // A weekday alone has to stand by itself or be set off: "Sunday was wet" begins a sentence.
  if (found === undefined && off === null && !/[.:]$/.test(plain.slice(0, end))) return undefined;
  const rest = behind.replace(/^[\s:;,–—|.)*_-]+/, "");
  const isNumbered = found?.year !== undefined || number !== undefined;
  return {
    ...(number !== undefined && { weekday: number }),
    ...found?.parts,
    text: plain.slice(0, end).replace(/[.,:]$/, ""),
    rest,
    bare: off === null && !isNumbered,
  };
}

interface Found {
  readonly parts: Pick<WrittenMark, "year" | "shortYear" | "month" | "day" | "pair">;
  readonly year: unknown;
  readonly length: number;
}

function dayIn(text: string, afterWeekday: boolean): Found | undefined {
  const iso = isoDay.exec(text);
  if (iso !== null) {
    const [year, month, day] = [Number(iso[1]), Number(iso[2]), Number(iso[3])];
    return { parts: { year, month, day }, year, length: iso[0].length };
  }
  const dayFirst = dayMonth.exec(text);
  const named = dayFirst === null ? undefined : monthNumber(dayFirst[2] ?? "");
  if (dayFirst !== null && named !== undefined) {
    const year = dayFirst[3] ?? dayFirst[4];
    return { parts: { month: named, day: Number(dayFirst[1]), ...yearPart(year) }, year, length: dayFirst[0].length };
  }
  const monthFirst = monthDay.exec(text);
  const month = monthFirst === null ? undefined : monthNumber(monthFirst[1] ?? "");
  if (monthFirst !== null && month !== undefined) {
    const year = monthFirst[3];
    return { parts: { month, day: Number(monthFirst[2]), ...yearPart(year) }, year, length: monthFirst[0].length };
  }
  const pair = pairs.exec(text);
  if (pair !== null) {
    const parts = { pair: [Number(pair[1]), Number(pair[2])] as const, ...yearPart(pair[3]) };
    return { parts, year: pair[3], length: pair[0].length };
  }
  const only = (afterWeekday ? dayBehindWeekday.exec(text) : null) ?? dayOnly.exec(text);
  return only === null ? undefined : { parts: { day: Number(only[1]) }, year: undefined, length: only[0].length };
}

function yearPart(written: string | undefined) {
  if (written === undefined) return {};
  return written.length === 4 ? { year: Number(written) } : { shortYear: written };
}

/** "May 2019", "MARCH", "2019", "Garden diary 2019": what the days below it leave out. */
export function spanHeading(line: string): { readonly year?: number; readonly month?: number } | undefined {
  const plain = line
    .trim()
    .replace(leading, "")
    .replace(/(?<![:.*_=#-])[:.*_=#-]+$/, "")
    .trim();
  const [, word = "", year] = /^([a-z]{3,9})?\.?,? ?(\d{4})?$/i.exec(plain) ?? [];
  const month = word === "" ? undefined : monthNumber(word);
  if (month !== undefined) return year === undefined ? { month } : { month, year: Number(year) };
  if (word === "" && year !== undefined) return { year: Number(year) };
  const titled = plain.length < 60 ? /^[^\d]*\b((?:19|20)\d\d)$/.exec(plain)?.[1] : undefined;
  return titled === undefined ? undefined : { year: Number(titled) };
}

export interface MarkContext {
  readonly order: DayOrder | undefined;
  readonly today: Day;
  /** The entry before. */
  readonly before: Day | undefined;
  /** What headings above say, or the person. */
  readonly year: number | undefined;
  readonly month: number | undefined;
}

export type DayOfMark = { readonly day: Day } | { readonly doubt: string };

export function dayOfMark(mark: WrittenMark, context: MarkContext): DayOfMark {
  const { before, today } = context;
  if (mark.day === undefined && mark.pair === undefined) return dayByWeekday(mark, before);
  const year = mark.year ?? (mark.shortYear === undefined ? undefined : fullYear(mark.shortYear, today));
  const ways = waysOf(mark, context);
  if (ways.length === 0) return { doubt: `"${mark.text}" is no day` };
  const days = ways.map(([month, day]) => dayNear(year, month, day, context));
  const real = [...new Set(days.filter((day) => day !== undefined))];
  const [day, other] = real;
  if (day === undefined) {
    if (days.length > 0 && year === undefined && before === undefined && context.year === undefined)
      return { doubt: `"${mark.text}" does not say which year` };
    return { doubt: `"${mark.text}" is no day of the calendar` };
  }
  if (other !== undefined) return { doubt: `"${mark.text}" can be ${day} or ${other}` };
  if (mark.weekday !== undefined && weekday(day) !== mark.weekday)
    return { doubt: `"${mark.text}" would be ${day}, which is another day of the week` };
  return day > today ? { doubt: `"${mark.text}" is after today` } : { day };
}

/** Month and day, in each order that they may stand in. */
function waysOf(mark: WrittenMark, { order, before, month }: MarkContext): readonly (readonly [number, number])[] {
  if (mark.pair !== undefined) {
    const [first, second] = mark.pair;
    if (order === "day-first") return [[second, first]];
    if (order === "month-first") return [[first, second]];
    return [
      [second, first],
      [first, second],
    ];
  }
  const in_ = mark.month ?? month ?? (before === undefined ? undefined : monthOf(before));
  return in_ === undefined || mark.day === undefined ? [] : [[in_, mark.day]];
}

/** A day that says no year is the one nearest to the entry before it. */
function dayNear(year: number | undefined, month: number, day: number, context: MarkContext): Day | undefined {
  if (year !== undefined) return dayOf(year, month, day);
  const { before } = context;
  if (before === undefined) return context.year === undefined ? undefined : dayOf(context.year, month, day);
  const near = [-1, 0, 1].flatMap((step) => dayOf(yearOf(before) + step, month, day) ?? []);
  return near.sort((a, b) => Math.abs(daysBetween(before, a)) - Math.abs(daysBetween(before, b)))[0];
}

/** "Tuesday" below Monday's entry is the next day. */
function dayByWeekday(mark: WrittenMark, before: Day | undefined): DayOfMark {
  if (before === undefined || mark.weekday === undefined)
    return { doubt: `"${mark.text}" says no date, and no day stands before it` };
  return { day: addDays(before, (mark.weekday - weekday(before) + 7) % 7 || 7) };
}
