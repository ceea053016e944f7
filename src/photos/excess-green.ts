/**
 * Vegetation indices from sRGB pixels.
 *
 * Chromatic coordinates r = R/(R+G+B) and so on. Excess Green 2g - r - b: Woebbecke, Meyer, Von Bargen and Mortensen,
 * "Color indices for weed identification", Transactions of the ASAE 38(1):259-269 (1995). Excess Red 1.4r - g and their
 * difference: Meyer and Camargo Neto, Computers and Electronics in Agriculture 63:282-293 (2008). Some libraries use
 * the raw 2G - R - B under the same name; that one depends on brightness and is not meant here.
 */

import type { RgbImage } from "./raw-image.ts";

/** Excess Green, -1 to 2; a black pixel has no colour and counts as 0. */
export function excessGreen(red: number, green: number, blue: number): number {
  const sum = red + green + blue;
  return sum === 0 ? 0 : (2 * green - red - blue) / sum;
}

/** Excess Red, -1 to 1.4; 0 for black. */
export function excessRed(red: number, green: number, blue: number): number {
  const sum = red + green + blue;
  return sum === 0 ? 0 : (1.4 * red - green) / sum;
}

/** Excess Green minus Excess Red, -2.4 to 3; above 0 is commonly taken as plant. */
export const excessGreenMinusRed = (red: number, green: number, blue: number): number =>
  excessGreen(red, green, blue) - excessRed(red, green, blue);

/** Number of steps into which Excess Green is sorted for its histogram. */
export const levels = 256;

/** Step 0 to 255 of an Excess Green value: -1 is 0, 2 is 255. */
export const levelOf = (value: number): number => Math.round(((value + 1) / 3) * (levels - 1));

/** Excess Green value in the middle of a step. */
export const greenAt = (level: number): number => (level / (levels - 1)) * 3 - 1;

/** Excess Green of every pixel as steps 0 to 255. */
export function excessGreenLevels(image: RgbImage): Uint8Array {
  const { data } = image;
  const out = new Uint8Array(image.width * image.height);
  for (let i = 0; i < out.length; i++) {
    const at = i * 3;
    out[i] = levelOf(excessGreen(data[at] as number, data[at + 1] as number, data[at + 2] as number));
  }
  return out;
}
