import { describe, expect, test } from "vitest";
import { maturityOf, usualMaturityOf } from "../../src/facts/index.ts";
import type { Variety } from "../../src/model.ts";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line } from "../timeline/small-garden.ts";

function maturity(maturity: Variety["maturity"], ...lines: readonly Line[]) {
  const varieties = { "crown-prince": { maturity }, matucana: { maturity }, victoria: { maturity } };
  const garden = grow({ lines, varieties });
  const planting = state(garden, "long-bed", "2026-07-18").plantings.at(-1);
  if (planting === undefined) throw new Error("Nothing grows in Long Bed.");
  return maturityOf(garden, planting);
}
const sown: Line = ["2026-04-21", "sowed", { variety: "crown-prince", nursery: true, count: 12 }];
const planted: Line = ["2026-05-24", "planted", { variety: "crown-prince", bed: "long-bed", count: 11 }];

test("counts the variety's days from the sowing or the planting, as its record says", () => {
  expect(maturity({ days: 95, from: "planting" }, sown, planted)?.value).toEqual({
    goal: "picking",
    counted: "planting",
    begun: "2026-05-24",
    days: 95,
    ready: "2026-08-27",
  });
  expect(maturity({ days: 95, from: "sowing" }, sown, planted)?.value).toMatchObject({
    begun: "2026-04-21",
    ready: "2026-07-25",
  });
});

test("ends with the first flower of what is grown for flowers", () => {
  const peas: Line = ["2026-03-01", "sowed", { variety: "matucana", bed: "long-bed" }];
  expect(maturity({ days: 100, from: "sowing" }, peas)?.value).toMatchObject({ goal: "flower", ready: "2026-06-09" });
});

test("is not known without days, without the day they count from, and of what stands from year to year", () => {
  expect(maturity(undefined, sown, planted)).toBeUndefined();
  expect(
    maturity({ days: 95, from: "sowing" }, ["2026-05-24", "planted", { ...planted[2], plantsFrom: "bought" }]),
  ).toBeUndefined();
  const rhubarb: Line = ["2026-03-01", "planted", { variety: "victoria", bed: "long-bed", plantsFrom: "bought" }];
  expect(maturity({ days: 95, from: "planting" }, rhubarb)).toBeUndefined();
});

test("is as private as its planting", () => {
  const secret: Line = ["2026-05-24", "planted", { ...planted[2], private: true }];
  expect(maturity({ days: 95, from: "planting" }, sown, planted)?.private).toBe(false);
  expect(maturity({ days: 95, from: "planting" }, sown, secret)?.private).toBe(true);
});

test("no days at all are no days to count", () => {
  expect(maturity({ days: 0, from: "sowing" }, sown, planted)).toBeUndefined();
  expect(maturity({ days: 1, from: "sowing" }, sown, planted)?.value.ready).toBe("2026-04-22");
});

describe("by what is known of the crop, where the variety gives no days", () => {
  const usual = (lines: readonly Line[], varieties: Readonly<Record<string, Partial<Variety>>> = {}) => {
    const garden = grow({ lines, varieties });
    const planting = state(garden, "long-bed", "2026-07-18").plantings.at(-1);
    if (planting === undefined) throw new Error("Nothing grows in Long Bed.");
    return usualMaturityOf(garden, planting);
  };

  test("it counts from the sowing or the planting, as the crop's table says, and keeps both ends of its span", () => {
    // Squash takes 85 to 110 days from sowing, tomatoes 60 to 85 from planting.
    expect(usual([sown, planted])).toMatchObject({
      value: {
        goal: "picking",
        counted: "sowing",
        begun: "2026-04-21",
        days: 98,
        ready: "2026-07-28",
        takes: { from: 85, to: 110 },
        latest: "2026-08-09",
      },
      sources: [{ file: "notes/2026-05-24.md" }],
      private: false,
    });
    const tomato: Line = ["2026-06-01", "planted", { variety: "ailsa-craig", bed: "long-bed", plantsFrom: "bought" }];
    expect(usual([tomato])?.value).toMatchObject({ counted: "planting", begun: "2026-06-01", latest: "2026-08-25" });
    const peas: Line = ["2026-05-01", "planted", { variety: "matucana", bed: "long-bed", plantsFrom: "bought" }];
    expect(usual([peas])?.value.goal).toBe("flower");
  });

  test("it is not known of plants set out whose sowing nobody saw, of what stands for years, of a crop no table has", () => {
    expect(usual([["2026-05-24", "planted", { ...planted[2], plantsFrom: "bought" }]])).toBeUndefined();
    const rhubarb: Line = ["2026-03-01", "planted", { variety: "victoria", bed: "long-bed", plantsFrom: "bought" }];
    expect(usual([rhubarb])).toBeUndefined();
    expect(usual([["2026-05-01", "sowed", { variety: "mystery", bed: "long-bed" }]])).toBeUndefined();
    expect(usual([["2026-07-01", "picked", { variety: "ailsa-craig", bed: "long-bed", grams: 90 }]])).toBeUndefined();
  });

  test("the variety's own days go before it, and its privacy goes with it", () => {
    expect(usual([sown, planted], { "crown-prince": { maturity: { days: 95, from: "planting" } } })).toBeUndefined();
    expect(usual([sown, planted], { "crown-prince": { private: true } })?.private).toBe(true);
    const secret: Line = ["2026-05-24", "planted", { ...planted[2], private: true }];
    expect(usual([sown, secret])?.private).toBe(true);
  });
});
