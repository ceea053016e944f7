/** How sharp and how well exposed a frame is: what decides which frame of a burst stands for it. */

import type { GreyImage } from "./raw-image.ts";

/**
 * Variance of the Laplacian: kernel 0 1 0 / 1 -4 1 / 0 1 0, population variance. Pech-Pacheco, Cristobal,
 * Chamorro-Martinez and Fernandez-Valdivia, "Diatom autofocusing in brightfield microscopy", ICPR 2000, vol. 3,
 * 314-317.
 *
 * Only pixels with all four neighbours count (no padding), so a picture under 3 x 3 gives 0. The number depends on the
 * border rule and on the size the picture was reduced to; compare only frames loaded at the same width (the thresholds
 * found elsewhere do not carry over).
 */
export function varianceOfLaplacian(image: GreyImage): number {
  const { width, height, data } = image;
  let sum = 0;
  let squares = 0;
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const value =
        (data[at - 1] as number) +
        (data[at + 1] as number) +
        (data[at - width] as number) +
        (data[at + width] as number) -
        4 * (data[at] as number);
      sum += value;
      squares += value * value;
    }
  const count = Math.max(0, width - 2) * Math.max(0, height - 2);
  return count === 0 ? 0 : squares / count - (sum / count) ** 2;
}

/** Shares of pixels, 0 to 1, that are as good as black (grey 2 or less) or white (grey 253 or more). */
export function clippedShare(image: GreyImage): { readonly black: number; readonly white: number } {
  let black = 0;
  let white = 0;
  for (const value of image.data) {
    if (value <= 2) black++;
    else if (value >= 253) white++;
  }
  const count = image.data.length || 1;
  return { black: black / count, white: white / count };
}
