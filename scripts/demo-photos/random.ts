/** Chance for pictures: what all scripts draw from, and noise over a plane. */
import type { Random } from "../random.ts";

export { hashText, type Random, randomFrom } from "../random.ts";

/** A number between `low` and `high`. */
export const between = (random: Random, low: number, high: number): number => low + (high - low) * random();

/** A number around 0 with a spread of about 1: the sum of three even ones, enough for leaves and grain. */
export const spread = (random: Random): number => (random() + random() + random() - 1.5) * 2;

/** Hash of three whole numbers to [0, 1), for grids. */
export function hashGrid(x: number, y: number, z: number): number {
  let h = Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ Math.imul(z, 0x9e3779b1);
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

/** Smooth value noise in [0, 1); one lattice cell is one unit. */
export function noise(x: number, y: number, z: number): number {
  const x0 = Math.floor(x);
  const y0 = Math.floor(y);
  const z0 = Math.floor(z);
  let fx = x - x0;
  let fy = y - y0;
  let fz = z - z0;
  fx = fx * fx * (3 - 2 * fx);
  fy = fy * fy * (3 - 2 * fy);
  fz = fz * fz * (3 - 2 * fz);
  const a = hashGrid(x0, y0, z0) * (1 - fx) + hashGrid(x0 + 1, y0, z0) * fx;
  const b = hashGrid(x0, y0 + 1, z0) * (1 - fx) + hashGrid(x0 + 1, y0 + 1, z0) * fx;
  const c = hashGrid(x0, y0, z0 + 1) * (1 - fx) + hashGrid(x0 + 1, y0, z0 + 1) * fx;
  const d = hashGrid(x0, y0 + 1, z0 + 1) * (1 - fx) + hashGrid(x0 + 1, y0 + 1, z0 + 1) * fx;
  return (a * (1 - fy) + b * fy) * (1 - fz) + (c * (1 - fy) + d * fy) * fz;
}

/** Noise summed over octaves, about [0, 1). */
export function cloudNoise(x: number, y: number, z: number, octaves: number): number {
  let sum = 0;
  let weight = 0.5;
  let scale = 1;
  for (let i = 0; i < octaves; i++) {
    sum += weight * noise(x * scale + i * 17.3, y * scale - i * 9.1, z * scale + i * 4.7);
    weight *= 0.5;
    scale *= 2.03;
  }
  return sum / (1 - weight * 2);
}
