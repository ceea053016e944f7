import { describe, expect, it } from "vitest";
import { CAPPED_86_50, heatOfDay, heatTable } from "../../src/almanac/index.ts";
import { weatherOf } from "./weather-of.ts";

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;

describe("growing degree days", () => {
  // Ohio State Extension AGF-101 (80/60, 60/40, 90/70); Ohio State Extension, Karhoff 2023 (87/63); Iowa State Agronomy 541 (70/50);
  // 90/48 computed by hand. Fahrenheit degree days.
  it.each([
    [80, 60, 20],
    [60, 40, 5],
    [90, 70, 28],
    [87, 63, 24.5],
    [70, 50, 10],
    [90, 48, 18],
    [100, 90, 36],
  ])("86/50 method: %d/%d °F is %d", (tmax, tmin, expected) => {
    expect(heatOfDay(celsius(tmax), celsius(tmin), CAPPED_86_50) * 1.8).toBeCloseTo(expected, 9);
  });

  // University of Wisconsin Extension column, 2018: three days sum to 43.
  it("adds up three days", () => {
    const weather = weatherOf({
      "2018-06-01": { tmax: celsius(90), tmin: celsius(65) },
      "2018-06-02": { tmax: celsius(72), tmin: celsius(46) },
      "2018-06-03": { tmax: celsius(63), tmin: celsius(42) },
    });
    const sum = heatTable(weather, CAPPED_86_50).between("2018-05-31", "2018-06-03");
    expect(sum.degreeDays * 1.8).toBeCloseTo(43, 9);
    expect(sum).toMatchObject({ days: 3, missing: 0, scale: CAPPED_86_50 });
  });

  // McMaster & Wilhelm, Agric. For. Meteorol. 87:291-300 (1997), computed for both interpretations.
  it.each([
    [20, 0, undefined, 0, 5],
    [18, 6, undefined, 2, 4],
    [25, 12, undefined, 8.5, 8.5],
    [8, 2, undefined, 0, 0],
    [35, 21, 30, 18, 15.5],
  ])("both readings: %d/%d °C over 10, cap %s: %d and %d", (tmax, tmin, cap, first, second) => {
    expect(heatOfDay(tmax, tmin, { method: "mean first", base: 10, cap })).toBe(first);
    expect(heatOfDay(tmax, tmin, { method: "limits first", base: 10, cap })).toBe(second);
  });

  it("simple base 50 °F: 83/61 is 22, 60/40 is 0", () => {
    const simple = { method: "mean first", base: 10 } as const;
    expect(heatOfDay(celsius(83), celsius(61), simple) * 1.8).toBeCloseTo(22, 9);
    expect(heatOfDay(celsius(60), celsius(40), simple)).toBeCloseTo(0, 9);
  });

  it("counts the days it knows nothing of", () => {
    const weather = weatherOf({ "2026-05-01": { tmax: 20, tmin: 10 }, "2026-05-02": { tmax: 20 } });
    const sum = heatTable(weather, { method: "mean first", base: 5 }).between("2026-04-30", "2026-05-03");
    expect(sum).toMatchObject({ degreeDays: 10, days: 1, missing: 2 });
  });
});
