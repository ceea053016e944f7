/**
 * The day by which something is to be done or shown, from words such as "by 2026-06-20", "by Friday", "in July",
 * "next week", "Sunday week", "this autumn", "by Easter". A period is due on its last day; "before July" is due on the day before it begins.
 *
 * Weeks end on Sunday. Seasons are the meteorological ones, whole months: spring is March to May, and September to
 * November south of the equator.
 */
import {
  addDays,
  dayOf,
  daysInMonth,
  monthNumber,
  monthOf,
  parseDay,
  weekday,
  weekdayNumber,
  yearOf,
} from "../calendar.ts";
import type { Day } from "../model.ts";
import { feasts, nextFeast } from "./feasts.ts";
import { wordsOf } from "./line-words.ts";
import { numberAt } from "./numbers.ts";
import { slashedDays } from "./slashed-days.ts";

/** A due day and the offsets of the words that gave it. */
export interface DueDay {
  readonly day: Day;
  readonly start: number;
  readonly end: number;
}

interface Period {
  readonly first: Day;
  readonly last: Day;
}

const month =
  "jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?";
const named = "mon(?:day)?|tue(?:s(?:day)?)?|wed(?:s|nesday)?|thu(?:rs(?:day)?)?|fri(?:day)?|sat(?:urday)?|sun(?:day)?";
const lead = "by|before|until|till|on|in|for|at|during|over|come|within|around|about";
const part =
  "early|mid|late|(?:the )?end of|(?:the )?middle of|(?:the )?start of|(?:the )?beginning of|(?:the )?(?:first|second|third|last) (?:week|half) (?:of|in)";

interface DayOfYear {
  readonly month: number;
  readonly date: number;
}

/** Alternatives of one phrase, tried at each place of the text from left to right. */
const phrase = new RegExp(
  [
    `(?:\\b(?<lead>${lead})\\s+)?(?<iso>\\d{4}-\\d{2}-\\d{2})\\b`,
    `(?:\\b(?<lead2>${lead})\\s+)?(?:the\\s+)?(?<date>\\b\\d{1,2}(?:st|nd|rd|th)?(?:\\s+of)?\\s+(?:${month})\\b(?:,?\\s+\\d{4}\\b)?|\\b(?:${month})\\s+\\d{1,2}(?:st|nd|rd|th)?\\b(?:,?\\s+\\d{4}\\b)?)`,
    `(?:\\b(?<monthLead>${lead})\\s+)?(?:\\b(?<monthPart>${part})[\\s-]*)?(?:\\b(?<which>this|next)\\s+)?\\b(?<month>${month})\\b(?:\\s+(?<year>\\d{4})\\b)?`,
    `\\b(?:(?<dayLead>by|before|until|till|on|for|come)\\s+)?(?:(?<dayWhich>this|next|coming)\\s+)?(?<weekday>${named})\\b(?<weekLater>\\s+week\\b)?`,
    `\\b(?:(?<spanLead>${lead})\\s+)?(?:(?<spanPart>${part})\\s+)?(?<spanWhich>this|next|the)?\\s*\\b(?<span>week|weekend|month|season|year|spring|summer|autumn|fall|winter)\\b`,
    "\\b(?:in|within)\\s+(?<number>(?:\\d+|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?:\\s+(?:couple\\s+of|dozen))?)\\s+(?<unit>days?|weeks?|fortnights?|months?)\\b",
    "\\b(?<near>tomorrow|today|tonight)\\b",
    `\\b(?<feastLead>by|before|until|till|for|at|on|over|come|about|around)\\s+(?:the\\s+)?(?<feast>${feasts.map(({ name }) => name).join("|")})\\b`,
    "\\b(?<ofMonthLead>by|before|until|till|on)\\s+the\\s+(?<ofMonth>\\d{1,2})(?:st|nd|rd|th)\\b",
    "\\b(?<slashLead>by|before|until|till|on)\\s+(?:the\\s+)?(?<slashed>\\d{1,2}/\\d{1,2}(?:/\\d{2,4})?)(?![\\d/])",
  ].join("|"),
  "gi",
);

/** How the garden's days are meant; `monthFirst`: "6/12" is the 12th of June. */
export interface DaysMeant {
  readonly southern?: boolean | undefined;
  readonly monthFirst?: boolean | undefined;
}

/** The first words in a text that say when something is due, reckoned from the day of the note. */
export function dueDay(text: string, noteDay: Day, meant: DaysMeant = {}): DueDay | undefined {
  for (const match of text.matchAll(phrase)) {
    if (match.index > 0 && share.test(match.groups?.slashed ?? "")) continue;
    const day = dayOfPhrase(match.groups ?? {}, noteDay, meant);
    if (day !== undefined) return { day, start: match.index, end: match.index + match[0].length };
  }
  return undefined;
}

type Groups = Readonly<Record<string, string | undefined>>;

function dayOfPhrase(found: Groups, noteDay: Day, { southern = false, monthFirst }: DaysMeant): Day | undefined {
  const written = found.iso ?? found.date;
  if (written !== undefined) {
    const reading = parseDay(written, { onOrAfter: noteDay });
    if ("refused" in reading) return undefined;
    return isBefore(found.lead ?? found.lead2) ? addDays(reading.day, -1) : reading.day;
  }
  if (found.slashed !== undefined) {
    const coming = inFigures(found.slashed, noteDay, monthFirst);
    return coming !== undefined && isBefore(found.slashLead) ? addDays(coming, -1) : coming;
  }
  if (found.near !== undefined) return found.near.toLowerCase() === "tomorrow" ? addDays(noteDay, 1) : noteDay;
  const fixed = ofMonth(found.ofMonth, noteDay);
  const day = found.feast === undefined ? fixed && nextOf(fixed, noteDay) : nextFeast(found.feast, noteDay, monthFirst);
  if (day !== undefined) {
    return isBefore(found.feastLead ?? found.ofMonthLead) ? addDays(day, -1) : day;
  }
  if (found.number !== undefined) return afterSpan(found.number, found.unit ?? "", noteDay);
  if (found.weekday !== undefined) return comingWeekday(found, noteDay);
  if (found.month !== undefined) return inMonth(found, noteDay);
  return inSpan(found, noteDay, southern);
}

/** "6/12", where it can be one day only; without its year the next one from the note's day on. */
function inFigures(written: string, noteDay: Day, monthFirst: boolean | undefined): Day | undefined {
  const [only, another] = slashedDays(written, monthFirst) ?? [];
  if (only === undefined || another !== undefined) return undefined;
  if (only.year !== undefined) return dayOf(only.year, only.month, only.date);
  for (let year = yearOf(noteDay); year <= yearOf(noteDay) + 8; year++) {
    const day = dayOf(year, only.month, only.date);
    if (day !== undefined && day >= noteDay) return day;
  }
  return undefined;
}

/** "Cut the hedge back by 1/3" is no 3rd of January, but "by 1/3: …" is. */
const share = /^(?:1\/[234]|2\/3|3\/4)$/;

/** "the 24th": of the note's month, or of the next one once it is past. */
function ofMonth(date: string | undefined, noteDay: Day): DayOfYear | undefined {
  if (date === undefined) return undefined;
  const now = monthOf(noteDay);
  const month = Number(date) < Number(noteDay.slice(8)) ? (now % 12) + 1 : now;
  return Number(date) >= 1 && Number(date) <= daysInMonth(yearOf(noteDay), month)
    ? { month, date: Number(date) }
    : undefined;
}

function nextOf({ month, date }: DayOfYear, noteDay: Day): Day {
  const year = yearOf(noteDay);
  const day = dayOf(year, month, date) as Day;
  return day < noteDay ? (dayOf(year + 1, month, date) as Day) : day;
}

function isBefore(word: string | undefined): boolean {
  return word?.toLowerCase() === "before";
}

/** "in 10 days", "within a fortnight", "in two months". */
function afterSpan(written: string, unit: string, noteDay: Day): Day | undefined {
  const number = numberAt(wordsOf(written), 0)?.value;
  if (number === undefined || number > 1000) return undefined;
  const lower = unit.toLowerCase();
  if (!lower.startsWith("month"))
    return addDays(noteDay, number * (lower.startsWith("week") ? 7 : lower.startsWith("fort") ? 14 : 1));
  const months = monthOf(noteDay) - 1 + number;
  const year = yearOf(noteDay) + Math.floor(months / 12);
  const inIt = (months % 12) + 1;
  return dayOf(year, inIt, Math.min(Number(noteDay.slice(8)), daysInMonth(year, inIt)));
}

/** "by Friday" may be the note's own day; "next Friday" is the one of the week after. A bare weekday says nothing. */
function comingWeekday(found: Groups, noteDay: Day): Day | undefined {
  const later = found.weekLater === undefined ? 0 : 7;
  if (found.dayLead === undefined && found.dayWhich === undefined && later === 0) return undefined;
  const wanted = weekdayNumber(found.weekday ?? "");
  if (wanted === undefined) return undefined;
  const today = weekday(noteDay);
  const next = found.dayWhich?.toLowerCase() === "next";
  const day = addDays(noteDay, later + (next ? 7 - today + wanted : (wanted - today + 7) % 7));
  return isBefore(found.dayLead) ? addDays(day, -1) : day;
}

function inMonth(found: Groups, noteDay: Day): Day | undefined {
  const number = monthNumber((found.month ?? "").toLowerCase());
  // "the march of the slugs" and "this may be late" name no month.
  const said = found.monthLead ?? found.monthPart ?? (found.month === "may" ? undefined : found.which);
  if (number === undefined || said === undefined) return undefined;
  const now = monthOf(noteDay);
  const coming = number < now || (number === now && found.which?.toLowerCase() === "next") ? 1 : 0;
  const year = found.year === undefined ? yearOf(noteDay) + coming : Number(found.year);
  const first = dayOf(year, number, 1);
  const last = dayOf(year, number, daysInMonth(year, number));
  return first === undefined || last === undefined ? undefined : due({ first, last }, found.monthPart, found.monthLead);
}

function inSpan(found: Groups, noteDay: Day, southern: boolean): Day | undefined {
  const which = found.spanWhich?.toLowerCase();
  const span = (found.span ?? "").toLowerCase();
  const isSeason = /^(?:spring|summer|autumn|fall|winter)$/.test(span);
  // "the week" alone says nothing; "at the weekend", "in the spring" and "by the end of the month" do.
  if (which === undefined && !(isSeason && found.spanLead !== undefined)) return undefined;
  if (
    which === "the" &&
    found.spanPart === undefined &&
    !(found.spanLead !== undefined && (isSeason || span === "weekend"))
  ) {
    return undefined;
  }
  const period = isSeason
    ? seasonPeriod(span, noteDay, which === "next", southern)
    : calendarPeriod(span, noteDay, which === "next");
  // "Before this month is out" is no day of the month before.
  return due(period, found.spanPart, which === "this" && isBefore(found.spanLead) ? undefined : found.spanLead);
}

function calendarPeriod(span: string, noteDay: Day, next: boolean): Period {
  if (span === "week" || span === "weekend") {
    const monday = addDays(noteDay, 1 - weekday(noteDay) + (next ? 7 : 0));
    return { first: span === "week" ? monday : addDays(monday, 5), last: addDays(monday, 6) };
  }
  if (span === "month") {
    const index = monthOf(noteDay) - 1 + (next ? 1 : 0);
    const year = yearOf(noteDay) + Math.floor(index / 12);
    return monthsPeriod(year, (index % 12) + 1, 1);
  }
  return monthsPeriod(yearOf(noteDay) + (next ? 1 : 0), 1, 12);
}

/** The season that is now or comes first; with "next" the first that has not begun. */
function seasonPeriod(season: string, noteDay: Day, next: boolean, southern: boolean): Period {
  const northern = { spring: 3, summer: 6, autumn: 9, fall: 9, winter: 12 }[season] ?? 3;
  const begins = southern ? ((northern + 5) % 12) + 1 : northern;
  let period = monthsPeriod(yearOf(noteDay) - 1, begins, 3);
  for (let year = yearOf(noteDay); next ? period.first <= noteDay : period.last < noteDay; year++) {
    period = monthsPeriod(year, begins, 3);
  }
  return period;
}

function monthsPeriod(year: number, begins: number, months: number): Period {
  const index = begins - 1 + months - 1;
  const lastYear = year + Math.floor(index / 12);
  const lastMonth = (index % 12) + 1;
  return {
    first: dayOf(year, begins, 1) as Day,
    last: dayOf(lastYear, lastMonth, daysInMonth(lastYear, lastMonth)) as Day,
  };
}

/** Early is the first ten days of a month and mid the first twenty; of longer periods the same shares. */
function due(period: Period, part: string | undefined, lead: string | undefined): Day {
  const whole = Math.round((Date.parse(period.last) - Date.parse(period.first)) / 86_400_000) + 1;
  const week = /(first|second|third|last) (week|half)/i.exec(part ?? "");
  if (week !== null) {
    const days = week[2]?.toLowerCase() === "half" ? Math.ceil(whole / 2) : 7;
    const nth = ["first", "second", "third"].indexOf((week[1] ?? "").toLowerCase());
    const ends = nth < 0 || days * (nth + 1) >= whole ? period.last : addDays(period.first, days * (nth + 1) - 1);
    return isBefore(lead) ? addDays(ends, -days) : ends;
  }
  // "Before the end of October" is in October.
  if (isBefore(lead) && !/end/i.test(part ?? "")) return addDays(period.first, -1);
  const share = part === undefined ? 1 : /early|start|beginning/i.test(part) ? 1 / 3 : /mid/i.test(part) ? 2 / 3 : 1;
  return addDays(period.first, Math.floor(whole * share) - 1);
}
