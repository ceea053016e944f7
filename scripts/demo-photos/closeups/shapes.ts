/** Shapes that fruit, roots, pods, stalks and petals are made of. */

import type { Vec } from "../mesh.ts";
import { add, cross, dot, subtract, times, unit } from "../mesh.ts";
import { noise } from "../random.ts";
import type { Frame, Model, Paint } from "./model.ts";

/** A smooth curve through points that lie evenly along it (Catmull and Rom). */
export function curve(points: readonly Vec[], t: number): Vec {
  const last = points.length - 1;
  const at = Math.min(last - 1e-9, Math.max(0, t * last));
  const i = Math.floor(at);
  const f = at - i;
  const p = (k: number): Vec => points[Math.min(last, Math.max(0, k))] as Vec;
  const [a, b, c, d] = [p(i - 1), p(i), p(i + 1), p(i + 2)];
  const one = (k: 0 | 1 | 2): number =>
    b[k] +
    0.5 * f * (c[k] - a[k] + f * (2 * a[k] - 5 * b[k] + 4 * c[k] - d[k] + f * (3 * (b[k] - c[k]) + d[k] - a[k])));
  return [one(0), one(1), one(2)];
}

/** Radius and height by 0 to 1 through points of an outline, from the foot to the top. */
export type Outline = (t: number) => readonly [radius: number, height: number];

export function outline(points: readonly (readonly [radius: number, height: number])[]): Outline {
  const path = points.map(([r, h]): Vec => [r, h, 0]);
  return (t) => {
    const [r, h] = curve(path, t);
    return [Math.max(0, r), h];
  };
}

/** A globe: `flat` is its height as a share of its width, `square` above 1 makes it boxier, dimples sink both ends. */
export const globe =
  (radius: number, flat: number, square = 1, topDimple = 0, footDimple = 0): Outline =>
  (t) => {
    const up = -Math.cos(Math.PI * t);
    const r = Math.sin(Math.PI * t) ** (1 / square);
    const sink = up > 0 ? -topDimple * Math.exp(-((r / 0.42) ** 2)) : footDimple * Math.exp(-((r / 0.3) ** 2));
    return [radius * r, radius * (flat * Math.sign(up) * Math.abs(up) ** (1 / square) + sink)];
  };

export interface Body {
  readonly outline: Outline;
  /** Factor on the radius by angle and height. */
  readonly ribs?: (angle: number, t: number) => number;
  /** Uneven growth: depth as a share of the radius, and how many bumps go around. */
  readonly uneven?: readonly [depth: number, bumps: number, seed: number];
  readonly columns?: number;
  readonly rows?: number;
  /** Moves the axis sideways by height: a bent body. */
  readonly bend?: (t: number) => readonly [x: number, y: number];
  /** Part of the turn and of the height that is built. */
  readonly turn?: number;
  readonly from?: number;
  readonly to?: number;
}

/** A place on a body: angle in radians, 0 to 1 from foot to top. */
export function onBody(body: Body, angle: number, t: number): Vec {
  const [radius, height] = body.outline(t);
  const [depth, bumps, seed] = body.uneven ?? [0, 1, 0];
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const lump = depth === 0 ? 0 : depth * (noise(c * bumps + seed, s * bumps + 40, t * bumps * 2.2 + seed) - 0.5) * 2;
  const r = radius * (body.ribs?.(angle, t) ?? 1) * (1 + lump);
  const [bx, by] = body.bend?.(t) ?? [0, 0];
  return [c * r + bx, s * r + by, height];
}

export function body(model: Model, place: Frame, shape: Body, paint: Paint): void {
  const turn = shape.turn ?? 1;
  const { from = 0, to = 1 } = shape;
  model.grid(
    place,
    { columns: shape.columns ?? 160, rows: shape.rows ?? 110, closed: turn === 1, u: (s) => s },
    (skin, x, y, z, u, v) => paint(skin, x, y, z, u * turn, from + (to - from) * v),
    (s, t) => onBody(shape, s * turn * Math.PI * 2, from + (to - from) * t),
  );
}

/** Ribs like those of a squash: `count` rounded lobes, `depth` deep, strongest where `strength` says. */
export const ribs =
  (count: number, depth: number, sharp = 1, strength: (t: number) => number = () => 1) =>
  (angle: number, t: number): number => {
    const wave = Math.abs(Math.sin((angle * count) / 2)) ** sharp;
    return 1 - depth * strength(t) * (1 - wave);
  };

/** A rod or pod along a curve; `radius` gives half thickness across and over by 0 to 1; v runs along, u around. */
export function tube(
  model: Model,
  place: Frame,
  points: readonly Vec[],
  radius: (t: number) => number | readonly [across: number, over: number],
  paint: Paint,
  sides = 14,
  rows = Math.max(8, points.length * 6),
  upward: Vec = [0, 0, 1],
): void {
  model.grid(place, { columns: sides, rows, closed: true }, paint, (s, t) => {
    const here = curve(points, t);
    const ahead = unit(subtract(curve(points, t + 0.01), curve(points, t - 0.01)));
    const side = unit(cross(ahead, Math.abs(dot(ahead, upward)) > 0.95 ? [0, 1, 0.02] : upward));
    const over = cross(ahead, side);
    const r = radius(t);
    const [a, b] = typeof r === "number" ? [r, r] : r;
    const angle = s * Math.PI * 2;
    return add(here, add(times(side, Math.cos(angle) * a), times(over, Math.sin(angle) * b)));
  });
}

export interface Blade {
  readonly length: number;
  /** Half width by 0 (foot) to 1 (tip). */
  readonly half: (t: number) => number;
  /** Radians from level at the foot, and how much it bends down (or, below 0, up) to the tip. */
  readonly rise: number;
  readonly droop: number;
  /** Height of the margin over the midrib, as a share of the half width; below 0 it hangs. */
  readonly cup?: number;
  /** Waves of the margin: height as a share of the half width, and how many. */
  readonly wave?: readonly [height: number, count: number, phase: number];
  /** Other unevenness, in units along the normal. */
  readonly lift?: (edge: number, t: number) => number;
  readonly columns?: number;
  readonly rows?: number;
}

/** A leaf or petal: grows along y of its frame and faces z. Its paint gets u 0 to 1 across and v from foot to tip. */
export function blade(model: Model, place: Frame, form: Blade, paint: Paint): void {
  const rows = form.rows ?? 24;
  const spine: { y: number; z: number; ny: number; nz: number }[] = [];
  let y = 0;
  let z = 0;
  for (let j = 0; j <= rows; j++) {
    const t = j / rows;
    const angle = form.rise - form.droop * t ** 1.2;
    spine.push({ y, z, ny: -Math.sin(angle), nz: Math.cos(angle) });
    y += (Math.cos(angle) * form.length) / rows;
    z += (Math.sin(angle) * form.length) / rows;
  }
  const [height, count, phase] = form.wave ?? [0, 1, 0];
  model.grid(place, { columns: form.columns ?? 14, rows }, paint, (s, t) => {
    const here = spine[Math.round(t * rows)] as { y: number; z: number; ny: number; nz: number };
    const edge = s * 2 - 1;
    const half = form.half(t);
    const lift =
      half * ((form.cup ?? 0) * edge * edge + height * edge * edge * Math.sin(t * count * 6.283 + phase + edge * 1.7)) +
      (form.lift?.(edge, t) ?? 0);
    return [edge * half, here.y + here.ny * lift, here.z + here.nz * lift];
  });
}
