/**
 * Evens out exposure and white balance between two photos of one spot, for comparison copies only.
 *
 * Method: reference match. Each colour channel is multiplied, in linear light, so that the parts which are plant in
 * neither photo (soil, boards, walls, path, sky) get the mean they have in the reference. Matching whole frames, or
 * making each one grey on average, would take the growing green itself for a colour cast and turn the bed pink.
 */

import { excessGreen } from "./excess-green.ts";
import type { RgbImage } from "./raw-image.ts";

export interface Evened {
  readonly image: RgbImage;
  /** Factors on linear red, green and blue. */
  readonly gains: readonly [number, number, number];
}

/**
 * No channel is changed by more than one and a half stops: further off, the photo is of another hour and should look
 * so.
 */
const mostGain = 2 ** 1.5;

/** Pixels above this Excess Green are plant, and so are not compared. */
const green = 0.06;

/** Grey levels outside these are clipped or noise and say nothing about the light. */
const darkest = 12;
const brightest = 243;

/**
 * Both photos must lie in the same frame and have the same size. With too little in common the photo comes back as it
 * is.
 */
export function evened(photo: RgbImage, reference: RgbImage): Evened {
  if (photo.width !== reference.width || photo.height !== reference.height)
    throw new RangeError("Photos to be evened out must have the same size.");
  const sums = [0, 0, 0];
  const wanted = [0, 0, 0];
  let pixels = 0;
  for (let at = 0; at < photo.data.length; at += 3) {
    if (!compared(photo.data, at) || !compared(reference.data, at)) continue;
    pixels++;
    for (let k = 0; k < 3; k++) {
      sums[k] = (sums[k] as number) + (linear[photo.data[at + k] as number] as number);
      wanted[k] = (wanted[k] as number) + (linear[reference.data[at + k] as number] as number);
    }
  }
  if (pixels < photo.data.length / 3 / 50) return { image: photo, gains: [1, 1, 1] };
  const gain = (k: number): number =>
    Math.max(1 / mostGain, Math.min(mostGain, (wanted[k] as number) / Math.max(1e-9, sums[k] as number)));
  const gains = [gain(0), gain(1), gain(2)] as const;
  const curves = gains.map((factor) => Uint8Array.from(linear, (value) => toByte(value * factor)));
  const data = photo.data.map((value, at) => (curves[at % 3] as Uint8Array)[value] as number);
  return { image: { ...photo, data }, gains };
}

function compared(data: Uint8Array, at: number): boolean {
  const red = data[at] as number;
  const middle = data[at + 1] as number;
  const blue = data[at + 2] as number;
  return (
    Math.min(red, middle, blue) >= darkest &&
    Math.max(red, middle, blue) <= brightest &&
    excessGreen(red, middle, blue) < green
  );
}

/** sRGB bytes in linear light, 0 to 1 (IEC 61966-2-1). */
const linear = Float64Array.from({ length: 256 }, (_, byte) => {
  const c = byte / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
});

function toByte(value: number): number {
  const c = Math.min(1, value);
  return Math.round(255 * (c <= 0.0031308 ? c * 12.92 : 1.055 * c ** (1 / 2.4) - 0.055));
}
