/** The one index of a garden: what stood on a day, and what was picked of what. */
import { describe, expect, test } from "vitest";
import { bookOf } from "../../src/garden/index.ts";
import { grow, type Line } from "../timeline/small-garden.ts";

const lines: Line[] = [
  ["2024-06-01", "planted", { variety: "musselburgh", bed: "bean-row", count: 10, plantsFrom: "bought" }],
  ["2025-06-01", "planted", { variety: "black-beauty", bed: "long-bed", count: 2, plantsFrom: "bought" }],
  ["2025-10-01", "cleared", { variety: "black-beauty", bed: "long-bed" }],
  ["2026-03-12", "sowed", { variety: "musselburgh", nursery: true, count: 30 }],
  ["2026-05-30", "planted", { variety: "musselburgh", bed: "long-bed", count: 24, spacingCm: 20 }],
  ["2026-06-02", "lost", { variety: "musselburgh", bed: "long-bed", count: 3, cause: "leek moth" }],
  ["2026-07-10", "picked", { variety: "musselburgh", bed: "long-bed", grams: 300 }],
  ["2026-07-12", "picked", { variety: "musselburgh", bed: "long-bed", grams: 200 }],
  ["2026-07-14", "moved", { variety: "musselburgh", bed: "long-bed", toBed: "tunnel", count: 4 }],
];
const book = bookOf(grow({ lines }));
const inLongBed = "long-bed/musselburgh/2026-05-30";

describe("the book of a garden", () => {
  test("is made once", () => {
    expect(bookOf(book.garden)).toBe(book);
  });

  test("has the plantings of a variety, over all beds and years, as they stood on a day", () => {
    const on = (day: string) => book.plantingsOf("musselburgh", day).map(({ id, count }) => [id, count?.value]);
    expect(on("2026-07-18")).toEqual([
      ["bean-row/musselburgh/2024-06-01", 10],
      [inLongBed, 17],
      ["tunnel/musselburgh/2026-07-14", 4],
    ]);
    expect(on("2026-06-01")).toEqual([
      ["bean-row/musselburgh/2024-06-01", 10],
      [inLongBed, 24],
    ]);
    expect(on("2026-05-29")).toHaveLength(1);
    expect(book.plantingsOf("victoria", "2026-07-18")).toEqual([]);
  });

  test("knows a planting on any day, from the end of the one it began", () => {
    const planting = book.plantingsOf("musselburgh", "2026-07-18").find(({ id }) => id === inLongBed);
    if (planting === undefined) throw new Error("no such planting");
    const count = (day: string) => book.standing(planting, day)?.count?.value;
    expect(["2026-05-29", "2026-05-30", "2026-06-01", "2026-06-02"].map(count)).toEqual([undefined, 24, 24, 21]);
    expect(book.stateOf("long-bed", "2026-06-01").plantings.map(({ id }) => id)).toContain(inLongBed);
    expect(book.nurseryLot(planting)?.sown).toBe("2026-03-12");
  });

  test("credits pickings to plantings, in order of day", () => {
    expect(book.pickings.map(({ day, planting, harvest, crop }) => [day, planting, harvest.grams, crop])).toEqual([
      ["2026-07-10", inLongBed, 300, "leek"],
      ["2026-07-12", inLongBed, 200, "leek"],
    ]);
  });
});
