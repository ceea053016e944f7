/** Canopy cover: which share of a bed's outline in a photo is green plant. */

import { excessGreenLevels, levelOf, levels, valueOf } from "./excess-green.ts";
import { otsu } from "./otsu.ts";
import type { Outline, RgbImage } from "./raw-image.ts";
import { insideOutline } from "./raw-image.ts";

export interface Cover {
  /** 0 to 1. */
  readonly cover: number;
  /** Excess Green above which a pixel counts as plant. */
  readonly threshold: number;
  /** Whether the photo itself gave the threshold, or it was fixed because the frame shows (nearly) only soil or only plants. */
  readonly basis: "otsu" | "fixed";
}

/** Threshold used when a photo cannot give its own. Between grey, soil and straw below 0.05 and leaves above 0.15 (common practice). */
export const fixedThreshold = 0.1;

/** Cover over an outline (fractions of the frame) or, without one, over the whole frame. Undefined when the outline holds no pixel. */
export function canopyCover(image: RgbImage, outline?: Outline): Cover | undefined {
  const green = excessGreenLevels(image);
  const inside = outline && insideOutline(image.width, image.height, outline);
  const histogram = new Float64Array(levels);
  let pixels = 0;
  green.forEach((level, i) => {
    if (inside && inside[i] === 0) return;
    histogram[level] = (histogram[level] as number) + 1;
    pixels++;
  });
  if (pixels === 0) return undefined;
  const split = otsu(histogram);
  const trusted = split && valueOf(split.lowerMean) < 0.12 && valueOf(split.upperMean) > 0.12;
  const threshold = trusted ? split.threshold : levelOf(fixedThreshold);
  let plant = 0;
  for (let level = threshold + 1; level < levels; level++) plant += histogram[level] as number;
  return { cover: plant / pixels, threshold: valueOf(threshold), basis: trusted ? "otsu" : "fixed" };
}
