/** Which of a viewpoint's photos are worth a comparison copy: a year of weeks, and a photo a month of the years before. */
import { addDays, daysBetween, inYear, monthDayOf, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";

interface Dated {
  readonly photo: { readonly day: Day };
}

/** Days that two visits may lie apart and still be "the same week" in two years. */
export const sameWeekDays = 10;

/** A Monday, from which weeks are counted. */
const someMonday = "2024-01-01";

/**
 * The last photo of each week within a year before today; before that the last of each month, and of each week around the same
 * day of every year. In order of time, as given; photos after today are left out.
 */
export function framesToCompare<Frame extends Dated>(frames: readonly Frame[], today: Day): readonly Frame[] {
  const yearAgo = addDays(today, -366);
  const last = new Map<string, Frame>();
  for (const frame of frames) {
    const { day } = frame.photo;
    if (day > today) continue;
    const week = `week ${Math.floor(daysBetween(someMonday, day) / 7)}`;
    const isNear = Math.abs(daysBetween(inYear(monthDayOf(today), yearOf(day)), day)) <= sameWeekDays;
    last.set(day > yearAgo || isNear ? week : day.slice(0, 7), frame);
  }
  const kept = new Set(last.values());
  return frames.filter((frame) => kept.has(frame));
}
