import path from "node:path";
import { describe, expect, it } from "vitest";
import { gardenWeather, noWeather } from "../../src/almanac/index.ts";
import { daysBetween } from "../../src/calendar.ts";
import { openRecordsFolder, readRecords, readTexts } from "../../src/records/index.ts";
import { allTimed, backTest, forecaster, seasonBook } from "../../src/season/index.ts";
import { promisedDay } from "../../src/season/maturity.ts";
import { meanAbove, pointAbove, shareAbove } from "../../src/season/normal-curve.ts";
import { forecastSaid, sowingLeft } from "../../src/season/still-to-come.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const today = "2026-06-01";

function squash(years: readonly (readonly [planted: string, picked: string])[]): Files {
  return {
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "varieties/crown-prince.md": "---\ntitle: Crown Prince\ncrop: squash\ndays to maturity: 100 from planting\n---\n",
    "notes/2026-05-24.md": "- planted 6 bought Crown Prince in Long Bed\n",
    ...Object.fromEntries(
      years.flatMap(([planted, picked]) => [
        [`notes/${planted}.md`, "- planted 4 bought Crown Prince in Long Bed\n"],
        [`notes/${picked}.md`, "- picked 3 kg Crown Prince from Long Bed\n- cleared Crown Prince from Long Bed\n"],
      ]),
    ),
  };
}

async function forecastOf(files: Files, weather = noWeather, on = today) {
  const book = seasonBook(await gardenOf(files, on), weather, on);
  const one = allTimed(book).find(({ begun }) => begun === "2026-05-24");
  if (one === undefined) throw new Error("no planting to forecast");
  const forecast = forecaster(book)(one, on);
  return { forecast, said: forecastSaid(book, forecast, on), days: daysBetween("2026-05-24", forecast.likely) };
}

describe("a forecast", () => {
  it("is the variety's days where nothing was learned", async () => {
    const { days, forecast, said } = await forecastOf(squash([]));
    expect([days, forecast.basis]).toEqual([100, { ratio: 1, learnedFrom: 0, byHeat: false }]);
    expect(said).toBe(
      // A packet alone is off by a quarter: 100 days times or over exp(1.2816 x 0.25) = 1.378.
      "The Crown Prince squash should be ready between 5 August and 9 October, most likely about 1 September.",
    );
  });

  it("learns from the garden's own past, shrunk towards the packet while that is short", async () => {
    // One planting that took 120 days: exp(log(1.2) / 3) = 1.0627; three of them: exp(3 log(1.2) / 5) = 1.1156 (computed).
    const once = await forecastOf(squash([["2025-05-24", "2025-09-21"]]));
    expect(once.forecast.basis.ratio).toBeCloseTo(1.0627, 4);
    const often = await forecastOf(
      squash([
        ["2023-05-24", "2023-09-21"],
        ["2024-05-24", "2024-09-21"],
        ["2025-05-24", "2025-09-21"],
      ]),
    );
    expect(often.forecast.basis).toMatchObject({ learnedFrom: 3, byHeat: false });
    expect(often.forecast.basis.ratio).toBeCloseTo(1.1156, 4);
    expect(often.days).toBe(112);
    expect(often.said).toContain("; squash here took about a tenth longer than the record says.");
  });

  it("learns nothing from another time of year", async () => {
    const { forecast } = await forecastOf(squash([["2025-02-01", "2025-09-21"]]));
    expect(forecast.basis.learnedFrom).toBe(0);
  });

  it("reckons with warmth where it is known", async () => {
    const text = Array.from({ length: 515 }, (_, index) => {
      const day = new Date(Date.UTC(2025, 0, 1) + index * 86_400_000).toISOString().slice(0, 10);
      // May 2026 is six degrees warmer than May 2025.
      const warm = day >= "2026-05-24" ? 6 : 0;
      return `${day},${8 + warm},${22 + warm},0`;
    });
    const weather = gardenWeather(
      [{ file: "w.csv", text: ["date,tmin_c,tmax_c,rain_mm", ...text].join("\n") }],
      undefined,
      today,
    );
    const { forecast, days } = await forecastOf(squash([]), weather);
    expect(forecast.basis.byHeat).toBe(true);
    expect(days).toBeLessThan(100);
  });

  it("lets days pass slower while they are short, for crops whose days are growing days", () => {
    const one = { begun: "2025-09-27", catalogueDays: 60 } as Parameters<typeof promisedDay>[0];
    expect(promisedDay(one, undefined)).toBe("2025-11-26");
    expect(daysBetween(one.begun, promisedDay(one, 54.3))).toBeGreaterThan(110);
    expect(promisedDay({ ...one, catalogueDays: 265 }, 54.3)).toBe("2026-06-19");
    expect(promisedDay(one, 0)).toBe("2025-11-26");
  });
});

describe("what has not come yet", () => {
  it("lies ahead: the window is that of what is left", async () => {
    const before = await forecastOf(squash([]), noWeather, "2026-08-31");
    const after = await forecastOf(squash([]), noWeather, "2026-09-20");
    for (const { forecast } of [before, after])
      expect([forecast.expected.from, forecast.expected.by]).toEqual(["2026-08-05", "2026-10-09"]);
    // 119 of 100 days waited: z = log(1.19) / 0.25 = 0.696, of which 0.243 are left; 0.9, 0.5 and 0.1 of these lie above
    // z = 0.777, 1.167 and 1.972: 121, 134 and 164 days (computed from the table of the normal curve).
    const { from, likely, to } = after.forecast;
    expect([from, likely, to].map((day) => daysBetween("2026-05-24", day))).toEqual([121, 134, 164]);
    expect(after.said).toContain("may be ready any day up to 4 November, most likely about 5 October");
  });

  it("is overdue when the first window is over, and may come all the same", async () => {
    const { said, forecast } = await forecastOf(squash([]), noWeather, "2026-10-20");
    expect(forecast.from >= "2026-10-20").toBe(true);
    expect(said).toMatch(
      /^The Crown Prince squash were expected to be ready by 9 October and are not; what is as late as that mostly comes by \d+ (?:November|December)[;.]/,
    );
  });

  it("teaches: others that are overdue say that it takes longer here", async () => {
    const other = { "notes/2026-04-20.md": "- planted 4 bought Crown Prince in Long Bed, row 2\n" };
    const late = await forecastOf({ ...squash([]), ...other }, noWeather, "2026-08-28");
    // 130 days gone and nothing picked, against 100 promised: more than log(1.3) / 3 and less than one and a half times it.
    expect(late.forecast.basis.ratio).toBeGreaterThan(1.3 ** (1 / 3));
    expect(late.forecast.basis.ratio).toBeLessThan(1.3 ** (1 / 2));
    const early = await forecastOf({ ...squash([]), ...other }, noWeather, "2026-06-10");
    expect(early.forecast.basis.ratio).toBeLessThan(1.01);
    const gone = { ...other, "notes/2026-06-01.md": "- cleared Crown Prince from Long Bed, row 2\n" };
    const cleared = await forecastOf({ ...squash([]), ...gone }, noWeather, "2026-08-28");
    expect(cleared.forecast.basis.ratio).toBe(1);
  });
});

describe("the normal curve", () => {
  // Tables of the standard normal distribution; the means are density over share.
  it.each([
    [0, 0.5, 0.797885],
    [1, 0.158655, 1.525135],
    [1.281552, 0.1, 1.754983],
    [1.959964, 0.025, 2.337803],
    [3.090232, 0.001, 3.36709],
    [-1.644854, 0.95, 0.108564],
  ])("above %f lies %f", (z, share, mean) => {
    expect(shareAbove(z)).toBeCloseTo(share, 6);
    expect(pointAbove(share)).toBeCloseTo(z, 4);
    expect(meanAbove(z)).toBeCloseTo(mean, 4);
  });

  it("goes on far out", () => {
    expect(pointAbove(shareAbove(12))).toBeCloseTo(12, 4);
    expect(meanAbove(20)).toBeCloseTo(20.05, 2);
  });
});

describe("what can still be sown", () => {
  const files = (first: string, last: string): Files => ({
    "garden.md": `---\nname: T\nlanguage: en-GB\nlast frost: ${last}\nfirst frost: ${first}\n---\n`,
    "beds/a.md": "---\ntitle: A\n---\n",
    "varieties/k.md": "---\ntitle: Kestrel\ncrop: courgette\n---\n",
    "notes/2025-05-01.md": "- planted 2 bought Kestrel in A\n- sowed 20 radish in A\n",
  });

  it.each([
    ["20 April", "5 November", "2026-02-10", undefined],
    ["20 April", "5 November", "2026-06-10", "courgettes"],
    ["20 September", "10 May", "2026-08-10", undefined],
    ["20 September", "10 May", "2026-12-10", "courgettes"],
  ])("last frost %s, first frost %s: on %s %s", async (last, first, on, crop) => {
    const said = sowingLeft(seasonBook(await gardenOf(files(first, last), on), noWeather, on), on)?.text;
    if (crop === undefined) expect(said).toBeUndefined();
    else expect(said).toMatch(new RegExp(`^There is still time to sow .*${crop}`));
  });
});

describe("held against the past", () => {
  const testedOf = async (second: readonly [planted: string, picked: string], share?: number) => {
    const [planted, picked] = second;
    const files = {
      ...squash([["2024-05-24", "2024-09-21"]]),
      // Beside the first planting's note, which may be of the same day.
      [`notes/${planted}-second.md`]: "- planted 4 bought Crown Prince in Long Bed\n",
      [`notes/${picked}-second.md`]: "- picked 3 kg Crown Prince from Long Bed\n- cleared Crown Prince from Long Bed\n",
    };
    return backTest(seasonBook(await gardenOf(files, "2026-05-01"), noWeather, "2026-05-01"), share)?.plantings;
  };

  it("nothing is learned from a planting that ripened only on the day of asking", async () => {
    expect(await testedOf(["2024-09-21", "2025-02-01"])).toBeUndefined();
    expect(await testedOf(["2024-09-22", "2025-02-01"])).toBe(1);
  });

  it("what ripens on the day of asking needs no forecast", async () => {
    // Its 100 days from 1 May 2025 end on 9 August.
    expect(await testedOf(["2025-05-01", "2025-08-09"], 1)).toBeUndefined();
    expect(await testedOf(["2025-05-01", "2025-08-10"], 1)).toBe(1);
  });
});

describe("held against the demo garden's past", () => {
  it("forecasts beat the packet, and their windows hold about four in five", async () => {
    const folder = await openRecordsFolder(path.resolve("demo-content"));
    const records = await readRecords(folder, { today: "2026-07-18" });
    const { texts } = await readTexts(folder, records.weatherFiles);
    const weather = gardenWeather(texts, records.settings.position, "2026-07-18");
    const tested = backTest(seasonBook(growGarden(records, []), weather, "2026-07-18"));
    if (tested === undefined) throw new Error("nothing was tested");
    expect(tested.plantings).toBeGreaterThan(60);
    expect(tested.meanError).toBeLessThan(tested.catalogueMeanError * 0.9);
    expect(tested.medianError).toBeLessThanOrEqual(tested.catalogueMedianError);
    expect(tested.coverage).toBeGreaterThan(0.7);
    expect(tested.coverage).toBeLessThan(0.9);
  });
});
