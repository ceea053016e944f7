/**
 * Days that a line names, wherever they stand: "(Fri)", "Thursday", "7/20" or "20/7" by the garden's language, "10.9.",
 * "on the 3rd", "two days ago", "St Patrick's Day". A day without a year is the latest one up to the note's day.
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
} from "../../calendar.ts";
import type { Day } from "../../model.ts";
import { isCapital, type Word } from "../line-words.ts";
import { numberAt } from "../numbers.ts";

export interface FoundDay {
  readonly day: Day;
  readonly end: number;
}

/** Days of the calendar that people name, as month and day. Movable feasts are left out. */
const feasts: Readonly<Record<string, string>> = {
  "st patricks day": "03-17",
  "st patricks": "03-17",
  "paddys day": "03-17",
  "christmas day": "12-25",
  "christmas eve": "12-24",
  "boxing day": "12-26",
  "st stephens day": "12-26",
  "new years day": "01-01",
  "new years eve": "12-31",
  "valentines day": "02-14",
  "may day": "05-01",
  "midsummer day": "06-24",
  "st davids day": "03-01",
  "st johns day": "06-24",
  halloween: "10-31",
};

const feastBegins = new Set(Object.keys(feasts).map((name) => name.split(" ")[0]));
const shortDays = /^(?:mon|tues?|weds?|thurs?|thu|fri|sat|sun)$/;

export function dayAt(words: readonly Word[], at: number, noteDay: Day, monthFirst: boolean): FoundDay | undefined {
  const word = words[at];
  if (word === undefined) return undefined;
  return (
    near(words, at, noteDay) ??
    ofWeek(words, at, noteDay) ??
    ago(words, at, noteDay) ??
    inFigures(words, at, noteDay, monthFirst) ??
    written(words, at, noteDay) ??
    ordinal(words, at, noteDay) ??
    feast(words, at, noteDay)
  );
}

/** The end of a date that no calendar has, "31 June": it counts nothing, and nobody knows which day was meant. */
export function noDayAt(words: readonly Word[], at: number): number | undefined {
  const ordinal = /^(?:st|nd|rd|th)$/.test(lower(words, at + 1)) ? 1 : 0;
  const [number, month, end] =
    words[at]?.kind === "number"
      ? [words[at], words[at + 1 + ordinal], at + 2 + ordinal]
      : [words[at + 1], words[at], at + 2];
  if (!/^\d{1,2}$/.test(number?.text ?? "") || month?.kind !== "word" || month.lower === "may") return undefined;
  return monthNumber(month.lower) !== undefined && Number(number?.text) > 28 ? end : undefined;
}

function lower(words: readonly Word[], at: number): string {
  return words[at]?.lower ?? "";
}

function near(words: readonly Word[], at: number, noteDay: Day): FoundDay | undefined {
  const word = lower(words, at);
  const two = `${word} ${lower(words, at + 1)}`;
  if (word === "yday" || word === "yesterday" || word === "yesterdays") {
    const part = /^(?:morning|afternoon|evening|night)$/.test(lower(words, at + 1));
    return { day: addDays(noteDay, -1), end: part ? at + 2 : at + 1 };
  }
  if (two === "last night") return { day: addDays(noteDay, -1), end: at + 2 };
  if (two === "this morning" || two === "this evening" || two === "this afternoon" || two === "this arvo")
    return { day: noteDay, end: at + 2 };
  if (word === "today" || word === "tonight") return { day: noteDay, end: at + 1 };
  if (two === "day before" && lower(words, at + 2) === "yesterday") return { day: addDays(noteDay, -2), end: at + 3 };
  return undefined;
}

/** "last Tuesday" is before the note's day; a weekday alone may be the note's own. "sun" and "sat" need a capital or a bracket. */
function ofWeek(words: readonly Word[], at: number, noteDay: Day): FoundDay | undefined {
  const last = lower(words, at) === "last" ? 1 : 0;
  const word = words[at + last];
  if (word === undefined || word.kind !== "word") return undefined;
  const short = shortDays.test(word.lower);
  if (!short && !/^(?:mon|tues|wednes|thurs|fri|satur|sun)days?$/.test(word.lower)) return undefined;
  if (word.lower === "sat" || word.lower === "sun") {
    const bracket = /^[(|[]$/.test(words[at + last - 1]?.text ?? "");
    const closes = at + last === 0 && /^[:,–-]$/.test(words[1]?.text ?? "");
    if (last === 0 && !bracket && !closes && !(isCapital(word) && at > 0)) return undefined;
  }
  if (/^(?:next|every|by|until|till|come|this coming)$/.test(lower(words, at - 1))) return undefined;
  // "Filming on Saturday so I weeded" tells of the Saturday to come.
  const lead = lower(words, at - 1) === "on" ? at - 2 : at - 1;
  if (lower(words, lead) === "filming" && !/^(?:was|were|been|after|while|finished)$/.test(lower(words, lead - 1)))
    return undefined;
  const number = weekdayNumber(word.lower.replace(/days$/, "day"));
  if (number === undefined) return undefined;
  const back = (weekday(noteDay) - number + 7) % 7;
  return { day: addDays(noteDay, -(last === 1 && back === 0 ? 7 : back)), end: at + last + 1 };
}

function ago(words: readonly Word[], at: number, noteDay: Day): FoundDay | undefined {
  const number = numberAt(words, at);
  if (number === undefined || !Number.isInteger(number.value) || number.value < 0 || number.value > 60)
    return undefined;
  const unit = lower(words, number.end);
  const days = /^days?$/.test(unit) ? 1 : /^(?:weeks?|wks?)$/.test(unit) ? 7 : /^fortnights?$/.test(unit) ? 14 : 0;
  if (days === 0 || !/^(?:ago|back|since)$/.test(lower(words, number.end + 1))) return undefined;
  return { day: addDays(noteDay, -days * number.value), end: number.end + 2 };
}

/** "7/20", "20/7/26", "10.9.", "2026-05-16", "2026/05/16" */
function inFigures(words: readonly Word[], at: number, noteDay: Day, monthFirst: boolean): FoundDay | undefined {
  const [a, mark, b] = [words[at], words[at + 1], words[at + 2]];
  if (a === undefined || a.kind !== "number") return undefined;
  const point = /^(\d{1,2})\.(\d{1,2})(?:\.(\d{2,4}))?$/.exec(a.text);
  // "10.9." at the head or behind a preposition is a day; "10.9 kg", "10.9" and the end of "pH 6.2." are amounts.
  const headed = at <= 1 || /^(?:on|until|till|by|from|since|am|the|\||\()$/.test(lower(words, at - 1));
  if (
    point !== null &&
    headed &&
    (point[3] !== undefined || (mark?.text === "." && mark.start === a.end && b !== undefined))
  ) {
    const found = calendarDay(Number(point[1]), Number(point[2]), point[3], noteDay);
    return found === undefined ? undefined : { day: found, end: point[3] === undefined ? at + 2 : at + 1 };
  }
  if (mark === undefined || b === undefined || b.kind !== "number" || mark.start !== a.end || b.start !== mark.end)
    return undefined;
  const [second, c] = [words[at + 3], words[at + 4]];
  const third = second?.text === mark.text && second.start === b.end && c?.kind === "number" && c.start === second.end;
  if (/^\d{4}$/.test(a.text) && third && (mark.text === "-" || mark.text === "/")) {
    const day = dayOf(Number(a.text), Number(b.text), Number(c?.text));
    return day === undefined ? undefined : { day, end: at + 5 };
  }
  if (mark.text !== "/" || !/^\d{1,2}$/.test(a.text) || !/^\d{1,2}$/.test(b.text)) return undefined;
  const [one, two] = [Number(a.text), Number(b.text)];
  const [day, month] = monthFirst ? [two, one] : [one, two];
  // "37/40" and "3/4 lb" are no days, and "5/8" of something is a share.
  if (!third && /^(?:of|lb|lbs|oz|kg|up|germ|germinated|in|inch|cup|pint|full|through)$/.test(lower(words, at + 3)))
    return undefined;
  const found = calendarDay(day, month, third ? c?.text : undefined, noteDay);
  return found === undefined ? undefined : { day: found, end: third ? at + 5 : at + 3 };
}

function calendarDay(day: number, month: number, year: string | undefined, noteDay: Day): Day | undefined {
  if (year !== undefined) return dayOf(Number(year.length === 2 ? `20${year}` : year), month, day);
  const here = dayOf(yearOf(noteDay), month, day);
  if (here === undefined) return undefined;
  if (here <= noteDay) return here;
  const before = dayOf(yearOf(noteDay) - 1, month, day);
  return daysBetween(noteDay, here) > 200 ? before : here;
}

/** "3 May", "May 3rd", "the 3rd of May" */
function written(words: readonly Word[], at: number, noteDay: Day): FoundDay | undefined {
  const word = words[at];
  if (word === undefined || (word.kind !== "number" && word.lower !== "the" && monthNumber(word.lower) === undefined))
    return undefined;
  const start = lower(words, at) === "the" ? at + 1 : at;
  for (const end of [start + 5, start + 4, start + 3, start + 2]) {
    const last = words[end - 1];
    if (last === undefined) continue;
    const text = words
      .slice(start, end)
      .map(({ text }) => text)
      .join(" ")
      .replace(/(\d) (st|nd|rd|th)\b/i, "$1$2");
    if (
      !/^(?:\d{1,2}(?:st|nd|rd|th)?(?: of)? [a-z]{3,9}|[a-z]{3,9} \d{1,2}(?:st|nd|rd|th)?)(?: ,? ?\d{4})?$/i.test(text)
    )
      continue;
    if (!words.slice(start, end).some(({ lower: part }) => monthNumber(part) !== undefined)) continue;
    const reading = parseDay(text, { onOrBefore: noteDay });
    if ("refused" in reading) continue;
    // A day long before the note without its year was more likely meant for the coming season.
    const far = !/\d{4}/.test(text) && daysBetween(reading.day, noteDay) > 200;
    const ahead = far ? parseDay(text, { onOrAfter: noteDay }) : reading;
    return { day: "refused" in ahead ? reading.day : ahead.day, end };
  }
  return undefined;
}

/** "on the 3rd", "the 14th": the latest such day of a month up to the note's day. */
function ordinal(words: readonly Word[], at: number, noteDay: Day): FoundDay | undefined {
  if (lower(words, at) !== "the") return undefined;
  const [number, ending] = [words[at + 1], words[at + 2]];
  if (number?.kind !== "number" || !/^(?:st|nd|rd|th)$/.test(ending?.lower ?? "")) return undefined;
  if (!/^(?:on|of|from|by|till|until|since|and)?$/.test(lower(words, at - 1))) return undefined;
  const after = words[at + 3];
  if (after?.kind === "word" && !/^(?:i|we|and|was|were|should|of|it|they|at|in)$/.test(after.lower)) return undefined;
  for (let back = 0; back < 3; back++) {
    const month = ((monthOf(noteDay) - 1 - back + 12) % 12) + 1;
    const day = dayOf(yearOf(noteDay) - (month > monthOf(noteDay) ? 1 : 0), month, Number(number.text));
    if (day !== undefined && day <= noteDay) return { day, end: at + 3 };
  }
  return undefined;
}

function feast(words: readonly Word[], at: number, noteDay: Day): FoundDay | undefined {
  if (!feastBegins.has(words[at]?.lower ?? "")) return undefined;
  for (const length of [3, 2, 1]) {
    const name = words
      .slice(at, at + length)
      .map(({ lower: part }) => part)
      .join(" ");
    const monthDay = feasts[name];
    if (monthDay === undefined) continue;
    const year = yearOf(noteDay);
    const day = `${year}-${monthDay}`;
    return { day: day <= noteDay ? day : `${year - 1}-${monthDay}`, end: at + length };
  }
  return undefined;
}
