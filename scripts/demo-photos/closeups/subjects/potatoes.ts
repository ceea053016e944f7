/** Potatoes with the soil still on them. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise, randomFrom } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, dirt, dye, specks, step, tinge } from "../paint.ts";
import { body } from "../shapes.ts";

interface Tuber {
  readonly size: Vec;
  readonly lump: number;
  readonly bumps: number;
  readonly skin: Colour;
  readonly other: Colour;
  readonly eyes: number;
  readonly eyeTone: Colour;
}

function tuber(model: Model, kind: Tuber, at: Vec, up: Vec, spin: number, seed: number, scale = 1): void {
  const place = frame(at, up, spin, scale);
  const [sx, sy, sz] = kind.size;
  const random = randomFrom(`eyes ${seed}`);
  const eyes = Array.from({ length: kind.eyes }, () => [random() * 6.283, 0.12 + 0.78 * random()] as const);
  const eyeAt = (angle: number, t: number): number => {
    let most = 0;
    for (const [a, h] of eyes) {
      const da = Math.atan2(Math.sin(angle - a), Math.cos(angle - a)) * Math.sin(Math.PI * t) * sx;
      const d = Math.hypot(da / 0.09, ((t - h) * sz * 3) / 0.07);
      most = Math.max(most, 1 - step(0.3, 1, d));
    }
    return most;
  };
  body(
    model,
    place,
    {
      outline: (t) => [Math.sin(Math.PI * t) ** 0.82, -Math.cos(Math.PI * t) * sz],
      ribs: (angle, t) => {
        const c = Math.cos(angle) * sx;
        const s = Math.sin(angle) * sy;
        const knob = kind.lump * (cloudNoise(c * kind.bumps + seed, s * kind.bumps, t * kind.bumps * 2.4, 2) - 0.45);
        return Math.hypot(c, s) * (1 + 2 * knob - 0.1 * eyeAt(angle, t));
      },
      bend: (t) => [0.14 * sz * Math.sin(t * 3.1 + seed), 0.05 * Math.sin(t * 5 + seed)],
      columns: 150,
      rows: 130,
    },
    (skin, x, y, z, u, v) => {
      dye(skin, kind.skin, 0.82 + 0.3 * cloudNoise(x * 5 + seed, y * 5, z * 5, 4));
      tinge(skin, kind.other, step(0.48, 0.66, cloudNoise(x * 2.6 + seed, y * 2.6, z * 2.6, 4)) * 0.6);
      const flake = cloudNoise(x * 14 + seed, y * 14, z * 14, 4);
      tinge(skin, [0.42, 0.3, 0.17], step(0.56, 0.66, flake) * 0.4);
      const eye = eyeAt(u * 6.283, v);
      tinge(skin, kind.eyeTone, eye * 0.7);
      tinge(skin, [0.12, 0.07, 0.04], specks(x, y, z, 20, 0.14, 0.3) * 0.5);
      skin.gloss = 0.25;
      skin.rough = 0.55;
      skin.creep = 0.15;
      bumpy(skin, x, y, z, 24, 0.14);
      bumpy(skin, x, y, z, 8, 0.1);
      dirt(skin, x + seed, y, z, 0.4, 5);
    },
  );
}

const kerrs: Tuber = {
  size: [0.44, 0.36, 0.4],
  lump: 0.2,
  bumps: 1.5,
  skin: colour("#b87068"),
  other: colour("#c79a6c"),
  eyes: 9,
  eyeTone: colour("#b0546a"),
};
const pinkFir: Tuber = {
  size: [0.17, 0.16, 0.62],
  lump: 0.3,
  bumps: 4,
  skin: colour("#b87e66"),
  other: colour("#c99c72"),
  eyes: 12,
  eyeTone: colour("#b86a64"),
};
const sharpes: Tuber = {
  size: [0.28, 0.24, 0.44],
  lump: 0.05,
  bumps: 1.3,
  skin: colour("#c09a58"),
  other: colour("#cdae72"),
  eyes: 5,
  eyeTone: colour("#b8924c"),
};

export const kerrsPinks: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.28], away: 3.5, tilt: 30, sun: -1.8, reach: 3.6, exposure: -0.1 },
  build: (model) => {
    tuber(model, kerrs, [-0.6, -0.12, 0.36], [0.5, 0.2, 0.5], 0.4, 3);
    tuber(model, kerrs, [0.38, -0.35, 0.33], [0.9, -0.2, 0.4], 2, 9, 0.9);
    tuber(model, kerrs, [0.15, 0.55, 0.36], [-0.6, 0.2, 0.7], 4, 14);
    tuber(model, kerrs, [1.05, 0.35, 0.28], [0.6, 0.4, 0.4], 1, 21, 0.75);
    tuber(model, kerrs, [-1.05, 0.7, 0.28], [0.3, 0.5, 0.4], 3, 27, 0.8);
  },
};

export const pinkFirApples: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.16], away: 3.2, tilt: 38, sun: -1.8, reach: 3.4, exposure: -0.1 },
  build: (model) => {
    const lying: readonly (readonly [number, number, number])[] = [
      [-0.55, -0.5, 0.3],
      [0.45, -0.45, -0.4],
      [-0.15, -0.02, 0.1],
      [-0.95, 0.15, 1.2],
      [0.85, 0.15, 0.9],
      [0.1, 0.55, -0.2],
      [-0.5, 0.85, 0.5],
    ];
    lying.forEach(([x, y, yaw], i) => {
      tuber(
        model,
        pinkFir,
        [x, y, 0.16 + (i === 2 ? 0.04 : 0)],
        [Math.cos(yaw), Math.sin(yaw), 0.04],
        i,
        i * 5 + 2,
        0.85 + 0.2 * noise(i, 3, 1),
      );
    });
  },
};

export const sharpesExpress: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.2], away: 3, tilt: 34, sun: 1.8, reach: 3.2, exposure: -0.15 },
  build: (model) => {
    tuber(model, sharpes, [-0.5, -0.2, 0.25], [0.8, 0.3, 0.1], 0.4, 3);
    tuber(model, sharpes, [0.35, -0.32, 0.25], [0.9, -0.4, 0.1], 2, 9, 0.95);
    tuber(model, sharpes, [0.05, 0.4, 0.25], [-0.6, 0.5, 0.1], 4, 14);
    tuber(model, sharpes, [0.9, 0.35, 0.2], [0.6, 0.5, 0.1], 1, 21, 0.8);
    tuber(model, sharpes, [-0.9, 0.5, 0.2], [0.2, 0.8, 0.1], 3, 27, 0.85);
  },
};
