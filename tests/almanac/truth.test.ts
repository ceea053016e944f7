/** What `npm run truth` prints of sun, heat, walks and captions is also asked of every change. */
import { expect, test } from "vitest";
import { captionRows, readsBack, rollovers } from "../../scripts/truth/captions.ts";
import { daysToStage, heatRows, maizeStages } from "../../scripts/truth/heat.ts";
import { lightOrders, sunFigures, wrongOrders } from "../../scripts/truth/light.ts";
import { longestWalk, problems, walkLength } from "../../scripts/truth/routes.ts";
import { lightWorth } from "../../src/almanac/index.ts";
import { writeTime } from "../../src/wrap/caption-times.ts";

test.each(sunFigures)("the sun's $of: $against", ({ found, expected, within }) => {
  expect(Math.abs(found() - expected)).toBeLessThan(within);
});

test("no light is worth less than one that guidance for photographing plants puts below it", () => {
  expect(lightOrders.length).toBe(10);
  expect(wrongOrders(lightWorth)).toEqual([]);
  // Noon as good as any light, which it once was.
  expect(wrongOrders({ ...lightWorth, high: 1.01 })).toEqual([
    "even below high",
    "front below high",
    "side below high",
    "soft below high",
    "shade below high",
  ]);
});

// 475, 870, 1135 and 1400 °F days at 20 a day, the day of planting not counted.
test("maize reaches its stages on the day that its degree days say", () => {
  expect(Object.values(maizeStages).map(daysToStage)).toEqual([24, 44, 57, 70]);
  expect(heatRows().every(({ met }) => met !== false)).toBe(true);
});

test.each(problems)(
  "a closed walk past the stops of $name is no more than a hundredth over TSPLIB's optimum",
  (problem) => {
    const length = walkLength(problem);
    expect(length).toBeGreaterThanOrEqual(problem.optimum);
    expect(length).toBeLessThanOrEqual(problem.optimum * longestWalk);
  },
);

test.each(rollovers)("%d s in %s is %s", (seconds, format, written) => {
  expect(writeTime(seconds * 1000, format)).toBe(written);
});

test("every time round the first hour reads back", () => {
  expect([readsBack("vtt"), readsBack("srt"), captionRows()[0]?.met]).toEqual([true, true, true]);
});
