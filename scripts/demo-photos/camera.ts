/** The phone: where it stands, what it sees, and by how much this photo misses the viewpoint's exact frame. */

import type { Vec } from "./mesh.ts";
import { cross, dot, subtract, unit } from "./mesh.ts";

/** How one photo's frame differs from the viewpoint's own: what alignment has to find again. */
export interface Jitter {
  /** Pixels in the upright frame. */
  readonly shiftX: number;
  readonly shiftY: number;
  readonly scale: number;
  /** Clockwise on the picture. */
  readonly rotationDeg: number;
}

export const steady: Jitter = { shiftX: 0, shiftY: 0, scale: 1, rotationDeg: 0 };

export interface Camera {
  readonly eye: Vec;
  readonly right: Vec;
  readonly down: Vec;
  readonly ahead: Vec;
  /** Focal length in pixels of the longer side. */
  readonly focal: number;
}

/** A camera at `eye` that looks at `target`; `view` is the angle across the longer side in degrees. */
export function camera(eye: Vec, target: Vec, view: number, longerSide: number): Camera {
  const ahead = unit(subtract(target, eye));
  const right = unit(cross(ahead, [0, 0, 1]));
  const down = cross(ahead, right);
  return { eye, right, down, ahead, focal: longerSide / 2 / Math.tan((view * Math.PI) / 360) };
}

/**
 * Moves a point of the exact frame to where the photo shows it: p' = centre + shift + scale * R(rotation) * (p -
 * centre), in pixels of the upright frame, y down.
 */
export function displace(x: number, y: number, width: number, height: number, jitter: Jitter): [number, number] {
  const angle = (jitter.rotationDeg * Math.PI) / 180;
  const c = Math.cos(angle) * jitter.scale;
  const s = Math.sin(angle) * jitter.scale;
  const dx = x - width / 2;
  const dy = y - height / 2;
  return [width / 2 + jitter.shiftX + c * dx - s * dy, height / 2 + jitter.shiftY + s * dx + c * dy];
}

/** Pixel of a point in the exact frame; undefined behind the camera. */
export function project(from: Camera, point: Vec, width: number, height: number): [number, number] | undefined {
  const p = subtract(point, from.eye);
  const depth = dot(p, from.ahead);
  if (depth < 0.05) return undefined;
  return [width / 2 + (dot(p, from.right) / depth) * from.focal, height / 2 + (dot(p, from.down) / depth) * from.focal];
}
