/**
 * When a planting should flower or be ready, as a window.
 *
 * The variety's days, slower while the days are short, times what this garden's own plantings of the crop took against
 * theirs. Where weather is known, the same is done in heat, days turned into degree days by what is usual here, and the two
 * are averaged: heat knows a cold spring, days know the light (scripts/bench-season.ts prints what that gains). The width
 * comes from how far such forecasts were off here before.
 */
import { cropFacts, type HeatScale, type HeatTable, heatTable } from "../almanac/index.ts";
import { addDays, daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import { allTimed, daysOfYearApart, promisedDay, type Timed, waits } from "./maturity.ts";
import type { SeasonBook } from "./season-book.ts";

export interface Forecast {
  readonly timed: Timed;
  /** The window in which it should come about four times in five. */
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
  readonly basis: ForecastBasis;
}

export interface ForecastBasis {
  /** Real days over catalogue days, shrunk towards 1; exactly 1 when nothing was learned. */
  readonly ratio: number;
  /** Own plantings it was learned from. */
  readonly learnedFrom: number;
  /** The heat of the days so far was reckoned with. */
  readonly byHeat: boolean;
}

/** As many plantings of ratio 1 are added to the own ones, so that two odd ones don't carry a crop away (common practice of shrinkage). */
const priorPlantings = 2;
/** Plantings teach one another when they were begun within so many days of the same time of year: an autumn lettuce says nothing of a spring one. */
const sameTimeOfYear = 45;
/** A planting that took more than 1.65 times its days, or less than their 0.6, is taken for a note missed, up to that. */
const mostTold = 0.5;
/** Spread of log(real / forecast) before anything is known here, and what it weighs in plantings. */
const priorSpread = 0.15;
const priorSpreadPlantings = 8;
/** Standard normal quantile that leaves a tenth on each side. */
const fourInFive = 1.2816;

/** Days by which short days must delay a crop before heat is left out of its forecast. */
const leastHeldBack = 14;

/** Used for crops that no handbook row knows: growth from 40 °F, as for most garden crops. */
const usualScale: HeatScale = { method: "mean first", base: 40 / 9 };

/**
 * Makes forecasts from what was known on a day: plantings that had reached their goal and weather that had been, which is
 * how they are checked against the past. What weather is usual is taken from all years of the files.
 */
export function forecaster(book: SeasonBook) {
  const tables = new Map<string, HeatTable>();
  const heatFor = ({ lot }: Timed): HeatTable => {
    const scale = cropFacts(lot.crop?.id)?.heat.value ?? usualScale;
    const key = `${scale.method} ${scale.base} ${scale.cap ?? ""}`;
    const known = tables.get(key) ?? heatTable(book.weather, scale);
    tables.set(key, known);
    return known;
  };
  const promised = new Map<Timed, number>();
  /** The variety's days, as they pass at the time of year in which it was begun. */
  const promisedDays = (one: Timed): number => {
    const known = promised.get(one) ?? daysBetween(one.begun, promisedDay(one, book.weather.latitude));
    promised.set(one, known);
    return known;
  };
  const byCrop = Map.groupBy(
    allTimed(book).filter(({ reached }) => reached !== undefined),
    ({ lot }) => lot.crop?.id ?? "",
  );

  /** Plantings of the crop begun at the same time of year that had reached their goal before a day. */
  const teachers = (one: Timed, on: Day): readonly Timed[] => {
    const crop = one.lot.crop?.id;
    if (crop === undefined || waits(crop)) return [];
    return (byCrop.get(crop) ?? []).filter(
      (other) =>
        other.lot !== one.lot &&
        (other.reached ?? "") < on &&
        other.goal === one.goal &&
        daysOfYearApart(other.begun, one.begun) <= sameTimeOfYear,
    );
  };

  /** The likely day, from what was known on `on`. */
  const likely = (one: Timed, on: Day): { readonly day: Day; readonly basis: ForecastBasis } => {
    const own = teachers(one, on);
    const ratio = Math.exp(
      shrunk(own.map((other) => Math.log(daysBetween(other.begun, other.reached ?? on) / promisedDays(other)))),
    );
    const byDays = Math.max(1, promisedDays(one) * ratio);
    // In short days light holds plants back more than cold does, and heat alone would be hasty.
    const light = promisedDays(one) - one.catalogueDays < leastHeldBack;
    const byHeat = light ? daysByHeat(one, own, on, heatFor(one)) : undefined;
    const days = byHeat === undefined ? byDays : (byDays + byHeat) / 2;
    return {
      day: addDays(one.begun, Math.round(days)),
      basis: { ratio, learnedFrom: own.length, byHeat: byHeat !== undefined },
    };
  };

  const errors = new Map<Timed, number>();
  /** log(real / forecast) of a planting that reached its goal, the forecast made on the day it was begun. */
  const errorOf = (one: Timed): number => {
    const known = errors.get(one);
    if (known !== undefined) return known;
    const forecast = Math.max(1, daysBetween(one.begun, likely(one, one.begun).day));
    const error = within(Math.log(daysBetween(one.begun, one.reached ?? one.begun) / forecast), mostTold);
    errors.set(one, error);
    return error;
  };

  const spreadOn = (on: Day): number => {
    let [sum, n] = [priorSpreadPlantings * priorSpread ** 2, priorSpreadPlantings];
    for (const lots of byCrop.values()) {
      for (const one of lots) {
        if ((one.reached ?? "") >= on || waits(one.lot.crop?.id)) continue;
        sum += errorOf(one) ** 2;
        n += 1;
      }
    }
    return Math.sqrt(sum / n);
  };
  const spreads = new Map<Day, number>();

  return function forecast(one: Timed, on: Day): Forecast {
    const { day, basis } = likely(one, on);
    const spread = spreads.get(on) ?? spreadOn(on);
    spreads.set(on, spread);
    const days = Math.max(1, daysBetween(one.begun, day));
    const factor = Math.exp(fourInFive * spread);
    return {
      timed: one,
      from: addDays(one.begun, Math.round(days / factor)),
      likely: day,
      to: addDays(one.begun, Math.round(days * factor)),
      basis,
    };
  };
}

/** Days from the beginning until the heat has come together that the variety's days bring in a usual year here. */
function daysByHeat(one: Timed, own: readonly Timed[], on: Day, heat: HeatTable): number | undefined {
  const usual = ({ begun, catalogueDays }: Timed) => heat.expected(begun, addDays(begun, catalogueDays), "");
  const needed = usual(one);
  if (needed === undefined || needed <= 0) return undefined;
  const ratios = own.flatMap((other) => {
    const had = other.reached === undefined ? undefined : heat.expected(other.begun, other.reached, on);
    const promised = usual(other);
    return had === undefined || promised === undefined || had <= 0 || promised <= 0 ? [] : [Math.log(had / promised)];
  });
  const day = heat.dayReaching(one.begun, needed * Math.exp(shrunk(ratios)), on);
  return day === undefined ? undefined : daysBetween(one.begun, day);
}

function shrunk(logs: readonly number[]): number {
  return logs.reduce((sum, log) => sum + within(log, mostTold), 0) / (logs.length + priorPlantings);
}

function within(value: number, most: number): number {
  return Math.min(most, Math.max(-most, value));
}
