import { describe, expect, it } from "vitest";
import {
  countBackDays,
  frostFreeDaysLeft,
  frostYear,
  HARD_FREEZE,
  nextYearly,
  sowBy,
} from "../../src/almanac/index.ts";

const minima = (days: Record<string, number>) => new Map(Object.entries(days).map(([day, tmin]) => [day, { tmin }]));

describe("autumn count-back", () => {
  // Formula: Virginia Cooperative Extension 426-334; the four rows computed by hand from it.
  it.each([
    ["turnip", { daysToMaturity: 40 }, 54, "2024-09-21", "2024-07-29"],
    ["snap bean", { daysToMaturity: 55, harvestDays: 14, frostTender: true }, 97, "2024-10-15", "2024-07-10"],
    ["broccoli from own plants", { daysToMaturity: 50, daysRaised: 28 }, 92, "2024-10-15", "2024-07-15"],
    ["kale", { daysToMaturity: 55, harvestDays: 14 }, 83, "2024-10-15", "2024-07-24"],
  ])("%s", (_, crop, days, frost, expected) => {
    expect(countBackDays(crop)).toBe(days);
    expect(sowBy(frost, crop)).toBe(expected);
  });
});

describe("frost of a year", () => {
  it("is counted at the threshold too, as minima of 0.0 and -1.1 °C are both freezes", () => {
    const year = frostYear(
      minima({ "2026-01-10": -4, "2026-04-20": 0, "2026-05-02": 0.1, "2026-10-30": -1.1, "2026-12-24": -3 }),
      2026,
      54,
    );
    expect(year).toEqual({ year: 2026, last: "2026-04-20", first: "2026-10-30", frostDays: 4, frostFreeDays: 192 });
  });

  it("has other thresholds", () => {
    expect(frostYear(minima({ "2026-04-20": -2.3, "2026-04-01": -2.2 }), 2026, 54, HARD_FREEZE).last).toBe(
      "2026-04-20",
    );
  });

  it("turns round in the south", () => {
    const year = frostYear(minima({ "2025-08-30": -1, "2026-05-12": -0.5, "2026-07-20": -3 }), 2025, -36);
    expect(year).toMatchObject({ last: "2025-08-30", first: "2026-05-12", frostDays: 2 });
  });

  it("may have no frost at all", () => {
    expect(frostYear(new Map(), 2026, 54)).toEqual({
      year: 2026,
      last: undefined,
      first: undefined,
      frostDays: 0,
      frostFreeDays: undefined,
    });
  });

  it("leaves days to the usual first frost", () => {
    // 25 April to 24 October is 182 days in any year (calendar arithmetic).
    expect(frostFreeDaysLeft("10-24", "2026-04-25")).toBe(182);
    expect(frostFreeDaysLeft("10-24", "2026-11-02")).toBe(0);
    // In the south the growing year goes over New Year: 20 September to 10 May.
    expect(frostFreeDaysLeft("05-10", "2026-11-01", "09-20")).toBe(190);
    expect(frostFreeDaysLeft("05-10", "2027-03-01", "09-20")).toBe(70);
    expect(frostFreeDaysLeft("05-10", "2027-07-01", "09-20")).toBe(0);
    expect(nextYearly("02-29", "2026-03-01")).toBe("2027-02-28");
    expect(nextYearly("04-20", "2026-04-20")).toBe("2026-04-20");
  });
});
