/** Blueberries and gooseberries on the twig. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour, mix } from "../../mesh.ts";
import { noise, randomFrom, spread } from "../../random.ts";
import { leafPaint, petalAt, stalk } from "../blossom.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { bumpy, darken, dye, powder, step, tinge } from "../paint.ts";
import { blade, body, globe, tube } from "../shapes.ts";

/** Blueberries on their twig; `dust` how much bloom they wear, `size` in units. */
function blueberries(model: Model, size: number, dust: number, dark: Colour, seed: string): void {
  const random = randomFrom(seed);
  const lain: Vec[] = [];
  for (let tries = 0; lain.length < 15 && tries < 3000; tries++) {
    const at: Vec = [size * 3.3 * spread(random), size * 1.5 * spread(random), -0.04 + size * 2.3 * spread(random)];
    if (lain.some((p) => Math.hypot(p[0] - at[0], p[1] - at[1], p[2] - at[2]) < size * 1.82)) continue;
    lain.push(at);
  }
  lain.forEach((at, i) => {
    const unripe = i % 7 === 3 ? 0.8 : 0;
    const crown: Vec = [at[0] * 0.8 + 0.4 * spread(random), -0.75 + 0.3 * spread(random), -0.25 + 0.4 * spread(random)];
    const place = frame(at, crown, i, size * (0.88 + 0.2 * random()) * (unripe > 0 ? 0.85 : 1));
    body(
      model,
      place,
      { outline: globe(1, 0.88, 1.1, 0.14), uneven: [0.02, 1.3, i], columns: 90, rows: 70 },
      (skin, x, y, z, _u, v) => {
        dye(skin, dark, 0.85 + 0.3 * noise(x * 3 + i, y * 3, z * 3));
        tinge(skin, [0.3, 0.1, 0.14], unripe * 0.6);
        tinge(skin, [0.3, 0.34, 0.18], unripe * 0.6 * step(0.2, 0.8, v));
        skin.gloss = 0.5;
        skin.rough = 0.35;
        powder(skin, x + i * 3, y, z, colour("#7d93bf"), dust * (1 - 0.4 * unripe), 1.7);
        darken(skin, 1 - 0.7 * step(0.945, 0.97, v));
        bumpy(skin, x, y, z, 6, 0.06);
      },
    );
    for (let k = 0; k < 5; k++)
      blade(
        model,
        petalAt(frame(inFrame(place, [0, 0, 0.8]), crown, i), (k / 5) * 6.283, size * 0.27, 0),
        { length: size * 0.26, half: (t) => size * 0.17 * (1 - t) ** 0.7, rise: 0.9, droop: 0.5, rows: 8, columns: 6 },
        (skin, x, y, z) => {
          dye(skin, mix(dark, [0.16, 0.14, 0.2], 0.45), 0.8 + 0.4 * noise(x * 60, y * 60, z * 60));
          skin.rough = 0.8;
        },
      );
    stalk(
      model,
      [
        [at[0] * 0.9, at[1] + size * 0.6, at[2] + size * 0.3],
        [at[0] * 0.6, at[1] * 0.5 + 0.15, at[2] * 0.6 + 0.2],
        [at[0] * 0.25, 0.16, 0.34],
      ],
      0.012,
      [0.2, 0.22, 0.08],
    );
  });
  stalk(
    model,
    [
      [-0.9, 0.35, 0.7],
      [-0.2, 0.2, 0.42],
      [0.1, 0.16, 0.3],
      [0.3, 0.16, 0.1],
    ],
    0.022,
    [0.16, 0.1, 0.05],
  );
  for (let i = 0; i < 6; i++)
    blade(
      model,
      petalAt(frame([-0.5 + 0.2 * i, 0.28, 0.35 + 0.06 * Math.sin(i * 3)], [0, -0.75, 0.5]), 1.2 + i * 0.55, 0.03, 0),
      {
        length: 0.55,
        half: (t) => 0.15 * Math.sin(Math.PI * Math.min(1, t * 0.95 + 0.03)) ** 0.8,
        rise: 0.2,
        droop: 0.5,
        cup: 0.16,
        rows: 24,
      },
      leafPaint([0.07, 0.16, 0.045], [0.16, 0.25, 0.09], 0.35),
    );
}

export const bluecrops: Subject = {
  stage: "air",
  view: { target: [0, 0, 0.02], away: 1.6, tilt: 8, sun: -1.6, reach: 1.1, open: 18, nearer: 0.14, exposure: -0.35 },
  build: (model) => blueberries(model, 0.105, 0.85, [0.028, 0.034, 0.085], "bluecrop"),
};

export const goldtraubes: Subject = {
  stage: "air",
  view: { target: [0, 0, 0.02], away: 1.6, tilt: 8, sun: 1.7, reach: 1.1, open: 18, nearer: 0.14, exposure: -0.6 },
  build: (model) => blueberries(model, 0.08, 0.32, [0.02, 0.02, 0.05], "goldtraube"),
};

export const whinhams: Subject = {
  stage: "air",
  view: { target: [0, 0, -0.06], away: 1.7, tilt: 8, sun: -1.4, reach: 1.2, open: 18, nearer: 0.12, exposure: -0.15 },
  build: (model) => {
    const hung: readonly (readonly [number, number, number])[] = [
      [-0.38, -0.16, 0.13],
      [-0.06, -0.3, 0.14],
      [0.27, -0.14, 0.13],
      [0.52, -0.3, 0.12],
      [0.12, 0.02, 0.11],
    ];
    hung.forEach(([x, z, size], i) => {
      const at: Vec = [x, -0.05 + 0.05 * Math.sin(i * 3), z];
      const up: Vec = [0.12 * Math.sin(i * 2), 0.05, 1];
      const place = frame(at, up, i, size);
      body(model, place, { outline: globe(1, 1.22, 1.05), columns: 110, rows: 90 }, (skin, bx, by, bz) => {
        const vein = Math.abs(Math.sin(Math.atan2(by, bx) * 5 + 0.25 * noise(bz * 3, i, 2)));
        dye(skin, mix(colour("#7a1024"), colour("#a8402c"), 0.6 * noise(bx * 1.5 + i, by * 1.5, bz * 1.5)), 0.9);
        tinge(skin, [0.55, 0.24, 0.12], step(0.12, 0.02, vein) * 0.55);
        tinge(skin, [0.55, 0.24, 0.12], step(0.55, 0.75, noise(bx * 9, by * 9, bz * 9)) * 0.14);
        skin.gloss = 0.7;
        skin.rough = 0.26;
        skin.creep = 0.55;
      });
      const random = randomFrom(`hairs ${i}`);
      for (let k = 0; k < 120; k++) {
        const a = random() * 6.283;
        const t = 0.08 + 0.84 * random();
        const r = Math.sin(Math.PI * t);
        const p: Vec = [Math.cos(a) * r, Math.sin(a) * r, -1.22 * Math.cos(Math.PI * t)];
        const q: Vec = [p[0] * 1.13, p[1] * 1.13, p[2] * 1.1];
        tube(
          model,
          place,
          [p, q],
          (v) => 0.016 * (1 - 0.8 * v),
          (skin) => {
            dye(skin, [0.5, 0.3, 0.2]);
            skin.through = 0.4;
          },
          4,
          3,
        );
      }
      const foot = inFrame(place, [0, 0, -1.2]);
      for (let k = 0; k < 5; k++)
        tube(
          model,
          frame([0, 0, 0]),
          [
            foot,
            [foot[0] + 0.012 * Math.cos(k * 1.26), foot[1] + 0.012 * Math.sin(k * 1.26), foot[2] - 0.05],
            [foot[0] + 0.02 * Math.cos(k * 1.26), foot[1] + 0.02 * Math.sin(k * 1.26), foot[2] - 0.09],
          ],
          () => 0.007,
          (skin) => dye(skin, [0.16, 0.1, 0.05]),
          6,
          8,
        );
      const top = inFrame(place, [0, 0, 1.2]);
      stalk(
        model,
        [top, [top[0], top[1] + 0.02, top[2] + 0.1], [x * 1.0, 0.1, 0.3 + 0.04 * x]],
        0.01,
        [0.18, 0.26, 0.08],
      );
    });
    stalk(
      model,
      [
        [-1, 0.14, 0.24],
        [-0.3, 0.1, 0.28],
        [0.3, 0.1, 0.32],
        [1, 0.16, 0.32],
      ],
      0.03,
      [0.17, 0.11, 0.06],
    );
    for (let i = 0; i < 5; i++)
      blade(
        model,
        petalAt(frame([-0.65 + 0.32 * i, 0.16, 0.3], [0, -0.8, 0.4]), 1.57 + 0.5 * Math.sin(i * 2.3), 0.05, 0),
        {
          length: 0.42,
          half: (t) =>
            0.24 * Math.sin(Math.PI * Math.min(1, 0.1 + t * 0.86)) ** 0.7 * (0.82 + 0.18 * Math.abs(Math.sin(t * 9))),
          rise: 0.2,
          droop: 0.4,
          wave: [0.1, 3, i],
          rows: 50,
          columns: 20,
        },
        leafPaint([0.1, 0.2, 0.04], [0.2, 0.3, 0.1], 0.3),
      );
  },
};
