import { expect, test } from "vitest";
import { maturityOf } from "../../src/facts/index.ts";
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
