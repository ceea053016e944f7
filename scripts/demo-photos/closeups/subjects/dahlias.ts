/** Dahlias: full ones and one with an open eye. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour, mix } from "../../mesh.ts";
import { noise, randomFrom, spread } from "../../random.ts";
import { disc, leafPaint, petalAt, petalPaint, rays, stalk } from "../blossom.ts";
import type { Subject } from "../close-up.ts";
import type { Behind } from "../focus.ts";
import type { Model } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, dye, step, tinge } from "../paint.ts";
import { blade } from "../shapes.ts";

const green: Colour = [0.13, 0.22, 0.06];
const bronze: Behind = {
  tones: [
    [0.2, 0.26, 0.17],
    [0.09, 0.11, 0.055],
    [0.06, 0.06, 0.035],
    [0.04, 0.04, 0.025],
  ],
  lights: [
    [0.22, 0.26, 0.11],
    [0.14, 0.1, 0.06],
    [0.3, 0.34, 0.2],
    [0.12, 0.16, 0.06],
  ],
};

/** Petals one golden angle on from the last, from the rim to the eye. */
function full(
  model: Model,
  at: Vec,
  facing: Vec,
  radius: number,
  count: number,
  tone: (share: number, i: number) => Colour,
  foot: Colour,
  loose: number,
): void {
  const flower = frame(at, facing, 0.4);
  const random = randomFrom(`full ${radius} ${count}`);
  rays(
    model,
    flower,
    count,
    (i) => {
      const share = i / count;
      const length = radius * (1 - 0.72 * share) * (1 + 0.08 * loose * spread(random));
      const wide = length * (0.34 - 0.06 * share) * (1 + 0.16 * loose * spread(random));
      return {
        angle: i * 2.399963 + 0.08 * loose * spread(random),
        out: radius * 0.05 * (1 - share),
        up: radius * 0.34 * share,
        form: {
          length,
          half: (t) => wide * Math.sin(Math.PI * Math.min(1, 0.1 + t * 0.87)) ** 0.62,
          rise: -0.12 + 1.5 * share ** 0.8 + 0.08 * loose * spread(random),
          droop: 0.45 - 1.1 * share + 0.4 * loose * spread(random),
          cup: 0.34 + 0.3 * share,
          wave: [0.1 * loose, 1.4, i],
          rows: 18,
          columns: 10,
        },
      };
    },
    (i) => petalPaint(tone(i / count, i), mix(tone(i / count, i), foot, 0.4), 0.12),
  );
}

export const davidHoward: Subject = {
  stage: "air",
  behind: bronze,
  view: { target: [0, 0, 0], away: 3, tilt: 16, sun: -1.7, reach: 1.6, open: 16, nearer: 0.25, exposure: 0.1 },
  build: (model) => {
    full(
      model,
      [-0.12, 0, 0],
      [0.1, -0.75, 0.62],
      0.62,
      105,
      (share) => mix(colour("#ea6f10"), colour("#c8420a"), share),
      [0.3, 0.08, 0.01],
      0.7,
    );
    full(
      model,
      [0.85, 0.7, -0.42],
      [0.5, -0.4, 0.7],
      0.5,
      95,
      (share) => mix(colour("#ea6f10"), colour("#c8420a"), share),
      [0.3, 0.08, 0.01],
      0.7,
    );
    stalk(
      model,
      [
        [-0.12, 0.1, -0.05],
        [-0.15, 0.3, -0.6],
        [-0.1, 0.35, -1.5],
      ],
      0.035,
      [0.07, 0.05, 0.03],
    );
    for (let i = 0; i < 5; i++)
      blade(
        model,
        petalAt(frame([-0.12 + 0.3 * i - 0.6, 0.4, -0.75 - 0.1 * (i % 2)], [0, -0.3, 1]), i * 1.3 - 2.6, 0.1, 0),
        {
          length: 0.8,
          half: (t) => 0.2 * Math.sin(Math.PI * Math.min(1, t * 0.94 + 0.04)) ** 0.9,
          rise: 0.4,
          droop: 0.8,
          cup: 0.3,
          wave: [0.1, 4, i],
        },
        leafPaint([0.05, 0.055, 0.03], [0.09, 0.06, 0.05]),
      );
  },
};

export const cafeAuLait: Subject = {
  stage: "air",
  view: {
    target: [0, 0, 0],
    away: 4.4,
    tilt: 14,
    sun: -1.8,
    reach: 2.2,
    open: 18,
    nearer: 0.4,
    cloud: 0.4,
    exposure: 0.5,
  },
  build: (model) => {
    full(
      model,
      [0, 0, 0],
      [0.08, -0.85, 0.5],
      1.15,
      150,
      (share, i) =>
        mix(
          mix(colour("#f8dcc0"), colour("#eaa594"), 0.15 + 0.5 * noise(i * 0.7, 2, 3)),
          colour("#e29a72"),
          share * 0.6,
        ),
      [0.8, 0.48, 0.3],
      1.5,
    );
    stalk(
      model,
      [
        [0, 0.2, -0.1],
        [0.05, 0.5, -0.9],
        [0.02, 0.6, -2.4],
      ],
      0.05,
      green,
    );
  },
};

export const bishop: Subject = {
  stage: "air",
  behind: bronze,
  view: { target: [0.02, 0, 0], away: 2.9, tilt: 18, sun: -1.6, reach: 1.8, open: 16, nearer: 0.25, exposure: -0.25 },
  build: (model) => {
    const one = (at: Vec, facing: Vec, radius: number) => {
      const flower = frame(at, facing, 0.3);
      const tone = colour("#a80c0a");
      rays(
        model,
        flower,
        19,
        (i) => {
          const inner = i >= 10;
          return {
            angle: (inner ? (i - 10) / 9 + 0.05 : i / 10) * 6.2832 + 0.05 * Math.sin(i * 3),
            out: 0.08,
            up: inner ? 0.05 : 0,
            form: {
              length: radius * (inner ? 0.8 : 1) * (1 + 0.05 * Math.sin(i * 5)),
              half: (t) => radius * 0.27 * Math.sin(Math.PI * Math.min(1, 0.12 + t * 0.84)) ** 0.6,
              rise: (inner ? 0.55 : 0.2) + 0.08 * Math.sin(i * 7),
              droop: 0.35 + 0.15 * Math.sin(i * 2),
              cup: 0.3,
              wave: [0.08, 1.3, i],
              lift: (edge) => 0.012 * Math.cos(edge * 14),
              rows: 22,
              columns: 18,
            },
          };
        },
        () => petalPaint(tone, [0.16, 0.004, 0.01], 0.16, 0.3),
      );
      disc(
        model,
        flower,
        90,
        0.15,
        (r) => 0.07 + 0.07 * (1 - r * r),
        (r) => 0.014 + 0.006 * r,
        2.2,
        (r, i) => (skin, x, y, z) => {
          dye(skin, [0.07, 0.01, 0.012], 1);
          tinge(skin, [0.75, 0.42, 0.03], step(0.35, 0.65, r + 0.2 * noise(i, 2, 2)) * step(0, 0.02, z));
          skin.gloss = 0.2;
          bumpy(skin, x, y, z, 60, 0.3);
        },
      );
    };
    one([-0.2, 0, 0.05], [0.05, -0.72, 0.66], 0.55);
    one([0.75, 0.55, -0.2], [0.4, -0.6, 0.6], 0.5);
    stalk(
      model,
      [
        [-0.2, 0.08, 0],
        [-0.2, 0.3, -0.6],
        [-0.1, 0.35, -1.6],
      ],
      0.03,
      [0.055, 0.03, 0.022],
    );
    stalk(
      model,
      [
        [0.75, 0.6, -0.25],
        [0.72, 0.75, -0.8],
        [0.6, 0.8, -1.6],
      ],
      0.03,
      [0.055, 0.03, 0.022],
    );
    for (let i = 0; i < 7; i++)
      blade(
        model,
        petalAt(frame([-0.9 + 0.32 * i, 0.35, -0.62 - 0.12 * (i % 2)], [0, -0.3, 1]), i * 1.1 - 2.6, 0.1, 0),
        {
          length: 0.75,
          half: (t) => 0.17 * Math.sin(Math.PI * Math.min(1, t * 0.94 + 0.04)) ** 0.9,
          rise: 0.4,
          droop: 0.8,
          cup: 0.3,
          wave: [0.12, 5, i],
        },
        leafPaint([0.035, 0.032, 0.022], [0.07, 0.03, 0.03], 0.4),
      );
  },
};
