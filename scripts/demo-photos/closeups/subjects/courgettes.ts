/** Courgettes and cucumbers. */

import type { Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, hashGrid, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, darken, dye, specks, step, streaks, tinge } from "../paint.ts";
import { body, globe, onBody, tube } from "../shapes.ts";

/** A long fruit lying along `to - from`; local x is along it in the paint's v. */
function long(
  model: Model,
  from: Vec,
  to: Vec,
  bow: number,
  radius: number,
  paint: Paint,
  ends: (t: number) => number,
  angular = 0,
): void {
  const mid: Vec = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2 + bow, (from[2] + to[2]) / 2];
  tube(
    model,
    frame([0, 0, 0]),
    [from, mid, to],
    (t) => radius * ends(t),
    (skin, x, y, z, u, v) => {
      paint(skin, x, y, z, u, v);
      skin.bendZ += angular * Math.sin(u * 31.4) * 0.3;
    },
    110,
    150,
  );
}

/** Slimmer towards the stalk, round at the flower's end. */
const blunt = (t: number): number => {
  const foot = Math.min(1, t / 0.05);
  const tip = Math.min(1, (1 - t) / 0.085);
  return (
    Math.sqrt(1 - (1 - foot) ** 2) *
    (0.12 + 0.88 * Math.sqrt(Math.max(0, 1 - (1 - tip) ** 2))) *
    (0.8 + 0.2 * step(0, 0.85, t))
  );
};

function stub(model: Model, at: Vec, towards: Vec, thick: number): void {
  tube(
    model,
    frame([0, 0, 0]),
    [
      at,
      [at[0] + towards[0] * 0.5, at[1] + towards[1] * 0.5, at[2] + towards[2] * 0.5],
      [at[0] + towards[0], at[1] + towards[1], at[2] + towards[2]],
    ],
    (t) => thick * (1.25 - 0.4 * t) * (t > 0.97 ? 0.05 : 1),
    (skin, x, y, z, u, v) => {
      dye(skin, [0.2, 0.26, 0.09], 0.75 + 0.4 * noise(x * 12, y * 12, z * 12));
      darken(skin, 0.8 + 0.3 * Math.abs(Math.sin(u * 15.7)));
      tinge(skin, [0.5, 0.5, 0.28], step(0.93, 0.97, v));
      skin.gloss = 0.2;
      bumpy(skin, x, y, z, 40, 0.3);
    },
    40,
    30,
  );
}

const blackSkin: Paint = (skin, x, y, z) => {
  dye(skin, [0.009, 0.021, 0.009], 0.8 + 0.6 * cloudNoise(x * 5, y * 5, z * 5, 3));
  tinge(skin, [0.12, 0.19, 0.06], specks(x, y, z, 30, 0.4, 0.3) * 0.4);
  skin.gloss = 0.9;
  skin.rough = 0.24;
  bumpy(skin, x, y, z, 6, 0.08);
};

const stripedSkin: Paint = (skin, x, y, z, u, v) => {
  const bands = u * 10;
  const wobble = 0.28 * (cloudNoise(v * 9, Math.floor(bands), 3, 3) - 0.5);
  const at = bands - Math.floor(bands) + wobble;
  const pale = step(0.44, 0.56, at) * step(1.06, 0.94, at);
  dye(skin, [0.035, 0.085, 0.022], 0.8 + 0.4 * noise(x * 8, y * 8, z * 8));
  tinge(skin, [0.32, 0.4, 0.17], pale * 0.9);
  tinge(skin, [0.4, 0.46, 0.24], specks(x, y, z, 24, 0.5, 0.34) * (0.75 - 0.5 * pale));
  skin.gloss = 0.75;
  skin.rough = 0.3;
  bumpy(skin, x, y, z, 6, 0.08);
};

export const blackBeauties: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.2], away: 4.2, tilt: 33, sun: -1.8, reach: 4, nearer: 0.4, exposure: -0.75 },
  build: (model) => {
    long(model, [-1.15, -0.5, 0.25], [0.85, -0.62, 0.25], -0.1, 0.25, blackSkin, blunt, 0.12);
    stub(model, [-1.1, -0.5, 0.26], [-0.3, 0.05, 0.03], 0.11);
    long(model, [-0.95, 0.2, 0.23], [1.05, 0.3, 0.23], 0.06, 0.23, blackSkin, blunt, 0.12);
    stub(model, [-0.9, 0.2, 0.24], [-0.26, -0.03, 0.05], 0.1);
    long(model, [-0.7, 0.95, 0.21], [0.9, 1.1, 0.21], 0.02, 0.21, blackSkin, blunt, 0.12);
    stub(model, [-0.66, 0.95, 0.22], [-0.28, -0.06, 0.04], 0.1);
  },
};

export const striatos: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.2], away: 4.2, tilt: 33, sun: -1.8, reach: 4, nearer: 0.4 },
  build: (model) => {
    long(model, [-1.1, -0.35, 0.25], [0.95, -0.6, 0.25], -0.06, 0.25, stripedSkin, blunt, 0.2);
    stub(model, [-1.05, -0.36, 0.26], [-0.3, 0.05, 0.04], 0.11);
    long(model, [-0.85, 0.35, 0.24], [1.1, 0.3, 0.24], 0.08, 0.24, stripedSkin, blunt, 0.2);
    stub(model, [-0.8, 0.35, 0.25], [-0.28, 0, 0.04], 0.1);
  },
};

export const telegraphs: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.15], away: 5.2, tilt: 34, sun: 1.8, reach: 4.6, nearer: 0.4 },
  build: (model) => {
    const skinOf: Paint = (skin, x, y, z, u, v) => {
      dye(skin, [0.03, 0.085, 0.02], 0.75 + 0.5 * cloudNoise(x * 4, y * 4, z * 4, 3));
      tinge(skin, [0.17, 0.26, 0.07], step(0.6, 1, v) * step(0.45, 0.62, noise(u * 24, v * 2.5, 1)) * 0.6);
      tinge(skin, [0.02, 0.05, 0.015], step(0.2, 0, v) * 0.5);
      skin.gloss = 0.6;
      skin.rough = 0.36;
      bumpy(skin, x, y, z, 11, 0.18);
      bumpy(skin, x, y, z, 30, 0.12);
    };
    const necked = (t: number): number =>
      (0.42 + 0.58 * step(0.02, 0.2, t)) *
      Math.max(0, 1 - Math.max(0, (t - 0.9) / 0.1) ** 2.4) ** 0.5 *
      Math.min(1, (t / 0.02) ** 0.5 + 0.02);
    long(model, [-1.8, -0.45, 0.22], [1.5, -0.4, 0.22], -0.22, 0.22, skinOf, necked, 0.1);
    stub(model, [-1.78, -0.45, 0.22], [-0.3, 0.05, 0.05], 0.06);
    long(model, [-1.5, 0.32, 0.21], [1.75, 0.42, 0.21], -0.05, 0.21, skinOf, necked, 0.1);
    stub(model, [-1.48, 0.32, 0.21], [-0.3, 0.05, 0.05], 0.06);
  },
};

export const crystalLemons: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.22], away: 2.9, tilt: 30, sun: -1.8, reach: 3.2, exposure: -0.2 },
  build: (model) => {
    const peel: Paint = (skin, x, y, z, _u, v) => {
      dye(skin, colour("#dcd28a"), 0.9 + 0.16 * cloudNoise(x * 5, y * 5, z * 5, 3));
      tinge(skin, colour("#e3c64a"), step(0.42, 0.62, streaks(x, y, z, 16, 1.6)) * 0.5);
      tinge(skin, colour("#a9b765"), step(0.72, 0.98, v) * 0.5);
      const spot = specks(x, y, z, 13, 0.5, 0.24);
      tinge(skin, [0.1, 0.08, 0.04], spot * 0.8);
      skin.gloss = 0.5;
      skin.rough = 0.4;
      skin.creep = 0.25;
      bumpy(skin, x, y, z, 12, 0.16);
      bumpy(skin, x, y, z, 13, spot * 0.8);
    };
    const one = (at: Vec, up: Vec, r: number, seed: number) => {
      body(model, frame(at, up, seed), { outline: globe(r, 1.12, 1.1, 0.05, 0.05), uneven: [0.03, 1.4, seed] }, peel);
      const z = frame(at, up).z;
      const top: Vec = [at[0] + z[0] * r * 1.06, at[1] + z[1] * r * 1.06, at[2] + z[2] * r * 1.06];
      stub(model, top, [z[0] * 0.13, z[1] * 0.13, z[2] * 0.13], 0.04);
    };
    one([-0.52, -0.1, 0.34], [-0.5, -0.25, 0.6], 0.36, 3);
    one([0.42, -0.25, 0.32], [0.6, -0.45, 0.35], 0.34, 7);
    // One halved, to show the seeds.
    const place = frame([0.15, 0.62, 0.3], [0.1, -0.55, 0.8], 0.2);
    const form = { outline: globe(0.35, 1.12, 1.1, 0.05, 0.05), uneven: [0.03, 1.4, 11] as const, to: 0.5, rows: 50 };
    body(model, place, form, peel);
    model.grid(
      place,
      { columns: 160, rows: 50, closed: true },
      (skin, x, y, z) => {
        const r = Math.hypot(x, y) / 0.35;
        const a = Math.atan2(y, x);
        dye(skin, [0.62, 0.68, 0.42], 0.95 + 0.1 * cloudNoise(x * 12, y * 12, 2, 3));
        const third = Math.abs(Math.sin(a * 1.5 + 0.4));
        const wet = step(0.72, 0.62, r) * step(0.1, 0.3, third + r * 0.2);
        tinge(skin, [0.42, 0.5, 0.24], wet * 0.7);
        const cell = Math.floor(a * 7);
        const seed =
          step(0.3, 0.12, Math.abs(a * 7 - cell - 0.5)) *
          step(0.2, 0.1, Math.abs(r - 0.42 - 0.12 * hashGrid(cell, 1, 1)));
        tinge(skin, [0.8, 0.78, 0.6], seed * wet);
        tinge(skin, colour("#b9bd5a"), step(0.94, 0.99, r));
        skin.gloss = 0.7;
        skin.rough = 0.25;
        skin.creep = 0.4;
        bumpy(skin, x, y, z, 20, 0.15);
      },
      (s, t) => {
        const [x, y, z] = onBody(form, s * 6.2832, 0.5);
        return [x * (1 - t), y * (1 - t), z];
      },
    );
  },
};
