/** Blossoms of runner beans and sweet peas. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import type { PeaBlossom } from "../blossom.ts";
import { leafPaint, peaBlossom, petalAt, petalPaint, stalk } from "../blossom.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, dye, step, tinge } from "../paint.ts";
import { blade, body, tube } from "../shapes.ts";

const home = frame([0, 0, 0]);

/** A spike of blossoms before the leaves; `kind` gives their colours. */
function spike(model: Model, kind: PeaBlossom, bud: Colour): void {
  stalk(
    model,
    [
      [0.1, 0.1, -1.3],
      [0.03, 0.05, -0.5],
      [0, 0, 0.2],
      [0.03, 0, 0.72],
    ],
    0.026,
    [0.13, 0.22, 0.06],
  );
  const places: readonly (readonly [x: number, z: number, turn: number, open: number])[] = [
    [-0.22, -0.42, -0.5, 1],
    [0.26, -0.36, 0.5, 1],
    [-0.24, -0.02, -0.6, 1],
    [0.24, 0.03, 0.45, 0.95],
    [-0.18, 0.3, -0.4, 0.8],
    [0.18, 0.36, 0.5, 0.6],
  ];
  places.forEach(([x, z, turn, open], i) => {
    const look: Vec = [Math.sin(turn), -Math.cos(turn), 0.12];
    const right: Vec = [Math.cos(turn), Math.sin(turn), 0];
    const size = 0.36 * (0.75 + 0.25 * open);
    const up: Vec = [0, 0.1, 1];
    peaBlossom(
      model,
      {
        at: [x, -0.06, z],
        x: right.map((k) => k * size) as unknown as Vec,
        y: up.map((k) => k * size) as unknown as Vec,
        z: look.map((k) => k * size) as unknown as Vec,
      },
      kind,
      open,
      i,
    );
    stalk(
      model,
      [
        [0.02, 0.02, z - 0.1],
        [x * 0.5, 0, z - 0.03],
        [x, -0.04, z - 0.01],
      ],
      0.014,
      [0.13, 0.22, 0.06],
    );
  });
  for (let i = 0; i < 5; i++)
    body(
      model,
      frame(
        [0.02 + 0.06 * Math.sin(i * 2.4), -0.03 + 0.05 * Math.cos(i * 2.4), 0.52 + 0.06 * i],
        [Math.sin(i * 2.4), -0.4, 1],
      ),
      {
        outline: (t) => [0.045 * (1 - 0.1 * i) * Math.sin(Math.PI * t) ** 0.8, 0.1 * (1 - 0.1 * i) * t],
        columns: 30,
        rows: 24,
      },
      (skin, x, y, z, _u, v) => {
        dye(skin, [0.15, 0.22, 0.07], 1);
        tinge(skin, bud, step(0.25, 0.5, v));
        skin.gloss = 0.25;
        bumpy(skin, x, y, z, 30, 0.1);
      },
    );
  for (let i = 0; i < 4; i++)
    blade(
      model,
      petalAt(frame([-0.5 + 0.36 * i, 0.5, -0.75 + 0.1 * (i % 2)], [0, -0.75, 0.6]), 2.3 - i * 0.5, 0.05, 0),
      {
        length: 0.95,
        half: (t) => 0.42 * Math.sin(Math.PI * Math.min(1, t ** 0.7 * 0.97 + 0.02)) ** 0.8,
        rise: 0.3,
        droop: 0.6,
        cup: 0.16,
        wave: [0.05, 2, i],
        rows: 40,
        columns: 24,
      },
      leafPaint([0.11, 0.22, 0.045], [0.2, 0.31, 0.1], 0.2),
    );
}

const red: Colour = colour("#c01c10");

export const scarletEmperorFlower: Subject = {
  stage: "air",
  view: { target: [0, 0, 0], away: 2.3, tilt: 8, sun: -1.6, reach: 1.6, open: 20, nearer: 0.15 },
  build: (model) =>
    spike(
      model,
      {
        standard: petalPaint(red, [0.32, 0.02, 0.01], 0.16),
        wings: petalPaint(colour("#c82a16"), [0.4, 0.04, 0.02], 0.12),
        wide: 0.92,
        wing: 0.78,
      },
      red,
    ),
};

export const paintedLadyFlower: Subject = {
  stage: "air",
  view: { target: [0, 0, 0], away: 2.3, tilt: 8, sun: 1.7, reach: 1.6, open: 20, nearer: 0.15 },
  build: (model) =>
    spike(
      model,
      {
        standard: petalPaint(colour("#c4301c"), [0.4, 0.06, 0.03], 0.14),
        wings: petalPaint([0.8, 0.74, 0.7], [0.6, 0.5, 0.4], 0.05),
        wide: 0.92,
        wing: 0.78,
      },
      colour("#c4301c"),
    ),
};

/** Two sweet peas to a stem, and a second stem behind. */
function sweetPea(model: Model, kind: PeaBlossom, size: number): void {
  const one = (x: number, y: number, z: number, turn: number, tilt: number, seed: number, k = 1) => {
    const look: Vec = [Math.sin(turn), -Math.cos(turn), tilt];
    const right: Vec = [Math.cos(turn), Math.sin(turn), 0];
    const up: Vec = [0.1 * Math.sin(seed), 0.12 + tilt * 0.5, 1];
    peaBlossom(
      model,
      {
        at: [x, y, z],
        x: right.map((n) => n * size * k) as unknown as Vec,
        y: up.map((n) => n * size * k) as unknown as Vec,
        z: look.map((n) => n * size * k) as unknown as Vec,
      },
      kind,
      1,
      seed,
    );
  };
  const green: Colour = [0.15, 0.26, 0.09];
  one(-0.27, -0.05, 0.0, -0.4, 0.12, 1);
  one(0.2, -0.12, -0.3, 0.35, 0.1, 4);
  one(0.72, 0.55, 0.1, 0.5, 0.05, 7, 0.92);
  stalk(
    model,
    [
      [-0.05, 0.12, -1.4],
      [-0.03, 0.08, -0.5],
      [-0.06, 0.02, -0.12],
      [-0.24, -0.02, 0],
    ],
    0.02,
    green,
  );
  stalk(
    model,
    [
      [-0.03, 0.06, -0.55],
      [0.08, 0, -0.38],
      [0.18, -0.08, -0.3],
    ],
    0.016,
    green,
  );
  stalk(
    model,
    [
      [0.6, 0.6, -1.4],
      [0.62, 0.6, -0.5],
      [0.7, 0.58, 0.08],
    ],
    0.02,
    green,
  );
  tube(
    model,
    home,
    Array.from({ length: 34 }, (_, i): Vec => {
      const a = i * 0.75;
      const r = 0.02 + 0.0035 * i;
      return [-0.75 + 0.02 * i + Math.cos(a) * r, 0.2 + Math.sin(a) * r, -0.75 + 0.028 * i];
    }),
    () => 0.009,
    (skin) => dye(skin, green),
    8,
    260,
  );
  for (const side of [-1, 1])
    blade(
      model,
      { at: [-0.05, 0.14, -0.85], x: [0.2, side, 0.1], y: [side * 0.85, 0.1, 0.5], z: [-side * 0.4, -0.85, 0.5] },
      {
        length: 0.75,
        half: (t) => 0.15 * Math.sin(Math.PI * Math.min(1, t * 0.95 + 0.03)) ** 0.8,
        rise: 0.1,
        droop: 0.5,
        cup: 0.25,
      },
      leafPaint([0.16, 0.27, 0.1], [0.24, 0.35, 0.16], 0.15),
    );
}

export const matucana: Subject = {
  stage: "air",
  view: { target: [0.02, 0, -0.05], away: 2.1, tilt: 8, sun: -1.6, reach: 1.5, open: 20, nearer: 0.15 },
  build: (model) =>
    sweetPea(
      model,
      {
        standard: petalPaint(colour("#6a123e"), [0.2, 0.02, 0.1], 0.16),
        wings: petalPaint(colour("#5a36a8"), [0.25, 0.14, 0.5], 0.1),
        wide: 1.12,
        wing: 0.68,
      },
      0.5,
    ),
};

export const cupani: Subject = {
  stage: "air",
  view: { target: [0.02, 0, -0.05], away: 2.1, tilt: 8, sun: 1.7, reach: 1.5, open: 20, nearer: 0.15, exposure: -0.15 },
  build: (model) =>
    sweetPea(
      model,
      {
        standard: petalPaint(colour("#4c0a26"), [0.12, 0.01, 0.05], 0.22),
        wings: petalPaint(colour("#6c2c86"), [0.3, 0.1, 0.36], 0.12),
        wide: 0.98,
        wing: 0.7,
      },
      0.43,
    ),
};
