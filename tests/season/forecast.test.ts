import path from "node:path";
import { describe, expect, it } from "vitest";
import { gardenWeather, noWeather } from "../../src/almanac/index.ts";
import { daysBetween } from "../../src/calendar.ts";
import { openRecordsFolder, readRecords, readTexts } from "../../src/records/index.ts";
import { allTimed, backTest, forecaster, seasonBook } from "../../src/season/index.ts";
import { promisedDay } from "../../src/season/maturity.ts";
import { forecastSaid } from "../../src/season/still-to-come.ts";
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

async function forecastOf(files: Files, weather = noWeather) {
  const book = seasonBook(await gardenOf(files, today), weather, today);
  const one = allTimed(book).find(({ begun }) => begun === "2026-05-24");
  if (one === undefined) throw new Error("no planting to forecast");
  const forecast = forecaster(book)(one, today);
  return { forecast, said: forecastSaid(book, forecast, today), days: daysBetween("2026-05-24", forecast.likely) };
}

describe("a forecast", () => {
  it("is the variety's days where nothing was learned", async () => {
    const { days, forecast, said } = await forecastOf(squash([]));
    expect([days, forecast.basis]).toEqual([100, { ratio: 1, learnedFrom: 0, byHeat: false }]);
    expect(said).toBe(
      "The Crown Prince squash should be ready between 15 August and 22 September, most likely about 1 September: 100 days from planting by the variety's record.",
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
    expect(often.said).toContain("and squash here took about a tenth longer.");
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
