/** Beans out of the pod: shape, eye and mottling; heaps of dry ones. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise, randomFrom, spread } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, darken, dye, specks, step, tinge } from "../paint.ts";
import { body } from "../shapes.ts";

export interface Bean {
  /** Long, tall and thick. */
  readonly size: Vec;
  readonly bent: number;
  /** How clearly the eye is seen. */
  readonly eye: number;
  readonly paint: Paint;
}

export function bean(model: Model, kind: Bean, at: Vec, up: Vec, spin: number, seed: number, scale = 1): void {
  const [long, tall, thick] = kind.size;
  body(
    model,
    frame(at, up, spin, scale),
    {
      outline: (t) => [Math.sin(Math.PI * t) ** 0.8, -Math.cos(Math.PI * t) * long],
      ribs: (angle) => Math.hypot(Math.cos(angle) * tall, Math.sin(angle) * thick),
      bend: (t) => [kind.bent * Math.sin(Math.PI * t), 0],
      columns: 60,
      rows: 54,
    },
    (skin, x, y, z, u, v) => {
      kind.paint(skin, x + seed * 3.7, y, z, u, v);
      // The eye on the hollow side.
      const eye = Math.hypot((v - 0.5) * 9, (u - 0.5) * 26);
      tinge(skin, [0.62, 0.56, 0.46], step(1, 0.7, eye) * kind.eye);
      darken(skin, 1 - 0.5 * kind.eye * step(1.25, 1.05, eye) * step(0.9, 1, eye));
    },
  );
}

/** Mottled: blotches of `spot` on `ground`. */
const mottled =
  (groundTone: Colour, spot: Colour, share: number, cells: number): Paint =>
  (skin, x, y, z) => {
    const blot = cloudNoise(x * cells, y * cells, z * cells * 0.7, 4);
    dye(skin, groundTone, 0.92 + 0.14 * noise(x * 30, y * 30, z * 30));
    tinge(skin, spot, step(0.62 - share * 0.26, 0.65 - share * 0.26, blot));
    tinge(skin, spot, specks(x, y, z, cells * 3, 0.3, 0.32) * 0.8);
    skin.gloss = 0.85;
    skin.rough = 0.24;
    bumpy(skin, x, y, z, 14, 0.06);
  };

/** A heap spread on the boards. */
function scatter(model: Model, kind: Bean, count: number, reach: number, seed: string): void {
  const random = randomFrom(seed);
  const lain: [number, number][] = [];
  for (let tries = 0; lain.length < count && tries < 4000; tries++) {
    const r = reach * Math.sqrt(random());
    const a = random() * 6.283;
    const x = Math.cos(a) * r;
    const y = Math.sin(a) * r * 0.85;
    if (lain.some(([px, py]) => Math.hypot(px - x, py - y) < kind.size[0] * 1.62)) continue;
    lain.push([x, y]);
    const yaw = random() * 6.283;
    bean(
      model,
      kind,
      [x, y, kind.size[2] * 0.98],
      [Math.cos(yaw), Math.sin(yaw), 0.02],
      1.5708 + 0.4 * spread(random),
      lain.length,
      0.92 + 0.14 * random(),
    );
  }
}

export const scarletEmperorSeed: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.05], away: 1.75, tilt: 40, sun: -1.8, reach: 1.8, open: 18, nearer: 0.15 },
  build: (model) =>
    scatter(
      model,
      {
        size: [0.125, 0.078, 0.06],
        bent: 0.02,
        eye: 1,
        paint: mottled(colour("#a0607e"), colour("#120a10"), 0.55, 12),
      },
      34,
      0.95,
      "scarlet emperor",
    ),
};

export const borlotto: Bean = {
  size: [0.088, 0.056, 0.052],
  bent: 0.012,
  eye: 1,
  paint: mottled(colour("#d9c4a4"), colour("#7a1824"), 0.36, 15),
};

export const borlottoSeed: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.04], away: 1.35, tilt: 40, sun: -1.8, reach: 1.5, open: 18, nearer: 0.12 },
  build: (model) => scatter(model, borlotto, 46, 0.78, "borlotto"),
};
