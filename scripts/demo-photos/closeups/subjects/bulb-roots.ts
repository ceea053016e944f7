/** The tuft of roots below a bulb or a leek. */

import type { Vec } from "../../mesh.ts";
import { noise, randomFrom, spread } from "../../random.ts";
import type { Model } from "../model.ts";
import { frame } from "../model.ts";
import { dye } from "../paint.ts";
import { tube } from "../shapes.ts";

export function roots(model: Model, at: Vec, down: Vec, reach: number, seed: number): void {
  const random = randomFrom(`roots ${seed}`);
  for (let i = 0; i < 16; i++) {
    const a: Vec = [spread(random) * 0.7, spread(random) * 0.7, spread(random) * 0.5];
    const end: Vec = [
      at[0] + (down[0] + a[0] * 0.6) * reach,
      at[1] + (down[1] + a[1] * 0.6) * reach,
      Math.max(0.01, at[2] + (down[2] + a[2] * 0.6) * reach),
    ];
    const mid: Vec = [
      (at[0] + end[0]) / 2 + 0.03 * spread(random),
      (at[1] + end[1]) / 2 + 0.03 * spread(random),
      (at[2] + end[2]) / 2 + 0.02,
    ];
    tube(
      model,
      frame([0, 0, 0]),
      [at, mid, end],
      (t) => 0.009 * (1 - 0.7 * t),
      (skin, x, y, z) => dye(skin, [0.42, 0.31, 0.18], 0.7 + 0.5 * noise(x * 20, y * 20, z * 20)),
      6,
      10,
    );
  }
}
