/** What is said and drawn of growth, from data: whole sentences, places in charts, gaps. */

import { describe, expect, it } from "vitest";
import { localeOf } from "../../src/language/index.ts";
import type { GardenSettings, GrowthSeries } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { bySeason, growthChart, heightScale } from "../../src/site/page-data/growth-chart.ts";
import { coverChart } from "../../src/site/page-data/growth-of-bed.ts";
import { sayGreen } from "../../src/site/page-data/growth-words.ts";
import { plantAges } from "../../src/site/page-data/plant-ages.ts";
import type { View } from "../../src/site/page-data/view.ts";
import { siteWords } from "../../src/site/words/index.ts";
import { growGarden } from "../../src/timeline/index.ts";

const settings = { language: "en-GB", units: "metric" } as GardenSettings;

const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("words", () => {
  it("say how cover went, and nothing of what measuring cannot tell", () => {
    expect(plain(sayGreen(settings, 0.352, 0.8, "bed"))).toBe("Cover went from 35 % to 80 %");
    expect(sayGreen(settings, 0.72, 0.69, "bed")).toBe("");
    expect(sayGreen(settings, 0.6, 0.694, "bed")).toBe("");
    expect(plain(sayGreen(settings, 0.72, 0.62, "bed"))).toBe("Cover went from 72 % to 62 %");
    expect(plain(sayGreen(settings, 0.2, 0.4, "photo"))).toBe("The green in the photo went from 20 % to 40 %");
    expect(sayGreen(settings, undefined, 0.4, "bed")).toBe("");
    expect(plain(localeOf(settings).share(0.005))).toBe("1 %");
  });

  it("say how old the plants of a bed were on a day, the oldest lot for its crop", async () => {
    const records = await readRecords(await openRecordsFolder("tests/gardens/two-walls"), { today: "2026-07-18" });
    const garden = growGarden(records, []);
    expect(plantAges(garden, "south-wall", "2026-05-24")).toBe("Squash on the day of planting.");
    expect(plantAges(garden, "south-wall", "2026-06-21")).toBe("Squash four weeks after planting.");
    expect(plantAges(garden, "south-wall", "2024-01-01")).toBe("");
  });
});

const series = (days: readonly (readonly [string, number])[][]): GrowthSeries => ({
  what: "cover",
  bed: "long-bed",
  viewpoint: "gate",
  stretches: days.map((stretch) =>
    stretch.map(([day, value]) => ({ day, value, origin: "photo", source: `${day}.jpg` })),
  ),
});

const words = {
  id: "cover-gate",
  title: "How much of Long Bed is green",
  summary: "",
  method: "",
  table: { head: [], rows: [] },
  month: localeOf(settings).shortMonth,
  say: localeOf(settings).share,
};

describe("charts", () => {
  it("join what was measured close together, and leave a gap as a gap", () => {
    const grown = series([
      [
        ["2026-04-04", 0],
        ["2026-04-18", 0.5],
      ],
      [["2026-06-20", 1]],
    ]);
    const chart = growthChart([{ name: "2026", isMain: true, series: grown, move: 0 }], words, { top: 1, step: 0.25 });
    const [line] = chart?.lines ?? [];
    expect(line?.paths).toHaveLength(1);
    expect(line?.paths[0]?.match(/[ML]/gu)).toEqual(["M", "L"]);
    expect(line?.points).toHaveLength(3);
    // All green lies at the upper edge, bare soil at the lower.
    expect(line?.points.map(({ y }) => y)).toEqual([
      chart?.field.bottom,
      ((chart?.field.bottom ?? 0) + (chart?.field.top ?? 0)) / 2,
      chart?.field.top,
    ]);
    expect(chart?.up.map(({ text }) => plain(text))).toEqual(["0 %", "25 %", "50 %", "75 %", "100 %"]);
    expect(chart?.across.map(({ text }) => text)).toEqual(["Apr", "May", "Jun"]);
  });

  it("name the days on which nobody can tell, and make no number of them", () => {
    const measured = series([
      [
        ["2026-04-04", 0],
        ["2026-04-18", 0.2],
        ["2026-05-02", 0.5],
      ],
    ]);
    const about = { bed: "long-bed", viewpoint: "gate" };
    const view = {
      garden: {
        settings: { ...settings, seasonStarts: "01-01" },
        growth: {
          photos: [
            { ...about, day: "2026-04-11", covered: true },
            { ...about, day: "2026-05-09", cannotTell: true },
          ],
        },
      },
      today: "2026-06-20",
      locale: localeOf(settings),
      words: siteWords,
    } as unknown as View;
    const rows = coverChart(view, measured, "bed", "")?.table.rows.map(([day, cover]) => [day, plain(String(cover))]);
    expect(rows).toEqual([
      ["9 May 2026", "cannot tell"],
      ["2 May 2026", "50 %"],
      ["18 April 2026", "20 %"],
      ["11 April 2026", "covered"],
      ["4 April 2026", "0 %"],
    ]);
  });

  it("lay earlier seasons over this one by the day of the year", () => {
    const grown = series([[["2025-04-18", 0.4]], [["2026-04-18", 0.2]]]);
    const seasons = bySeason(grown, "2026-07-18", "01-01");
    expect(seasons.map(({ year, move }) => [year, move])).toEqual([
      [2025, 365],
      [2026, 0],
    ]);
    const lines = seasons.map((season) => ({ name: String(season.year), isMain: season.year === 2026, ...season }));
    const chart = growthChart(lines, words, { top: 1, step: 0.25 });
    const [before, now] = chart?.lines ?? [];
    expect(before?.points[0]?.x).toBe(now?.points[0]?.x);
    expect(now?.isMain).toBe(true);
  });

  it("keep names that end in one place apart", () => {
    const lines = ["a", "b", "c"].map((name) => ({
      name,
      isMain: false,
      series: series([[["2026-04-18", 0.4]]]),
      move: 0,
    }));
    const heights = growthChart(lines, words, { top: 1, step: 0.25 })?.lines.map(({ label }) => label.y) ?? [];
    const sorted = [...heights].sort((a, b) => a - b);
    expect(sorted.every((y, at) => at === 0 || y - (sorted[at - 1] ?? 0) > 16.9)).toBe(true);
  });

  it("are none when nothing was measured", () => {
    expect(growthChart([{ name: "2026", isMain: true, series: series([]), move: 0 }], words, { top: 1, step: 1 })).toBe(
      undefined,
    );
  });

  it("have a round scale with few marks for heights", () => {
    expect(heightScale(3)).toEqual({ top: 5, step: 5 });
    expect(heightScale(96)).toEqual({ top: 100, step: 20 });
    expect(heightScale(172)).toEqual({ top: 200, step: 50 });
    expect(heightScale(1999).top / heightScale(1999).step).toBeLessThanOrEqual(5);
  });
});
