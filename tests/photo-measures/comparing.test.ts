import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Crop, commonCrop } from "../../src/photos/common-crop.ts";
import { evened } from "../../src/photos/even-exposure.ts";
import type { RgbImage } from "../../src/photos/raw-image.ts";
import { type Alignment, toPhoto, unmoved } from "../../src/photos/similarity.ts";
import { straightened } from "../../src/photos/straighten.ts";

function picture(
  width: number,
  height: number,
  colour: (x: number, y: number) => readonly [number, number, number],
): RgbImage {
  const data = new Uint8Array(width * height * 3);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) data.set(colour(x, y), (y * width + x) * 3);
  return { width, height, data };
}

const moved = (movement: Partial<Alignment>): Alignment => ({ ...unmoved(1000, 750), ...movement });

describe("the crop common to a series", () => {
  test("photos that miss nothing show the whole frame", () => {
    const crop = commonCrop([moved({}), moved({ scale: 0.9 })]) as Crop;
    expect(crop.width).toBeCloseTo(1, 4);
    expect(crop.left).toBeCloseTo(0, 4);
  });

  test("a photo shifted by a tenth to the right lacks the right tenth", () => {
    // The picture's content moved right by 100, so the reference's right tenth fell out of the frame; proportions are
    // kept.
    const crop = commonCrop([moved({ shiftX: 100 })]) as Crop;
    expect(crop.width).toBeCloseTo(0.9, 4);
    expect(crop.height).toBeCloseTo(0.9, 4);
    expect(crop.left + crop.width).toBeCloseTo(0.9, 4);
  });

  test("nothing in common", () => {
    expect(commonCrop([moved({ shiftX: 600 }), moved({ shiftX: -600 })])).toBeUndefined();
  });

  test("every corner of it is inside every photo, and a little more would not be", () => {
    const movement = fc
      .record({
        shiftX: fc.double({ min: -60, max: 60, noNaN: true }),
        shiftY: fc.double({ min: -60, max: 60, noNaN: true }),
        scale: fc.double({ min: 0.95, max: 1.06, noNaN: true }),
        rotationDeg: fc.double({ min: -4, max: 4, noNaN: true }),
      })
      .map(moved);
    fc.assert(
      fc.property(fc.array(movement, { minLength: 1, maxLength: 6 }), (alignments) => {
        const crop = commonCrop(alignments) as Crop;
        const outside = (margin: number): boolean =>
          alignments.some((alignment) =>
            [0, 1].some((i) =>
              [0, 1].some((j) => {
                const [x, y] = toPhoto(alignment, [
                  (crop.left + i * crop.width) * 1000,
                  (crop.top + j * crop.height) * 750,
                ]);
                return x < -margin || y < -margin || x > 1000 + margin || y > 750 + margin;
              }),
            ),
          );
        expect(outside(0.01)).toBe(false);
        expect(crop.left).toBeGreaterThanOrEqual(0);
        expect(crop.top + crop.height).toBeLessThanOrEqual(1);
      }),
    );
  });
});

describe("straightening", () => {
  const dot = (cx: number, cy: number) =>
    picture(400, 300, (x, y) => (Math.hypot(x + 0.5 - cx, y + 0.5 - cy) < 9 ? [250, 250, 250] : [20, 20, 20]));
  const middleOf = (image: RgbImage): [number, number] => {
    let [sx, sy, n] = [0, 0, 0];
    for (let i = 0; i < image.width * image.height; i++)
      if ((image.data[i * 3] as number) > 128) {
        sx += (i % image.width) + 0.5;
        sy += Math.floor(i / image.width) + 0.5;
        n++;
      }
    return [sx / n, sy / n];
  };

  test("puts a thing back where the reference has it", () => {
    const alignment = { ...unmoved(1000, 750), shiftX: 40, shiftY: -25, scale: 1.04, rotationDeg: 2 };
    const [px, py] = toPhoto(alignment, [600, 300]);
    const out = straightened(dot(px * 0.4, py * 0.4), alignment, { left: 0, top: 0, width: 1, height: 1 }, 400);
    const [x, y] = middleOf(out);
    expect(Math.hypot(x - 240, y - 120)).toBeLessThan(0.5);
  });

  test("the crop fills the picture, in the frame's proportions", () => {
    const out = straightened(dot(200, 150), unmoved(400, 300), { left: 0.25, top: 0.25, width: 0.5, height: 0.5 }, 300);
    expect([out.width, out.height]).toEqual([300, 225]);
    const [x, y] = middleOf(out);
    expect(Math.hypot(x - 150, y - 112.5)).toBeLessThan(0.6);
  });

  test("a photo that needs no change comes back unchanged", () => {
    const image = picture(40, 30, (x, y) => [x * 6, y * 8, (x * y) % 256]);
    expect(straightened(image, unmoved(40, 30), { left: 0, top: 0, width: 1, height: 1 }, 40)).toEqual(image);
  });
});

describe("evening out the light", () => {
  const soil = (x: number, y: number): readonly [number, number, number] => [
    110 + ((x * 3) % 20),
    90 + ((y * 5) % 20),
    70,
  ];
  const reference = picture(60, 40, soil);

  test("a photo taken darker and bluer gets the reference's soil back", () => {
    const photo = picture(60, 40, (x, y) => {
      const [r, g, b] = soil(x, y);
      return [Math.round(r * 0.7), Math.round(g * 0.8), Math.round(b * 0.95)];
    });
    const { image, gains } = evened(photo, reference);
    const mean = (of: RgbImage, k: number): number =>
      of.data.reduce((sum, value, i) => sum + (i % 3 === k ? value : 0), 0) / (60 * 40);
    for (const k of [0, 1, 2]) expect(Math.abs(mean(image, k) - mean(reference, k))).toBeLessThan(1.5);
    expect(gains[0]).toBeGreaterThan(gains[2]);
  });

  test("plants that grew over half the bed are not taken for a colour cast", () => {
    const grown = picture(60, 40, (x, y) => (x < 30 ? [60, 120, 40] : soil(x, y)));
    const { gains } = evened(grown, reference);
    for (const gain of gains) expect(gain).toBeCloseTo(1, 2);
  });

  test("never more than a stop and a half, and nothing at all without common ground", () => {
    const night = picture(60, 40, (x, y) => {
      const [r, g, b] = soil(x, y);
      return [r / 5, g / 5, b / 5];
    });
    for (const gain of evened(night, reference).gains) expect(gain).toBeLessThanOrEqual(2 ** 1.5);
    const jungle = picture(60, 40, () => [60, 120, 40]);
    expect(evened(jungle, reference)).toEqual({ image: jungle, gains: [1, 1, 1] });
  });

  test("the photo it was given stays as it is", () => {
    const photo = picture(60, 40, () => [80, 70, 60]);
    const before = photo.data.slice();
    evened(photo, reference);
    expect(photo.data).toEqual(before);
  });
});
