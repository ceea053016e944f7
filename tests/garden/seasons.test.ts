import { describe, expect, it } from "vitest";
import { seasonAsked, seasonBeginning, seasonOf } from "../../src/garden/index.ts";
import { sameDayIn } from "../../src/garden/seasons.ts";

describe("a season", () => {
  it("is the calendar year unless the person says otherwise", () => {
    expect(seasonOf("2026-07-18", "01-01")).toEqual({
      year: 2026,
      label: "2026",
      from: "2026-01-01",
      to: "2026-12-31",
    });
  });

  it("goes over New Year where it begins in summer or autumn", () => {
    expect(seasonOf("2026-02-10", "07-01")).toEqual({
      year: 2025,
      label: "2025/26",
      from: "2025-07-01",
      to: "2026-06-30",
    });
    expect(seasonOf("2024-02-29", "02-29").from).toBe("2024-02-29");
    expect(seasonOf("2025-02-28", "02-29").from).toBe("2025-02-28");
  });

  it("is asked for by the year it begins in", () => {
    expect(seasonAsked("2026", "01-01")?.label).toBe("2026");
    expect(seasonAsked("2025/26", "07-01")?.from).toBe("2025-07-01");
    expect(seasonAsked("2025-26", "07-01")?.from).toBe("2025-07-01");
    expect([seasonAsked("2025/27", "07-01"), seasonAsked("2025/26", "01-01"), seasonAsked("next", "01-01")]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
  });

  it("has the same day in another year, as far into it", () => {
    const [now, before] = [seasonBeginning(2025, "07-01"), seasonBeginning(2023, "07-01")];
    expect(sameDayIn(before, "2026-02-28", now)).toBe("2024-02-28");
    expect(sameDayIn(now, "2024-02-29", before)).toBe("2026-02-28");
    expect(sameDayIn(before, "2025-07-01", now)).toBe("2023-07-01");
  });
});
