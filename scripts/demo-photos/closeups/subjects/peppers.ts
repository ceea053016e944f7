/** Peppers and chillies. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, darken, dye, step, tinge } from "../paint.ts";
import { curve, tube } from "../shapes.ts";

interface Pepper {
  readonly points: readonly Vec[];
  readonly radius: (t: number) => number;
  readonly paint: Paint;
}

function pepper(model: Model, { points, radius, paint }: Pepper): void {
  tube(model, frame([0, 0, 0]), points, (t) => Math.max(0.004, radius(t)), paint, 90, 170);
  const foot = points[0] as Vec;
  const next = curve(points, 0.04);
  const back: Vec = [foot[0] - next[0], foot[1] - next[1], foot[2] - next[2]];
  const long = Math.hypot(...back);
  const k = radius(0.08);
  const along = (d: number): Vec => [
    foot[0] + (back[0] / long) * d,
    foot[1] + (back[1] / long) * d,
    foot[2] + (back[2] / long) * d + 0.25 * Math.max(0, d) ** 2,
  ];
  tube(
    model,
    frame([0, 0, 0]),
    [along(-0.05), along(0.02), along(0.1), along(0.28), along(0.48)],
    (t) =>
      (t < 0.28 ? k * (0.95 - t * 1.9) : Math.max(0.034, k * 0.42 * (1 - (t - 0.28) * 1.6))) * (t > 0.985 ? 0.1 : 1),
    (skin, x, y, z, u) => {
      dye(skin, [0.11, 0.22, 0.04], 0.8 + 0.4 * noise(x * 14, y * 14, z * 14));
      darken(skin, 0.85 + 0.25 * Math.abs(Math.sin(u * 15.7)));
      skin.gloss = 0.35;
      skin.rough = 0.4;
    },
    40,
    50,
  );
}

const waxy =
  (tone: Colour, other: Colour, share: number): Paint =>
  (skin, x, y, z, u, v) => {
    dye(skin, tone, 0.92 + 0.14 * cloudNoise(x * 4, y * 4, z * 4, 3));
    tinge(skin, other, step(0.62 - share * 0.3, 0.74 - share * 0.3, cloudNoise(x * 2.2, y * 5, z * 5, 3)) * 0.7);
    skin.gloss = 1;
    skin.rough = 0.17;
    skin.creep = 0.25;
    skin.bendZ += 0.12 * Math.sin(u * 18.8 + v * 3);
    bumpy(skin, x, y, z, 5, 0.14);
  };

export const hungarianHotWax: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.12], away: 3, tilt: 38, sun: -1.8, reach: 2.8, nearer: 0.2, exposure: -0.15 },
  build: (model) => {
    for (let i = 0; i < 4; i++) {
      const y = -0.6 + i * 0.42;
      pepper(model, {
        points: [
          [-0.75 + 0.1 * Math.sin(i * 3), y, 0.19],
          [-0.2, y + 0.05 * Math.sin(i * 2), 0.18],
          [0.35, y + 0.02, 0.14],
          [0.92 + 0.08 * Math.sin(i * 4), y - 0.1 + 0.12 * Math.sin(i * 5), 0.06],
        ],
        radius: (t) => 0.18 * Math.min(1, (t / 0.05) ** 0.5) * (1 - 0.1 * t) * Math.max(0, 1 - t ** 2.2) ** 0.75,
        paint:
          i === 3 ? waxy(colour("#d8862c"), colour("#c8401c"), 0.9) : waxy(colour("#d6cc62"), colour("#c2cc6a"), 0.5),
      });
    }
  },
};

export const marconis: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.2], away: 4.4, tilt: 38, sun: -1.8, reach: 3.8, nearer: 0.35, exposure: -0.1 },
  build: (model) => {
    for (let i = 0; i < 3; i++) {
      const y = -0.7 + i * 0.72;
      pepper(model, {
        points: [
          [-1.05 + 0.1 * Math.sin(i * 3), y, 0.3],
          [-0.3, y + 0.06 * Math.sin(i * 2), 0.29],
          [0.5, y + 0.02, 0.22],
          [1.25 + 0.1 * Math.sin(i * 4), y - 0.05 + 0.1 * Math.sin(i * 5), 0.1],
        ],
        radius: (t) => 0.29 * Math.min(1, (t / 0.04) ** 0.5) * (1 - 0.16 * t) * Math.max(0, 1 - t ** 2.6) ** 0.7,
        paint: waxy(colour("#b5120c"), i === 2 ? colour("#4a5a1c") : colour("#a01008"), i === 2 ? 0.3 : 0.2),
      });
    }
  },
};
