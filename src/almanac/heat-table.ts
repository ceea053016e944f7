/**
 * Heat of a garden's weather on one scale, added up once so that any stretch of days costs two look-ups; and what is usual
 * for each day of the year, for days that nobody measured or that are still to come.
 */
import { addDays, daysBetween, isLeapYear, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";
import { type HeatScale, type HeatSum, heatOfDay } from "./heat-units.ts";
import type { Weather } from "./weather-series.ts";

export interface HeatTable {
  readonly scale: HeatScale;
  /** Heat over the days after `start` up to and with `end`, as far as it was measured. */
  between(start: Day, end: Day): HeatSum;
  /** The same with the usual heat for every day without a measure; undefined when nothing usual is known. */
  expected(start: Day, end: Day, known: Day): number | undefined;
  /**
   * The first day by which `heat` has come together after `start`, from what was measured up to `known` and what is usual
   * for the rest; undefined when that is not known or would take longer than `mostDays`.
   */
  dayReaching(start: Day, heat: number, known: Day): Day | undefined;
  /** Usual heat of a day of the year, degree days; undefined when the files do not cover the year. */
  usual(day: Day): number | undefined;
}

/** Days on each side over which the usual heat of a day is averaged, so that one odd week is not taken for the climate. */
const smoothing = 15;
/** Days of the year that must be covered before anything is called usual. */
const leastCovered = 300;
const mostDays = 500;

/** `until`: the last day that counts as known, so that a forecast can be checked as it would have been made then. */
export function heatTable(weather: Weather, scale: HeatScale, until?: Day): HeatTable {
  const first = weather.first;
  const last = until === undefined || (weather.last ?? "") < until ? weather.last : until;
  const length = first === undefined || last === undefined ? 0 : Math.max(0, daysBetween(first, last) + 1);
  const sums = new Float64Array(length + 1);
  const counts = new Uint32Array(length + 1);
  const heats = new Float64Array(length).fill(Number.NaN);
  for (const [day, { tmax, tmin }] of weather.days) {
    if (first === undefined || tmax === undefined || tmin === undefined) continue;
    const at = daysBetween(first, day);
    if (at < length) heats[at] = heatOfDay(tmax, tmin, scale);
  }
  for (let at = 0; at < length; at += 1) {
    const heat = heats[at] ?? Number.NaN;
    const known = !Number.isNaN(heat);
    sums[at + 1] = (sums[at] ?? 0) + (known ? heat : 0);
    counts[at + 1] = (counts[at] ?? 0) + (known ? 1 : 0);
  }
  const usualByDay = usualHeat(first, heats);

  const usual = (day: Day) => usualByDay?.[dayOfYear(day)];
  const heatOn = (day: Day, known: Day) => {
    const at = first === undefined || day > known ? -1 : daysBetween(first, day);
    const heat = at >= 0 && at < length ? heats[at] : undefined;
    return heat === undefined || Number.isNaN(heat) ? usual(day) : heat;
  };
  return {
    scale,
    usual,
    between(start, end) {
      const total = Math.max(0, daysBetween(start, end));
      if (first === undefined || total === 0) return { degreeDays: 0, days: 0, missing: total, scale };
      const clamp = (at: number) => Math.min(length, Math.max(0, at));
      const [from, to] = [clamp(daysBetween(first, start) + 1), clamp(daysBetween(first, end) + 1)];
      const days = (counts[to] ?? 0) - (counts[from] ?? 0);
      return { degreeDays: (sums[to] ?? 0) - (sums[from] ?? 0), days, missing: total - days, scale };
    },
    expected(start, end, known) {
      let sum = 0;
      for (let day = addDays(start, 1); day <= end; day = addDays(day, 1)) {
        const heat = heatOn(day, known);
        if (heat === undefined) return undefined;
        sum += heat;
      }
      return sum;
    },
    dayReaching(start, heat, known) {
      let sum = 0;
      let day = start;
      for (let step = 0; step < mostDays; step += 1) {
        if (sum >= heat) return day;
        day = addDays(day, 1);
        const more = heatOn(day, known);
        if (more === undefined) return undefined;
        sum += more;
      }
      return undefined;
    },
  };
}

/** Mean heat of each day of the year over all years, smoothed round the turn of the year. */
function usualHeat(first: Day | undefined, heats: Float64Array): Float64Array | undefined {
  if (first === undefined) return undefined;
  const sum = new Float64Array(366);
  const count = new Uint32Array(366);
  let at = dayOfYear(first);
  let year = yearOf(first);
  for (const heat of heats) {
    if (!Number.isNaN(heat)) {
      sum[at] = (sum[at] ?? 0) + heat;
      count[at] = (count[at] ?? 0) + 1;
    }
    at += 1;
    // Days are numbered as in a leap year: 29 February is skipped in the others, and the year turns after 366.
    if (at === 59 && !isLeapYear(year)) at = 60;
    if (at === 366) {
      at = 0;
      year += 1;
    }
  }
  if (count.reduce((covered, n) => covered + (n > 0 ? 1 : 0), 0) < leastCovered) return undefined;
  const usual = new Float64Array(366);
  for (let day = 0; day < 366; day += 1) {
    let [total, days] = [0, 0];
    for (let near = -smoothing; near <= smoothing; near += 1) {
      const other = (day + near + 366) % 366;
      total += sum[other] ?? 0;
      days += count[other] ?? 0;
    }
    if (days === 0) return undefined;
    usual[day] = total / days;
  }
  return usual;
}

/** 0 for 1 January to 365 for 31 December, numbered as in a leap year. */
function dayOfYear(day: Day): number {
  return daysBetween("2000-01-01", `2000${day.slice(4)}`);
}
