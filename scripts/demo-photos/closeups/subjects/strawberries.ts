/** Strawberries on straw. */

import type { Colour, Vec } from "../../mesh.ts";
import { colour, mix } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import { leafPaint, petalAt, stalk } from "../blossom.ts";
import type { Subject } from "../close-up.ts";
import type { Model } from "../model.ts";
import { frame, inFrame } from "../model.ts";
import { darken, dye, step, tinge } from "../paint.ts";
import type { Outline } from "../shapes.ts";
import { blade, body, outline } from "../shapes.ts";

interface Strawberry {
  readonly outline: Outline;
  readonly tone: Colour;
  readonly pale: Colour;
  readonly neck: number;
}

/** Rows of pips: how deep the skin sinks around one, and how near its middle a place is. */
function pip(x: number, y: number, z: number): number {
  const r = Math.hypot(x, y);
  const row = z / 0.062;
  const line = Math.floor(row);
  const count = Math.max(5, Math.round((r * 6.283) / 0.075));
  const along = (Math.atan2(y, x) / 6.283) * count + (line % 2 === 0 ? 0 : 0.5);
  const dx = (along - Math.floor(along) - 0.5) * 1.2;
  const dy = row - line - 0.5;
  return Math.hypot(dx, dy);
}

function strawberry(model: Model, kind: Strawberry, at: Vec, up: Vec, spin: number, seed: number, size: number): void {
  const place = frame(at, up, spin, size);
  body(
    model,
    place,
    {
      outline: kind.outline,
      ribs: (angle) => 1 + 0.05 * Math.sin(angle * 2 + seed),
      uneven: [0.05, 1.6, seed],
      columns: 260,
      rows: 200,
    },
    (skin, x, y, z, _u, v) => {
      const d = pip(x, y, z);
      dye(skin, kind.tone, 0.88 + 0.22 * cloudNoise(x * 6 + seed, y * 6, z * 6, 3));
      tinge(skin, kind.pale, step(0.86, 1, v) * kind.neck);
      darken(skin, 1 - 0.35 * step(0.34, 0.18, d));
      const seedHere = step(0.17, 0.12, d);
      tinge(skin, mix([0.62, 0.42, 0.1], [0.45, 0.12, 0.03], noise(x * 9, y * 9, z * 9)), seedHere * 0.9);
      skin.gloss = 0.9;
      skin.rough = 0.22 + 0.2 * seedHere;
      skin.creep = 0.3;
      // The skin swells between the pips.
      const swell = step(0.14, 0.5, d);
      skin.bendX += (noise(x * 30, y * 30, z * 30) - 0.5) * 0.12;
      const turn = ((Math.atan2(y, x) * ((Math.hypot(x, y) * 6.283) / 0.075)) / 6.283) * 6.283;
      skin.bendX += Math.sin(turn) * (1 - swell) * 0.25;
      skin.bendZ += Math.sin((z / 0.062) * 6.283) * (1 - swell) * -0.32;
    },
  );
  const top = inFrame(place, [0, 0, (kind.outline(1)[1] as number) - 0.03]);
  for (let i = 0; i < 11; i++)
    blade(
      model,
      petalAt(frame(top, up, spin), (i / 11) * 6.283 + 0.1 * Math.sin(i * 5), 0.01, 0.005 * (i % 2)),
      {
        length: size * (0.23 + 0.05 * Math.sin(i * 3)),
        half: (t) => size * 0.055 * Math.sin(Math.PI * Math.min(1, 0.15 + t * 0.85)) ** 0.8,
        rise: 0.35 + 0.3 * Math.sin(i * 2.7),
        droop: 0.7 * Math.sin(i * 4.1),
        cup: 0.3,
        rows: 16,
        columns: 8,
      },
      leafPaint([0.1, 0.22, 0.04], [0.2, 0.32, 0.1], 0.2),
    );
  const away = frame(top, up).z;
  stalk(
    model,
    [
      top,
      [top[0] + away[0] * 0.12 + 0.02, top[1] + away[1] * 0.12, top[2] + away[2] * 0.12],
      [top[0] + away[0] * 0.3 + 0.08, top[1] + away[1] * 0.3, top[2] + away[2] * 0.3 + 0.03],
    ],
    0.014,
    [0.16, 0.27, 0.08],
  );
}

/** A wedge with a point. */
const sovereign: Strawberry = {
  outline: outline([
    [0, -0.3],
    [0.055, -0.28],
    [0.13, -0.16],
    [0.19, -0.02],
    [0.21, 0.1],
    [0.14, 0.19],
    [0, 0.19],
  ]),
  tone: colour("#c2160c"),
  pale: colour("#e07a50"),
  neck: 0.35,
};
/** Rounder, and never quite as dark. */
const cambridge: Strawberry = {
  outline: outline([
    [0, -0.2],
    [0.1, -0.17],
    [0.19, -0.06],
    [0.215, 0.05],
    [0.19, 0.14],
    [0.11, 0.19],
    [0, 0.17],
  ]),
  tone: colour("#cc3a20"),
  pale: colour("#e8b48a"),
  neck: 0.8,
};

function punnet(model: Model, kind: Strawberry, seed: number): void {
  const lying: readonly (readonly [number, number, Vec])[] = [
    [-0.32, -0.12, [0.3, 0.45, 0.5]],
    [0.22, -0.24, [-0.3, 0.5, 0.45]],
    [0.02, 0.26, [0.5, 0.3, 0.5]],
    [0.66, 0.2, [0.2, 0.6, 0.4]],
    [-0.72, 0.3, [-0.2, 0.5, 0.5]],
  ];
  lying.forEach(([x, y, up], i) => {
    strawberry(model, kind, [x, y, 0.14], up, i * 1.3 + seed, seed + i * 4, 1.06 - 0.05 * i);
  });
}

export const royalSovereigns: Subject = {
  stage: "straw",
  view: { target: [0, 0.02, 0.1], away: 1.9, tilt: 34, sun: -1.8, reach: 1.9, open: 20, nearer: 0.14, exposure: -0.15 },
  build: (model) => punnet(model, sovereign, 2),
};

export const cambridgeFavourites: Subject = {
  stage: "straw",
  view: { target: [0, 0.02, 0.1], away: 1.9, tilt: 34, sun: 1.8, reach: 1.9, open: 20, nearer: 0.14, exposure: -0.15 },
  build: (model) => punnet(model, cambridge, 5),
};
