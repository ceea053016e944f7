/** Single leaves and blossoms: sheets bent along a midrib, and round lobed ones. */

import type { Colour, Mesh, Vec } from "./mesh.ts";
import { add, cross, mix, sheet, times, unit } from "./mesh.ts";
import type { SurfaceName } from "./surfaces.ts";

export interface LeafForm {
  /** Half the width at 0 (stalk) to 1 (tip), as a share of the greatest half width. */
  readonly half: (t: number) => number;
  /** Radians by which the leaf bends down over its length. */
  readonly droop: number;
  /** Radians by which the halves rise from the midrib. */
  readonly fold: number;
  /** Height of the waves of the margin, as a share of the half width. */
  readonly wave: number;
  readonly waves: number;
  readonly rows: number;
  readonly columns: number;
  readonly surface: SurfaceName;
}

const oval = (t: number): number => Math.sin(Math.PI * Math.min(1, t * 0.92 + 0.06)) ** 0.75;

export const forms = {
  oval: { half: oval, droop: 0.7, fold: 0.3, wave: 0.08, waves: 3, rows: 6, columns: 4, surface: "leaf" },
  leaflet: { half: oval, droop: 0.5, fold: 0.25, wave: 0.1, waves: 2, rows: 4, columns: 2, surface: "leaf" },
  lettuce: {
    half: (t) =>
      (0.25 + 0.75 * Math.sin(Math.min(1, t * 1.12) * Math.PI * 0.62)) *
      (t > 0.86 ? Math.sqrt(Math.max(0, (1 - t) / 0.14)) : 1),
    droop: 0.9,
    fold: 0.35,
    wave: 0.34,
    waves: 7,
    rows: 12,
    columns: 6,
    surface: "leaf",
  },
  beet: {
    half: (t) => (t < 0.3 ? 0.07 : 0.07 + 0.93 * Math.sin(((t - 0.3) / 0.7) * Math.PI * 0.96) ** 0.7),
    droop: 0.8,
    fold: 0.25,
    wave: 0.2,
    waves: 5,
    rows: 10,
    columns: 4,
    surface: "waxy leaf",
  },
  cabbage: {
    half: (t) =>
      (t < 0.12 ? 0.2 : 0.2 + 0.8 * Math.sin(((t - 0.12) / 0.88) * Math.PI * 0.86) ** 0.6) *
      (t > 0.86 ? Math.sqrt(Math.max(0, (1 - t) / 0.14)) : 1),
    droop: -0.2,
    fold: 0.5,
    wave: 0.16,
    waves: 4,
    rows: 10,
    columns: 6,
    surface: "waxy leaf",
  },
  kale: {
    half: (t) =>
      (t < 0.2 ? 0.12 : 0.35 + 0.65 * Math.sin(((t - 0.2) / 0.8) * Math.PI * 0.9) ** 0.8) *
      (t > 0.8 ? Math.sqrt(Math.max(0, (1 - t) / 0.2)) : 1),
    droop: 1.5,
    fold: -0.45,
    wave: 0.14,
    waves: 9,
    rows: 12,
    columns: 4,
    surface: "blistered leaf",
  },
  strap: {
    half: (t) => Math.min(1, 0.8 + t) * Math.min(1, ((1 - t) * 2.6) ** 0.8),
    droop: 1.3,
    fold: 0.55,
    wave: 0.04,
    waves: 2,
    rows: 10,
    columns: 2,
    surface: "strap leaf",
  },
  petal: { half: oval, droop: 0.5, fold: 0.25, wave: 0.06, waves: 2, rows: 4, columns: 2, surface: "petal" },
} as const satisfies Record<string, LeafForm>;

/**
 * One leaf from `base`, growing towards `yaw` (radians, from x to y) and rising by `pitch`; `roll` turns it around its
 * midrib. Length and half width in metres; `tint` colours by place along it.
 */
export function leaf(
  mesh: Mesh,
  form: LeafForm,
  base: Vec,
  yaw: number,
  pitch: number,
  roll: number,
  length: number,
  halfWidth: number,
  tint: (t: number, edge: number) => Colour,
  phase = 0,
): Vec {
  const line: { at: Vec; side: Vec; normal: Vec }[] = [];
  let at = base;
  for (let j = 0; j <= form.rows; j++) {
    const t = j / form.rows;
    const p = pitch - form.droop * t ** 1.3;
    const ahead: Vec = [Math.cos(yaw) * Math.cos(p), Math.sin(yaw) * Math.cos(p), Math.sin(p)];
    const level: Vec = [-Math.sin(yaw), Math.cos(yaw), 0];
    const above = cross(ahead, level);
    const side = add(times(level, Math.cos(roll)), times(above, Math.sin(roll)));
    line.push({ at, side, normal: cross(ahead, side) });
    at = add(at, times(ahead, length / form.rows));
  }
  const cosFold = Math.cos(form.fold);
  const sinFold = Math.sin(form.fold);
  sheet(mesh, form.columns, form.rows, form.surface, (s, t) => {
    const here = line[Math.round(t * form.rows)] as { at: Vec; side: Vec; normal: Vec };
    const edge = s * 2 - 1;
    const half = halfWidth * form.half(t);
    const lift =
      half * (Math.abs(edge) * sinFold + form.wave * Math.sin(t * form.waves * 6.283 + phase + edge * 2) * edge * edge);
    return {
      at: add(here.at, add(times(here.side, edge * half * cosFold), times(here.normal, lift))),
      colour: tint(t, Math.abs(edge)),
    };
  });
  return at;
}

/**
 * A round leaf on its stalk's end: `outline` gives the radius by angle, 0 pointing to the tip; `cup` bends the rim up.
 */
export function roundLeaf(
  mesh: Mesh,
  centre: Vec,
  normal: Vec,
  tip: number,
  radius: number,
  outline: (angle: number) => number,
  cup: number,
  tint: (t: number) => Colour,
  surface: SurfaceName = "broad leaf",
  detail = 28,
): void {
  const up = unit(normal);
  const forward: Vec = [Math.cos(tip), Math.sin(tip), 0];
  const side = unit(cross(up, forward));
  const front = cross(side, up);
  sheet(mesh, detail, 4, surface, (s, t) => {
    const angle = (s - 0.5) * Math.PI * 2;
    const r = radius * outline(angle) * t;
    const lift = radius * (cup * t * t + 0.07 * t * t * Math.sin(angle * 5 + tip * 7) - 0.1 * (1 - t) ** 2);
    return {
      at: add(centre, add(add(times(front, Math.cos(angle) * r), times(side, Math.sin(angle) * r)), times(up, lift))),
      colour: tint(t),
      u: s,
      v: t,
    };
  });
}

/** Five soft lobes with a notch at the stalk: squash and cucumber leaves. */
export const lobed =
  (depth: number) =>
  (angle: number): number => {
    const lobes = 1 - depth * (0.5 - 0.5 * Math.cos(angle * 5)) - 0.03 * Math.cos(angle * 21);
    const notch = Math.abs(angle) > 2.75 ? 1 - (Math.abs(angle) - 2.75) * 1.9 : 1;
    return Math.max(0.12, lobes * notch) * (1 - 0.08 * Math.abs(angle));
  };

/** A double flower such as a dahlia: rings of petals from the rim to the eye, facing along `normal`. */
export function doubleFlower(
  mesh: Mesh,
  at: Vec,
  normal: Vec,
  radius: number,
  rings: number,
  perRing: number,
  outer: Colour,
  inner: Colour,
  eye: Colour,
): void {
  const up = unit(normal);
  const side = unit(cross(up, [0.31, 0.2, 0.93]));
  const front = cross(side, up);
  for (let ring = 0; ring < rings; ring++) {
    const share = ring / Math.max(1, rings - 1);
    const count = Math.round(perRing * (1 - 0.45 * share));
    for (let i = 0; i < count; i++) {
      const angle = ((i + ring * 0.5) / count) * Math.PI * 2;
      const out = add(times(side, Math.cos(angle)), times(front, Math.sin(angle)));
      const rise = 0.1 + share * 1.0;
      const ahead = add(times(out, Math.cos(rise)), times(up, Math.sin(rise)));
      const across = cross(up, out);
      const length = radius * (1 - 0.55 * share);
      const half = length * 0.3;
      const base = add(at, times(up, radius * 0.16 * share));
      sheet(mesh, 2, 4, "petal", (s, t) => {
        const e = s * 2 - 1;
        const w = half * Math.sin(Math.PI * Math.min(1, 0.12 + t * 0.86)) ** 0.7;
        const bend = length * (0.12 * e * e * t - 0.16 * t * t);
        return {
          at: add(base, add(add(times(ahead, length * t), times(across, e * w)), times(up, bend))),
          colour: mix(mix(inner, outer, Math.min(1, 0.3 + 0.7 * (1 - share))), outer, t * 0.6),
          u: s,
          v: t,
        };
      });
    }
  }
  const core = add(at, times(up, radius * 0.14));
  sheet(mesh, 10, 3, "petal", (s, t) => {
    const a = s * Math.PI * 2;
    const r = radius * 0.22 * t;
    return {
      at: add(
        core,
        add(add(times(side, Math.cos(a) * r), times(front, Math.sin(a) * r)), times(up, radius * 0.1 * (1 - t * t))),
      ),
      colour: eye,
      u: s,
      v: 1,
    };
  });
}

/** A trumpet or cup of joined petals opening along `normal`: squash flowers, tulips. */
export function cupFlower(
  mesh: Mesh,
  at: Vec,
  normal: Vec,
  length: number,
  mouth: number,
  petals: number,
  closing: number,
  low: Colour,
  high: Colour,
): void {
  const up = unit(normal);
  const side = unit(cross(up, [0.31, 0.93, 0.2]));
  const front = cross(side, up);
  sheet(mesh, petals * 6, 7, "petal", (s, t) => {
    const a = s * Math.PI * 2;
    const point = Math.abs(Math.cos((a * petals) / 2));
    const reach = length * t * (0.72 + 0.28 * point);
    const r = mouth * (Math.sin(t * Math.PI * 0.5) ** 0.8 * (1 - closing * t * t) + 0.06) * (0.9 + 0.1 * point);
    return {
      at: add(at, add(add(times(side, Math.cos(a) * r), times(front, Math.sin(a) * r)), times(up, reach))),
      colour: mix(low, high, t),
      u: s * petals,
      v: t,
    };
  });
}
