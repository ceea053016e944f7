/** Days written in figures with strokes, "4/23" and "23/4/26": which day of the calendar they may be. */
import { dayOf } from "../calendar.ts";
import type { GardenSettings } from "../model.ts";

export interface SlashedDay {
  readonly month: number;
  readonly date: number;
  /** Undefined where none is written. */
  readonly year?: number | undefined;
}

const slashed = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2}|\d{4}))?$/;

/** Whether "7/20" is the 20th of July: so it is written wherever the units or the English are those of the United States. */
export function writesMonthFirst({ units, language }: Pick<GardenSettings, "units" | "language">): boolean {
  return units === "us" || language === "en-US";
}

/**
 * The days such a text may be: none, one, or two that cannot be told apart. Where the month is known to stand first that is
 * the one, and "23/4", which has no 23rd month, is the 23rd of April all the same. Undefined for any other text.
 */
export function slashedDays(text: string, monthFirst = false): readonly SlashedDay[] | undefined {
  const [, first, second, written] = slashed.exec(text) ?? [];
  if (first === undefined || second === undefined) return undefined;
  const year = written === undefined ? undefined : Number(written.length === 2 ? `20${written}` : written);
  const [one, other] = [Number(first), Number(second)];
  // A leap year where none is written: the 29th of February is a day of some year.
  const isDay = ({ month, date }: SlashedDay) => dayOf(year ?? 2024, month, date) !== undefined;
  const days = [
    { month: one, date: other, year },
    { month: other, date: one, year },
  ].filter(isDay);
  return monthFirst || one === other ? days.slice(0, 1) : days;
}
