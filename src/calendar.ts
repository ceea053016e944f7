/**
 * Calendar days: arithmetic on ISO 8601 day strings, and reading days as people write them.
 *
 * A day is a calendar day in the garden's own time zone, so no clock and no zone appears here: every sum is done on UTC
 * midnights, where all days are 24 hours long. Strings are kept instead of date objects because the inner loops compare
 * and sort days far more often than they add to them, and ISO days sort as text.
 */
import type { Day } from "./model.ts";

const msPerDay = 86_400_000;

/** English month names; the note and record formats are English whatever the garden's own language. */
const monthNames: readonly string[] = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** English weekday names in ISO 8601 order, Monday first. */
const weekdayNames: readonly string[] = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

// --------------------------------------------------------------------------------------------------------- arithmetic

/** Whether a year of the Gregorian calendar has a 29 February. */
export function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days of a month; `month` counts from 1. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** The ISO day of three numbers (`month` counts from 1), or undefined when the calendar has no such day. */
export function dayOf(year: number, month: number, day: number): Day | undefined {
  if (!(year >= 1 && year <= 9999 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month))) {
    return undefined;
  }
  return `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** Whether a text is an ISO day that exists: "2026-05-16" is, "2026-02-30" and "2026-5-16" are not. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d\d-\d\d$/.test(text)) return false;
  return dayOf(Number(text.slice(0, 4)), Number(text.slice(5, 7)), Number(text.slice(8))) !== undefined;
}

/** The day `n` days later, or earlier when `n` is negative. */
export function addDays(day: Day, n: number): Day {
  return new Date(instantOf(day) + n * msPerDay).toISOString().slice(0, 10);
}

/** Days from `a` to `b`: 1 from a day to the next, negative when `b` comes first. */
export function daysBetween(a: Day, b: Day): number {
  return (instantOf(b) - instantOf(a)) / msPerDay;
}

/** A garden of ten years has fewer days than this; whatever asks for more has no need of speed. */
const mostKept = 20_000;
const instants = new Map<Day, number>();

/** Milliseconds of a day's beginning, UTC. Kept, because sentences compare the same few hundred days again and again. */
function instantOf(day: Day): number {
  const known = instants.get(day);
  if (known !== undefined) return known;
  const instant = Date.parse(day);
  if (instants.size < mostKept) instants.set(day, instant);
  return instant;
}

/** ISO 8601 weekday: 1 is Monday, 7 is Sunday. */
export function weekday(day: Day): number {
  return new Date(Date.parse(day)).getUTCDay() || 7;
}

export function yearOf(day: Day): number {
  return Number(day.slice(0, 4));
}

/** Month from 1 to 12. */
export function monthOf(day: Day): number {
  return Number(day.slice(5, 7));
}

/** Month and day "05-16". */
export function monthDayOf(day: Day): string {
  return day.slice(5);
}

/** A month and day ("04-20") in a year; 29 February becomes the 28th in years that have no 29th. */
export function inYear(monthDay: string, year: number): Day {
  const exists = monthDay !== "02-29" || isLeapYear(year);
  return `${String(year).padStart(4, "0")}-${exists ? monthDay : "02-28"}`;
}

/** The first day of the season (a year that begins on `seasonStarts`, month and day) in which a day lies. */
export function seasonStart(day: Day, seasonStarts: string): Day {
  const thisYear = inYear(seasonStarts, yearOf(day));
  return thisYear <= day ? thisYear : inYear(seasonStarts, yearOf(day) - 1);
}

/** First day of the season before the one in which a day lies. */
export function lastSeasonStart(day: Day, seasonStarts: string): Day {
  return seasonStart(addDays(seasonStart(day, seasonStarts), -1), seasonStarts);
}

/** The same calendar day a year before; 29 February becomes the 28th. */
export function yearBefore(day: Day): Day {
  const before = `${String(yearOf(day) - 1).padStart(4, "0")}${day.slice(4)}`;
  return before.endsWith("-02-29") ? before.replace("-29", "-28") : before;
}

/** Month and day "05-16" as written in English: "16 May". */
function writeMonthDay(monthDay: string): string {
  return `${Number(monthDay.slice(3))} ${monthNames[Number(monthDay.slice(0, 2)) - 1]}`;
}

/** A day as the record and note formats write it out: "16 May 2026". Sentences for viewers are made elsewhere. */
export function writeDay(day: Day): string {
  return `${writeMonthDay(monthDayOf(day))} ${yearOf(day)}`;
}

// ------------------------------------------------------------------------------------------------------------- reading

/** Why a text was not taken as a day: `what` and `fix` are whole sentences. */
export interface RefusedDay {
  readonly refused: "no such day" | "two-digit year" | "no year" | "not a date" | "order unclear";
  readonly what: string;
  readonly fix: string;
}

export type DayReading = { readonly day: Day; readonly precision: "day" | "month" | "year" } | RefusedDay;

/** For a day without a year: it is the nearest such day on this side of the day given. */
export type YearFrom = { readonly onOrAfter: Day } | { readonly onOrBefore: Day };

/** What is written: numbers as found, the year still as text so that its digits can be counted. */
interface DayParts {
  readonly year?: string | undefined;
  readonly month: number;
  readonly day: number;
  readonly weekday?: number | undefined;
}

const weekdayPrefix = /^(mon|tue|tues|wed|weds|thu|thur|thurs|fri|sat|sun|[a-z]+day)\b[.,]?\s+/i;
const dayMonthYear = /^(\d{1,2})(?:st|nd|rd|th)?(?:\s+of)?[\s-]+([a-z]+)\.?(?:[\s,-]+(?:')?(\d+))?$/i;
const monthDayYear = /^([a-z]+)\.?[\s-]+(\d{1,2})(?:st|nd|rd|th)?(?:\s*,\s*(\d+)|\s+(\d{2,}))?$/i;
const numbersOnly = /^(\d{1,2})[./](\d{1,2})[./](\d{4})$/;
const numbersShort = /^\d{1,2}[./-]\d{1,2}[./-]\d{2}$/;
const slackIso = /^(\d+)[-/.](\d{1,2})[-/.](\d{1,2})$/;

/** Number of a month by its name or the first three or more letters of it, else undefined. */
export function monthNumber(name: string): number | undefined {
  const lower = name.toLowerCase();
  if (lower.length < 3) return undefined;
  if (lower === "sept") return 9;
  const index = monthNames.findIndex((month) => month.toLowerCase().startsWith(lower));
  return index < 0 ? undefined : index + 1;
}

/** ISO number of a weekday by its name or the first three or more letters of it ("Weds" too), else undefined. */
export function weekdayNumber(name: string): number | undefined {
  const lower = name.toLowerCase().replace(/^weds$/, "wed");
  if (lower.length < 3) return undefined;
  const index = weekdayNames.findIndex((day) => day.toLowerCase().startsWith(lower));
  return index < 0 ? undefined : index + 1;
}

/**
 * Reads a day as a person writes it: "2026-05-16", "16 May 2026", "May 16, 2026", "Saturday 16 May 2026"; without a year
 * ("16 May") only when `yearFrom` tells which year is meant.
 */
export function parseDay(text: string, yearFrom?: YearFrom): DayReading {
  const written = text.trim();
  if (isDay(written) && plausibleYear(yearOf(written))) return { day: written, precision: "day" };
  const parts = splitDay(written);
  if ("refused" in parts) return parts;
  return dayFromParts(parts, written, yearFrom);
}

/** Like `parseDay`, and also takes a month ("2023-03", "March 2023") or a year ("2023"): the first day of it. */
export function parseSince(text: string): DayReading {
  const written = text.trim();
  const isoMonth = /^(\d{4})-(\d{1,2})$/.exec(written);
  const namedMonth = /^([a-z]+)\.?,?\s+(\d{4})$/i.exec(written);
  const year = /^\d{4}$/.exec(written);
  if (year) return firstOf(Number(written), 1, "year", written);
  if (isoMonth) return firstOf(Number(isoMonth[1]), Number(isoMonth[2]), "month", written);
  const month = namedMonth?.[1] === undefined ? undefined : monthNumber(namedMonth[1]);
  if (month !== undefined) return firstOf(Number(namedMonth?.[2]), month, "month", written);
  return parseDay(written);
}

/** Reads a month and day of every year, "20 April" or "04-20", and gives "04-20"; 29 February is allowed. */
export function parseMonthDay(text: string): { readonly monthDay: string } | RefusedDay {
  const written = text.trim();
  const numbers = /^(\d\d)-(\d\d)$/.exec(written);
  const parts = numbers ? { month: Number(numbers[1]), day: Number(numbers[2]) } : splitDay(written);
  if ("refused" in parts) return parts;
  if ("year" in parts && parts.year !== undefined) {
    return {
      refused: "not a date",
      what: `"${written}" names one year, and a day of every year is wanted here.`,
      fix: `Leave the year out: "${monthDayWords(parts)}".`,
    };
  }
  // 2000 is a leap year, so that 29 February passes.
  const day = dayOf(2000, parts.month, parts.day);
  return day === undefined ? noSuchDay(written, parts, undefined) : { monthDay: monthDayOf(day) };
}

function firstOf(year: number, month: number, precision: "month" | "year", written: string): DayReading {
  const day = dayOf(year, month, 1);
  if (day !== undefined && plausibleYear(year)) return { day, precision };
  return notADate(written);
}

function splitDay(written: string): DayParts | RefusedDay {
  const prefix = weekdayPrefix.exec(written);
  const named = prefix?.[1] === undefined ? undefined : weekdayNumber(prefix[1]);
  const rest = prefix && named !== undefined ? written.slice(prefix[0].length) : written;
  const dayFirst = dayMonthYear.exec(rest);
  if (dayFirst) {
    const month = monthNumber(dayFirst[2] ?? "");
    if (month !== undefined) return { year: dayFirst[3], month, day: Number(dayFirst[1]), weekday: named };
  }
  const monthFirst = monthDayYear.exec(rest);
  if (monthFirst) {
    const month = monthNumber(monthFirst[1] ?? "");
    const year = monthFirst[3] ?? monthFirst[4];
    if (month !== undefined) return { year, month, day: Number(monthFirst[2]), weekday: named };
  }
  return splitNumbers(written);
}

function splitNumbers(written: string): DayParts | RefusedDay {
  if (numbersShort.test(written)) return twoDigitYear(written, undefined);
  const iso = slackIso.exec(written);
  if (iso && (iso[1] ?? "").length > 2) return { year: iso[1], month: Number(iso[2]), day: Number(iso[3]) };
  const numbers = numbersOnly.exec(written);
  if (!numbers) return notADate(written);
  const [first, second, year] = [Number(numbers[1]), Number(numbers[2]), Number(numbers[3])];
  const readings = [dayOf(year, second, first), dayOf(year, first, second)].filter((day) => day !== undefined);
  const [one, other] = readings;
  if (one === undefined) return notADate(written);
  const twoWays = other !== undefined && other !== one;
  return {
    refused: "order unclear",
    what: twoWays
      ? `"${written}" can mean ${writeDay(one)} or ${writeDay(other)}.`
      : `"${written}" is a date in an order that differs from country to country.`,
    fix: twoWays ? `Write ${one} or ${other}, whichever it was.` : `Write ${one}.`,
  };
}

function dayFromParts(parts: DayParts, written: string, yearFrom: YearFrom | undefined): DayReading {
  if (parts.year === undefined) {
    if (yearFrom === undefined) {
      return {
        refused: "no year",
        what: `"${written}" does not say which year.`,
        fix: `Add the year with four digits, for example "${monthDayWords(parts)} 2026".`,
      };
    }
    const day = nearestYear(parts, yearFrom);
    return day === undefined ? noSuchDay(written, parts, undefined) : checkWeekday(day, parts, written);
  }
  if (parts.year.length <= 2) return twoDigitYear(written, parts);
  const year = Number(parts.year);
  if (parts.year.length !== 4 || !plausibleYear(year)) return notADate(written);
  const day = dayOf(year, parts.month, parts.day);
  return day === undefined ? noSuchDay(written, parts, year) : checkWeekday(day, parts, written);
}

function checkWeekday(day: Day, parts: DayParts, written: string): DayReading {
  if (parts.weekday === undefined || parts.weekday === weekday(day)) return { day, precision: "day" };
  return {
    refused: "no such day",
    what: `"${written}" does not exist: ${writeDay(day)} is a ${weekdayNames[weekday(day) - 1]}.`,
    fix: "Correct the weekday or the date, or leave the weekday out.",
  };
}

/** 29 February may be up to eight years away (1896 to 1904), so the search looks that far. */
function nearestYear(parts: DayParts, from: YearFrom): Day | undefined {
  for (let step = 0; step <= 8; step++) {
    const day =
      "onOrAfter" in from
        ? dayOf(yearOf(from.onOrAfter) + step, parts.month, parts.day)
        : dayOf(yearOf(from.onOrBefore) - step, parts.month, parts.day);
    if (day === undefined) continue;
    if ("onOrAfter" in from ? day >= from.onOrAfter : day <= from.onOrBefore) return day;
  }
  return undefined;
}

/** Years outside this range are slips of the hand ("0206", "20226"), not gardens. */
function plausibleYear(year: number): boolean {
  return year >= 1800 && year <= 2199;
}

function monthDayWords(parts: { readonly month: number; readonly day: number }): string {
  return `${parts.day} ${monthNames[parts.month - 1] ?? "May"}`;
}

function notADate(written: string): RefusedDay {
  return {
    refused: "not a date",
    what: `"${written}" is not a date.`,
    fix: 'Write year, month and day, for example 2026-05-16 or "16 May 2026".',
  };
}

function twoDigitYear(written: string, parts: DayParts | undefined): RefusedDay {
  const example =
    parts?.year === undefined ? "2026-05-16" : `"${monthDayWords(parts)} 20${parts.year.padStart(2, "0")}"`;
  return {
    refused: "two-digit year",
    what: `"${written}" gives its year with two digits.`,
    fix: `Write the year with four digits, for example ${example}.`,
  };
}

function noSuchDay(written: string, parts: DayParts, year: number | undefined): RefusedDay {
  const month = monthNames[parts.month - 1];
  if (month === undefined) {
    return {
      refused: "no such day",
      what: `"${written}" does not exist: there is no month ${parts.month}.`,
      fix: "Months go from 1 to 12; the order is year, month, day.",
    };
  }
  // Without a year the longest February counts.
  const last = daysInMonth(year ?? 2000, parts.month);
  return {
    refused: "no such day",
    what: `"${written}" does not exist: ${month}${year === undefined ? "" : ` ${year}`} has ${last} days${year === undefined && parts.month === 2 ? " at most" : ""}.`,
    fix: "Correct the day.",
  };
}
