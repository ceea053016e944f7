/** Garlic: heads and loose cloves. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { bumpy, darken, dirt, dye, step, streaks, tinge } from "../paint.ts";
import type { Body } from "../shapes.ts";
import { body, outline } from "../shapes.ts";
import { roots } from "./bulb-roots.ts";

/** A head of garlic: cloves under a papery skin. */
function garlicHead(model: Model, at: Vec, up: Vec, spin: number, seed: number, stripe: Colour, amount: number): void {
  const place = frame(at, up, spin);
  const cloves = 9;
  const form: Body = {
    outline: outline([
      [0, -0.2],
      [0.12, -0.22],
      [0.24, -0.16],
      [0.29, 0],
      [0.25, 0.13],
      [0.13, 0.24],
      [0.06, 0.33],
      [0.045, 0.55],
      [0.042, 0.8],
      [0, 0.8],
    ]),
    ribs: (angle, t) => {
      const bent = angle + 0.22 * Math.sin(angle * 2 + seed);
      return 1 - 0.13 * step(0.66, 0.4, t) * step(0, 0.2, t) * (1 - Math.abs(Math.sin((bent * cloves) / 2)) ** 0.7);
    },
    uneven: [0.05, 1.4, seed],
    bend: (t) => [0.06 * step(0.6, 1, t), 0],
    columns: 200,
    rows: 130,
  };
  body(model, place, form, (skin, x, y, z, _u, v) => {
    const vein = streaks(x + seed, y, z, 90, 0.5, 2);
    dye(skin, [0.7, 0.64, 0.57], 0.86 + 0.2 * cloudNoise(x * 6 + seed, y * 6, z * 6, 3));
    const angle = Math.atan2(y, x) + 0.12 * (noise(x * 5, y * 5, z * 4 + seed) - 0.5);
    const line = Math.abs(Math.sin(angle * 19 + 1.5 * noise(x * 3, y * 3, seed)));
    const patchy = cloudNoise(x * 5 + seed, y * 5, z * 2.5, 3);
    tinge(
      skin,
      stripe,
      step(0.45, 0.9, line) * step(0.34, 0.56, patchy) * amount * step(0.04, 0.2, v) * step(0.8, 0.5, v),
    );
    tinge(
      skin,
      [0.5, 0.4, 0.29],
      step(0.55, 0.75, v) * 0.5 + step(0.62, 0.7, cloudNoise(x * 4 + seed, y * 4, z * 4, 4)) * 0.3,
    );
    darken(skin, 0.9 + 0.18 * (vein - 0.5));
    skin.gloss = 0.3;
    skin.rough = 0.5;
    skin.creep = 0.25;
    skin.bendX += (vein - 0.5) * 0.2;
    skin.bendY += (vein - 0.5) * 0.2;
    bumpy(skin, x, y, z, 14, 0.14);
    dirt(skin, x + seed, y, z, 0.3 * step(0.25, 0, v), 8);
  });
  roots(model, inFrame(place, [0, 0, -0.2]), [-place.z[0], -place.z[1], -place.z[2]], 0.15, seed);
}

function clove(model: Model, at: Vec, up: Vec, spin: number, seed: number, tone: Colour): void {
  body(
    model,
    frame(at, up, spin),
    {
      outline: outline([
        [0, -0.15],
        [0.075, -0.13],
        [0.1, -0.02],
        [0.075, 0.1],
        [0.02, 0.19],
        [0, 0.22],
      ]),
      ribs: (angle) => 1 - 0.2 * Math.max(0, Math.cos(angle)) ** 0.7,
      bend: (t) => [0.06 * (t - 0.4) ** 2 * 4, 0],
      columns: 70,
      rows: 60,
    },
    (skin, x, y, z, _u, v) => {
      dye(skin, tone, 0.8 + 0.35 * streaks(x + seed, y, z, 26, 0.8, 3));
      tinge(skin, [0.75, 0.62, 0.55], step(0.5, 0.72, streaks(x, y + seed, z, 34, 0.6)) * 0.55);
      tinge(skin, [0.6, 0.48, 0.34], step(0.85, 1, v) * 0.7 + step(0.1, 0, v) * 0.6);
      skin.gloss = 0.6;
      skin.rough = 0.3;
      bumpy(skin, x, y, z, 24, 0.12);
    },
  );
}

export const germidours: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.2], away: 2.6, tilt: 30, sun: -1.8, reach: 2.6, exposure: -0.2 },
  build: (model) => {
    const purple = colour("#7a3a68");
    garlicHead(model, [-0.4, -0.1, 0.23], [0.1, -0.05, 1], 0.3, 3, purple, 0.75);
    garlicHead(model, [0.35, -0.25, 0.27], [0.8, -0.4, 0.3], 1.3, 7, purple, 0.75);
    garlicHead(model, [0.3, 0.5, 0.25], [-0.7, 0.6, 0.3], 2.3, 11, purple, 0.7);
    clove(model, [-0.05, -0.5, 0.08], [0.9, -0.3, 0.1], 1, 3, colour("#c9a58f"));
  },
};

export const roseDeLautrecs: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.16], away: 2.4, tilt: 34, sun: -1.8, reach: 2.6, exposure: -0.2 },
  build: (model) => {
    garlicHead(model, [-0.42, 0.15, 0.23], [0.1, 0.05, 1], 0.3, 23, colour("#b98a86"), 0.35);
    const pink = colour("#a04a5c");
    const cloves: readonly (readonly [number, number, number])[] = [
      [0.05, -0.3, 0.4],
      [0.3, -0.12, 1.9],
      [0.52, -0.36, 3.4],
      [0.24, 0.2, 5],
      [0.6, 0.08, 0.9],
      [-0.2, -0.45, 2.6],
      [0.5, 0.42, 4.2],
    ];
    cloves.forEach(([x, y, yaw], i) => {
      clove(model, [x, y, 0.085], [Math.cos(yaw), Math.sin(yaw), 0.08], i * 2.1, i * 5, pink);
    });
  },
};
