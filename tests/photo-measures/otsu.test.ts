import { readFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { excessGreenLevels } from "../../src/photos/excess-green.ts";
import { otsu } from "../../src/photos/otsu.ts";
import { loadGrey, loadRgb } from "../../src/photos/picture-loader.ts";
import { demoPhotos, photosFolder } from "./demo-truth.ts";
import { cv, openCvReady } from "./opencv.ts";

function histogramOf(data: Uint8Array): Float64Array {
  const histogram = new Float64Array(256);
  for (const value of data) histogram[value] = (histogram[value] as number) + 1;
  return histogram;
}

describe("Otsu's threshold", () => {
  // A widely copied teaching example; it names the same split T = 3, because it counts the background as < T.
  test("worked example with six levels splits 0-2 from 3-5: the lower class is <= threshold", () => {
    const split = otsu([8, 7, 2, 6, 9, 4]);
    expect(split?.threshold).toBe(2);
    expect(split?.lowerShare).toBeCloseTo(0.4722, 4);
    expect(split?.lowerMean).toBeCloseTo(0.6471, 4);
    expect(split?.upperMean).toBeCloseTo(3.8947, 4);
    expect(split?.betweenVariance).toBeCloseTo(2.6287, 4);
  });

  test("between-class variance at every level of that example", () => {
    // Only the classes on either side of one level are left, so the best split is that level's.
    const counts = [8, 7, 2, 6, 9, 4];
    const expected = [1.5928, 2.5635, 2.6287, 2.1417, 0.8705];
    const total = 36;
    expected.forEach((variance, t) => {
      const lower = counts.slice(0, t + 1);
      const upper = counts.slice(t + 1);
      const sum = (part: readonly number[]): number => part.reduce((s, c) => s + c, 0);
      const mean = (part: readonly number[], from: number): number =>
        part.reduce((s, c, i) => s + c * (i + from), 0) / sum(part);
      const two = [0, 0, 0, 0, 0, 0];
      two[0] = sum(lower);
      two[5] = sum(upper);
      const split = otsu(two);
      const scaled = ((split?.betweenVariance ?? 0) * (mean(lower, 0) - mean(upper, t + 1)) ** 2) / 25;
      expect(scaled).toBeCloseTo(variance, 3);
      expect(sum(lower) + sum(upper)).toBe(total);
    });
  });

  test("nothing to split: one level, or no pixel", () => {
    expect(otsu([0, 5, 0])).toBeUndefined();
    expect(otsu([0, 0, 0])).toBeUndefined();
  });

  test("equals OpenCV's threshold on the demo photos, grey and Excess Green", async () => {
    await openCvReady();
    const sample = demoPhotos().filter((_, i) => i % 6 === 0);
    let compared = 0;
    for (const { file } of sample) {
      const bytes = await readFile(path.join(photosFolder, file));
      for (const data of [excessGreenLevels(await loadRgb(bytes, 300)), (await loadGrey(bytes, 300)).data]) {
        const source = cv.matFromArray(1, data.length, cv.CV_8UC1, data);
        const target = new cv.Mat();
        const theirs = cv.threshold(source, target, 0, 255, cv.THRESH_BINARY + cv.THRESH_OTSU);
        source.delete();
        target.delete();
        expect(otsu(histogramOf(data))?.threshold, file).toBe(theirs);
        compared++;
      }
    }
    expect(compared).toBeGreaterThanOrEqual(30);
  });
});
