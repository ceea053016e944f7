import { describe, expect, it } from "vitest";
import { offsetFit, offsetRows, squareFit } from "../../src/almanac/index.ts";

const FOOT = 0.3048;
const raised = { length: 8 * FOOT, width: 4 * FOOT };

describe("plants that fit a bed", () => {
  // Plane geometry, worked by hand: a bed of 4 × 8 ft at 12 in, half a spacing from the edge. The density formula
  // (area / (s² · √3/2)) would promise 36.9.
  it("counts by placement, not by density", () => {
    expect(squareFit(raised, { inRow: FOOT })).toEqual({ plants: 32, rows: [8, 8, 8, 8] });
    expect(offsetRows(raised.length, raised.width, FOOT)).toEqual({ plants: 30, rows: [8, 7, 8, 7] });
    expect(offsetRows(raised.width, raised.length, FOOT)).toEqual({ plants: 32, rows: [4, 3, 4, 3, 4, 3, 4, 3, 4] });
    expect(offsetFit(raised, FOOT).plants).toBe(32);
  });

  // Plants per square foot on an endless square grid: 12 in 1.000, 18 in 0.444, 24 in 0.250 (plane geometry).
  it.each([
    [0.3048, 1],
    [0.4572, 0.444],
    [0.6096, 0.25],
  ])("comes near the grid's density in a field, %d m", (spacing, perSquareFoot) => {
    const field = { length: 300 * FOOT, width: 300 * FOOT };
    expect(squareFit(field, { inRow: spacing }).plants / 90_000).toBeCloseTo(perSquareFoot, 3);
    expect(offsetFit(field, spacing).plants / 90_000).toBeCloseTo(perSquareFoot * 1.1547, 2);
  });

  it("has room for none in a bed smaller than a plant", () => {
    expect(squareFit({ length: 0.2, width: 0.2 }, { inRow: 0.5 })).toEqual({ plants: 0, rows: [] });
    expect(offsetFit({ length: 0.2, width: 0.2 }, 0.5).plants).toBe(0);
    expect(squareFit({ length: 1, width: 1 }, { inRow: 0 }).plants).toBe(0);
  });

  it("loses no plant to rounding", () => {
    expect(squareFit({ length: 3, width: 0.9 }, { inRow: 0.3 }).plants).toBe(30);
  });
});
