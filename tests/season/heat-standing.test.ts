/** A season's warmth against the season before: only days that both have are compared. */
import { describe, expect, it } from "vitest";
import { gardenWeather } from "../../src/almanac/index.ts";
import { addDays } from "../../src/calendar.ts";
import { seasonOf } from "../../src/garden/index.ts";
import type { Day } from "../../src/model.ts";
import { heatStanding } from "../../src/season/comparisons.ts";
import { seasonBook } from "../../src/season/index.ts";
import { weatherStory } from "../../src/season/weather-story.ts";
import { gardenOf } from "../tour/garden-of.ts";

const on = "2026-07-28";

/** The same weather in both years, 20 January the coldest day; `left`: days without a reading, `warmer`: from 1 June of 2026. */
async function standing(left: (day: Day) => boolean, warmer = 0) {
  const rows = Array.from({ length: 365 + 209 }, (_, at) => addDays("2025-01-01", at))
    .filter((day) => !left(day))
    .map((day) => {
      const ofYear = (Date.parse(day) - Date.parse(`${day.slice(0, 4)}-01-01`)) / 86_400_000;
      const mean = 11 - 8 * Math.cos((2 * Math.PI * (ofYear - 20)) / 365) + (day >= "2026-06-01" ? warmer : 0);
      return `${day},${(mean - 5).toFixed(1)},${(mean + 5).toFixed(1)},1`;
    });
  const text = ["date,tmin_c,tmax_c,rain_mm", ...rows].join("\n");
  const weather = gardenWeather([{ file: "w.csv", text }], undefined, on);
  const files = {
    "beds/a.md": "---\ntitle: A\n---\n",
    "notes/2025-05-01.md": "- sowed 20 radish in A\n",
    "notes/2025-06-10.md": "- cleared radish from A\n",
  };
  const book = seasonBook(await gardenOf(files, on), weather, on);
  const season = seasonOf(on, "01-01");
  return { found: heatStanding(book, season, on), story: weatherStory(book, season, season.from, on) };
}

const twentyDays = (day: Day) => day >= "2026-06-20" && day <= "2026-07-09";

describe("the same weather in two years", () => {
  it.each([
    ["every day read", () => false],
    ["twenty days missing this year", twentyDays],
    ["twenty days missing last year", (day: Day) => twentyDays(addDays(day, 365))],
    ["ten days missing in each", (day: Day) => /-07-0\d$/.test(day) || /^2025-05-2\d$/.test(day)],
  ])("is level: %s", async (_, left) => {
    const { found, story } = await standing(left);
    expect(found?.daysAhead).toBe(0);
    expect(found?.heat).toBeCloseTo(found?.lastYear ?? 0, 6);
    expect(story?.short?.text).toMatch(/in warmth the season is level with last year\.$/);
  });

  it("says of how many days it speaks", async () => {
    const { story } = await standing(twentyDays);
    expect(story?.sentences.map(({ text }) => text).filter((text) => text.startsWith("Since"))).toEqual([
      expect.stringMatching(
        /^Since 1 January there were [\d,]+ degree days above 4\.4 °C in the 189 of 209 days that both years have, against [\d,]+ in the same days last year: level\.$/,
      ),
    ]);
  });

  it("is compared with nothing when too few days are in both", async () => {
    // 25 days missing in each year, and not the same: 159 of 209 are in both.
    const { found } = await standing(
      (day) => /^2026-0[67]-(?:0|1[0-2])/.test(day) || /^2025-0[45]-(?:0|1[0-6])/.test(day),
    );
    expect([found?.lastYear, found?.daysAhead]).toEqual([undefined, undefined]);
  });
});

describe("a warmer summer", () => {
  it("is ahead by the days last year still took for as much", async () => {
    // Two degrees more on 58 days are 116 degree days; days of late July have about 14.
    const { found } = await standing(() => false, 2);
    expect((found?.heat ?? 0) - (found?.lastYear ?? 0)).toBeCloseTo(116, 0);
    expect(found?.daysAhead).toBeGreaterThanOrEqual(7);
    expect(found?.daysAhead).toBeLessThanOrEqual(9);
  });
});
