/** Beetroot, turnips and radishes. */

import type { Colour, Vec } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { bumpy, darken, dirt, dye, specks, step, tinge } from "../paint.ts";
import type { Body, Outline } from "../shapes.ts";
import { body, onBody, outline } from "../shapes.ts";
import { tops } from "./tops.ts";

const redStalk: Colour = [0.17, 0.012, 0.03];

function beet(model: Model, form: Body, at: Vec, up: Vec, seed: number, stalks: number): void {
  const place = frame(at, up, seed);
  body(model, place, form, (skin, x, y, z, _u, v) => {
    dye(skin, [0.062, 0.014, 0.022], 0.75 + 0.6 * cloudNoise(x * 5 + seed, y * 5, z * 5, 4));
    const ring = noise(z * 22, Math.atan2(y, x) * 1.2, seed);
    darken(skin, 0.85 + 0.3 * ring);
    tinge(skin, [0.17, 0.1, 0.06], step(0.7, 0.98, v) * 0.7);
    skin.gloss = 0.4;
    skin.rough = 0.5;
    skin.bendZ += (ring - 0.5) * 0.3;
    bumpy(skin, x, y, z, 20, 0.16);
    dirt(skin, x + seed, y, z, 0.36, 6);
  });
  tops(model, inFrame(place, onBody(form, 0, 1)), up, redStalk, stalks, 0.7, 0.036, seed);
}

const round: Body = {
  outline: outline([
    [0, -0.85],
    [0.014, -0.65],
    [0.04, -0.46],
    [0.2, -0.36],
    [0.37, -0.12],
    [0.38, 0.12],
    [0.25, 0.31],
    [0.1, 0.37],
    [0, 0.36],
  ]),
  uneven: [0.05, 1.3, 3],
};
/** Long as a parsnip. */
const tapered: Body = {
  outline: outline([
    [0, -1.7],
    [0.02, -1.45],
    [0.06, -1.15],
    [0.16, -0.75],
    [0.26, -0.3],
    [0.33, 0.1],
    [0.27, 0.32],
    [0.12, 0.4],
    [0, 0.38],
  ]),
  uneven: [0.07, 1.3, 9],
  columns: 120,
  rows: 160,
};

export const boltardys: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.3], away: 3.3, tilt: 32, sun: -1.8, exposure: -0.55 },
  build: (model) => {
    beet(model, round, [-0.5, -0.1, 0.36], [-0.55, 0.35, 0.6], 3, 9);
    beet(model, round, [0.45, -0.28, 0.36], [0.6, 0.4, 0.5], 6, 9);
    beet(model, round, [0.05, 0.6, 0.36], [0.1, 0.5, 0.7], 12, 9);
  },
};

export const boltardyCut: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.2], away: 2.5, tilt: 40, sun: -1.8, reach: 2.6, exposure: -0.6 },
  build: (model) => {
    const cut: Body = { ...round, outline: (t) => round.outline(0.36 + 0.3 * t), to: 0.62, rows: 60 };
    const place = frame([-0.25, -0.15, 0.24], [0.05, -0.38, 0.92], 0.4, 1.1);
    body(model, place, { ...cut, outline: (t) => round.outline(0.34 + 0.42 * t) }, (skin, x, y, z) => {
      dye(skin, [0.062, 0.014, 0.022], 0.75 + 0.6 * cloudNoise(x * 5, y * 5, z * 5, 4));
      skin.gloss = 0.4;
      skin.rough = 0.5;
      bumpy(skin, x, y, z, 20, 0.16);
    });
    const shape: Body = { ...cut, outline: (t) => round.outline(0.34 + 0.42 * t) };
    model.grid(
      place,
      { columns: 200, rows: 60, closed: true },
      (skin, x, y, z) => {
        const angle = Math.atan2(y, x);
        const [ex, ey] = onBody(shape, angle, 0.62);
        const r = Math.hypot(x, y) / Math.hypot(ex, ey) + 0.04 * (cloudNoise(x * 6, y * 6, 1, 3) - 0.5);
        const ring = 0.5 + 0.5 * Math.cos(r * 6.283 * 5.5);
        dye(skin, [0.115, 0.003, 0.02], 0.8 + 0.35 * cloudNoise(x * 12, y * 12, 2, 3));
        tinge(skin, [0.17, 0.006, 0.035], step(0.4, 1, ring) * 0.5 * step(0.12, 0.3, r));
        tinge(skin, [0.07, 0.012, 0.025], step(0.965, 0.99, r));
        skin.gloss = 0.9;
        skin.rough = 0.24;
        skin.creep = 0.3;
        bumpy(skin, x, y, z, 30, 0.12);
        bumpy(skin, x, y, z, 9, 0.08);
      },
      (s, t) => {
        const [x, y, z] = onBody(shape, s * 6.2832, 0.62);
        return [x * (1 - t), y * (1 - t), z];
      },
    );
    beet(model, round, [0.62, 0.45, 0.36], [0.55, 0.4, 0.55], 6, 9);
  },
};

export const cheltenhams: Subject = {
  stage: "soil",
  view: { target: [0.1, 0, 0.2], away: 4, tilt: 38, sun: -1.8, reach: 4, exposure: -0.55 },
  build: (model) => {
    beet(model, tapered, [-0.6, -0.5, 0.3], [-1, 0.1, 0.03], 3, 9);
    beet(model, tapered, [-0.5, 0.15, 0.3], [-1, -0.05, 0.03], 8, 9);
    beet(model, tapered, [-0.7, 0.8, 0.28], [-1, 0.03, 0.03], 14, 9);
  },
};

export const purpleTops: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.22], away: 3.1, tilt: 32, sun: -1.8, exposure: -0.1 },
  build: (model) => {
    const flat: Body = {
      outline: outline([
        [0, -0.75],
        [0.012, -0.55],
        [0.04, -0.34],
        [0.3, -0.22],
        [0.46, -0.02],
        [0.38, 0.16],
        [0.16, 0.24],
        [0, 0.22],
      ]),
      uneven: [0.045, 1.3, 5],
    };
    const one = (at: Vec, up: Vec, seed: number) => {
      const place = frame(at, up, seed);
      body(model, place, flat, (skin, x, y, z, _u, v) => {
        dye(skin, [0.76, 0.73, 0.66], 0.9 + 0.16 * cloudNoise(x * 5 + seed, y * 5, z * 5, 3));
        const line = v + 0.05 * (noise(x * 6, y * 6, seed) - 0.5);
        tinge(skin, [0.12, 0.014, 0.075], step(0.44, 0.54, line) * (0.9 + 0.1 * noise(x * 20, y * 20, z * 20)));
        tinge(skin, [0.24, 0.3, 0.1], step(0.93, 1, v) * 0.8);
        skin.gloss = 0.55;
        skin.rough = 0.35;
        skin.creep = 0.2;
        skin.bendZ += (noise(z * 24, x * 4, y * 4) - 0.5) * 0.14;
        bumpy(skin, x, y, z, 16, 0.08);
        dirt(skin, x + seed, y, z, 0.26, 6);
      });
      tops(model, inFrame(place, onBody(flat, 0, 1)), up, [0.2, 0.3, 0.1], 8, 0.5, 0.034, seed);
    };
    one([-0.5, -0.12, 0.33], [-0.4, -0.2, 0.75], 3);
    one([0.5, -0.25, 0.36], [0.6, -0.1, 0.55], 7);
    one([0.1, 0.65, 0.33], [-0.1, 0.4, 0.8], 11);
  },
};

export const frenchBreakfasts: Subject = {
  stage: "board",
  view: { target: [-0.02, 0, 0.1], away: 2.1, tilt: 38, sun: -1.8, reach: 2.3 },
  build: (model) => {
    const shape: Outline = outline([
      [0, -0.62],
      [0.006, -0.48],
      [0.018, -0.36],
      [0.075, -0.3],
      [0.105, -0.18],
      [0.1, 0],
      [0.1, 0.14],
      [0.075, 0.22],
      [0, 0.24],
    ]);
    for (let i = 0; i < 8; i++) {
      const seed = i * 3 + 5;
      const yaw = 0.25 * Math.sin(i * 2.1);
      const up: Vec = [-Math.cos(yaw), -Math.sin(yaw), 0.04];
      const place = frame([0.02 + 0.1 * Math.sin(i * 4), -0.62 + i * 0.185, 0.1 + (i % 3 === 1 ? 0.07 : 0)], up, seed);
      const form: Body = { outline: shape, uneven: [0.06, 1.4, seed], columns: 80, rows: 110 };
      body(model, place, form, (skin, x, y, z, _u, v) => {
        dye(skin, [0.55, 0.018, 0.06], 0.85 + 0.3 * cloudNoise(x * 9 + seed, y * 9, z * 9, 3));
        const white = step(-0.2, -0.27, z + 0.03 * (noise(x * 20, y * 20, seed) - 0.5));
        tinge(skin, [0.8, 0.77, 0.72], white);
        tinge(skin, [0.85, 0.6, 0.6], specks(x, y, z, 24, 0.2, 0.24) * 0.3);
        skin.gloss = 0.8;
        skin.rough = 0.25;
        skin.creep = 0.25;
        if (v < 0.2) darken(skin, 0.9);
        bumpy(skin, x, y, z, 18, 0.08);
      });
      tops(model, inFrame(place, onBody(form, 0, 1)), up, [0.15, 0.27, 0.06], 6, 0.75, 0.016, seed);
    }
  },
};
