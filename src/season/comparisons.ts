/**
 * This season against earlier ones, at the same day of the calendar and at the same heat: a late spring is neither a worse
 * gardener nor a worse variety.
 */
import { type HeatScale, type HeatTable, heatTable } from "../almanac/index.ts";
import { addDays, daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import { comparable, type HarvestSum } from "../tour/index.ts";
import { pickingsBetween, sumPickings } from "./results.ts";
import type { Picking, SeasonBook } from "./season-book.ts";
import { earlier, type Season, sameDayIn } from "./seasons.ts";

/** Growth from 40 °F (4.4 °C), the mean of the day less the base: the measure of the whole garden's heat. */
export const gardenScale: HeatScale = { method: "mean first", base: 40 / 9 };

const tables = new WeakMap<SeasonBook, HeatTable>();

export function gardenHeat(book: SeasonBook): HeatTable {
  const known = tables.get(book) ?? heatTable(book.weather, gardenScale);
  tables.set(book, known);
  return known;
}

export interface HeatStanding {
  /** Degree days since the season began. */
  readonly heat: number;
  /** Days without temperatures in it. */
  readonly missing: number;
  readonly lastYear?: number | undefined;
  /** Days by which the same heat came earlier (positive) or later than last season; undefined when it had not come or is not known. */
  readonly daysAhead?: number | undefined;
  readonly scale: HeatScale;
}

/** Share of a season's days so far that may lack temperatures before its heat is not compared. */
const mostMissing = 0.1;

/** Heat of a season up to a day, and how far that is before or behind the season before. */
export function heatStanding(book: SeasonBook, season: Season, on: Day): HeatStanding | undefined {
  const table = gardenHeat(book);
  const start = addDays(season.from, -1);
  const now = table.between(start, on);
  if (now.days === 0 || now.missing > mostMissing * (now.days + now.missing)) return undefined;
  const before = book.seasons.find(({ year }) => year === season.year - 1);
  const same = before === undefined ? undefined : sameDayIn(before, on, season);
  const then = before === undefined || same === undefined ? undefined : table.between(addDays(before.from, -1), same);
  const known = then !== undefined && then.days > 0 && then.missing <= mostMissing * (then.days + then.missing);
  const reached = known && before !== undefined ? dayOfHeat(book, before, now.degreeDays) : undefined;
  return {
    heat: now.degreeDays,
    missing: now.missing,
    lastYear: known ? then.degreeDays : undefined,
    daysAhead: reached === undefined || same === undefined ? undefined : daysBetween(same, reached),
    scale: gardenScale,
  };
}

/** The day of a season by which a heat had come together, as far as it was measured. */
export function dayOfHeat(book: SeasonBook, season: Season, heat: number): Day | undefined {
  const table = gardenHeat(book);
  const start = addDays(season.from, -1);
  if (table.between(start, season.to).degreeDays < heat) return undefined;
  let [low, high] = [0, daysBetween(season.from, season.to)];
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (table.between(start, addDays(season.from, middle)).degreeDays >= heat) high = middle;
    else low = middle + 1;
  }
  const day = addDays(season.from, low);
  const { days, missing } = table.between(start, day);
  return missing > mostMissing * (days + missing) ? undefined : day;
}

export interface Compared {
  readonly now: HarvestSum;
  /** Last season up to the same day of the calendar; undefined when there was none. */
  readonly lastYear?: HarvestSum | undefined;
  /** Last season up to the day on which it had had the same heat. */
  readonly atSameHeat?: { readonly day: Day; readonly sum: HarvestSum } | undefined;
  /** Mean weight of all earlier seasons with pickings, up to the same day; undefined when nothing was weighed. */
  readonly meanGrams?: { readonly grams: number; readonly seasons: number } | undefined;
  /** Whether now and last year are told in the same measures. */
  readonly alike: boolean;
}

/** What was picked of `which` so far, against earlier seasons. */
export function compareHarvest(
  book: SeasonBook,
  season: Season,
  on: Day,
  which: (picking: Picking) => boolean = () => true,
): Compared {
  const upTo = (one: Season, day: Day) => sumPickings(pickingsBetween(book, one.from, day).filter(which));
  const now = upTo(season, earlier(on, season.to));
  const former = book.seasons.filter(({ year }) => year < season.year);
  const before = former.at(-1);
  const lastYear = before === undefined ? undefined : upTo(before, sameDayIn(before, on, season));
  const standing = before === undefined ? undefined : heatStanding(book, season, on);
  const day = standing === undefined || before === undefined ? undefined : dayOfHeat(book, before, standing.heat);
  const sums = former.map((one) => upTo(one, sameDayIn(one, on, season))).filter(({ times }) => times > 0);
  const weighed = sums.filter(({ grams }) => grams > 0);
  return {
    now,
    lastYear: lastYear !== undefined && lastYear.times > 0 ? lastYear : undefined,
    atSameHeat: day === undefined || before === undefined ? undefined : { day, sum: upTo(before, day) },
    meanGrams:
      weighed.length === 0
        ? undefined
        : { grams: weighed.reduce((sum, { grams }) => sum + grams, 0) / weighed.length, seasons: weighed.length },
    alike: lastYear !== undefined && comparable(now, lastYear),
  };
}
