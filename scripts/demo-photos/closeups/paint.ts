/** Helpers of the paints: colours, speckles, streaks and bloom on a skin. */

import type { Colour } from "../mesh.ts";
import { cloudNoise, hashGrid, noise } from "../random.ts";
import type { Skin } from "./model.ts";

export function dye(skin: Skin, c: Colour, k = 1): void {
  skin.r = c[0] * k;
  skin.g = c[1] * k;
  skin.b = c[2] * k;
}

export function tinge(skin: Skin, c: Colour, share: number): void {
  const t = Math.min(1, Math.max(0, share));
  skin.r += (c[0] - skin.r) * t;
  skin.g += (c[1] - skin.g) * t;
  skin.b += (c[2] - skin.b) * t;
}

export function darken(skin: Skin, k: number): void {
  skin.r *= k;
  skin.g *= k;
  skin.b *= k;
}

/** Roughens the surface: `cells` bumps to a unit. */
export function bumpy(skin: Skin, x: number, y: number, z: number, cells: number, depth: number): void {
  skin.bendX += (noise(x * cells, y * cells, z * cells) - 0.5) * depth;
  skin.bendY += (noise(x * cells + 31, y * cells, z * cells) - 0.5) * depth;
  skin.bendZ += (noise(x * cells, y * cells + 57, z * cells) - 0.5) * depth;
}

/** 0 below `low`, 1 above `high`, smooth between. */
export function step(low: number, high: number, x: number): number {
  const t = Math.min(1, Math.max(0, (x - low) / (high - low)));
  return t * t * (3 - 2 * t);
}

/** Soft round specks: 1 in the middle of one, 0 between; `share` of the cells have one. */
export function specks(x: number, y: number, z: number, cells: number, share: number, size = 0.3): number {
  const [i, j, k] = [Math.floor(x * cells), Math.floor(y * cells), Math.floor(z * cells)];
  if (hashGrid(i, j, k) > share) return 0;
  const dx = x * cells - i - 0.35 - 0.3 * hashGrid(i, j, k + 91);
  const dy = y * cells - j - 0.35 - 0.3 * hashGrid(i, j + 53, k);
  const dz = z * cells - k - 0.35 - 0.3 * hashGrid(i + 29, j, k);
  return 1 - step(size * 0.5, size, Math.hypot(dx, dy, dz));
}

/** Noise that goes around a body without a seam: `around` streaks, each `long` units tall; 0 to 1. */
export function streaks(x: number, y: number, z: number, around: number, along: number, octaves = 3): number {
  const r = Math.hypot(x, y) || 1e-6;
  const k = around / 6.283;
  return cloudNoise((x / r) * k + 11, (y / r) * k + 7, z * along, octaves);
}

/** The powder on a plum, a leek or a blue squash: pale, matt, rubbed off in places. */
export function powder(skin: Skin, x: number, y: number, z: number, c: Colour, amount: number, cells = 3): void {
  const rubbed = cloudNoise(x * cells, y * cells, z * cells, 4);
  const t = amount * step(0.25, 0.6, rubbed);
  tinge(skin, c, t);
  skin.gloss *= 1 - 0.75 * t;
  skin.rough += (0.75 - skin.rough) * t;
}

/** Soil that still sticks to what came out of the ground, more where `where` is near 1. */
export function dirt(skin: Skin, x: number, y: number, z: number, amount: number, cells = 5): void {
  const cloud = cloudNoise(x * cells, y * cells, z * cells, 4);
  const t = step(0.62 - 0.3 * amount, 0.78 - 0.25 * amount, cloud) * Math.min(1, amount * 1.6);
  const grain = noise(x * 60, y * 60, z * 60);
  tinge(skin, [0.06 + 0.04 * grain, 0.038 + 0.026 * grain, 0.02 + 0.014 * grain], t * 0.85);
  skin.gloss *= 1 - 0.8 * t;
  if (t > 0.2) bumpy(skin, x, y, z, 45, 0.5 * t);
}
