/**
 * Frost in the records of a station, and the days that are left. Thresholds of the US National Weather Service: frost 36 °F,
 * freeze 32 °F, hard freeze 28 °F; a minimum equal to the threshold counts.
 */

import { addDays, daysBetween, inYear, yearOf } from "../calendar.ts";
import { celsiusOf } from "../measures.ts";
import type { Day } from "../model.ts";
import type { WeatherDay } from "./weather-collector.ts";

/** °C. */
export const FREEZE = 0;
export const HARD_FREEZE = celsiusOf(28);

export interface FrostYear {
  readonly year: number;
  /** Last day of spring at or below the threshold. */
  readonly last?: Day | undefined;
  /** First such day of autumn. */
  readonly first?: Day | undefined;
  readonly frostDays: number;
  /** Days between the two, both not counted; undefined when either is not known. */
  readonly frostFreeDays?: number | undefined;
}

/**
 * Frosts of one growing year: the calendar year in the north, 1 July to 30 June around the southern summer.
 * `year` is the year in which the summer's spring lies in the north, in which it begins in the south.
 */
export function frostYear(
  weather: ReadonlyMap<Day, WeatherDay>,
  year: number,
  latitude: number,
  threshold = FREEZE,
): FrostYear {
  const begins = latitude >= 0 ? `${year}-01-01` : `${year}-07-01`;
  const middle = latitude >= 0 ? `${year}-07-15` : `${year + 1}-01-15`;
  const ends = latitude >= 0 ? `${year}-12-31` : `${year + 1}-06-30`;
  const frosts: Day[] = [];
  for (let day = begins; day <= ends; day = addDays(day, 1)) {
    const tmin = weather.get(day)?.tmin;
    if (tmin !== undefined && tmin <= threshold) frosts.push(day);
  }
  const last = frosts.findLast((day) => day < middle);
  const first = frosts.find((day) => day >= middle);
  return {
    year,
    last,
    first,
    frostDays: frosts.length,
    frostFreeDays: last === undefined || first === undefined ? undefined : daysBetween(last, first) - 1,
  };
}

/** The day of a "04-20" in the year of `on`, or in the next year once it has gone by. */
export function nextYearly(monthDay: string, on: Day): Day {
  const thisYear = inYear(monthDay, yearOf(on));
  return thisYear >= on ? thisYear : inYear(monthDay, yearOf(on) + 1);
}

/**
 * Days from `on` to the usual first frost, the frost's day not counted; 0 when it is past and the usual last frost has not
 * come yet. Without a last frost the calendar year is the growing year; with one that lies later in the year than the
 * first, as in the south, the growing year goes over New Year.
 */
export function frostFreeDaysLeft(firstFrost: string, on: Day, lastFrost?: string): number {
  const turn = lastFrost !== undefined && lastFrost > firstFrost && on >= inYear(lastFrost, yearOf(on)) ? 1 : 0;
  return Math.max(0, daysBetween(on, inYear(firstFrost, yearOf(on) + turn)));
}

/**
 * Factors of the autumn count-back, days (Virginia Cooperative Extension, Publication 426-334): days to maturity, days raised
 * before planting, harvest period, fall factor for shorter and cooler days, and two weeks more for crops that frost kills.
 */
export interface CountBack {
  /** Days from seeding or transplanting to harvest. */
  readonly daysToMaturity: number;
  /** Days from seed to transplant, when plants are raised here. */
  readonly daysRaised?: number | undefined;
  readonly harvestDays?: number | undefined;
  readonly fallFactor?: number | undefined;
  readonly frostTender?: boolean | undefined;
}

const FALL_FACTOR = 14;
const TENDER_FACTOR = 14;

export function countBackDays({
  daysToMaturity,
  daysRaised = 0,
  harvestDays = 0,
  fallFactor = FALL_FACTOR,
  frostTender = false,
}: CountBack): number {
  return daysToMaturity + daysRaised + harvestDays + fallFactor + (frostTender ? TENDER_FACTOR : 0);
}

/** Last day to sow so that the crop is picked before the first frost. */
export function sowBy(firstFrost: Day, crop: CountBack): Day {
  return addDays(firstFrost, -countBackDays(crop));
}
