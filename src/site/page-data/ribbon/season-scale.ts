/** Where the days of a season lie across a ribbon: its months are all of one width. */
import { addDays, daysInMonth, monthOf, yearOf } from "../../../calendar.ts";
import type { Season } from "../../../garden/index.ts";
import type { Day } from "../../../model.ts";

export interface SeasonScale {
  /** First days of its months; a season that begins within a month has thirteen. */
  readonly months: readonly Day[];
  /** 0 to 100; days outside lie at the nearer end. */
  at(day: Day): number;
  /** A bar's beginning and width, never thinner than can be seen. */
  span(from: Day, to: Day): { readonly at: number; readonly wide: number };
}

/** The thinnest bar that is still seen, in hundredths of the ribbon. */
const THINNEST = 0.8;

export function seasonScale({ from, to }: Pick<Season, "from" | "to">): SeasonScale {
  const months: Day[] = [`${from.slice(0, 7)}-01`];
  for (let next = nextMonth(months[0] ?? from); next <= to; next = nextMonth(next)) months.push(next);
  const count = (day: Day) => yearOf(day) * 12 + monthOf(day);
  const first = count(from);
  const at = (day: Day) => {
    const within = (Number(day.slice(8)) - 1) / daysInMonth(yearOf(day), monthOf(day));
    const share = (count(day) - first + within) / months.length;
    return tenth(Math.min(1, Math.max(0, share)) * 100);
  };
  return {
    months,
    at,
    span(from, to) {
      const wide = tenth(Math.max(THINNEST, at(to) - at(from)));
      return { at: Math.min(at(from), tenth(100 - wide)), wide };
    },
  };
}

function tenth(n: number): number {
  return Math.round(n * 10) / 10;
}

function nextMonth(first: Day): Day {
  return `${addDays(first, 32).slice(0, 7)}-01`;
}
