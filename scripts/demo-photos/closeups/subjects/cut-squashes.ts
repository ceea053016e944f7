/** Squashes cut through from stalk to blossom end. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import type { Subject } from "../close-up.ts";
import type { Model, Paint } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { bumpy, darken, dye, step, tinge } from "../paint.ts";
import { body, onBody, outline } from "../shapes.ts";
import type { Kind } from "./squashes.ts";
import { crownPrince, uchiki, whole } from "./squashes.ts";

/** A fruit cut from stalk to blossom end: half the body, lying on its back, and the face. */
function halved(model: Model, kind: Kind, at: Vec, up: Vec, spin: number, scale: number, tones: Flesh): void {
  const place = frame(at, up, spin, scale);
  body(model, place, { ...kind.form, turn: 0.5, columns: 130 }, kind.skin);
  const face: Paint = (skin, x, _y, z, u, v) => {
    const r = Math.abs(u * 2 - 1);
    const rows = Math.abs(v * 2 - 1);
    // Wall thickness is even all round, so the hollow follows the outline.
    const inner = Math.max(r, 0) + 0.22 * (cloudNoise(x * 3.4, z * 3.4, 2, 3) - 0.5);
    const hollow = step(tones.wall, tones.wall - 0.09, inner) * step(0.8, 0.66, rows);
    dye(skin, tones.flesh, 0.93 + 0.14 * cloudNoise(x * 5, z * 5, 1, 3));
    tinge(skin, tones.deep, step(0.9, 0.6, r) * 0.5);
    tinge(skin, tones.edge, step(0.93, 0.985, r) * 0.8);
    tinge(skin, tones.pith, hollow * 0.85);
    const thread = cloudNoise(x * 6, z * 16, 4, 4);
    darken(skin, 1 - hollow * 0.75 * step(0.42, 0.62, thread));
    skin.gloss = 0.35 + 0.4 * hollow;
    skin.rough = 0.42;
    skin.creep = 0.35;
    bumpy(skin, x, 0, z, 26, 0.1 + 0.75 * hollow);
    bumpy(skin, x, 0, z, 7, 0.1 + 0.5 * hollow);
  };
  model.grid(place, { columns: 150, rows: 110, u: (s) => s }, face, (s, t) => {
    const e = s * 2 - 1;
    const [x, , z] = onBody(kind.form, e < 0 ? Math.PI : 0, t);
    const r = Math.abs(e);
    const sink = 0.16 * step(tones.wall, tones.wall - 0.2, r) * step(0.8, 0.6, Math.abs(t * 2 - 1));
    return [x * r, sink, z];
  });
  seeds(model, kind, at, up, spin, scale, tones);
}

/** Without dimples, in which a flat face would fold. */
const sliced = outline([
  [0, -0.66],
  [0.45, -0.66],
  [0.9, -0.48],
  [1.08, -0.05],
  [0.94, 0.38],
  [0.6, 0.56],
  [0.25, 0.6],
  [0, 0.62],
]);

const slicedUchiki = outline([
  [0, -0.68],
  [0.36, -0.62],
  [0.68, -0.4],
  [0.76, -0.02],
  [0.6, 0.36],
  [0.36, 0.62],
  [0.2, 0.76],
  [0, 0.8],
]);

interface Flesh {
  readonly flesh: Colour;
  readonly deep: Colour;
  readonly edge: Colour;
  readonly pith: Colour;
  readonly wall: number;
}

function seeds(model: Model, kind: Kind, at: Vec, up: Vec, spin: number, scale: number, tones: Flesh): void {
  const place = frame(at, up, spin, scale);
  for (let i = 0; i < 60; i++) {
    const t = 0.26 + 0.46 * noise(i * 3.7, 1, 2);
    const e = (noise(i * 5.3, 8, 1) * 2 - 1) * tones.wall * 0.8;
    const [x, , z] = onBody(kind.form, e < 0 ? Math.PI : 0, t);
    const p = inFrame(place, [x * Math.abs(e), 0.06 + 0.07 * noise(i * 1.9, 4, 4), z]);
    const lie: Vec = [
      -place.y[0] + 0.5 * (noise(i, 2, 9) - 0.5),
      -place.y[1] + 0.5 * (noise(i, 7, 9) - 0.5),
      -place.y[2] + 0.5 * (noise(i, 5, 5) - 0.5),
    ];
    body(
      model,
      frame(p, lie, i * 2.4, scale),
      {
        outline: outline([
          [0, -0.014],
          [0.07, -0.012],
          [0.098, 0],
          [0.07, 0.012],
          [0, 0.014],
        ]),
        ribs: (angle) => 1 / Math.hypot(Math.cos(angle), Math.sin(angle) / 0.55),
        columns: 24,
        rows: 12,
      },
      (skin, sx, sy, sz) => {
        dye(skin, [0.7, 0.54, 0.3], 0.85 + 0.25 * noise(sx * 30, sy * 30, sz * 30 + i));
        skin.gloss = 0.6;
        skin.rough = 0.35;
      },
    );
  }
}

const orange: Flesh = {
  flesh: colour("#e08a1c"),
  deep: colour("#d9700f"),
  edge: colour("#8f9a4a"),
  pith: colour("#c85f10"),
  wall: 0.62,
};

export const crownPrinceCut: Subject = {
  stage: "board",
  view: { target: [0, 0, 0.5], away: 5.2, tilt: 34, sun: 1.8, reach: 5, nearer: 0.5 },
  build: (model) => {
    // The cut face looks up and to the lens.
    halved(
      model,
      { ...crownPrince, form: { ...crownPrince.form, outline: sliced } },
      [-0.35, -0.1, 0.68],
      [-0.25, 0.72, 0.66],
      0.1,
      1,
      orange,
    );
    whole(model, crownPrince, [1.6, 1.5, 0.66], [0.2, -0.2, 1], 2, 0.92);
  },
};

export const uchikiKuriCut: Subject = {
  stage: "table",
  view: { target: [0, 0, 0.4], away: 4.3, tilt: 36, sun: -1.8, reach: 4.4, nearer: 0.5 },
  build: (model) => {
    halved(
      model,
      { ...uchiki, form: { ...uchiki.form, outline: slicedUchiki } },
      [-0.5, 0, 0.5],
      [-0.2, 0.72, 0.66],
      0.1,
      1,
      {
        ...orange,
        flesh: colour("#e8a030"),
        deep: colour("#e2881c"),
        edge: colour("#d8742a"),
        wall: 0.64,
      },
    );
    whole(model, uchiki, [0.95, 0.7, 0.58], [0.1, -0.1, 1], 1.2, 0.95);
  },
};
