/**
 * Heat of a garden's weather on one scale, added up once so that any stretch of days costs two look-ups; and what is usual
 * for each day of the year, for days that nobody measured or that are still to come.
 */
import { addDays, daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import { type HeatScale, type HeatSum, heatOfDay } from "./heat-units.ts";
import type { Weather } from "./weather-series.ts";
import { dayOfYear, daysAfter, YEAR_DAYS } from "./year-days.ts";

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
  /** Heat of the days after `start`, one by one: measured up to `known`, usual where that is not. */
  const heatAfter = (start: Day, known: Day) => {
    const next = daysAfter(start);
    let at = first === undefined ? -1 : daysBetween(first, start);
    const lastKnown = first === undefined || known === "" ? -1 : daysBetween(first, known);
    return () => {
      const ofYear = next();
      at += 1;
      const heat = at >= 0 && at < length && at <= lastKnown ? heats[at] : undefined;
      return heat === undefined || Number.isNaN(heat) ? usualByDay?.[ofYear] : heat;
    };
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
      const next = heatAfter(start, known);
      let sum = 0;
      for (let days = daysBetween(start, end); days > 0; days -= 1) {
        const heat = next();
        if (heat === undefined) return undefined;
        sum += heat;
      }
      return sum;
    },
    dayReaching(start, heat, known) {
      const next = heatAfter(start, known);
      let sum = 0;
      for (let days = 0; days < mostDays; days += 1) {
        if (sum >= heat) return addDays(start, days);
        const more = next();
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
  const sum = new Float64Array(YEAR_DAYS);
  const count = new Uint32Array(YEAR_DAYS);
  const next = daysAfter(addDays(first, -1));
  for (const heat of heats) {
    const at = next();
    if (Number.isNaN(heat)) continue;
    sum[at] = (sum[at] ?? 0) + heat;
    count[at] = (count[at] ?? 0) + 1;
  }
  if (count.reduce((covered, n) => covered + (n > 0 ? 1 : 0), 0) < leastCovered) return undefined;
  const usual = new Float64Array(YEAR_DAYS);
  for (let day = 0; day < YEAR_DAYS; day += 1) {
    let [total, days] = [0, 0];
    for (let near = -smoothing; near <= smoothing; near += 1) {
      const other = (day + near + YEAR_DAYS) % YEAR_DAYS;
      total += sum[other] ?? 0;
      days += count[other] ?? 0;
    }
    if (days === 0) return undefined;
    usual[day] = total / days;
  }
  return usual;
}
