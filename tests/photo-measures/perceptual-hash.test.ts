import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { differenceHash, hashDistance } from "../../src/photos/perceptual-hash.ts";
import type { GreyImage } from "../../src/photos/raw-image.ts";
import { shrunk } from "../../src/photos/raw-image.ts";

function grey(width: number, height: number, value: (x: number, y: number) => number): GreyImage {
  return {
    width,
    height,
    data: Uint8Array.from({ length: width * height }, (_, i) => value(i % width, Math.floor(i / width))),
  };
}

describe("difference hash", () => {
  // Polarity as pinned here: a bit is 1 where left is darker than right, strictly.
  test("brightening from left to right gives all ones, its mirror image none", () => {
    expect(differenceHash(grey(90, 80, (x) => x * 2)).toString(16)).toBe("ffffffffffffffff");
    expect(differenceHash(grey(90, 80, (x) => 200 - x * 2))).toBe(0n);
  });
  test("a flat picture gives 0: equal is not darker", () => {
    expect(differenceHash(grey(90, 80, () => 77))).toBe(0n);
  });
  test("20 brighter everywhere, without clipping, is the same picture", () => {
    const scene = (more: number) =>
      grey(90, 80, (x, y) => 60 + more + Math.round(50 * Math.sin(x / 9) * Math.cos(y / 7)));
    expect(differenceHash(scene(20))).toBe(differenceHash(scene(0)));
  });
  test("the first comparison is the highest bit", () => {
    expect(differenceHash(grey(9, 8, (x, y) => (x === 0 && y === 0 ? 0 : 9))).toString(16)).toBe("8000000000000000");
  });
});

describe("distance", () => {
  // Original and watermarked picture of a published example of this hash (2014).
  const original = "1100100101101001001111000001100000001000000000000000011100111111";
  const watermarked = "1100100101111001001111000001100000011000000010000000011100111111";
  test("the published pair differs in 3 bits", () => {
    expect(hashDistance(BigInt(`0b${original}`), BigInt(`0b${watermarked}`))).toBe(3);
  });
  test("is a distance", () => {
    const hash = fc.bigInt({ min: 0n, max: 2n ** 64n - 1n });
    fc.assert(
      fc.property(hash, hash, hash, (a, b, c) => {
        expect(hashDistance(a, a)).toBe(0);
        expect(hashDistance(a, b)).toBe(hashDistance(b, a));
        expect(hashDistance(a, c)).toBeLessThanOrEqual(hashDistance(a, b) + hashDistance(b, c));
      }),
    );
  });
});

describe("shrinking by areas", () => {
  test("a pixel counts by the share of it that falls into the target", () => {
    expect([
      ...shrunk(
        grey(3, 1, (x) => [0, 90, 180][x] ?? 0),
        2,
        1,
      ).data,
    ]).toEqual([30, 150]);
  });
  test("keeps the mean of any picture to within rounding", () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 72, maxLength: 72 }), (data) => {
        const small = shrunk({ width: 12, height: 6, data }, 4, 3);
        const mean = (values: Uint8Array): number => values.reduce((a, b) => a + b, 0) / values.length;
        expect(Math.abs(mean(small.data) - mean(data))).toBeLessThanOrEqual(0.5);
      }),
    );
  });
  test("refuses to enlarge", () => {
    expect(() =>
      shrunk(
        grey(4, 4, () => 1),
        5,
        4,
      ),
    ).toThrow(RangeError);
  });
});
