/** The weather of a stretch of days, as a person tells it: hottest, coldest, frosts, rain, the longest dry spell. */
import { addDays, daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import { FREEZE, HARD_FREEZE } from "./frost-dates.ts";
import type { Weather } from "./weather-series.ts";

export interface DayValue {
  readonly day: Day;
  /** °C or mm. */
  readonly value: number;
}

export interface WeatherSpan {
  readonly from: Day;
  readonly to: Day;
  /** Days of the stretch that have temperatures, measured or bridged. */
  readonly temperatureDays: number;
  /** Days of the stretch without temperatures. */
  readonly missingDays: number;
  readonly hottest?: DayValue | undefined;
  readonly coldest?: DayValue | undefined;
  /** Mean of the days' middles between minimum and maximum, °C. */
  readonly mean?: number | undefined;
  /** Nights at or below 0 °C, and at or below -2.2 °C (28 °F). */
  readonly frosts: number;
  readonly hardFrosts: number;
  /** Days of the stretch that have a reading of rain. */
  readonly rainDays: number;
  /** Millimetres; undefined when no day has a reading. */
  readonly rain?: number | undefined;
  readonly wettest?: DayValue | undefined;
  /** Days with at least 0.2 mm, the "rain day" of British weather services (from memory). */
  readonly wetDays: number;
  /** The longest run of days with readings below that. */
  readonly dry?: { readonly from: Day; readonly to: Day; readonly days: number } | undefined;
}

const rainDay = 0.2;

/** Bridged days count as temperatures, but are never the hottest or coldest: nobody measured them. */
export function weatherSpan({ days }: Weather, from: Day, to: Day): WeatherSpan {
  let [temperatureDays, frosts, hardFrosts, rainDays, wetDays, middles, rain] = [0, 0, 0, 0, 0, 0, 0];
  let hottest: DayValue | undefined;
  let coldest: DayValue | undefined;
  let wettest: DayValue | undefined;
  let dry: WeatherSpan["dry"];
  let dryFrom: Day | undefined;
  for (let day = from; day <= to; day = addDays(day, 1)) {
    const { tmax, tmin, rain: wet, bridged } = days.get(day) ?? {};
    if (tmax !== undefined && tmin !== undefined) {
      temperatureDays += 1;
      middles += (tmax + tmin) / 2;
    }
    if (bridged !== true) {
      if (tmax !== undefined && tmax > (hottest?.value ?? Number.NEGATIVE_INFINITY)) hottest = { day, value: tmax };
      if (tmin !== undefined && tmin < (coldest?.value ?? Number.POSITIVE_INFINITY)) coldest = { day, value: tmin };
      if (tmin !== undefined && tmin <= FREEZE) frosts += 1;
      if (tmin !== undefined && tmin <= HARD_FREEZE) hardFrosts += 1;
    }
    if (wet !== undefined) {
      rainDays += 1;
      rain += wet;
      if (wet >= rainDay) wetDays += 1;
      if (wet > (wettest?.value ?? 0)) wettest = { day, value: wet };
    }
    if (wet !== undefined && wet < rainDay) {
      dryFrom ??= day;
      const length = daysBetween(dryFrom, day) + 1;
      if (length > (dry?.days ?? 0)) dry = { from: dryFrom, to: day, days: length };
    } else dryFrom = undefined;
  }
  return {
    from,
    to,
    temperatureDays,
    missingDays: Math.max(0, daysBetween(from, to) + 1 - temperatureDays),
    hottest,
    coldest,
    mean: temperatureDays === 0 ? undefined : middles / temperatureDays,
    frosts,
    hardFrosts,
    rainDays,
    rain: rainDays === 0 ? undefined : Math.round(rain * 10) / 10,
    wettest,
    wetDays,
    dry,
  };
}
