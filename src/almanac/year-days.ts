/** Days of the year as numbers, for tables by day of the year and for walks through years without making a string a step. */
import { daysBetween, isLeapYear, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";

/** Length of a table by day of the year. */
export const YEAR_DAYS = 366;

/** 0 for 1 January to 365 for 31 December, numbered as in a leap year. */
export function dayOfYear(day: Day): number {
  return daysBetween("2000-01-01", `2000${day.slice(4)}`);
}

/** Gives the number of the day after `day`, then of the next, without end; 29 February is passed over where there is none. */
export function daysAfter(day: Day): () => number {
  let at = dayOfYear(day);
  let year = yearOf(day);
  return () => {
    at += 1;
    if (at === 59 && !isLeapYear(year)) at = 60;
    if (at === YEAR_DAYS) {
      at = 0;
      year += 1;
    }
    return at;
  };
}
