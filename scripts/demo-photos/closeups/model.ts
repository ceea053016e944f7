/**
 * What stands before the lens close up: dense triangles with a paint for each piece. One unit is ten centimetres; x to the
 * right, y away, z up.
 */

import type { Vec } from "../mesh.ts";
import { add, cross, Mesh, times, unit } from "../mesh.ts";

/** How one point of a surface takes the light; a paint fills it in anew for each. */
export class Skin {
  /** Colour in linear light. */
  r = 0;
  g = 0;
  b = 0;
  /** A bend of the surface's normal. */
  bendX = 0;
  bendY = 0;
  bendZ = 0;
  /** Strength of what is mirrored, 0 to 1, and how blurred it is. */
  gloss = 0.1;
  rough = 0.5;
  /** Share of light that shines through a thin sheet from behind. */
  through = 0;
  /** How far light creeps around a juicy body into its own shade. */
  creep = 0;
}

/** `x, y, z`: the place on the body as it grew, before it was laid down; `u, v`: as its builder says. */
export type Paint = (skin: Skin, x: number, y: number, z: number, u: number, v: number) => void;

/** Where and how large a body lies: its foot and its three sides. */
export interface Frame {
  readonly at: Vec;
  readonly x: Vec;
  readonly y: Vec;
  readonly z: Vec;
}

export const inFrame = (f: Frame, p: Vec): Vec => [
  f.at[0] + f.x[0] * p[0] + f.y[0] * p[1] + f.z[0] * p[2],
  f.at[1] + f.x[1] * p[0] + f.y[1] * p[1] + f.z[1] * p[2],
  f.at[2] + f.x[2] * p[0] + f.y[2] * p[1] + f.z[2] * p[2],
];

/** A frame whose own upright points along `up`, turned around it by `spin` radians. */
export function frame(at: Vec, up: Vec = [0, 0, 1], spin = 0, scale = 1): Frame {
  const z = unit(up);
  const side = unit(cross(Math.abs(z[1]) > 0.9 ? [0, 0, -1] : [0, 1, 0], z));
  const front = cross(z, side);
  const c = Math.cos(spin) * scale;
  const s = Math.sin(spin) * scale;
  return {
    at,
    x: add(times(side, c), times(front, s)),
    y: add(times(side, -s), times(front, c)),
    z: times(z, scale),
  };
}

/** A frame given inside another one. */
export const nested = (outer: Frame, inner: Frame): Frame => {
  const turn = (p: Vec): Vec => inFrame({ ...outer, at: [0, 0, 0] }, p);
  return { at: inFrame(outer, inner.at), x: turn(inner.x), y: turn(inner.y), z: turn(inner.z) };
};

export interface Grid {
  readonly columns: number;
  readonly rows: number;
  /** The last column is the first one again: a body without a seam. */
  readonly closed?: boolean;
  readonly u?: (s: number, t: number) => number;
}

export class Model {
  readonly mesh = new Mesh();
  readonly paints: Paint[] = [];
  /** Index of the paint of each triangle. */
  paintOf = new Uint16Array(1 << 16);

  /** Lays a grid of points over `grid`, given as places on the body and put into `place`. */
  grid(place: Frame, { columns, rows, closed, u }: Grid, paint: Paint, point: (s: number, t: number) => Vec): void {
    const { mesh } = this;
    this.paints.push(paint);
    const wide = closed ? columns : columns + 1;
    const first = mesh.vertexCount;
    for (let j = 0; j <= rows; j++)
      for (let i = 0; i < wide; i++) {
        const s = i / columns;
        const t = j / rows;
        const p = point(s, t);
        // The tint of a vertex is of no use here; it carries the place on the body, from which the paint works.
        mesh.vertex(inFrame(place, p), u ? u(s, t) : s, t, p);
      }
    for (let j = 0; j < rows; j++)
      for (let i = 0; i < columns; i++) {
        const a = first + j * wide + i;
        const b = first + j * wide + ((i + 1) % wide);
        this.#triangle(a, b, b + wide);
        this.#triangle(a, b + wide, a + wide);
      }
  }

  #triangle(a: number, b: number, c: number): void {
    const i = this.mesh.triangleCount;
    if (i >= this.paintOf.length) {
      const more = new Uint16Array(this.paintOf.length * 2);
      more.set(this.paintOf);
      this.paintOf = more;
    }
    this.paintOf[i] = this.paints.length - 1;
    this.mesh.triangle(a, b, c, "fruit");
  }
}
