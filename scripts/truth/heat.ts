/** Degree days: days worked out in extension bulletins, and the day on which maize reaches its published stages. */

import { CAPPED_86_50, heatOfDay, heatTable, noWeather } from "../../src/almanac/index.ts";
import { addDays, daysBetween } from "../../src/calendar.ts";
import { celsiusOf } from "../../src/measures.ts";
import type { TruthRow } from "./table.ts";

/** Highest, lowest and degree days by 86/50 °F, all in Fahrenheit. */
const worked: readonly (readonly [high: number, low: number, sum: number])[] = [
  [80, 60, 20],
  [60, 40, 5],
  [90, 70, 28],
  [87, 63, 24.5],
  [70, 50, 10],
  [90, 65, 25.5],
  [72, 46, 11],
  [63, 42, 6.5],
];

/** Stages of maize in degree days of 86/50 °F after planting: University of Delaware, Weekly Crop Update (id 12161). */
export const maizeStages: Readonly<Record<string, number>> = { V6: 475, V12: 870, VT: 1135, R1: 1400 };

const planted = "2026-05-01";

/** Days after planting on which a stage is reached where every day has 80 and 60 °F: 20 degree days, the first on the day after. */
export function daysToStage(degreeDays: number): number {
  const days = Array.from({ length: 120 }, (_, at) => addDays(planted, at));
  const weather = {
    ...noWeather,
    days: new Map(days.map((day) => [day, { tmax: celsiusOf(80), tmin: celsiusOf(60) }])),
    first: days[0],
    last: days.at(-1),
  };
  const reached = heatTable(weather, CAPPED_86_50).dayReaching(
    planted,
    degreeDays / 1.8 - 1e-9,
    days.at(-1) ?? planted,
  );
  return reached === undefined ? Number.NaN : daysBetween(planted, reached);
}

export function heatRows(): readonly TruthRow[] {
  const apart = Math.max(
    ...worked.map(([high, low, sum]) => Math.abs(heatOfDay(celsiusOf(high), celsiusOf(low), CAPPED_86_50) * 1.8 - sum)),
  );
  const stages = Object.values(maizeStages);
  const days = Math.max(...stages.map((sum) => Math.abs(daysToStage(sum) - Math.ceil(sum / 20))));
  return [
    {
      quantity: "degree days of a day, 86/50 °F",
      cases: worked.length,
      found: `${apart.toFixed(6)} °F days`,
      against: "Ohio State Univ. Ext. AGF-101 and 2023; Iowa State Agron 541; Univ. of Wisconsin Ext. 2018",
      goal: "at most 0.000001",
      met: apart <= 1e-6,
    },
    {
      quantity: "day on which maize reaches V6, V12, VT, R1, by degree days",
      cases: stages.length,
      found: `${days} days`,
      against:
        "Univ. of Delaware, Weekly Crop Update: 475, 870, 1135, 1400 °F days, counted from the day after planting",
      goal: "none",
      met: days === 0,
    },
  ];
}
