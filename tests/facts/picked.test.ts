import { expect, test } from "vitest";
import { pickedOf } from "../../src/facts/index.ts";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line } from "../timeline/small-garden.ts";

const planted = (variety: string): Line => [
  "2026-05-24",
  "planted",
  { variety, bed: "long-bed", count: 2, plantsFrom: "bought" },
];
const picked = (day: string, variety: string, grams: number, isPrivate = false): Line => [
  day,
  "picked",
  { variety, bed: "long-bed", grams, private: isPrivate },
];

const garden = grow({
  lines: [
    planted("ailsa-craig"),
    planted("gardeners-delight"),
    picked("2026-07-01", "ailsa-craig", 400),
    picked("2026-07-08", "gardeners-delight", 300),
    picked("2026-07-10", "ailsa-craig", 500, true),
    picked("2026-07-18", "ailsa-craig", 600),
    picked("2026-07-19", "ailsa-craig", 7000),
    ["2026-07-12", "picked", { crop: "tomato", bed: "long-bed", grams: 90 }],
  ],
});
const { plantings } = state(garden, "long-bed", "2026-07-20");
const of = (...varieties: readonly string[]) =>
  plantings.filter(({ variety }) => variety !== undefined && varieties.includes(variety));

test("is the sum of what is credited to the plantings, after one day, up to and with another", () => {
  const fact = pickedOf(garden, of("ailsa-craig"), { after: "2026-07-01", to: "2026-07-18" });
  expect(fact.value).toMatchObject({ grams: 1100, times: 2, first: "2026-07-10", last: "2026-07-18" });
  expect(fact.sources.map(({ file }) => file)).toEqual(["notes/2026-07-10.md", "notes/2026-07-18.md"]);
  expect(fact.day).toBe("2026-07-18");
});

test("adds up several plantings, and leaves out what the line credits to none of them", () => {
  const fact = pickedOf(garden, of("ailsa-craig", "gardeners-delight"), { after: "", to: "2026-07-18" });
  expect(fact.value).toMatchObject({ grams: 1800, times: 4 });
});

test("is private as soon as one of its pickings is", () => {
  expect(pickedOf(garden, of("ailsa-craig"), { after: "", to: "2026-07-18" }).private).toBe(true);
  expect(pickedOf(garden, of("ailsa-craig"), { after: "", to: "2026-07-09" }).private).toBe(false);
  expect(pickedOf(garden, of("gardeners-delight"), { after: "", to: "2026-07-18" }).private).toBe(false);
});
