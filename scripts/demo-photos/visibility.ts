/** Which triangle is seen at each sample, and what the sun and the sky see: plain z-buffers. */

import type { Camera, Jitter } from "./camera.ts";
import type { Mesh, Vec } from "./mesh.ts";
import { cross, unit } from "./mesh.ts";
import { surfaces } from "./surfaces.ts";

export interface Visible {
  readonly width: number;
  readonly height: number;
  /** Triangle index or -1 for the sky. */
  readonly triangle: Int32Array;
  /** 1 / distance along the view; 0 is infinitely far. */
  readonly nearness: Float32Array;
}

/** Renders the triangles `accept` lets through. `unit` samples make one pixel side. */
export function look(
  mesh: Mesh,
  from: Camera,
  jitter: Jitter,
  width: number,
  height: number,
  samples: number,
  accept: (surface: number) => boolean,
): Visible {
  const w = width * samples;
  const h = height * samples;
  const n = mesh.vertexCount;
  const sx = new Float64Array(n);
  const sy = new Float64Array(n);
  const sz = new Float64Array(n);
  const angle = (jitter.rotationDeg * Math.PI) / 180;
  const c = Math.cos(angle) * jitter.scale;
  const s = Math.sin(angle) * jitter.scale;
  const p = mesh.position;
  for (let i = 0; i < n; i++) {
    const x = (p[i * 3] as number) - from.eye[0];
    const y = (p[i * 3 + 1] as number) - from.eye[1];
    const z = (p[i * 3 + 2] as number) - from.eye[2];
    const depth = x * from.ahead[0] + y * from.ahead[1] + z * from.ahead[2];
    const k = from.focal / depth;
    const dx = (x * from.right[0] + y * from.right[1] + z * from.right[2]) * k;
    const dy = (x * from.down[0] + y * from.down[1] + z * from.down[2]) * k;
    sx[i] = (width / 2 + jitter.shiftX + c * dx - s * dy) * samples;
    sy[i] = (height / 2 + jitter.shiftY + s * dx + c * dy) * samples;
    sz[i] = depth < 0.08 ? 0 : 1 / depth;
  }
  const triangle = new Int32Array(w * h).fill(-1);
  const nearness = new Float32Array(w * h);
  fillTriangles(mesh, sx, sy, sz, w, h, triangle, nearness, accept);
  return { width: w, height: h, triangle, nearness };
}

function fillTriangles(
  mesh: Mesh,
  sx: Float64Array,
  sy: Float64Array,
  sz: Float64Array,
  w: number,
  h: number,
  triangle: Int32Array | undefined,
  nearness: Float32Array,
  accept: (surface: number) => boolean,
): void {
  const t = mesh.triangles;
  const accepted = surfaces.map((_, index) => accept(index));
  for (let i = 0; i < mesh.triangleCount; i++) {
    if (!accepted[mesh.surface[i] as number]) continue;
    const a = t[i * 3] as number;
    const b = t[i * 3 + 1] as number;
    const c = t[i * 3 + 2] as number;
    const za = sz[a] as number;
    const zb = sz[b] as number;
    const zc = sz[c] as number;
    if (za <= 0 || zb <= 0 || zc <= 0) continue;
    const ax = sx[a] as number;
    const ay = sy[a] as number;
    const bx = sx[b] as number;
    const by = sy[b] as number;
    const cx = sx[c] as number;
    const cy = sy[c] as number;
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    if (area === 0) continue;
    const x0 = Math.max(0, Math.ceil(Math.min(ax, bx, cx) - 0.5));
    const x1 = Math.min(w - 1, Math.floor(Math.max(ax, bx, cx) - 0.5));
    const y0 = Math.max(0, Math.ceil(Math.min(ay, by, cy) - 0.5));
    const y1 = Math.min(h - 1, Math.floor(Math.max(ay, by, cy) - 0.5));
    if (x0 > x1 || y0 > y1) continue;
    const inv = 1 / area;
    const ua = (by - cy) * inv;
    const ub = (cx - bx) * inv;
    const va = (cy - ay) * inv;
    const vb = (ax - cx) * inv;
    for (let y = y0; y <= y1; y++) {
      const py = y + 0.5;
      let u = (x0 + 0.5 - cx) * ua + (py - cy) * ub;
      let v = (x0 + 0.5 - cx) * va + (py - cy) * vb;
      let at = y * w + x0;
      for (let x = x0; x <= x1; x++) {
        if (u >= 0 && v >= 0 && u + v <= 1) {
          const z = u * za + v * zb + (1 - u - v) * zc;
          if (z > (nearness[at] as number)) {
            nearness[at] = z;
            if (triangle) triangle[at] = i;
          }
        }
        u += ua;
        v += va;
        at++;
      }
    }
  }
}

/** What one far light sees: heights along its direction over a square around a point. */
export interface ShadowMap {
  readonly size: number;
  readonly direction: Vec;
  readonly right: Vec;
  readonly up: Vec;
  /** Samples a metre. */
  readonly scale: number;
  readonly centre: Vec;
  readonly height: Float32Array;
}

const far = 100;

/** Heights are stored with `far` added, so that 0 means "nothing there". */
export function shadowMap(
  mesh: Mesh,
  direction: Vec,
  centre: Vec,
  radius: number,
  size: number,
  hides: readonly boolean[],
): ShadowMap {
  const right = unit(cross(direction, Math.abs(direction[2]) > 0.99 ? [0, 1, 0] : [0, 0, 1]));
  const up = cross(right, direction);
  const scale = size / (2 * radius);
  const n = mesh.vertexCount;
  const sx = new Float64Array(n);
  const sy = new Float64Array(n);
  const sz = new Float64Array(n);
  const p = mesh.position;
  for (let i = 0; i < n; i++) {
    const x = (p[i * 3] as number) - centre[0];
    const y = (p[i * 3 + 1] as number) - centre[1];
    const z = (p[i * 3 + 2] as number) - centre[2];
    sx[i] = (x * right[0] + y * right[1] + z * right[2]) * scale + size / 2;
    sy[i] = (x * up[0] + y * up[1] + z * up[2]) * scale + size / 2;
    sz[i] = far + x * direction[0] + y * direction[1] + z * direction[2];
  }
  const height = new Float32Array(size * size);
  fillTriangles(mesh, sx, sy, sz, size, size, undefined, height, (index) => hides[index] === true);
  return { size, direction, right, up, scale, centre, height };
}

/** 1 where the light reaches the point, 0 where something stands before it; `slack` metres of tolerance. */
export function reaches(
  map: ShadowMap,
  x: number,
  y: number,
  z: number,
  slack: number,
  jx: number,
  jy: number,
): number {
  const dx = x - map.centre[0];
  const dy = y - map.centre[1];
  const dz = z - map.centre[2];
  const u = Math.floor((dx * map.right[0] + dy * map.right[1] + dz * map.right[2]) * map.scale + map.size / 2 + jx);
  const v = Math.floor((dx * map.up[0] + dy * map.up[1] + dz * map.up[2]) * map.scale + map.size / 2 + jy);
  if (u < 0 || v < 0 || u >= map.size || v >= map.size) return 1;
  const here = far + dx * map.direction[0] + dy * map.direction[1] + dz * map.direction[2];
  return here + slack >= (map.height[v * map.size + u] as number) ? 1 : 0;
}
