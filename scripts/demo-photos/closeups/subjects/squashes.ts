/** Squashes and pumpkins, whole. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, darken, dye, powder, specks, step, streaks, tinge } from "../paint.ts";
import type { Body } from "../shapes.ts";
import { body, outline, ribs, tube } from "../shapes.ts";

export interface Kind {
  readonly form: Body;
  readonly skin: Paint;
  /** Height of the dimple from which the stalk grows, its length and thickness. */
  readonly stalk: readonly [foot: number, length: number, thick: number];
  readonly stalkTone: Colour;
}

const cork: Colour = colour("#b59a68");

export const crownPrince: Kind = {
  form: {
    outline: outline([
      [0, -0.62],
      [0.4, -0.72],
      [0.86, -0.55],
      [1.08, -0.08],
      [0.94, 0.4],
      [0.6, 0.6],
      [0.22, 0.54],
      [0, 0.46],
    ]),
    ribs: ribs(12, 0.075, 0.7, (t) => 0.3 + 0.7 * Math.sin(Math.PI * t)),
    uneven: [0.03, 1.3, 3],
    columns: 260,
    rows: 120,
  },
  skin: (skin, x, y, z) => {
    dye(skin, colour("#7f9492"), 0.86 + 0.3 * cloudNoise(x * 2.4, y * 2.4, z * 2.4, 4));
    tinge(skin, colour("#5c7470"), step(0.5, 0.75, streaks(x, y, z, 60, 1.3)) * 0.35);
    tinge(skin, colour("#b9a284"), step(0.66, 0.74, cloudNoise(x * 3 + 9, y * 3, z * 3, 4)) * 0.4);
    skin.gloss = 0.4;
    skin.rough = 0.5;
    powder(skin, x, y, z, colour("#a8b8b6"), 0.4, 2.2);
    bumpy(skin, x, y, z, 9, 0.08);
    bumpy(skin, x, y, z, 40, 0.1);
  },
  stalk: [0.42, 0.5, 0.15],
  stalkTone: cork,
};

export const uchiki: Kind = {
  form: {
    outline: outline([
      [0, -0.62],
      [0.34, -0.66],
      [0.68, -0.42],
      [0.76, -0.02],
      [0.6, 0.36],
      [0.36, 0.62],
      [0.2, 0.78],
      [0, 0.8],
    ]),
    ribs: ribs(10, 0.02, 0.8),
    uneven: [0.035, 1.2, 8],
    columns: 200,
    rows: 120,
  },
  skin: (skin, x, y, z, _u, v) => {
    dye(skin, colour("#d24a10"), 0.9 + 0.25 * cloudNoise(x * 3, y * 3, z * 3, 4));
    tinge(skin, colour("#e8862c"), step(0.52, 0.72, streaks(x, y, z, 34, 1.1)) * 0.4);
    tinge(skin, colour("#e0a050"), step(0.3, 0.02, v) * 0.5);
    tinge(skin, colour("#8a8f4a"), step(0.9, 1, v) * 0.5);
    tinge(skin, [0.75, 0.5, 0.25], specks(x, y, z, 18, 0.16, 0.3) * 0.3);
    tinge(skin, colour("#9a3408"), step(0.55, 0.8, cloudNoise(x * 10, y * 10, z * 10, 4)) * 0.3);
    skin.gloss = 0.5;
    skin.rough = 0.46;
    skin.creep = 0.06;
    bumpy(skin, x, y, z, 8, 0.07);
    bumpy(skin, x, y, z, 34, 0.06);
  },
  stalk: [0.76, 0.42, 0.1],
  stalkTone: colour("#c2ab72"),
};

const rouge: Kind = {
  form: {
    outline: outline([
      [0, -0.42],
      [0.45, -0.56],
      [1, -0.46],
      [1.3, -0.08],
      [1.16, 0.3],
      [0.74, 0.46],
      [0.26, 0.34],
      [0, 0.18],
    ]),
    ribs: ribs(14, 0.17, 0.6, (t) => 0.35 + 0.65 * Math.sin(Math.PI * t)),
    uneven: [0.035, 1.5, 5],
    columns: 280,
    rows: 120,
  },
  skin: (skin, x, y, z) => {
    dye(skin, colour("#c2340e"), 0.88 + 0.3 * cloudNoise(x * 2.4, y * 2.4, z * 2.4, 4));
    tinge(skin, colour("#dd6a20"), step(0.5, 0.7, streaks(x, y, z, 60, 1)) * 0.4);
    tinge(skin, colour("#cf8a48"), step(0.5, 0.8, cloudNoise(x * 9 + 5, y * 9, z * 9, 4)) * 0.3);
    tinge(skin, colour("#7f1f08"), specks(x, y, z, 10, 0.1, 0.2) * 0.5);
    skin.gloss = 0.42;
    skin.rough = 0.5;
    skin.creep = 0.06;
    bumpy(skin, x, y, z, 7, 0.1);
    bumpy(skin, x, y, z, 36, 0.09);
  },
  stalk: [0.14, 0.6, 0.14],
  stalkTone: colour("#9a9660"),
};

const turban: Kind = {
  form: {
    outline: outline([
      [0, 0.62],
      [0.26, 0.6],
      [0.5, 0.4],
      [0.56, 0.16],
      [0.86, 0.14],
      [1.04, -0.16],
      [0.9, -0.5],
      [0.45, -0.62],
      [0, -0.5],
    ]),
    ribs: (angle, t) => {
      const crown = step(0.46, 0.36, t);
      const four = Math.abs(Math.sin(angle * 2)) ** 0.55;
      const rest = Math.abs(Math.sin(angle * 5.5)) ** 0.8;
      return 1 - 0.24 * crown * (1 - four) - 0.05 * (1 - crown) * (1 - rest);
    },
    uneven: [0.035, 1.5, 15],
    columns: 260,
    rows: 140,
  },
  skin: (skin, x, y, z, _u, v) => {
    const crown = step(0.45, 0.42, v + 0.02 * (noise(x * 6, y * 6, z * 6) - 0.5));
    const streak = streaks(x, y, z, 40, 0.9, 4);
    const patch = cloudNoise(x * 2.3 + 4, y * 2.3, z * 2.3, 3);
    dye(skin, colour("#d2591a"), 0.9 + 0.2 * cloudNoise(x * 5, y * 5, z * 5, 3));
    tinge(skin, colour("#e8d9b0"), crown * 0.9);
    tinge(skin, colour("#2f5a2c"), crown * step(0.52, 0.58, streak) * step(0.42, 0.5, patch) * 0.95);
    tinge(skin, colour("#d2591a"), crown * step(0.56, 0.6, 1 - streak) * step(0.56, 0.62, patch) * 0.9);
    tinge(skin, colour("#e9cf94"), (1 - crown) * step(0.58, 0.66, streak) * 0.6);
    tinge(skin, colour("#4a6a34"), (1 - crown) * step(0.6, 0.66, cloudNoise(x * 4, y * 4, z * 4, 4)) * 0.4);
    tinge(skin, colour("#b9a884"), step(0.03, 0, Math.abs(v - 0.435)) * 0.7);
    skin.gloss = 0.6;
    skin.rough = 0.36;
    bumpy(skin, x, y, z, 8, 0.08);
    bumpy(skin, x, y, z, 34, 0.06);
  },
  stalk: [-0.5, 0, 0.1],
  stalkTone: cork,
};

function stalk(model: Model, kind: Kind, at: Vec, up: Vec, spin: number): void {
  const [foot, length, thick] = kind.stalk;
  if (length === 0) return;
  const grain: Paint = (skin, x, y, z, u) => {
    dye(skin, kind.stalkTone, 0.65 + 0.5 * cloudNoise(x * 9, y * 9, z * 4, 3));
    darken(skin, 0.75 + 0.35 * Math.abs(Math.sin(u * 15)));
    skin.gloss = 0.1;
    skin.rough = 0.8;
    bumpy(skin, x, y, z, 30, 0.5);
  };
  tube(
    model,
    frame(at, up, spin),
    [
      [0, 0, foot - 0.06],
      [0, 0, foot + length * 0.35],
      [0.05, 0.02, foot + length * 0.7],
      [0.14, 0.02, foot + length],
    ],
    (t) => {
      const r = thick * (0.62 + 0.7 * (1 - t) ** 4 + 0.2 * t ** 6);
      return t > 0.985 ? [r * 0.02, r * 0.02] : [r, r * 0.86];
    },
    grain,
    40,
    60,
  );
}

export function whole(model: Model, kind: Kind, at: Vec, up: Vec, spin: number, scale = 1): void {
  const place = frame(at, up, spin, scale);
  body(model, place, kind.form, kind.skin);
  const f = { ...kind, stalk: kind.stalk.map((k) => k * scale) as unknown as Kind["stalk"] };
  stalk(model, f, at, up, spin);
}

export const crownPrinces: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.55], away: 6, tilt: 26, sun: -1.9, reach: 5, nearer: 0.8 },
  build: (model) => {
    whole(model, crownPrince, [-0.75, 0, 0.72], [-0.05, -0.2, 1], 0.4);
    whole(model, crownPrince, [1.35, 0.55, 0.66], [0.3, -0.25, 0.95], 2, 0.92);
  },
};

export const uchikiKuris: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.5], away: 5, tilt: 24, sun: -1.8, reach: 5, nearer: 0.6 },
  build: (model) => {
    whole(model, uchiki, [-0.75, 0, 0.6], [-0.1, -0.1, 1], 0.4);
    whole(model, uchiki, [0.75, 0.1, 0.5], [0.75, -0.5, 0.55], 2, 0.92);
    whole(model, uchiki, [0.1, 1.4, 0.55], [0.1, 0.1, 1], 2, 0.95);
  },
};

export const turksTurban: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.5], away: 5.4, tilt: 24, sun: -1.8, reach: 5, nearer: 0.7 },
  build: (model) => {
    // They lie on the stalk's side, turban up.
    whole(model, turban, [-0.65, 0, 0.56], [-0.15, -0.45, 0.9], 0.5);
    whole(model, turban, [1.35, 0.8, 0.52], [0.4, -0.5, 0.8], 2.2, 0.88);
  },
};

export const rougeVif: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.5], away: 6, tilt: 25, sun: 1.9, reach: 5, nearer: 0.8 },
  build: (model) => {
    whole(model, rouge, [0.1, 0, 0.52], [0.1, -0.22, 1], 0.4, 1.1);
  },
};
