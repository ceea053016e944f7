/** Pods of beans and peas, closed and lying open. */

import type { Vec } from "../../mesh.ts";
import { cloudNoise, noise, randomFrom, spread } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, dye, step, tinge } from "../paint.ts";
import { body, curve, globe, tube } from "../shapes.ts";
import type { Bean } from "./dry-beans.ts";
import { bean, borlotto } from "./dry-beans.ts";

const home = frame([0, 0, 0]);

/** A closed pod through `points`; `seeds` bulges along it. */
function pod(model: Model, points: readonly Vec[], wide: number, thick: number, seeds: number, paint: Paint): void {
  tube(
    model,
    home,
    points,
    (t) => {
      const ends = Math.min(1, (t / 0.07) ** 0.6) * Math.min(1, ((1 - t) / 0.12) ** 0.8);
      const bulge = 1 + 0.16 * Math.sin(t * seeds * 6.283) * step(0.05, 0.2, t) * step(0.98, 0.85, t);
      return [Math.max(0.012, wide * ends), Math.max(0.012, thick * bulge * (0.25 + 0.75 * ends))];
    },
    paint,
    60,
    150,
  );
  const end = points.at(-1) as Vec;
  const before = curve(points, 0.97);
  const tip = (k: number): Vec =>
    [0, 1, 2].map((i) => (end[i] as number) + ((end[i] as number) - (before[i] as number)) * k) as unknown as Vec;
  tube(model, home, [before, end, tip(1.4), tip(2.4)], (t) => 0.02 * (1 - 0.8 * t), paint, 10, 12);
  const start = points[0] as Vec;
  const after = curve(points, 0.03);
  const stem = (k: number): Vec =>
    [0, 1, 2].map((i) => (start[i] as number) + ((start[i] as number) - (after[i] as number)) * k) as unknown as Vec;
  tube(
    model,
    home,
    [after, start, stem(2), stem(4)],
    (t) => 0.026 + 0.014 * Math.exp(-(((t - 0.3) / 0.15) ** 2)),
    (skin, x, y, z) => {
      dye(skin, [0.15, 0.22, 0.06], 0.8 + 0.4 * noise(x * 14, y * 14, z * 14));
      skin.gloss = 0.2;
    },
    12,
    18,
  );
}

const borlottoPod: Paint = (skin, x, y, z, u) => {
  const long = cloudNoise(x * 6, y * 19, z * 19, 4);
  dye(skin, [0.6, 0.46, 0.28], 0.9 + 0.18 * noise(x * 8, y * 20, z * 20));
  tinge(skin, [0.36, 0.016, 0.035], step(0.47, 0.53, long) * 0.92);
  tinge(skin, [0.42, 0.46, 0.2], step(0.93, 1, Math.abs(Math.cos(u * 6.283))) * 0.25);
  skin.gloss = 0.4;
  skin.rough = 0.42;
  skin.creep = 0.15;
  bumpy(skin, x, y, z, 16, 0.12);
};

export const borlottoPods: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.08], away: 3.2, tilt: 42, sun: -1.8, reach: 2.8, nearer: 0.2 },
  build: (model) => {
    for (let i = 0; i < 5; i++) {
      const y = -0.62 + i * 0.28;
      const bow = 0.1 * Math.sin(i * 2.2);
      pod(
        model,
        [
          [-0.95 + 0.1 * Math.sin(i * 3), y + 0.02, 0.09],
          [-0.3, y + bow, 0.09],
          [0.35, y + bow, 0.09],
          [0.95 + 0.1 * Math.sin(i * 5), y - 0.04, 0.08],
        ],
        0.1,
        0.085,
        5.5,
        borlottoPod,
      );
    }
    const random = randomFrom("shelled borlotto");
    for (let i = 0; i < 7; i++)
      bean(
        model,
        borlotto,
        [-0.6 + 0.25 * i + 0.06 * spread(random), -0.95 + 0.09 * spread(random), 0.052],
        [Math.cos(i), Math.sin(i), 0],
        1.5,
        i + 70,
      );
  },
};

export const blauhildePods: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.08], away: 3.8, tilt: 44, sun: -1.8, reach: 3, nearer: 0.25, exposure: -0.45 },
  build: (model) => {
    const purple: Paint = (skin, x, y, z) => {
      dye(skin, [0.045, 0.012, 0.04], 0.8 + 0.5 * cloudNoise(x * 4, y * 6, z * 6, 3));
      skin.gloss = 0.45;
      skin.rough = 0.42;
      bumpy(skin, x, y, z, 18, 0.12);
    };
    for (let i = 0; i < 6; i++) {
      const y = -0.66 + i * 0.27;
      const bow = 0.12 * Math.sin(i * 1.9 + 1);
      pod(
        model,
        [
          [-1.15 + 0.12 * Math.sin(i * 3), y + 0.04, 0.07 + (i % 3 === 1 ? 0.04 : 0)],
          [-0.4, y + bow, 0.07],
          [0.4, y + bow, 0.07],
          [1.15 + 0.1 * Math.sin(i * 5), y - 0.06, 0.06],
        ],
        0.075,
        0.062,
        8,
        purple,
      );
    }
  },
};

interface Shell {
  readonly from: Vec;
  readonly to: Vec;
  readonly wide: number;
  readonly deep: number;
  readonly outside: Paint;
  readonly lining: Paint;
}

/** Half a pod, lying open: a boat with a lining. */
function boat(model: Model, shell: Shell): void {
  const { from, to } = shell;
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const yaw = Math.atan2(to[1] - from[1], to[0] - from[0]);
  const place = {
    at: from,
    x: [Math.cos(yaw) * long, Math.sin(yaw) * long, 0] as Vec,
    y: [-Math.sin(yaw), Math.cos(yaw), 0] as Vec,
    z: [0, 0, 1] as Vec,
  };
  const ends = (t: number): number => Math.min(1, (t / 0.12) ** 0.6) * Math.min(1, ((1 - t) / 0.16) ** 0.75);
  const point =
    (shrink: number) =>
    (s: number, t: number): Vec => {
      const a = Math.PI * (1.06 * s - 0.03);
      const e = ends(t) * shrink;
      return [t, -Math.cos(a) * shell.wide * e + 0.05 * Math.sin(t * 2.6), shell.deep * (1 - Math.sin(a) * e)];
    };
  model.grid(place, { columns: 44, rows: 120 }, shell.outside, point(1));
  model.grid(place, { columns: 44, rows: 120 }, shell.lining, point(0.93));
}

export const aldermanOpen: Subject = {
  stage: "table",
  view: { target: [0, 0.02, 0.08], away: 2.35, tilt: 46, sun: -1.8, reach: 1.9, open: 20, nearer: 0.15 },
  build: (model) => {
    const outside: Paint = (skin, x, y, z) => {
      dye(skin, [0.16, 0.31, 0.05], 0.85 + 0.3 * cloudNoise(x * 6, y * 20, z * 20, 3));
      skin.gloss = 0.4;
      skin.rough = 0.4;
      skin.through = 0.2;
    };
    const lining: Paint = (skin, x, y, z) => {
      dye(skin, [0.42, 0.55, 0.24], 0.95 + 0.1 * noise(x * 60, y * 30, z * 30));
      skin.gloss = 0.45;
      skin.rough = 0.35;
      skin.through = 0.2;
    };
    boat(model, { from: [-0.72, -0.22, 0.02], to: [0.72, -0.28, 0.02], wide: 0.105, deep: 0.1, outside, lining });
    const pea: Paint = (skin, x, y, z) => {
      dye(skin, [0.17, 0.36, 0.045], 0.92 + 0.16 * cloudNoise(x * 14, y * 14, z * 14, 3));
      skin.gloss = 0.6;
      skin.rough = 0.34;
      skin.creep = 0.3;
      bumpy(skin, x, y, z, 20, 0.08);
    };
    for (let i = 0; i < 9; i++) {
      const t = 0.13 + 0.09 * i;
      const size = 0.064 * (1 - 1.1 * (t - 0.5) ** 2);
      body(
        model,
        frame([-0.72 + 1.44 * t, -0.22 - 0.06 * t + 0.045, 0.1], [Math.sin(i), 1, 0.4], i),
        { outline: globe(size, 0.96, 1.15), columns: 44, rows: 32 },
        pea,
      );
    }
    for (let i = 0; i < 3; i++)
      pod(
        model,
        [
          [-0.8 + 0.05 * i, 0.14 + 0.24 * i, 0.08],
          [-0.2, 0.2 + 0.23 * i, 0.08],
          [0.3, 0.2 + 0.22 * i, 0.08],
          [0.76, 0.1 + 0.26 * i, 0.08],
        ],
        0.1,
        0.085,
        8,
        outside,
      );
    const random = randomFrom("loose peas");
    for (let i = 0; i < 5; i++)
      body(
        model,
        frame([-0.45 + 0.24 * i, -0.52 + 0.05 * spread(random), 0.06]),
        { outline: globe(0.06, 0.96), columns: 44, rows: 32 },
        pea,
      );
  },
};

export const aquadulceOpen: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.1], away: 4.1, tilt: 46, sun: 1.8, reach: 3, nearer: 0.2 },
  build: (model) => {
    const outside: Paint = (skin, x, y, z) => {
      dye(skin, [0.14, 0.24, 0.05], 0.85 + 0.3 * cloudNoise(x * 6, y * 10, z * 10, 3));
      tinge(skin, [0.03, 0.03, 0.015], step(0.64, 0.72, cloudNoise(x * 9, y * 9, z * 9, 4)) * 0.4);
      skin.gloss = 0.3;
      skin.rough = 0.5;
      bumpy(skin, x, y, z, 24, 0.14);
    };
    const felt: Paint = (skin, x, y, z) => {
      dye(skin, [0.7, 0.72, 0.58], 0.92 + 0.16 * cloudNoise(x * 20, y * 20, z * 20, 3));
      skin.gloss = 0.05;
      skin.rough = 0.9;
      bumpy(skin, x, y, z, 60, 0.5);
    };
    boat(model, { from: [-1.25, -0.28, 0.02], to: [1.2, -0.36, 0.02], wide: 0.18, deep: 0.17, outside, lining: felt });
    const broad: Bean = {
      size: [0.135, 0.1, 0.06],
      bent: 0.012,
      eye: 0,
      paint: (skin, x, y, z) => {
        dye(skin, [0.42, 0.52, 0.24], 0.92 + 0.14 * cloudNoise(x * 9, y * 9, z * 9, 3));
        skin.gloss = 0.5;
        skin.rough = 0.36;
        skin.creep = 0.3;
      },
    };
    for (let i = 0; i < 7; i++) {
      const t = 0.13 + 0.12 * i;
      bean(
        model,
        broad,
        [-1.25 + 2.45 * t, -0.28 - 0.08 * t + 0.045, 0.14],
        [0.25 * Math.sin(i * 2), 1, 0.15],
        1.35,
        i,
        1 - 0.7 * (t - 0.5) ** 2,
      );
    }
    for (let i = 0; i < 3; i++)
      pod(
        model,
        [
          [-1.4 + 0.1 * i, 0.2 + 0.36 * i, 0.13],
          [-0.4, 0.3 + 0.34 * i, 0.13],
          [0.5, 0.3 + 0.34 * i, 0.13],
          [1.3, 0.18 + 0.38 * i, 0.12],
        ],
        0.16,
        0.14,
        6,
        outside,
      );
    for (let i = 0; i < 4; i++)
      bean(
        model,
        broad,
        [-0.75 + 0.42 * i, -0.78 + 0.06 * Math.sin(i * 3), 0.06],
        [Math.cos(i * 1.4), Math.sin(i * 1.4), 0],
        1.57,
        i + 9,
      );
  },
};
