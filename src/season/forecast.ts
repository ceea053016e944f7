/**
 * When a planting should flower or be ready, as a window.
 *
 * The variety's days, slower while the days are short, times what this garden's own plantings of the crop took against
 * theirs. Where weather is known, the same is done in heat, days turned into degree days by what is usual here, and the two
 * are averaged: heat knows a cold spring, days know the light (scripts/bench-season.ts prints what that gains). The width
 * comes from how far such forecasts were off here before, and is wider where few plantings taught it. What has not come by the
 * day of asking lies ahead: the window is that of what is left, and plantings overdue teach as well as those that came.
 */
import { cropFacts, type HeatScale, type HeatTable, heatTable } from "../almanac/index.ts";
import { addDays, daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import { allTimed, daysOfYearApart, promisedDay, type Timed, waits } from "./maturity.ts";
import { meanAbove, pointAbove, shareAbove } from "./normal-curve.ts";
import type { SeasonBook } from "./season-book.ts";

export interface Forecast {
  readonly timed: Timed;
  /** The window in which it should come about four times in five, when it has not come by the day of asking. */
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
  /** The window as it was before anybody waited in vain. */
  readonly expected: { readonly from: Day; readonly by: Day };
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
/**
 * Spread of log(real / forecast) before anything is known here, by how many plantings taught the forecast, and what it weighs in
 * plantings: a packet alone is off by more than a packet put right (common practice).
 */
const priorSpreads = [
  { taught: 3, spread: 0.15 },
  { taught: 1, spread: 0.2 },
  { taught: 0, spread: 0.25 },
] as const;
const priorSpreadPlantings = 5;
/** Shares of the window: a tenth is left on each side. */
const tenth = 0.1;
/** Rounds in which overdue plantings and the ratio they teach are brought into agreement; they settle in two or three. */
const rounds = 4;

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
  const all = Map.groupBy(allTimed(book), ({ lot }) => lot.crop?.id ?? "");
  const byCrop = new Map([...all].map(([crop, lots]) => [crop, lots.filter(({ reached }) => reached !== undefined)]));

  /** Plantings of the crop begun at the same time of year. */
  const alike = (one: Timed): readonly Timed[] => {
    const crop = one.lot.crop?.id;
    if (crop === undefined || waits(crop)) return [];
    return (all.get(crop) ?? []).filter(
      (other) =>
        other.lot !== one.lot && other.goal === one.goal && daysOfYearApart(other.begun, one.begun) <= sameTimeOfYear,
    );
  };
  /** Those that had reached their goal before a day, and those that lived on it and had not. */
  const teachers = (one: Timed, on: Day): { readonly came: readonly Timed[]; readonly overdue: readonly Timed[] } => {
    const others = alike(one);
    return {
      came: others.filter(({ reached }) => reached !== undefined && reached < on),
      overdue: others.filter(
        ({ begun, reached, lot }) =>
          begun < on && (reached === undefined || reached >= on) && (lot.planting.ended ?? on) >= on,
      ),
    };
  };

  /** The day it should come about, from what was known on `on`. */
  const expected = (one: Timed, on: Day): { readonly day: Day; readonly basis: ForecastBasis } => {
    const { came, overdue } = teachers(one, on);
    const ratio = Math.exp(
      taught(
        came.map((other) => Math.log(daysBetween(other.begun, other.reached ?? on) / promisedDays(other))),
        overdue.map((other) => Math.log(daysBetween(other.begun, on) / promisedDays(other))),
      ),
    );
    const byDays = Math.max(1, promisedDays(one) * ratio);
    // In short days light holds plants back more than cold does, and heat alone would be hasty.
    const light = promisedDays(one) - one.catalogueDays < leastHeldBack;
    const byHeat = light ? daysByHeat(one, came, on, heatFor(one)) : undefined;
    const days = byHeat === undefined ? byDays : (byDays + byHeat) / 2;
    return {
      day: addDays(one.begun, Math.round(days)),
      basis: { ratio, learnedFrom: came.length, byHeat: byHeat !== undefined },
    };
  };

  const errors = new Map<Timed, { readonly error: number; readonly learnedFrom: number }>();
  /** log(real / forecast) of a planting that reached its goal, the forecast made on the day it was begun. */
  const errorOf = (one: Timed) => {
    const known = errors.get(one);
    if (known !== undefined) return known;
    const { day, basis } = expected(one, one.begun);
    const forecast = Math.max(1, daysBetween(one.begun, day));
    const error = within(Math.log(daysBetween(one.begun, one.reached ?? one.begun) / forecast), mostTold);
    const made = { error, learnedFrom: basis.learnedFrom };
    errors.set(one, made);
    return made;
  };

  /** By how many plantings taught a forecast: each kind is off by its own. */
  const spreadsOn = (on: Day): readonly number[] =>
    priorSpreads.map(({ spread }, kind) => {
      let [sum, n] = [priorSpreadPlantings * spread ** 2, priorSpreadPlantings];
      for (const lots of byCrop.values()) {
        for (const one of lots) {
          if ((one.reached ?? "") >= on || waits(one.lot.crop?.id)) continue;
          const { error, learnedFrom } = errorOf(one);
          if (kindOf(learnedFrom) !== kind) continue;
          sum += error ** 2;
          n += 1;
        }
      }
      return Math.sqrt(sum / n);
    });
  const spreads = new Map<Day, readonly number[]>();

  return function forecast(one: Timed, on: Day): Forecast {
    const { day, basis } = expected(one, on);
    const known = spreads.get(on) ?? spreadsOn(on);
    spreads.set(on, known);
    const spread = known[kindOf(basis.learnedFrom)] ?? priorSpreads[0].spread;
    const days = Math.max(1, daysBetween(one.begun, day));
    const at = (z: number) => addDays(one.begun, Math.round(days * Math.exp(z * spread)));
    const waited = daysBetween(one.begun, on);
    /** Share of such plantings that have not come by now. */
    const left = waited <= 0 ? 1 : shareAbove(Math.log(waited / days) / spread);
    const after = (share: number) => later(at(pointAbove(left * share)), on);
    return {
      timed: one,
      from: after(1 - tenth),
      likely: after(1 / 2),
      to: after(tenth),
      expected: { from: at(pointAbove(1 - tenth)), by: at(pointAbove(tenth)) },
      basis,
    };
  };
}

function kindOf(learnedFrom: number): number {
  return priorSpreads.findIndex(({ taught: least }) => learnedFrom >= least);
}

/** The day of asking itself has not brought it yet, as far as anybody noted. */
function later(day: Day, on: Day): Day {
  return day < on ? on : day;
}

/**
 * Mean of the logarithms, shrunk towards 0. What is overdue is taken to come where such things come that have waited so long
 * (Buckley and James, Biometrika 66:429-436, 1979, for a mean alone; from memory).
 */
function taught(came: readonly number[], overdue: readonly number[]): number {
  const spread = priorSpreads[0].spread;
  let ratio = shrunk(came);
  for (let round = 0; round < rounds && overdue.length > 0; round += 1) {
    const late = overdue.filter((waited) => waited > ratio);
    ratio = shrunk([...came, ...late.map((waited) => ratio + spread * meanAbove((waited - ratio) / spread))]);
  }
  return ratio;
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
