import { describe, expect, it } from "vitest";
import { dayLength, heatTable } from "../../src/almanac/index.ts";
import { addDays } from "../../src/calendar.ts";
import { weatherOf } from "./weather-of.ts";

const scale = { method: "mean first", base: 5 } as const;

/** Days of 10 to 20 °C: ten degree days each over a base of 5. */
function steady(from: string, days: number) {
  return weatherOf(
    Object.fromEntries(Array.from({ length: days }, (_, i) => [addDays(from, i), { tmin: 10, tmax: 20 }])),
  );
}

describe("a heat table", () => {
  it("adds up from the day after, and knows how many days it lacks", () => {
    const table = heatTable(steady("2026-01-01", 100), scale);
    expect(table.between("2026-01-10", "2026-01-20")).toEqual({ degreeDays: 100, days: 10, missing: 0, scale });
    expect(table.between("2025-12-22", "2026-01-02")).toEqual({ degreeDays: 20, days: 2, missing: 9, scale });
    expect(table.between("2027-01-01", "2027-01-02")).toEqual({ degreeDays: 0, days: 0, missing: 1, scale });
    expect(table.between("2026-01-20", "2026-01-10")).toEqual({ degreeDays: 0, days: 0, missing: 0, scale });
  });

  it("knows what is usual only when the files cover the year", () => {
    expect(heatTable(steady("2026-01-01", 200), scale).usual("2026-03-01")).toBeUndefined();
    expect(heatTable(steady("2024-03-01", 400), scale).usual("2024-02-29")).toBe(10);
    expect(heatTable(weatherOf({}), scale).dayReaching("2026-01-01", 10, "2026-01-01")).toBeUndefined();
  });

  it("goes on with what is usual after the last day it may know", () => {
    const table = heatTable(steady("2024-01-01", 800), scale);
    expect(table.expected("2026-02-01", "2026-04-02", "2026-02-10")).toBeCloseTo(600, 9);
    expect(table.dayReaching("2026-02-01", 95, "2026-02-03")).toBe("2026-02-11");
    expect(table.dayReaching("2026-02-01", 0, "2026-02-03")).toBe("2026-02-01");
    expect(table.dayReaching("2026-02-01", 1e9, "2026-02-03")).toBeUndefined();
  });

  it("can be held to what was known on a day", () => {
    const warm = weatherOf({
      ...Object.fromEntries(steady("2025-01-01", 365).days),
      "2026-01-01": { tmin: 20, tmax: 30 },
    });
    expect(heatTable(warm, scale).usual("2026-01-01")).toBeGreaterThan(10);
    expect(heatTable(warm, scale, "2025-12-31").usual("2026-01-01")).toBe(10);
  });
});

describe("day length", () => {
  // astronomy-engine, sea level, standard refraction (computed): sunrise to sunset in hours.
  it.each([
    [51.4779, "2024-12-21", 7.8333],
    [51.4779, "2024-06-20", 16.6342],
    [40, "2010-06-21", 15.0156],
    [-33.87, "2024-12-21", 14.4139],
    [0, "2024-03-20", 12.1083],
  ])("at %d on %s is %d hours", (latitude, day, hours) => {
    expect(Math.abs(dayLength(day, latitude) - hours)).toBeLessThan(0.06);
  });

  it("ends at the polar circles", () => {
    expect(dayLength("2024-06-21", 69.65)).toBe(24);
    expect(dayLength("2024-12-21", 69.65)).toBe(0);
  });
});
