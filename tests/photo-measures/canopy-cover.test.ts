import { readFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { canopyCover, coverWidth, isCovered } from "../../src/photos/canopy-cover.ts";
import { loadRgb } from "../../src/photos/picture-loader.ts";
import type { RgbImage } from "../../src/photos/raw-image.ts";
import { demoPhotos, photosFolder } from "./demo-truth.ts";

/** A picture of one colour per pixel, from a rule. */
function picture(
  width: number,
  height: number,
  colour: (x: number, y: number) => readonly [number, number, number],
): RgbImage {
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data.set(colour(x, y), (y * width + x) * 3);
  return { width, height, data };
}

const leaf = [60, 120, 40] as const;
const soil = [120, 90, 60] as const;
/** A little unevenness, the same every time. */
const mottled = (colour: readonly [number, number, number], x: number, y: number): [number, number, number] => {
  const d = ((x * 7 + y * 13) % 11) - 5;
  return [colour[0] + d, colour[1] + d, colour[2] + d];
};

describe("canopy cover", () => {
  test("half leaf, half soil", () => {
    const half = picture(40, 20, (x, y) => mottled(x < 20 ? leaf : soil, x, y));
    expect(canopyCover(half)).toMatchObject({ cover: 0.5 });
  });

  test("only what lies inside the outline counts", () => {
    const half = picture(40, 20, (x, y) => mottled(x < 20 ? leaf : soil, x, y));
    const right = [
      [0.25, 0],
      [1, 0],
      [1, 1],
      [0.25, 1],
    ] as const;
    expect(canopyCover(half, right)?.cover).toBeCloseTo(10 / 30, 10);
  });

  test("an outline that holds no pixel has no cover", () => {
    expect(
      canopyCover(
        picture(10, 10, () => leaf),
        [
          [0.01, 0.01],
          [0.02, 0.01],
          [0.02, 0.02],
        ],
      ),
    ).toBeUndefined();
  });

  test.each([
    ["bare soil", (x: number, y: number) => mottled(soil, x, y), 0, "fixed"],
    ["soil and grey boards", (x: number, y: number) => mottled(x < 30 ? soil : [128, 128, 128], x, y), 0, "fixed"],
    ["leaves from edge to edge", (x: number, y: number) => mottled(leaf, x, y), 1, "limit"],
    ["light and dark leaves", (x: number, y: number) => mottled(x < 25 ? leaf : [34, 139, 34], x, y), 1, "limit"],
    ["one colour only", () => leaf, 1, "fixed"],
    ["black", () => [0, 0, 0] as const, 0, "fixed"],
  ])("%s: Otsu alone would split it", (_, colour, cover, basis) => {
    expect(canopyCover(picture(50, 50, colour))).toMatchObject({ cover, basis });
  });

  const wholeFrame = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const;
  test.each([
    ["fleece from edge to edge", [225, 228, 232], [225, 228, 232], true],
    ["fleece in the evening", [165, 160, 155], [165, 160, 155], true],
    ["fleece over half, soil beside it", [225, 228, 232], soil, true],
    ["bare soil", soil, soil, false],
    ["dry pale soil", [205, 190, 165], [205, 190, 165], false],
    ["straw", [225, 205, 150], [225, 205, 150], false],
    ["fleece over half, leaves beside it", [225, 228, 232], leaf, false],
  ] as const)("%s: covered or not", (_, left, right, covered) => {
    const found = canopyCover(
      picture(40, 20, (x, y) => mottled(x < 20 ? left : right, x, y)),
      wholeFrame,
    );
    expect(found && isCovered(found)).toBe(covered);
  });

  test("the demo photos: mean error at most 3 points of cover, none above 8", async () => {
    const errors: { file: string; error: number }[] = [];
    for (const { file, outline, truth } of demoPhotos()) {
      const found = canopyCover(await loadRgb(await readFile(path.join(photosFolder, file)), coverWidth), outline);
      errors.push({ file, error: 100 * ((found?.cover ?? Number.NaN) - (truth.cover ?? Number.NaN)) });
    }
    // The comparison must have met bare beds, full ones and everything between.
    const covers = demoPhotos().map(({ truth }) => truth.cover ?? 0);
    expect(errors.length).toBeGreaterThanOrEqual(80);
    expect(Math.min(...covers)).toBeLessThan(0.02);
    expect(Math.max(...covers)).toBeGreaterThan(0.6);
    const worst = errors.reduce((a, b) => (Math.abs(b.error) > Math.abs(a.error) ? b : a));
    expect(errors.reduce((sum, { error }) => sum + Math.abs(error), 0) / errors.length).toBeLessThanOrEqual(3);
    expect(Math.abs(worst.error), worst.file).toBeLessThanOrEqual(8);
  });
});
