/** Stalks on roots that were just pulled. */

import type { Colour, Vec } from "../../mesh.ts";
import { noise, randomFrom } from "../../random.ts";
import type { Model } from "../model.ts";
import { frame } from "../model.ts";
import { darken, dye, step, tinge } from "../paint.ts";
import { tube } from "../shapes.ts";

/** Stalks cut off a hand above the root, with a feather or two left. */
export function tops(
  model: Model,
  at: Vec,
  up: Vec,
  tone: Colour,
  count: number,
  long: number,
  thick: number,
  seed: number,
): void {
  const random = randomFrom(`tops ${seed}`);
  const place = frame(at, up);
  for (let i = 0; i < count; i++) {
    const a = (i / count) * 6.283 + random();
    const out = 0.1 + 0.3 * random();
    const reach = long * (0.6 + 0.5 * random());
    tube(
      model,
      place,
      [
        [Math.cos(a) * 0.04, Math.sin(a) * 0.04, -0.03],
        [Math.cos(a) * (0.05 + out * 0.2), Math.sin(a) * (0.05 + out * 0.2), reach * 0.5],
        [Math.cos(a) * (0.05 + out * 0.7), Math.sin(a) * (0.05 + out * 0.7), reach],
      ],
      (t) => [thick * (1.2 - 0.5 * t) * (t > 0.98 ? 0.1 : 1), thick * 0.7 * (1.2 - 0.5 * t) * (t > 0.98 ? 0.1 : 1)],
      (skin, x, y, z, u, v) => {
        dye(skin, tone, 0.75 + 0.4 * noise(x * 14, y * 14, z * 14 + i));
        tinge(skin, [0.45, 0.5, 0.25], step(0.95, 0.98, v) * 0.8);
        darken(skin, 0.85 + 0.25 * Math.abs(Math.sin(u * 12)));
        skin.gloss = 0.4;
        skin.rough = 0.4;
        skin.creep = 0.2;
      },
      16,
      26,
    );
  }
}
