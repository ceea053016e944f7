/**
 * Triangles of one drawn scene, and the plain solids everything is built from. Metres; x to the right, y away, z up.
 */

import type { SurfaceName } from "./surfaces.ts";
import { surfaceIndex } from "./surfaces.ts";

export type Vec = readonly [number, number, number];
/** Linear light, 0 to 1. */
export type Colour = readonly [number, number, number];

export const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const subtract = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vec, k: number): Vec => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: Vec, b: Vec): Vec => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export function unit(a: Vec): Vec {
  const length = Math.hypot(a[0], a[1], a[2]) || 1;
  return [a[0] / length, a[1] / length, a[2] / length];
}

/** "#rrggbb" in sRGB to linear light. */
export function colour(hex: string): Colour {
  const channel = (at: number): number => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

export const mix = (a: Colour, b: Colour, t: number): Colour => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];
export const brighter = (a: Colour, k: number): Colour => [a[0] * k, a[1] * k, a[2] * k];

/**
 * A growing list of triangles. Vertices are shared only within a smooth piece, so normals can be averaged at the end.
 */
export class Mesh {
  position = new Float32Array(3 << 16);
  tint = new Float32Array(3 << 16);
  uv = new Float32Array(2 << 16);
  triangles = new Int32Array(3 << 16);
  surface = new Uint8Array(1 << 16);
  vertexCount = 0;
  triangleCount = 0;

  vertex(p: Vec, u: number, v: number, c: Colour): number {
    const i = this.vertexCount++;
    if (i * 3 >= this.position.length) {
      this.position = doubled(this.position);
      this.tint = doubled(this.tint);
      this.uv = doubled(this.uv);
    }
    this.position.set(p, i * 3);
    this.tint.set(c, i * 3);
    this.uv[i * 2] = u;
    this.uv[i * 2 + 1] = v;
    return i;
  }

  triangle(a: number, b: number, c: number, surface: SurfaceName): void {
    const i = this.triangleCount++;
    if (i * 3 >= this.triangles.length) {
      const triangles = new Int32Array(this.triangles.length * 2);
      triangles.set(this.triangles);
      this.triangles = triangles;
      const surfaces = new Uint8Array(this.surface.length * 2);
      surfaces.set(this.surface);
      this.surface = surfaces;
    }
    this.triangles[i * 3] = a;
    this.triangles[i * 3 + 1] = b;
    this.triangles[i * 3 + 2] = c;
    this.surface[i] = surfaceIndex(surface);
  }

  /** Area-weighted vertex normals, unit length. */
  normals(): Float32Array {
    const { position: p, triangles: t } = this;
    const n = new Float32Array(this.vertexCount * 3);
    for (let i = 0; i < this.triangleCount * 3; i += 3) {
      const a = (t[i] as number) * 3;
      const b = (t[i + 1] as number) * 3;
      const c = (t[i + 2] as number) * 3;
      const ux = (p[b] as number) - (p[a] as number);
      const uy = (p[b + 1] as number) - (p[a + 1] as number);
      const uz = (p[b + 2] as number) - (p[a + 2] as number);
      const vx = (p[c] as number) - (p[a] as number);
      const vy = (p[c + 1] as number) - (p[a + 1] as number);
      const vz = (p[c + 2] as number) - (p[a + 2] as number);
      const fx = uy * vz - uz * vy;
      const fy = uz * vx - ux * vz;
      const fz = ux * vy - uy * vx;
      for (let corner = 0; corner < 3; corner++) {
        const k = corner === 0 ? a : corner === 1 ? b : c;
        n[k] = (n[k] as number) + fx;
        n[k + 1] = (n[k + 1] as number) + fy;
        n[k + 2] = (n[k + 2] as number) + fz;
      }
    }
    for (let k = 0; k < n.length; k += 3) {
      const length = Math.hypot(n[k] as number, n[k + 1] as number, n[k + 2] as number) || 1;
      for (let j = k; j < k + 3; j++) n[j] = (n[j] as number) / length;
    }
    return n;
  }
}

function doubled(from: Float32Array): Float32Array<ArrayBuffer> {
  const to = new Float32Array(from.length * 2);
  to.set(from);
  return to;
}

/** A sheet of points laid over a grid of `columns` by `rows` cells; `point` gets 0..1 along both. */
export function sheet(
  mesh: Mesh,
  columns: number,
  rows: number,
  surface: SurfaceName,
  point: (s: number, t: number) => { at: Vec; colour: Colour; u?: number; v?: number },
): void {
  const first = mesh.vertexCount;
  for (let j = 0; j <= rows; j++)
    for (let i = 0; i <= columns; i++) {
      const made = point(i / columns, j / rows);
      mesh.vertex(made.at, made.u ?? i / columns, made.v ?? j / rows, made.colour);
    }
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++) {
      const a = first + j * (columns + 1) + i;
      mesh.triangle(a, a + 1, a + columns + 2, surface);
      mesh.triangle(a, a + columns + 2, a + columns + 1, surface);
    }
}

/** A flat four-sided piece; uv runs in metres along its sides. */
export function quad(
  mesh: Mesh,
  corner: Vec,
  along: Vec,
  across: Vec,
  tint: Colour,
  surface: SurfaceName,
  cell = 1,
): void {
  const length = Math.hypot(...along);
  const width = Math.hypot(...across);
  sheet(mesh, Math.max(1, Math.round(length / cell)), Math.max(1, Math.round(width / cell)), surface, (s, t) => ({
    at: add(corner, add(times(along, s), times(across, t))),
    colour: tint,
    u: s * length,
    v: t * width,
  }));
}

/** A box standing on `at` (middle of its foot), turned by `yaw` radians around the upright. */
export function box(mesh: Mesh, at: Vec, size: Vec, yaw: number, tint: Colour, surface: SurfaceName): void {
  const c = Math.cos(yaw);
  const s = Math.sin(yaw);
  const ex: Vec = [c * size[0], s * size[0], 0];
  const ey: Vec = [-s * size[1], c * size[1], 0];
  const ez: Vec = [0, 0, size[2]];
  const corner = subtract(at, times(add(ex, ey), 0.5));
  quad(mesh, corner, ex, ez, tint, surface, 0.6);
  quad(mesh, add(corner, ey), ex, ez, tint, surface, 0.6);
  quad(mesh, corner, ey, ez, tint, surface, 0.6);
  quad(mesh, add(corner, ex), ey, ez, tint, surface, 0.6);
  quad(mesh, add(corner, ez), ex, ey, tint, surface, 0.6);
}

/** A round rod through points with a radius at each. */
export function rod(
  mesh: Mesh,
  points: readonly Vec[],
  radius: (t: number) => number,
  tint: Colour,
  surface: SurfaceName,
  sides = 5,
): void {
  const last = points.length - 1;
  sheet(mesh, sides, last, surface, (s, t) => {
    const i = Math.min(last, Math.round(t * last));
    const here = points[i] as Vec;
    const ahead = unit(subtract(points[Math.min(last, i + 1)] as Vec, points[Math.max(0, i - 1)] as Vec));
    const side = unit(cross(ahead, Math.abs(ahead[2]) > 0.9 ? [1, 0, 0] : [0, 0, 1]));
    const over = cross(side, ahead);
    const angle = s * Math.PI * 2;
    const r = radius(t);
    return { at: add(here, add(times(side, Math.cos(angle) * r), times(over, Math.sin(angle) * r))), colour: tint };
  });
}

/** A ball or fruit: radii along the axes, `ribs` grooves of depth `groove` around the upright. */
export function ball(
  mesh: Mesh,
  at: Vec,
  radii: Vec,
  tint: (up: number) => Colour,
  surface: SurfaceName,
  ribs = 0,
  groove = 0,
  detail = 10,
): void {
  sheet(mesh, detail + ribs * 2, Math.max(6, Math.round(detail * 0.7)), surface, (s, t) => {
    const around = s * Math.PI * 2;
    const down = t * Math.PI;
    const r = 1 - groove * (0.5 + 0.5 * Math.cos(around * ribs)) * Math.sin(down);
    return {
      at: [
        at[0] + Math.cos(around) * Math.sin(down) * radii[0] * r,
        at[1] - Math.sin(around) * Math.sin(down) * radii[1] * r,
        at[2] + Math.cos(down) * radii[2],
      ],
      colour: tint(0.5 + 0.5 * Math.cos(down)),
    };
  });
}

/** A turned body, such as a pot: `profile` gives radius and height at 0..1. */
export function turned(
  mesh: Mesh,
  at: Vec,
  profile: readonly (readonly [radius: number, height: number])[],
  tint: Colour,
  surface: SurfaceName,
  sides = 28,
): void {
  const last = profile.length - 1;
  sheet(mesh, sides, last, surface, (s, t) => {
    const [radius, height] = profile[Math.round(t * last)] as readonly [number, number];
    const around = s * Math.PI * 2;
    return {
      at: [at[0] + Math.cos(around) * radius, at[1] + Math.sin(around) * radius, at[2] + height],
      colour: tint,
      u: s * 6,
      v: height,
    };
  });
}

/** What three corners of a triangle have, at `a`, `b` and `c` of a list, in a point of it of which they have these shares. */
export function mixed(
  values: ArrayLike<number>,
  a: number,
  b: number,
  c: number,
  shareA: number,
  shareB: number,
  shareC: number,
): number {
  return shareA * (values[a] as number) + shareB * (values[b] as number) + shareC * (values[c] as number);
}
