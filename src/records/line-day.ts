/**
 * The day a line tells of, when its last words name one: "today", "yesterday", "last Tuesday", "on 3 May", "two days ago".
 * Words of time anywhere else belong to what is told ("planted where the sowing of 3 May failed").
 */
import {
  addDays,
  dayOf,
  daysBetween,
  monthNumber,
  monthOf,
  parseDay,
  weekday,
  weekdayNumber,
  yearOf,
} from "../calendar.ts";
import type { Day } from "../model.ts";
import type { Word } from "./line-words.ts";
import { numberAt } from "./numbers.ts";
import { type SlashedDay, slashedDays } from "./slashed-days.ts";

export interface LineDay {
  /** Undefined when the words cannot be a day of the past; `what` and `fix` then say why. */
  readonly day?: Day | undefined;
  /** The first word that belongs to it; it goes to the end of the line. */
  readonly from: number;
  readonly rule?: "note/unclear-day" | "note/day-after-note" | undefined;
  readonly what?: string | undefined;
  readonly fix?: string | undefined;
}

/** After these a date tells of something else than the line's own day: "sown 2 March", "best since last Tuesday". */
const otherDay = new Set(
  (
    "since until till from than sown sowed planted started bought ordered due before after by of arrived potted left " +
    "last promised and to between next for in"
  ).split(" "),
);
const partsOfDay = new Set(["morning", "afternoon", "evening", "lunchtime", "noon"]);
/** Further than this before the note, a day without a year was more likely meant for the coming season. */
const halfYear = 183;

/** Reads the day in the last words before `stop`. Nothing before word `first` is looked at. `monthFirst`: "7/20" is in July. */
export function lineDay(
  words: readonly Word[],
  first: number,
  stop: number,
  noteDay: Day,
  monthFirst = false,
): LineDay | undefined {
  let end = stop;
  while (end > first && /^[.!)]$/.test(words[end - 1]?.text ?? "")) end -= 1;
  const last = words[end - 1];
  if (last === undefined || end - 1 < first) return undefined;
  return (
    nearDay(words, first, end, noteDay) ??
    weekdayOf(words, first, end, noteDay) ??
    writtenDay(words, first, end, noteDay, monthFirst)
  );
}

/** The words such a day ends in, or goes on from. */
const nearWords = new Set(["today", "tonight", "yesterday", "night", "ago", ...partsOfDay]);

/** "today", "yesterday evening" within the first words of a line, up to `stop`: where they begin and end. */
export function nearDayWithin(words: readonly Word[], first: number, stop: number, noteDay: Day) {
  for (let at = first; at < stop; at++) {
    if (!nearWords.has(words[at]?.lower ?? "")) continue;
    const found = nearDay(words, first, at + 1, noteDay);
    // "yesterday" may go on: "yesterday evening".
    const longer = nearDay(words, first, at + 2, noteDay);
    if (longer?.day !== undefined && at + 2 <= stop) return { ...longer, end: at + 2 };
    if (found?.day !== undefined && !otherDay.has(words[found.from - 1]?.lower ?? "")) return { ...found, end: at + 1 };
  }
  return undefined;
}

function nearDay(words: readonly Word[], first: number, end: number, noteDay: Day): LineDay | undefined {
  const lower = (at: number) => (at < first ? "" : (words[at]?.lower ?? ""));
  const at = end - 1;
  const word = lower(at);
  if (word === "today" || word === "tonight") return { day: noteDay, from: lower(at - 1) === "earlier" ? at - 1 : at };
  if (partsOfDay.has(word)) {
    if (lower(at - 1) === "this") return { day: noteDay, from: at - 1 };
    if (lower(at - 1) === "yesterday") return { day: addDays(noteDay, -1), from: at - 1 };
    return undefined;
  }
  if (word === "night" && lower(at - 1) === "last") return { day: addDays(noteDay, -1), from: at - 1 };
  if (word === "yesterday") {
    if (otherDay.has(lower(at - 1)) && lower(at - 1) !== "before") return undefined;
    const dayBefore = lower(at - 1) === "before" && lower(at - 2) === "day";
    if (dayBefore) return { day: addDays(noteDay, -2), from: lower(at - 3) === "the" ? at - 3 : at - 2 };
    return lower(at - 1) === "before" ? undefined : { day: addDays(noteDay, -1), from: at };
  }
  if (word === "ago") return daysAgo(words, first, at, noteDay);
  return undefined;
}

/** "3 days ago", "a week ago", "two weeks ago". */
function daysAgo(words: readonly Word[], first: number, ago: number, noteDay: Day): LineDay | undefined {
  const unit = words[ago - 1]?.lower;
  const days =
    unit === "day" || unit === "days" ? 1 : unit === "week" || unit === "weeks" ? 7 : unit === "fortnight" ? 14 : 0;
  if (days === 0) return undefined;
  for (const from of [ago - 4, ago - 3, ago - 2]) {
    const number = from < first ? undefined : numberAt(words, from);
    if (number?.end === ago - 1 && Number.isInteger(number.value))
      return { day: addDays(noteDay, -days * number.value), from };
  }
  return undefined;
}

/** "last Tuesday" is before the note's day; "on Tuesday" may be the note's own day. */
function weekdayOf(words: readonly Word[], first: number, end: number, noteDay: Day): LineDay | undefined {
  const at = partsOfDay.has(words[end - 1]?.lower ?? "") ? end - 2 : end - 1;
  const word = words[at];
  if (word === undefined || at < first || !/^(?:[a-z]+day|mon|tues?|weds?|thur?s?|fri|sat|sun)$/.test(word.lower))
    return undefined;
  const number = weekdayNumber(word.lower);
  if (number === undefined) return undefined;
  const before = at - 1 < first ? undefined : words[at - 1];
  const last = before?.lower === "last";
  if (!last && before?.lower !== "on" && before?.lower !== "this" && before?.text !== ",") return undefined;
  const from = before?.text === "," ? at : words[at - 2]?.lower === "on" && last ? at - 2 : at - 1;
  if (otherDay.has(words[from - 1]?.lower ?? "")) return undefined;
  const back = (weekday(noteDay) - number + 7) % 7;
  return { day: addDays(noteDay, -(last && back === 0 ? 7 : back)), from };
}

/** "on 3 May", "3 May 2026", "May 3rd", "on the 3rd", "2026-05-03"; a date in slashes that can be two days is asked about. */
function writtenDay(
  words: readonly Word[],
  first: number,
  end: number,
  noteDay: Day,
  monthFirst: boolean,
): LineDay | undefined {
  const last = words[end - 1];
  if (last === undefined) return undefined;
  const ordinal = last.lower === "st" || last.lower === "nd" || last.lower === "rd" || last.lower === "th";
  if (last.kind !== "number" && !ordinal && monthNumber(last.lower) === undefined) return undefined;
  for (let from = Math.max(first, end - 7); from < end; from++) {
    // "on the 3rd of May": the date itself begins at "3rd".
    let begins = from > first && words[from - 1]?.lower === "the" ? from - 1 : from;
    const on = begins > first && words[begins - 1]?.lower === "on";
    if (on) begins -= 1;
    if (begins > first && otherDay.has(words[begins - 1]?.lower ?? "")) continue;
    const found = dayWrittenIn(words, from, end, noteDay, on, monthFirst);
    if (found !== undefined) return { ...found, from: begins };
  }
  return undefined;
}

function dayWrittenIn(
  words: readonly Word[],
  from: number,
  end: number,
  noteDay: Day,
  afterOn: boolean,
  monthFirst: boolean,
): Omit<LineDay, "from"> | undefined {
  const text = words
    .slice(from, end)
    .map((word) => word.text)
    .join(" ")
    .replace(/ ?([-/]) ?/g, "$1")
    .replace(/(\d) (st|nd|rd|th)\b/, "$1$2");
  if (/^the \d{1,2}(st|nd|rd|th)$/.test(text))
    return afterOn ? dayOfMonth(Number(text.match(/\d+/)?.[0]), noteDay) : undefined;
  const slashed = afterOn ? slashedDays(text, monthFirst) : undefined;
  if (slashed !== undefined) {
    const [only, another] = slashed;
    if (only !== undefined && another === undefined) {
      return pastDay(text, dayBefore(only, noteDay), only.year !== undefined, noteDay);
    }
    return {
      rule: "note/unclear-day",
      what: `"${text}" ${only === undefined ? "is no day" : "can be read in two ways"}, so the line is taken to tell of the note's own day.`,
      fix: `Write the month as a word, or year, month and day, for example ${noteDay}.`,
    };
  }
  if (
    !/^(?:\d{4}-\d{1,2}-\d{1,2}|(?:[a-z]+day,? )?(?:\d{1,2}(?:st|nd|rd|th)?(?: of)? [a-z]{3,9}(?: ?,? \d{4})?|[a-z]{3,9} \d{1,2}(?:st|nd|rd|th)?(?: ?,? \d{4})?))$/i.test(
      text,
    )
  ) {
    return undefined;
  }
  const reading = parseDay(text.replace(/ ,/g, ","), { onOrBefore: noteDay });
  if ("refused" in reading) {
    if (reading.refused === "not a date") return undefined;
    const fix = `${reading.fix} Until then the line counts for the note's own day.`;
    return { rule: "note/unclear-day", what: reading.what, fix };
  }
  return pastDay(text, reading.day, /\d{4}/.test(text), noteDay);
}

/** A day without its year, the latest one up to the note's day. */
function dayBefore({ month, date, year }: SlashedDay, noteDay: Day): Day | undefined {
  if (year !== undefined) return dayOf(year, month, date);
  for (let back = 0; back <= 8; back++) {
    const day = dayOf(yearOf(noteDay) - back, month, date);
    if (day !== undefined && day <= noteDay) return day;
  }
  return undefined;
}

/** A day that has been; one to come, or so long before that the coming one was more likely meant, is asked about. */
function pastDay(text: string, day: Day | undefined, yearWritten: boolean, noteDay: Day): Omit<LineDay, "from"> {
  const far = day !== undefined && !yearWritten && daysBetween(day, noteDay) > halfYear;
  if (day !== undefined && day <= noteDay && !far) return { day };
  return {
    rule: "note/day-after-note",
    what: `"${text}" is after the day of this note, ${noteDay}, so the line is taken to tell of the note's own day.`,
    fix: 'Correct the day, or write what is still to come as a "to do" line.',
  };
}

/** "on the 3rd": the latest 3rd of a month up to the note's day. */
function dayOfMonth(number: number, noteDay: Day): Omit<LineDay, "from"> | undefined {
  for (let back = 0; back < 3; back++) {
    const month = ((monthOf(noteDay) - 1 - back + 12) % 12) + 1;
    const day = dayOf(yearOf(noteDay) - (month > monthOf(noteDay) ? 1 : 0), month, number);
    if (day !== undefined && day <= noteDay) return { day };
  }
  return undefined;
}
