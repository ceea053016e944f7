/** What is still to come this season, and what to do differently in the next. */

import { say } from "../language/index.ts";
import { type DraftPoint, falling, type Material, point } from "./material.ts";
import type { ForecastRow } from "./recap.ts";
import { recapWords } from "./recap-words/words.ts";

/** Forecasts told; the table has all. */
const mostForecasts = 6;

export function comingPoints({ forecasts, sowing, past }: Material): readonly DraftPoint[] {
  if (past) return [];
  return [
    ...soonest(forecasts)
      .slice(0, mostForecasts)
      .map((one, index) => point(one, index < 3 ? "should" : "could", "it is on its way", falling(42, index))),
    ...sowing.map((one) => point(one, "could", "while there is time", 28)),
  ];
}

/** What is still ahead before what should have come already; two lots of one sowing once. */
function soonest(forecasts: readonly ForecastRow[]): readonly ForecastRow[] {
  const once = forecasts.filter((one, index) => forecasts.findIndex(({ text }) => text === one.text) === index);
  return [...once.filter(({ overdue }) => !overdue), ...once.filter(({ overdue }) => overdue)];
}

/** Rotation broken is told for the beds where it matters most; the table has the others. */
const mostBroken = 3;

export function nextYearPoints({ nextYear, kind }: Material): readonly DraftPoint[] {
  if (kind !== "season") return nextYear.advice.map((one) => point(one, "should", "it stays in the soil", 62));
  const { planned, advice, rotation, needs, soil, plan, seedsSaid } = nextYear;
  const shown = rotation.broken.slice(0, mostBroken);
  const rest = rotation.broken.length - shown.length;
  const [ground] = rotation.broken;
  const more =
    rest <= 0 || ground === undefined
      ? []
      : [
          point(
            {
              ...ground,
              text: recapWords.moreRotation(rest),
            },
            "could",
            "rotation",
            14,
          ),
        ];
  return [
    ...planned.map((one, index) => point(one, "should", "you planned it", falling(46, index))),
    ...advice.map((one) => point(one, "should", "it stays in the soil", 62)),
    ...shown.map((one, index) =>
      point(one, index === 0 ? "should" : "could", "the bed should change", falling(48, index)),
    ),
    ...more,
    ...soil.map((one) => point(one, "could", "soil", 26)),
    ...needs.map(({ sentence, cautions }, index) =>
      point(
        { ...sentence, text: [sentence.text, ...cautions].join(" ") },
        "could",
        "you want it next year",
        falling(40, index),
      ),
    ),
    ...plan.compromises.map((one, index) => point(one, "could", "the draft for next year", falling(22, index))),
    ...plan.unread.map((one) => point(one, "could", "a pin that was not understood", 20)),
    ...(seedsSaid === undefined
      ? []
      : [point(say(seedsSaid, [{ place: { file: "garden.md", line: 1, column: 1 } }]), "could", "the seed order", 32)]),
  ];
}
