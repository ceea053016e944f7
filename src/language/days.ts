/** Days, weekdays and months, written as the garden's English writes them: "21 April", "April 21". */
import { daysBetween, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";

export interface DaySpeech {
  /** BCP 47 tag: garden.settings fits here. */
  readonly language: string;
  /** The day from which it is said: the year is left out when it goes without saying. */
  readonly near?: Day | undefined;
}

/** Making an Intl formatter costs a thousand times what using it does, and a season's sentences name thousands of days. */
const formatters = new Map<string, (day: Day) => string>();

function formatter(language: string, shape: string, options: Intl.DateTimeFormatOptions): (day: Day) => string {
  const key = `${language} ${shape}`;
  const known = formatters.get(key);
  if (known !== undefined) return known;
  const format = new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" });
  const said = new Map<Day, string>();
  const made = (day: Day) => {
    const words = said.get(day) ?? format.format(Date.parse(day));
    said.set(day, words);
    return words;
  };
  formatters.set(key, made);
  return made;
}

/**
 * "21 April", or "21 April 2025" when the year has to be said: no day to speak from is given, or it lies in another year
 * and more than half a year away ("28 December" is understood in March, not in November).
 */
export function sayDay(day: Day, { language, near }: DaySpeech): string {
  const understood = goesWithoutYear(day, near);
  const shape = understood ? "day" : "day of year";
  const options: Intl.DateTimeFormatOptions = { day: "numeric", month: "long" };
  return formatter(language, shape, understood ? options : { ...options, year: "numeric" })(day);
}

/** Whether a day said on another is understood without its year. */
function goesWithoutYear(day: Day, near: Day | undefined): boolean {
  return near !== undefined && (yearOf(near) === yearOf(day) || Math.abs(daysBetween(day, near)) <= 183);
}

/** "Tuesday". */
export function sayWeekday(day: Day, { language }: DaySpeech): string {
  return formatter(language, "weekday", { weekday: "long" })(day);
}

/** "April", or "April 2025" when the year has to be said. */
export function sayMonth(day: Day, { language, near }: DaySpeech): string {
  const understood = near !== undefined && yearOf(near) === yearOf(day);
  const options: Intl.DateTimeFormatOptions = understood ? { month: "long" } : { month: "long", year: "numeric" };
  return formatter(language, understood ? "month" : "month of year", options)(day);
}

/** "Monday 13 July", "Monday, July 13". */
export function sayWeekdayAndDay(day: Day, { language, near }: DaySpeech): string {
  const understood = goesWithoutYear(day, near);
  const options: Intl.DateTimeFormatOptions = { weekday: "long", day: "numeric", month: "long" };
  const shape = understood ? "weekday and day" : "weekday and day of year";
  return formatter(language, shape, understood ? options : { ...options, year: "numeric" })(day);
}

/** "Apr", as charts have it. */
export function sayShortMonth(day: Day, { language }: DaySpeech): string {
  return formatter(language, "short month", { month: "short" })(day);
}
