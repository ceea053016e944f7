/** Onions and shallots, whole and cut across. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { bumpy, darken, dirt, dye, step, streaks, tinge } from "../paint.ts";
import type { Body } from "../shapes.ts";
import { body, onBody, outline } from "../shapes.ts";
import { roots } from "./bulb-roots.ts";

interface Kind {
  readonly form: Body;
  readonly skin: Colour;
  readonly vein: Colour;
  /** Colour where the outer skin has come off, and how much of it has. */
  readonly bare: Colour;
  readonly peeled: number;
  readonly gloss: number;
}

/** A bulb of a given half width and heights of shoulder, neck and foot. */
const bulb = (wide: number, tall: number, neck: number, seed: number): Body => ({
  outline: outline([
    [0, -tall * 0.94],
    [wide * 0.3, -tall * 0.96],
    [wide * 0.82, -tall * 0.6],
    [wide, 0],
    [wide * 0.78, tall * 0.58],
    [wide * 0.36, tall * 0.92],
    [0.075, tall * 1.12 + neck * 0.25],
    [0.055, tall * 1.12 + neck * 0.7],
    [0.05, tall * 1.12 + neck],
    [0, tall * 1.12 + neck],
  ]),
  ribs: (angle, t) =>
    1 -
    0.012 * (1 - Math.abs(Math.sin(angle * 5 + seed))) -
    0.2 * step(0.72, 0.9, t) * Math.abs(Math.sin(angle * 1.5 + seed)),
  uneven: [0.03, 1.3, seed],
  bend: (t) => [0.05 * step(0.7, 1, t), 0.02 * step(0.8, 1, t)],
  columns: 200,
  rows: 130,
});

const papery =
  (kind: Kind, seed: number): Paint =>
  (skin, x, y, z, _u, v) => {
    const vein = streaks(x, y, z, 150, 0.35, 2);
    const wide = streaks(x + seed, y, z, 26, 0.5, 3);
    dye(skin, kind.skin, 0.72 + 0.45 * wide + 0.25 * cloudNoise(x * 4 + seed, y * 4, z * 4, 3));
    tinge(skin, kind.vein, step(0.46, 0.7, vein) * 0.55 + step(0.5, 0.75, wide) * 0.25);
    const off = step(
      0.6 - kind.peeled * 0.25,
      0.68 - kind.peeled * 0.25,
      cloudNoise(x * 2.2 + seed, y * 2.2, z * 1.2, 3),
    );
    tinge(skin, kind.bare, off * 0.42);
    tinge(skin, colour("#b08a58"), step(0.68, 0.86, v) * 0.75);
    darken(skin, 1 - 0.35 * step(0.9, 1, v) - 0.3 * step(0.05, 0, v));
    skin.gloss = kind.gloss + 0.12 * off;
    skin.rough = 0.38;
    skin.bendX += (vein - 0.5) * 0.14;
    skin.bendY += (vein - 0.5) * 0.14;
    bumpy(skin, x, y, z, 9, 0.08);
    dirt(skin, x + seed, y, z, 0.32 * step(0.4, 0, v), 6);
  };

function onion(model: Model, kind: Kind, at: Vec, up: Vec, spin: number, seed: number): void {
  const place = frame(at, up, spin);
  body(model, place, kind.form, papery(kind, seed));
  const foot = inFrame(place, onBody(kind.form, 0, 0));
  roots(model, foot, [-place.z[0], -place.z[1], -place.z[2]], 0.16, seed);
}

const sturon: Kind = {
  form: bulb(0.4, 0.38, 0.28, 3),
  skin: colour("#b06a28"),
  vein: colour("#7a4014"),
  bare: colour("#cf9450"),
  peeled: 0.3,
  gloss: 0.4,
};
const redBaron: Kind = {
  form: bulb(0.42, 0.33, 0.25, 5),
  skin: colour("#4c0e22"),
  vein: colour("#2a0613"),
  bare: colour("#6a1634"),
  peeled: 0.5,
  gloss: 0.6,
};
const ailsa: Kind = {
  form: bulb(0.56, 0.56, 0.4, 7),
  skin: colour("#d2a556"),
  vein: colour("#a8742c"),
  bare: colour("#e0c88c"),
  peeled: 0.45,
  gloss: 0.4,
};
const longor: Kind = {
  form: bulb(0.19, 0.42, 0.22, 9),
  skin: colour("#b0663a"),
  vein: colour("#7d3a1c"),
  bare: colour("#c98f78"),
  peeled: 0.4,
  gloss: 0.55,
};

export const sturons: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.3], away: 3.3, tilt: 28, sun: -1.8 },
  build: (model) => {
    onion(model, sturon, [-0.5, -0.1, 0.38], [0.1, -0.1, 1], 0.4, 3);
    onion(model, sturon, [0.5, -0.25, 0.36], [0.75, -0.6, 0.35], 2, 6);
    onion(model, sturon, [0.2, 0.7, 0.37], [-0.3, 0.3, 0.9], 1, 8);
  },
};

export const redBarons: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.28], away: 3.3, tilt: 28, sun: -1.8, exposure: -0.5 },
  build: (model) => {
    onion(model, redBaron, [-0.5, 0, 0.33], [0.08, -0.1, 1], 0.4, 13);
    onion(model, redBaron, [0.5, -0.2, 0.37], [0.8, -0.5, 0.3], 2, 16);
    onion(model, redBaron, [0.3, 0.8, 0.34], [-0.2, 0.3, 0.9], 1, 18);
  },
};

/** Cut across: red-edged rings that pale inwards. */
export const redBaronCut: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.18], away: 2.7, tilt: 42, sun: -1.8, reach: 2.6 },
  build: (model) => {
    const form: Body = { ...redBaron.form, to: 0.37, rows: 60 };
    const place = frame([-0.22, -0.15, 0.26], [0.1, -0.36, 0.93], 0.4, 1.25);
    body(model, place, form, papery(redBaron, 23));
    const face: Paint = (skin, x, y, z) => {
      const angle = Math.atan2(y, x);
      const [ex, ey] = onBody(form, angle, 0.37);
      const edge = Math.hypot(ex, ey);
      const twin = Math.hypot(Math.abs(x) - 0.045, y * 0.92) + 0.02;
      const r = (Math.hypot(x, y) / edge) * 0.72 + (twin / edge) * 0.28;
      const ring = r * 8.2 + 0.18 * noise(Math.cos(angle) * 3, Math.sin(angle) * 3, 2);
      const at = ring - Math.floor(ring);
      const line = step(0.8, 0.96, at) * step(1, 0.97, at) + step(0.14, 0, at) * 0.8;
      dye(skin, [0.78, 0.66, 0.7], 0.95 + 0.1 * cloudNoise(x * 16, y * 16, 2, 3));
      tinge(skin, [0.62, 0.38, 0.5], step(0.35, 1, r) * 0.45);
      tinge(skin, [0.27, 0.03, 0.12], line * (0.55 + 0.4 * step(0.1, 0.7, r)));
      tinge(skin, [0.62, 0.66, 0.36], step(0.12, 0.03, r) * 0.7);
      tinge(skin, [0.2, 0.02, 0.08], step(0.965, 0.99, r));
      skin.gloss = 0.7;
      skin.rough = 0.28;
      skin.creep = 0.5;
      skin.bendX += Math.cos(angle) * (line - 0.3) * 0.16;
      skin.bendY += Math.sin(angle) * (line - 0.3) * 0.16;
      bumpy(skin, x, y, z, 26, 0.12);
    };
    model.grid(place, { columns: 220, rows: 70, closed: true }, face, (s, t) => {
      const [x, y, z] = onBody(form, s * 6.2832, 0.37);
      return [x * (1 - t), y * (1 - t), z];
    });
    onion(model, redBaron, [0.72, 0.5, 0.33], [0.3, -0.2, 1], 0.4, 13);
  },
};

export const ailsaCraigs: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.42], away: 4.2, tilt: 25, sun: 1.8, reach: 4, exposure: 0.15 },
  build: (model) => {
    onion(model, ailsa, [-0.6, 0, 0.55], [0.05, -0.1, 1], 0.4, 33);
    onion(model, ailsa, [0.72, -0.1, 0.54], [0.55, -0.5, 0.6], 2, 36);
  },
};

export const longors: Subject = {
  stage: "board",
  view: { target: [0, 0.05, 0.14], away: 2.8, tilt: 36, sun: -1.8, reach: 2.8 },
  build: (model) => {
    const rows: readonly (readonly [number, number, number])[] = [
      [-0.75, -0.35, 0.5],
      [-0.28, -0.1, 0.15],
      [0.2, -0.4, -0.35],
      [0.62, 0, 0.2],
      [-0.55, 0.4, -0.2],
      [0.1, 0.45, 0.4],
      [0.75, 0.6, -0.5],
    ];
    rows.forEach(([x, y, yaw], i) => {
      onion(
        model,
        longor,
        [x, y, 0.18],
        [Math.sin(yaw), Math.cos(yaw) * (i % 2 === 0 ? 1 : -1), 0.02],
        i * 1.7,
        40 + i * 3,
      );
    });
  },
};
