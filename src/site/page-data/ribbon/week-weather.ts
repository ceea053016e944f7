/** The weather of the week up to a day, as roughly as people remember it: exact figures would tell which station it was. */
import type { Weather } from "../../../almanac/index.ts";
import { addDays } from "../../../calendar.ts";
import { type Locale, sayAirTemperature } from "../../../language/index.ts";
import type { Day } from "../../../model.ts";
import type { Words } from "../../words/index.ts";

const WEEK = 7;

/** Millimetres in a week below which it was dry, and from which on it was wet (common practice). */
const DRY = 2;
const WET = 25;

/** Undefined when the temperatures of a day are not known. */
export function weekWeather({ days }: Weather, day: Day, units: Locale["units"], words: Words["ribbon"]) {
  const week = Array.from({ length: WEEK }, (_, back) => days.get(addDays(day, -back)));
  const lows = week.map((one) => one?.tmin).filter((one) => one !== undefined);
  const highs = week.map((one) => one?.tmax).filter((one) => one !== undefined);
  if (lows.length < WEEK || highs.length < WEEK) return undefined;
  const rains = week.map((one) => one?.rain).filter((one) => one !== undefined);
  const rain = rains.length < WEEK ? undefined : rains.reduce((sum, one) => sum + one, 0);
  return words.week({
    low: sayAirTemperature(Math.round(Math.min(...lows)), units),
    high: sayAirTemperature(Math.round(Math.max(...highs)), units),
    rain: rain === undefined ? undefined : rain < DRY ? "dry" : rain < WET ? "some" : "wet",
  });
}
