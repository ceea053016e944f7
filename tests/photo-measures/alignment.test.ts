import { readFile } from "node:fs/promises";
import path from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { alignerTo, alignmentWidth } from "../../src/photos/align.ts";
import { loadGrey } from "../../src/photos/picture-loader.ts";
import type { GreyImage } from "../../src/photos/raw-image.ts";
import {
  type Alignment,
  atWidth,
  chained,
  fitAlignment,
  inverse,
  type Point,
  toPhoto,
  toReference,
  unmoved,
} from "../../src/photos/similarity.ts";
import { demoPhotos, photosFolder, viewpointNames } from "./demo-truth.ts";

/** Farthest that two alignments lie apart in the frame's corners and middle, in pixels of 1000 across. */
function apart(a: Alignment, b: Alignment): number {
  const [one, other] = [atWidth(a, 1000), atWidth(b, 1000)];
  const places: Point[] = [
    [0, 0],
    [one.width, 0],
    [0, one.height],
    [one.width, one.height],
    [one.width / 2, one.height / 2],
  ];
  return Math.max(
    ...places.map((place) => {
      const [p, q] = [toPhoto(one, place), toPhoto(other, place)];
      return Math.hypot(p[0] - q[0], p[1] - q[1]);
    }),
  );
}

/** A picture made of soft blobs, as seen by a moved camera. */
function blobs(width: number, height: number, seed: number, moved: Alignment = unmoved(width, height)): GreyImage {
  let state = seed;
  const next = (): number => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
  const value = new Float64Array(width * height).fill(120);
  for (let k = 0; k < 900; k++) {
    const [cx, cy] = toPhoto(moved, [next() * width, next() * height]);
    const r = (4 + 14 * next()) * moved.scale;
    const lift = 160 * (next() - 0.5);
    for (let y = Math.max(0, Math.floor(cy - 2 * r)); y < Math.min(height, cy + 2 * r); y++)
      for (let x = Math.max(0, Math.floor(cx - 2 * r)); x < Math.min(width, cx + 2 * r); x++) {
        const d = ((x + 0.5 - cx) ** 2 + (y + 0.5 - cy) ** 2) / (r * r);
        value[y * width + x] = (value[y * width + x] as number) + lift * Math.exp(-d * 2);
      }
  }
  return { width, height, data: Uint8Array.from(value, (v) => Math.max(0, Math.min(255, Math.round(v)))) };
}

describe("plane geometry", () => {
  const anyAlignment = fc
    .record({
      shiftX: fc.double({ min: -90, max: 90, noNaN: true }),
      shiftY: fc.double({ min: -90, max: 90, noNaN: true }),
      scale: fc.double({ min: 0.8, max: 1.2, noNaN: true }),
      rotationDeg: fc.double({ min: -15, max: 15, noNaN: true }),
    })
    .map((movement): Alignment => ({ width: 1000, height: 750, ...movement }));

  test("there and back again is where one was", () => {
    fc.assert(
      fc.property(
        anyAlignment,
        fc.integer({ min: 0, max: 1000 }),
        fc.integer({ min: 0, max: 750 }),
        (movement, x, y) => {
          const [bx, by] = toReference(movement, toPhoto(movement, [x, y]));
          expect(Math.hypot(bx - x, by - y)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  test("two movements chained do what one after the other does", () => {
    fc.assert(
      fc.property(anyAlignment, anyAlignment, (first, second) => {
        const [ax, ay] = toPhoto(chained(first, second), [200, 600]);
        const [bx, by] = toPhoto(second, toPhoto(first, [200, 600]));
        expect(Math.hypot(ax - bx, ay - by)).toBeLessThan(1e-6);
        expect(apart(chained(first, inverse(first)), unmoved(1000, 750))).toBeLessThan(1e-6);
      }),
    );
  });

  test("the fit finds any movement from points that follow it", () => {
    fc.assert(
      fc.property(anyAlignment, (movement) => {
        const matches = (
          [
            [0, 0],
            [900, 40],
            [500, 700],
          ] as const
        ).map((from) => ({ from, to: toPhoto(movement, from) }));
        expect(apart(fitAlignment(matches, 1000, 750) as Alignment, movement)).toBeLessThan(1e-6);
      }),
    );
  });

  test("points that all lie in one place fit nothing", () => {
    expect(fitAlignment([{ from: [5, 5], to: [9, 9] }], 1000, 750)).toBeUndefined();
    expect(fitAlignment([], 1000, 750)).toBeUndefined();
  });
});

describe("aligning made pictures", () => {
  const width = 1000;
  const height = 750;
  const reference = blobs(width, height, 7);
  const align = alignerTo(reference);

  test.each([
    { shiftX: 0, shiftY: 0, scale: 1, rotationDeg: 0 },
    { shiftX: 31.4, shiftY: -22.7, scale: 1, rotationDeg: 0 },
    { shiftX: -60, shiftY: 48, scale: 1.02, rotationDeg: -1.2 },
    { shiftX: 12, shiftY: 9, scale: 0.95, rotationDeg: 3 },
    { shiftX: -8, shiftY: -14, scale: 1.06, rotationDeg: -4 },
  ])("$shiftX, $shiftY, times $scale, $rotationDeg degrees: within half a pixel", (movement) => {
    const truth = { width, height, ...movement };
    const found = align(blobs(width, height, 7, truth));
    expect(apart(found as Alignment, truth)).toBeLessThan(0.5);
  });

  test("darker and flatter light changes nothing", () => {
    const truth = { width, height, shiftX: 20, shiftY: -12, scale: 1.01, rotationDeg: 0.8 };
    const photo = blobs(width, height, 7, truth);
    const dim = { ...photo, data: photo.data.map((value) => Math.round(20 + value * 0.4)) };
    expect(apart(align(dim) as Alignment, truth)).toBeLessThan(0.5);
  });

  test("says not aligned: another scene, a flat wall, another shape of frame, a camera turned by 40 degrees", () => {
    expect(align(blobs(width, height, 99))).toBeUndefined();
    expect(align({ width, height, data: new Uint8Array(width * height).fill(90) })).toBeUndefined();
    expect(align(blobs(750, 1000, 7))).toBeUndefined();
    expect(
      align(blobs(width, height, 7, { width, height, shiftX: 0, shiftY: 0, scale: 1, rotationDeg: 40 })),
    ).toBeUndefined();
  });

  test("a tiny picture is not aligned, and does not fail", () => {
    const tiny = { width: 1, height: 1, data: Uint8Array.of(3) };
    expect(alignerTo(tiny)(tiny)).toBeUndefined();
  });
});

describe("the demo photos", () => {
  test("95 of 100 within 2 pixels at 1000 across, the rest not aligned rather than wrong", {
    timeout: 240_000,
  }, async () => {
    let frames = 0;
    let good = 0;
    const wrong: string[] = [];
    for (const viewpoint of viewpointNames()) {
      const [reference, ...others] = demoPhotos().filter((photo) => photo.viewpoint === viewpoint);
      // Every other one; `npm run bench` aligns them all.
      const some = others.filter((_, index) => index % 2 === 0);
      if (!reference) throw new Error(`${viewpoint} has no photos.`);
      const grey = async (file: string): Promise<GreyImage> =>
        loadGrey(await readFile(path.join(photosFolder, file)), alignmentWidth);
      const align = alignerTo(await grey(reference.file));
      for (const photo of some) {
        frames++;
        const found = align(await grey(photo.file));
        if (!found) continue;
        const truth = chained(inverse(reference.truth), photo.truth);
        if (apart(found, truth) <= 2) good++;
        else wrong.push(photo.file);
      }
    }
    expect(frames).toBeGreaterThanOrEqual(38);
    expect(good / frames).toBeGreaterThanOrEqual(0.95);
    expect(wrong).toEqual([]);
  });
});
