import { describe, expect, test } from "vitest";
import {
  excessGreen,
  excessGreenLevels,
  excessGreenMinusRed,
  excessRed,
  greenAt,
  levelOf,
} from "../../src/photos/excess-green.ts";

// Chromatic indices after Woebbecke and others (1995) and Meyer and Camargo Neto (2008); the values were computed by
// hand from those formulas.
const published = [
  { what: "leaf", rgb: [60, 120, 40], exg: 0.6364, exr: -0.1636, exgr: 0.8 },
  { what: "bright leaf", rgb: [34, 139, 34], exg: 1.0145, exr: -0.4415, exgr: 1.456 },
  { what: "soil", rgb: [120, 90, 60], exg: 0, exr: 0.2889, exgr: -0.2889 },
  { what: "red soil", rgb: [139, 69, 19], exg: -0.0881, exr: 0.5533, exgr: -0.6414 },
  { what: "straw", rgb: [200, 180, 60], exg: 0.2273, exr: 0.2273, exgr: 0 },
  { what: "grey", rgb: [128, 128, 128], exg: 0, exr: 0.1333, exgr: -0.1333 },
  { what: "pure green", rgb: [0, 255, 0], exg: 2, exr: -1, exgr: 3 },
  { what: "pure red", rgb: [255, 0, 0], exg: -1, exr: 1.4, exgr: -2.4 },
] as const;

describe("chromatic vegetation indices", () => {
  test.each(published)("$what", ({ rgb: [r, g, b], exg, exr, exgr }) => {
    expect(excessGreen(r, g, b)).toBeCloseTo(exg, 4);
    expect(excessRed(r, g, b)).toBeCloseTo(exr, 4);
    expect(excessGreenMinusRed(r, g, b)).toBeCloseTo(exgr, 4);
  });

  test("a black pixel has no colour: 0, never NaN, never plant", () => {
    expect([excessGreen(0, 0, 0), excessRed(0, 0, 0), excessGreenMinusRed(0, 0, 0)]).toEqual([0, 0, 0]);
  });

  test("is the chromatic form: twice the light gives the same value, unlike raw 2G - R - B", () => {
    expect(excessGreen(30, 60, 20)).toBeCloseTo(excessGreen(60, 120, 40), 12);
    expect(excessGreen(60, 120, 40)).not.toBe(2 * 120 - 60 - 40);
  });

  test("levels span the whole range and come back to within half a step", () => {
    expect([levelOf(-1), levelOf(2)]).toEqual([0, 255]);
    for (const value of [-1, -0.3, 0, 0.1, 0.6364, 2])
      expect(Math.abs(greenAt(levelOf(value)) - value)).toBeLessThan(1.5 / 255 + 1e-9);
    const image = { width: 2, height: 1, data: Uint8Array.of(60, 120, 40, 0, 0, 0) };
    expect([...excessGreenLevels(image)]).toEqual([levelOf(0.6364), levelOf(0)]);
  });
});
