import { describe, expect, test } from "vitest";
import type { GreyImage } from "../../src/photos/raw-image.ts";
import { clippedShare, varianceOfLaplacian } from "../../src/photos/sharpness.ts";

function grey(width: number, height: number, value: (x: number, y: number) => number): GreyImage {
  return {
    width,
    height,
    data: Uint8Array.from({ length: width * height }, (_, i) => value(i % width, Math.floor(i / width))),
  };
}

describe("variance of the Laplacian, valid region only", () => {
  // Computed by hand for the kernel 0 1 0 / 1 -4 1 / 0 1 0 with population variance and no padding (Pech-Pacheco and
  // others, 2000).
  test("5 x 5 black with a white centre", () => {
    expect(varianceOfLaplacian(grey(5, 5, (x, y) => (x === 2 && y === 2 ? 255 : 0)))).toBeCloseTo(144500, 6);
  });
  test("6 x 6 chequerboard", () => {
    expect(varianceOfLaplacian(grey(6, 6, (x, y) => ((x + y) % 2) * 255))).toBeCloseTo(1040400, 6);
  });
  test("an even ramp is as blurred as can be", () => {
    expect(varianceOfLaplacian(grey(8, 6, (x, y) => 10 * x + 5 * y))).toBe(0);
  });
  test("6 x 6 step from black to white", () => {
    expect(varianceOfLaplacian(grey(6, 6, (x) => (x < 3 ? 0 : 255)))).toBeCloseTo(32512.5, 6);
  });
  test("too small to have a neighbour on every side", () => {
    expect(varianceOfLaplacian(grey(1, 1, () => 9))).toBe(0);
    expect(varianceOfLaplacian(grey(2, 9, (x) => x * 200))).toBe(0);
  });
});

test("shares of clipped pixels", () => {
  expect(clippedShare(grey(10, 1, (x) => [0, 2, 3, 100, 252, 253, 255, 255, 128, 128][x] ?? 0))).toEqual({
    black: 0.2,
    white: 0.3,
  });
});
