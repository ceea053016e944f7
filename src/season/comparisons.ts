/**
 * This season against earlier ones, at the same day of the calendar and at the same heat: a late spring is neither a worse
 * gardener nor a worse variety.
 */
import { type HeatScale, type HeatTable, heatTable } from "../almanac/index.ts";
import { addDays, daysBetween } from "../calendar.ts";
import { earlier, type Picking, type Season, sameDayIn } from "../garden/index.ts";
import type { Day, Picked } from "../model.ts";
import { comparable, pickedInAll } from "../picked.ts";
import { pickingsBetween } from "./results.ts";
import type { SeasonBook } from "./season-book.ts";

/** Growth from 40 °F (4.4 °C), the mean of the day less the base: the measure of the whole garden's heat. */
export const gardenScale: HeatScale = { method: "mean first", base: 40 / 9 };

const tables = new WeakMap<SeasonBook, HeatTable>();

export function gardenHeat(book: SeasonBook): HeatTable {
  const known = tables.get(book) ?? heatTable(book.weather, gardenScale);
  tables.set(book, known);
  return known;
}

export interface HeatStanding {
  /** Degree days since the season began; where last season is known, of the days that both have. */
  readonly heat: number;
  /** Last season's, of the same days. */
  readonly lastYear?: number | undefined;
  /** Days that both have, of all days so far; undefined without a last season. */
  readonly days?: { readonly inBoth: number; readonly of: number } | undefined;
  /** The day on which last season had had as much; undefined when that is not known. */
  readonly reached?: Day | undefined;
  /** Days by which the same heat came earlier (positive) or later than last season. */
  readonly daysAhead?: number | undefined;
  readonly scale: HeatScale;
}

/** Share of a season's days so far that may lack temperatures before its heat is not told. */
const mostMissing = 0.1;
/** Sums of the same heats in another order differ in the last bits. */
const rounding = 1e-6;
/** Share of the days so far that both seasons must have before they are compared. */
const enoughInBoth = 0.8;

/**
 * Heat of a season up to a day, and how far that is before or behind the season before. Only days that both seasons have are
 * added up: twenty days without a reading are no cold summer.
 */
export function heatStanding(book: SeasonBook, season: Season, on: Day): HeatStanding | undefined {
  const table = gardenHeat(book);
  const now = table.between(addDays(season.from, -1), on);
  if (now.days === 0 || now.missing > mostMissing * (now.days + now.missing)) return undefined;
  const alone: HeatStanding = { heat: now.degreeDays, scale: gardenScale };
  const before = book.seasons.find(({ year }) => year === season.year - 1);
  if (before === undefined) return alone;
  const all = daysBetween(season.from, on) + 1;
  const heatOf = (day: Day) => {
    const { days, degreeDays } = table.between(addDays(day, -1), day);
    return days === 0 ? undefined : degreeDays;
  };
  let [heat, lastYear, inBoth] = [0, 0, 0];
  const ofLast: { readonly day: Day; readonly sum: number }[] = [];
  for (let at = 0; at < all; at += 1) {
    const day = addDays(season.from, at);
    const there = sameDayIn(before, day, season);
    const [own, then] = [heatOf(day), heatOf(there)];
    if (own === undefined || then === undefined || day.endsWith("-02-29")) continue;
    heat += own;
    lastYear += then;
    inBoth += 1;
    ofLast.push({ day: there, sum: lastYear });
  }
  if (inBoth < enoughInBoth * all) return alone;
  const same = sameDayIn(before, on, season);
  const reached =
    ofLast.find(({ sum }) => sum >= heat - rounding)?.day ?? laterReached(heatOf, heat - lastYear, same, before);
  return {
    heat,
    lastYear,
    days: { inBoth, of: all },
    reached,
    daysAhead: reached === undefined ? undefined : daysBetween(same, reached),
    scale: gardenScale,
  };
}

/** The day after `from` by which last season had the heat that was wanting; undefined when it never had, or days are not known. */
function laterReached(
  heatOf: (day: Day) => number | undefined,
  wanting: number,
  from: Day,
  { to }: Season,
): Day | undefined {
  let [sum, known] = [0, 0];
  for (let at = 1; addDays(from, at) <= to; at += 1) {
    const heat = heatOf(addDays(from, at));
    if (heat !== undefined) [sum, known] = [sum + heat, known + 1];
    if (sum >= wanting) return known >= at * (1 - mostMissing) ? addDays(from, at) : undefined;
  }
  return undefined;
}

export interface Compared {
  readonly now: Picked;
  /** Last season up to the same day of the calendar; undefined when there was none. */
  readonly lastYear?: Picked | undefined;
  /** Last season up to the day on which it had had the same heat. */
  readonly atSameHeat?: { readonly day: Day; readonly sum: Picked } | undefined;
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
  const upTo = (one: Season, day: Day) => pickedInAll(pickingsBetween(book, one.from, day).filter(which));
  const now = upTo(season, earlier(on, season.to));
  const former = book.seasons.filter(({ year }) => year < season.year);
  const before = former.at(-1);
  const lastYear = before === undefined ? undefined : upTo(before, sameDayIn(before, on, season));
  const standing = before === undefined ? undefined : heatStanding(book, season, on);
  const day = standing?.reached;
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
