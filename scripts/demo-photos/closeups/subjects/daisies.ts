/** Flowers with rays around a disc: cosmos, sunflowers, pot marigold. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour, mix } from "../../mesh.ts";
import { noise, randomFrom, spread } from "../../random.ts";
import { disc, leafPaint, petalAt, petalPaint, rays, stalk } from "../blossom.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame, nested } from "../model.ts";
import { bumpy, dye, step, tinge } from "../paint.ts";
import { blade, body, globe } from "../shapes.ts";

const green: Colour = [0.13, 0.22, 0.06];

export const purity: Subject = {
  stage: "air",
  view: { target: [0, 0, -0.02], away: 2.6, tilt: 14, sun: -1.7, reach: 1.6, open: 20, nearer: 0.2, exposure: 0.25 },
  build: (model) => {
    const one = (at: Vec, facing: Vec, radius: number, spin: number) => {
      const flower = frame(at, facing, spin);
      rays(
        model,
        flower,
        8,
        (i) => ({
          angle: (i / 8) * 6.2832 + 0.04 * Math.sin(i * 3),
          out: 0.06,
          up: (i % 2) * 0.012,
          form: {
            length: radius * (1 + 0.04 * Math.sin(i * 5)),
            half: (t) =>
              radius * 0.4 * Math.min(1, 0.2 + t * 1.15) ** 0.8 * (t > 0.9 ? 1 - ((t - 0.9) / 0.1) ** 2 * 0.22 : 1),
            rise: 0.22 + 0.07 * Math.sin(i * 4),
            droop: 0.35 + 0.15 * Math.sin(i * 2 + 1),
            cup: 0.1,
            lift: (edge, t) => 0.014 * Math.cos(edge * 11) * step(0, 0.3, t),
            rows: 40,
            columns: 36,
          },
        }),
        () => (skin, x, y, z, u, v) => {
          const fold = Math.cos((u * 2 - 1) * 11);
          dye(skin, [0.8, 0.8, 0.79], 0.96 + 0.05 * fold);
          tinge(skin, [0.6, 0.68, 0.5], step(0.3, 0, v) * 0.35);
          const notch = Math.abs(u * 3 - Math.floor(u * 3) - 0.5) * 2;
          if (v > 0.955 + 0.04 * (1 - notch)) tinge(skin, [0.5, 0.52, 0.45], 0.25);
          skin.gloss = 0.12;
          skin.through = 0.45;
          bumpy(skin, x, y, z, 34, 0.08);
        },
      );
      disc(
        model,
        flower,
        110,
        0.105,
        (r) => 0.03 + 0.05 * (1 - r * r),
        () => 0.011,
        1.8,
        (r, i) => (skin) => {
          dye(skin, [0.72, 0.42, 0.03], 0.8 + 0.4 * noise(i * 1.3, 1, 1));
          tinge(skin, [0.4, 0.2, 0.02], step(0.4, 0, r) * 0.5);
          skin.gloss = 0.15;
        },
      );
    };
    one([-0.25, 0, 0.05], [0.12, -0.8, 0.55], 0.46, 0.2);
    one([0.72, 0.7, -0.25], [0.3, -0.55, 0.75], 0.44, 1);
    stalk(
      model,
      [
        [-0.25, 0.06, 0],
        [-0.3, 0.25, -0.6],
        [-0.2, 0.3, -1.6],
      ],
      0.022,
      green,
    );
    stalk(
      model,
      [
        [0.72, 0.75, -0.3],
        [0.7, 0.85, -0.8],
        [0.5, 0.9, -1.6],
      ],
      0.022,
      green,
    );
    // Leaves as fine as dill.
    const random = randomFrom("cosmos leaves");
    for (let i = 0; i < 60; i++) {
      const x = -1.3 + 2.6 * random();
      const z = -1.0 + 0.3 * spread(random);
      stalk(
        model,
        [
          [x, 0.5, z],
          [x + 0.1 * spread(random), 0.45, z + 0.2],
          [x + 0.22 * spread(random), 0.5, z + 0.36],
        ],
        0.009,
        green,
      );
    }
  },
};

function sunflower(model: Model, tone: (v: number, i: number) => Colour, seed: number): void {
  const flower = frame([0, 0, 0], [0.12, -0.95, 0.3], 0.2);
  const random = randomFrom(`sunflower ${seed}`);
  rays(
    model,
    flower,
    44,
    (i) => {
      const inner = i % 2;
      return {
        angle: (i / 44) * 6.2832 + 0.05 * spread(random),
        out: 0.42,
        up: 0.03 - 0.03 * inner,
        form: {
          length: (0.66 + 0.06 * spread(random)) * (1 - 0.06 * inner),
          half: (t) => 0.12 * Math.sin(Math.PI * Math.min(1, 0.16 + t * 0.83)) ** 0.8,
          rise: 0.35 + 0.14 * spread(random) - 0.1 * inner,
          droop: 0.5 + 0.25 * spread(random),
          cup: 0.4,
          wave: [0.08, 1.3, i],
          lift: (edge) => 0.008 * Math.cos(edge * 9),
          rows: 26,
          columns: 12,
        },
      };
    },
    (i) => (skin, x, y, z, u, v) => {
      petalPaint(tone(v, i), tone(0, i), 0.14, 0.2)(skin, x, y, z, u, v);
    },
  );
  disc(
    model,
    flower,
    620,
    0.45,
    (r) => 0.05 + 0.07 * Math.sin(Math.min(1, r * 1.1) * 2.6),
    (r) => 0.011 + 0.006 * r,
    2,
    (r, i) => (skin, x, y, z) => {
      dye(skin, [0.03, 0.018, 0.012], 0.8 + 0.5 * noise(i * 0.7, 3, 3));
      tinge(
        skin,
        [0.42, 0.22, 0.03],
        step(0.62, 0.8, r) * step(0.99, 0.86, r) * 0.8 * step(0.4, 0.6, noise(i * 2.3, 1, 5)),
      );
      tinge(skin, [0.07, 0.06, 0.03], step(0.3, 0, r) * 0.7);
      skin.gloss = 0.2;
      bumpy(skin, x, y, z, 40, 0.3);
    },
  );
  body(model, nested(flower, frame([0, 0, -0.02])), { outline: globe(0.47, 0.16), columns: 60, rows: 20 }, (skin) =>
    dye(skin, [0.02, 0.016, 0.01]),
  );
  stalk(
    model,
    [
      [0, 0.2, -0.1],
      [0.02, 0.4, -0.5],
      [0, 0.5, -2.4],
    ],
    0.08,
    green,
  );
}

export const velvetQueen: Subject = {
  stage: "air",
  view: { target: [0, 0, 0], away: 4.2, tilt: 6, sun: -1.8, reach: 2, open: 18, nearer: 0.25, exposure: -0.35 },
  build: (model) =>
    sunflower(
      model,
      (v, i) =>
        mix(
          mix(colour("#300c06"), colour("#5a1a0c"), v),
          colour("#9a4c18"),
          step(0.75, 1, v) * 0.35 * noise(i * 1.7, 2, 2),
        ),
      3,
    ),
};

export const valentine: Subject = {
  stage: "air",
  view: { target: [0, 0, 0], away: 4.2, tilt: 6, sun: 1.8, reach: 2, open: 18, nearer: 0.25, exposure: 0.2 },
  build: (model) => sunflower(model, (v) => mix(colour("#e8cf5c"), colour("#f0e49a"), step(0.1, 0.8, v)), 8),
};

export const indianPrince: Subject = {
  stage: "air",
  view: { target: [0, 0, 0], away: 2, tilt: 22, sun: -1.7, reach: 1.2, open: 18, nearer: 0.15, exposure: -0.15 },
  build: (model) => {
    const flower = frame([-0.05, 0, 0], [0.08, -0.65, 0.75], 0.2);
    rays(
      model,
      flower,
      96,
      (i) => {
        const share = i / 96;
        return {
          angle: i * 2.399963,
          out: 0.1 - 0.03 * share,
          up: 0.05 * share,
          form: {
            length: 0.34 * (1 - 0.45 * share),
            half: (t) =>
              0.042 * Math.min(1, 0.45 + t) * (t > 0.9 ? Math.sqrt(Math.max(0.05, 1 - ((t - 0.9) / 0.1) ** 2)) : 1),
            rise: 0.12 + 0.75 * share,
            droop: 0.3 - 0.3 * share,
            cup: 0.25,
            rows: 14,
            columns: 8,
          },
        };
      },
      (i) => (skin, x, y, z, u, v) => {
        petalPaint(mix(colour("#e07810"), colour("#c85208"), i / 96), colour("#8a2a08"), 0.15)(skin, x, y, z, u, v);
        tinge(skin, colour("#7a1c06"), step(0.93, 1, v) * 0.5);
      },
    );
    disc(
      model,
      flower,
      70,
      0.1,
      (r) => 0.07 + 0.03 * (1 - r * r),
      () => 0.012,
      1.6,
      (r, i) => (skin) => {
        dye(skin, [0.09, 0.02, 0.012], 0.8 + 0.5 * noise(i * 1.1, 2, 2));
        tinge(skin, [0.4, 0.15, 0.02], step(0.8, 1, r) * 0.4);
        skin.gloss = 0.25;
      },
    );
    stalk(
      model,
      [
        [-0.05, 0.04, -0.02],
        [-0.05, 0.2, -0.4],
        [0.05, 0.25, -1.2],
      ],
      0.028,
      green,
    );
    for (let i = 0; i < 6; i++)
      blade(
        model,
        petalAt(frame([0, 0.28, -0.5 - 0.04 * i], [0, -0.2, 1]), i * 1.05 + 0.3, 0.02, 0),
        {
          length: 0.6,
          half: (t) => 0.1 * Math.min(1, 0.35 + t * 0.9) * Math.sqrt(Math.max(0, 1 - t ** 4)),
          rise: 0.5,
          droop: 0.5,
          cup: 0.25,
        },
        leafPaint([0.14, 0.26, 0.07], [0.24, 0.34, 0.14]),
      );
  },
};
