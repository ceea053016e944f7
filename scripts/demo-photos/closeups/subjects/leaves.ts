/** Leaves of kale and heads of lettuce. */

import type { Vec } from "../../mesh.ts";
import { cloudNoise, noise } from "../../random.ts";
import { petalAt } from "../blossom.ts";
import type { Subject } from "../close-up.ts";
import type { Frame, Model, Paint } from "../model.ts";
import { frame } from "../model.ts";
import { bumpy, darken, dye, step, tinge } from "../paint.ts";
import { blade } from "../shapes.ts";

/** A leaf laid flat from `at`, its tip towards `yaw`. */
const laid = (at: Vec, yaw: number, roll = 0): Frame => ({
  at,
  x: [Math.sin(yaw) * Math.cos(roll), -Math.cos(yaw) * Math.cos(roll), Math.sin(roll)],
  y: [Math.cos(yaw), Math.sin(yaw), 0],
  z: [-Math.sin(yaw) * Math.sin(roll), Math.cos(yaw) * Math.sin(roll), Math.cos(roll)],
});

/** Height of blisters between the veins: rounded cells, as on savoy or the black kale. */
function blister(x: number, y: number, cells: number): number {
  const n = noise(x * cells, y * cells, 3) * 0.65 + noise(x * cells * 2.1, y * cells * 2.1, 8) * 0.35;
  return Math.sqrt(Math.max(0, n));
}

function neroLeaf(model: Model, at: Vec, yaw: number, seed: number): void {
  const wide = 0.25;
  blade(
    model,
    laid(at, yaw),
    {
      length: 3.1,
      half: (t) =>
        (t < 0.17
          ? 0.035 + 0.05 * t
          : wide *
            Math.sin(Math.PI * Math.min(1, 0.14 + (t - 0.17) * 1.0)) ** 0.5 *
            Math.min(1, 0.3 + (t - 0.17) * 9)) * (t > 0.96 ? Math.sqrt(Math.max(0.02, (1 - t) / 0.04)) : 1),
      rise: 0.05,
      droop: 0.08,
      cup: -0.28,
      wave: [0.08, 6, seed],
      lift: (edge, t) =>
        0.075 *
        (blister(edge * wide + seed, t * 3.1, 11) - 0.7) *
        step(0.06, 0.22, Math.abs(edge)) *
        step(0.14, 0.22, t),
      rows: 300,
      columns: 70,
    },
    (skin, x, y, z, u, v) => {
      const edge = u * 2 - 1;
      dye(skin, [0.03, 0.062, 0.05], 0.75 + 0.5 * blister(edge * wide + seed, v * 3.1, 11));
      const a = Math.abs(edge);
      const w = v * 20 - a * 1.1;
      const side = Math.abs(w - Math.floor(w) - 0.5) * 2;
      tinge(skin, [0.12, 0.17, 0.1], step(0.82, 1, side) * 0.4 * step(0.14, 0.2, v));
      tinge(skin, [0.36, 0.42, 0.26], Math.max(step(0.17, 0.08, a * (1 + v)), step(0.16, 0.13, v)) * 0.85);
      skin.gloss = 0.2;
      skin.rough = 0.55;
      tinge(skin, [0.16, 0.22, 0.2], 0.16);
      bumpy(skin, x, y, z, 30, 0.3);
    },
  );
}

export const nero: Subject = {
  stage: "board",
  view: { target: [0, 0.05, 0.05], away: 4.2, tilt: 52, sun: -1.8, reach: 3.6, open: 18, exposure: -0.45 },
  build: (model) => {
    neroLeaf(model, [-1.6, -0.85, 0.12], 0.1, 3);
    neroLeaf(model, [-1.75, -0.2, 0.14], 0.02, 7);
    neroLeaf(model, [-1.55, 0.45, 0.14], -0.06, 12);
    neroLeaf(model, [-1.7, 1.1, 0.12], -0.1, 19);
  },
};

interface Head {
  readonly leaves: number;
  readonly length: (share: number) => number;
  readonly wide: number;
  /** Radians from level, from the outermost leaf to the heart. */
  readonly rise: readonly [outer: number, heart: number];
  readonly curl: number;
  readonly cup: number;
  readonly wave: readonly [height: number, count: number];
  readonly blister: number;
  readonly half: (t: number) => number;
  readonly tone: (skin: Parameters<Paint>[0], edge: number, v: number, share: number, spot: number) => void;
  readonly gloss: number;
}

function head(model: Model, at: Vec, kind: Head): void {
  for (let i = 0; i < kind.leaves; i++) {
    const share = i / (kind.leaves - 1);
    const long = kind.length(share);
    const rise = kind.rise[0] + (kind.rise[1] - kind.rise[0]) * share ** 0.9 + 0.08 * Math.sin(i * 5.1);
    const wide = long * kind.wide;
    blade(
      model,
      petalAt(frame(at), i * 2.399963 + 0.1 * Math.sin(i * 3), 0.06 * (1 - share) + 0.015, 0.03 + 0.05 * share),
      {
        length: long,
        half: (t) => wide * kind.half(t),
        rise,
        droop: kind.curl * (1 - 1.5 * share) + 0.12 * Math.sin(i * 7.3),
        cup: kind.cup * (0.6 + 0.6 * share),
        wave: [kind.wave[0], kind.wave[1], i * 1.7],
        lift: (edge, t) =>
          kind.blister * (blister(edge * wide + i * 3, t * long, 9) - 0.7) * step(0.05, 0.25, Math.abs(edge)),
        rows: 70,
        columns: 34,
      },
      (skin, x, y, z, u, v) => {
        const edge = u * 2 - 1;
        const spot = cloudNoise(x * 5 + i * 3, y * 5, z * 5, 4);
        kind.tone(skin, Math.abs(edge), v, share, spot);
        const a = Math.abs(edge);
        const w = v * 7 - a * 2;
        const side = Math.abs(w - Math.floor(w) - 0.5) * 2;
        tinge(
          skin,
          [0.5, 0.58, 0.34],
          Math.max(step(0.12, 0.03, a * (0.4 + v)) * 0.55 * step(1, 0.5, v), step(0.88, 1, side) * 0.1),
        );
        darken(skin, 0.85 + 0.3 * blister(edge * wide + i * 3, v * long, 9));
        skin.gloss = kind.gloss;
        skin.rough = 0.42;
        skin.through = 0.3;
        bumpy(skin, x, y, z, 22, 0.25);
      },
    );
  }
}

const broad = (t: number): number =>
  (0.3 + 0.7 * Math.sin(Math.min(1, t * 1.12) * Math.PI * 0.6)) *
  (t > 0.8 ? Math.sqrt(Math.max(0.01, (1 - t) / 0.2)) : 1);

export const merveille: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.3], away: 4, tilt: 44, sun: -1.8, reach: 3, open: 18, exposure: -0.2 },
  build: (model) =>
    head(model, [0, 0, -0.02], {
      leaves: 34,
      length: (s) => 1.35 - 0.75 * s,
      wide: 0.46,
      rise: [0.22, 1.35],
      curl: 0.75,
      cup: 0.3,
      wave: [0.2, 3.5],
      blister: 0.09,
      half: broad,
      gloss: 0.5,
      tone: (skin, edge, v, share, spot) => {
        dye(skin, [0.2, 0.32, 0.07]);
        const redness = step(0.25, 0.8, v * 0.75 + edge * 0.35 + (spot - 0.5) * 0.9) * (1 - 0.55 * share ** 2);
        tinge(skin, [0.2, 0.045, 0.03], redness * 0.92);
      },
    }),
};

export const lobjoits: Subject = {
  stage: "soil",
  view: { target: [0, 0, 0.72], away: 4.3, tilt: 24, sun: -1.8, reach: 3, open: 20, nearer: 0.5 },
  build: (model) =>
    head(model, [0, 0, -0.2], {
      leaves: 32,
      length: (s) => 1.3 + 0.35 * Math.min(1, s * 2) - 0.2 * s,
      wide: 0.29,
      rise: [0.5, 1.52],
      curl: 0.05,
      cup: 0.42,
      wave: [0.07, 3],
      blister: 0.06,
      half: broad,
      gloss: 0.45,
      tone: (skin, edge, v, _share, spot) => {
        dye(skin, [0.1, 0.24, 0.04], 0.85 + 0.35 * spot);
        tinge(skin, [0.16, 0.32, 0.07], step(0.6, 1, edge) * 0.4 + step(0.7, 1, v) * 0.2);
      },
    }),
};
