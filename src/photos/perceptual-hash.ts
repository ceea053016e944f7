/**
 * Fingerprints of what a picture shows, 64 bits each, for finding bursts and near-duplicates.
 *
 * aHash and dHash as described by N. Krawetz ("Looks Like It", 2011; "Kind of Like That", 2013). Both descriptions
 * leave the polarity of the bits and the ties open; here they are pinned, and the first comparison (top left) is the
 * highest bit.
 */

import type { GreyImage } from "./raw-image.ts";
import { shrunk } from "./raw-image.ts";

/**
 * Difference hash: the picture at 9 x 8, a bit is 1 where a pixel is darker than its right neighbour; equal gives 0.
 */
export function differenceHash(image: GreyImage): bigint {
  const { data } = shrunk(image, 9, 8);
  let hash = 0n;
  for (let y = 0; y < 8; y++)
    for (let x = 0; x < 8; x++)
      hash = (hash << 1n) | ((data[y * 9 + x] as number) < (data[y * 9 + x + 1] as number) ? 1n : 0n);
  return hash;
}

/**
 * Number of bits in which two hashes differ, 0 to 64. Up to about 5 is the same picture, up to about 10 nearly so
 * (common practice).
 */
export function hashDistance(a: bigint, b: bigint): number {
  let rest = a ^ b;
  let count = 0;
  while (rest > 0n) {
    count += Number(rest & 1n);
    rest >>= 1n;
  }
  return count;
}
