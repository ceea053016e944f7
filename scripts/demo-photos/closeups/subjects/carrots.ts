/** Carrots: blunt, broad-shouldered and long. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { bumpy, darken, dirt, dye, step, tinge } from "../paint.ts";
import type { Body, Outline } from "../shapes.ts";
import { body, onBody, outline } from "../shapes.ts";
import { tops } from "./tops.ts";

interface Carrot {
  readonly outline: Outline;
  readonly skin: Colour;
  readonly shoulder: Colour;
}

function carrot(model: Model, kind: Carrot, at: Vec, yaw: number, seed: number, green: number, clean = false): void {
  // The root points along yaw, its crown back to `at`.
  const up: Vec = [-Math.cos(yaw), -Math.sin(yaw), 0.03];
  const place = frame(at, up, seed);
  const form: Body = {
    outline: kind.outline,
    uneven: [0.06, 1.3, seed],
    bend: (t) => [0.07 * Math.sin(t * 3 + seed), 0.05 * Math.sin(t * 4 + seed * 2)],
    columns: 90,
    rows: 170,
  };
  body(model, place, form, (skin, x, y, z, _u, v) => {
    const ring = noise(z * 16, Math.atan2(y, x) * 1.5 + seed, seed);
    const crease = step(0.76, 0.9, ring) * step(0.35, 0.6, noise(Math.atan2(y, x) * 2, z * 3, seed + 4));
    dye(skin, kind.skin, 0.68 + 0.4 * cloudNoise(x * 5 + seed, y * 5, z * 2, 3));
    tinge(skin, colour("#dc8a3c"), step(0.55, 0.8, noise(z * 44, x * 6, y * 6 + seed)) * 0.18);
    darken(skin, 1 - 0.45 * crease);
    tinge(skin, kind.shoulder, step(0.92, 0.99, v) * 0.7);
    skin.gloss = 0.45;
    skin.rough = 0.4;
    skin.creep = 0.2;
    skin.bendZ += (ring - 0.5) * 0.3;
    bumpy(skin, x, y, z, 16, 0.1);
    dirt(skin, x + seed, y, z, clean ? 0.16 : 0.34, 6);
  });
  const crown = inFrame(place, onBody(form, 0, 1));
  tops(model, crown, up, [0.13, 0.24, 0.06], 8, green, 0.028, seed);
}

const along = (points: readonly (readonly [number, number])[]): Outline => outline(points);

/** Blunt, the same width almost to the tip. */
const nantes: Carrot = {
  outline: along([
    [0, -1.42],
    [0.012, -1.2],
    [0.03, -1.02],
    [0.13, -0.94],
    [0.165, -0.7],
    [0.18, -0.3],
    [0.185, 0.05],
    [0.165, 0.2],
    [0.08, 0.24],
    [0, 0.21],
  ]),
  skin: colour("#d8641a"),
  shoulder: colour("#a8702a"),
};
/** Short, broad-shouldered, tapering to a blunt point. */
const chantenay: Carrot = {
  outline: along([
    [0, -0.98],
    [0.015, -0.8],
    [0.08, -0.66],
    [0.17, -0.42],
    [0.24, -0.12],
    [0.3, 0.12],
    [0.28, 0.26],
    [0.15, 0.31],
    [0, 0.25],
  ]),
  skin: colour("#d6581a"),
  shoulder: colour("#8f7a34"),
};
/** Long, slowly tapering to a fine end. */
const autumn: Carrot = {
  outline: along([
    [0, -2.25],
    [0.02, -1.9],
    [0.075, -1.4],
    [0.13, -0.9],
    [0.185, -0.4],
    [0.225, 0],
    [0.225, 0.2],
    [0.12, 0.29],
    [0, 0.25],
  ]),
  skin: colour("#cf5414"),
  shoulder: colour("#7f8a3c"),
};

export const earlyNantes: Subject = {
  stage: "board",
  view: { target: [-0.05, 0, 0.15], away: 3.5, tilt: 40, sun: -1.8, reach: 3.4 },
  build: (model) => {
    for (let i = 0; i < 5; i++)
      carrot(
        model,
        nantes,
        [-0.5 + 0.06 * Math.sin(i * 3), -0.72 + i * 0.4, 0.18],
        0.06 * Math.sin(i * 2),
        i * 3 + 1,
        0.8,
        true,
      );
  },
};
export const chantenays: Subject = {
  stage: "soil",
  view: { target: [0.05, -0.05, 0.2], away: 3.9, tilt: 42, sun: -1.8, reach: 3.2 },
  build: (model) => {
    for (let i = 0; i < 5; i++)
      carrot(
        model,
        chantenay,
        [-0.45 + 0.1 * Math.sin(i * 3), -0.9 + i * 0.46, 0.25],
        0.12 * Math.sin(i * 2.2),
        i * 3 + 41,
        0.6,
      );
  },
};
export const autumnKings: Subject = {
  stage: "soil",
  view: { target: [0.15, 0, 0.15], away: 4.3, tilt: 40, sun: 1.8, reach: 4.2 },
  build: (model) => {
    for (let i = 0; i < 4; i++)
      carrot(
        model,
        autumn,
        [-0.75 + 0.08 * Math.sin(i * 3), -0.75 + i * 0.5, 0.22],
        0.05 * Math.sin(i * 2),
        i * 3 + 71,
        0.7,
      );
  },
};
