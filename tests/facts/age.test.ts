import { describe, expect, test } from "vitest";
import { ageOf } from "../../src/facts/index.ts";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, type Said } from "../timeline/small-garden.ts";

const on = "2026-07-18";

function age(lines: readonly Line[], settings = {}) {
  const garden = grow({ lines, settings });
  const planting = state(garden, "long-bed", on).plantings.at(-1);
  if (planting === undefined) throw new Error("Nothing grows in Long Bed.");
  return ageOf(garden, planting, on);
}
const rhubarb = (day: string, said: Said = {}): Line => [
  day,
  "planted",
  { variety: "victoria", bed: "long-bed", count: 2, plantsFrom: "bought", ...said },
];

describe("the age of a planting", () => {
  test("counts from its planting, else its sowing, else the first line that speaks of it", () => {
    const sown: Line = ["2026-04-21", "sowed", { variety: "crown-prince", nursery: true, count: 12 }];
    const planted: Line = ["2026-05-24", "planted", { variety: "crown-prince", bed: "long-bed", count: 11 }];
    expect(age([sown, planted]).value).toMatchObject({ counted: "planting", days: 55, lasting: false });
    expect(age([["2026-06-12", "sowed", { variety: "boltardy", bed: "long-bed" }]]).value).toMatchObject({
      counted: "sowing",
      days: 36,
    });
    expect(age([["2026-07-11", "picked", { variety: "victoria", bed: "long-bed", grams: 900 }]]).value).toMatchObject({
      counted: "first note",
      days: 7,
    });
  });

  test("of a perennial is told in years once a season has turned; what came late has its first year in the next", () => {
    expect(age([rhubarb("2024-05-01")]).value).toMatchObject({ year: 3, lasting: true });
    expect(age([rhubarb("2023-11-10")]).value).toMatchObject({ year: 3, lasting: true });
    expect(age([rhubarb("2026-03-01")]).value).toMatchObject({ year: 1, lasting: false });
  });

  test("goes by the garden's own seasons, which may turn in the middle of a year", () => {
    expect(age([rhubarb("2026-05-01")], { seasonStarts: "07-01" }).value).toMatchObject({ year: 1, lasting: true });
    expect(age([rhubarb("2026-07-02")], { seasonStarts: "07-01" }).value).toMatchObject({ year: 1, lasting: false });
  });

  test("rests on the line that began it, and is as private as it", () => {
    const watered: Line = ["2026-05-01", "did", { variety: "victoria", bed: "long-bed", verb: "watered" }];
    expect(age([rhubarb("2026-03-01"), watered])).toMatchObject({
      sources: [{ file: "notes/2026-03-01.md" }],
      private: false,
      day: on,
    });
    expect(age([rhubarb("2026-03-01", { private: true }), watered]).private).toBe(true);
  });
});
