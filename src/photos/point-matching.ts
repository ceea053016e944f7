/**
 * Finding the same points in two photos of one spot: corners of the reference, looked for nearby by normalised
 * correlation.
 */

import type { GreyImage } from "./raw-image.ts";
import type { Point } from "./similarity.ts";

/**
 * Corners worth looking for: the strongest of each cell of a grid, so that they lie all over the frame. Strength is the
 * smaller eigenvalue of the structure tensor (Shi and Tomasi, "Good features to track", CVPR 1994) over 5 x 5 pixels.
 */
export function corners(image: GreyImage, cells: number, margin: number): Point[] {
  const { width, height, data } = image;
  const xx = new Float64Array(width * height);
  const xy = new Float64Array(width * height);
  const yy = new Float64Array(width * height);
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const gx = (data[at + 1] as number) - (data[at - 1] as number);
      const gy = (data[at + width] as number) - (data[at - width] as number);
      xx[at] = gx * gx;
      xy[at] = gx * gy;
      yy[at] = gy * gy;
    }
  const cell = width / cells;
  const rows = Math.max(1, Math.round(height / cell));
  const best = new Map<number, { strength: number; point: Point }>();
  for (let y = margin; y < height - margin; y++)
    for (let x = margin; x < width - margin; x++) {
      let a = 0;
      let b = 0;
      let c = 0;
      for (let dy = -2; dy <= 2; dy++)
        for (let at = (y + dy) * width + x - 2; at <= (y + dy) * width + x + 2; at++) {
          a += xx[at] as number;
          b += xy[at] as number;
          c += yy[at] as number;
        }
      const strength = (a + c) / 2 - Math.sqrt(((a - c) / 2) ** 2 + b * b);
      const key = Math.min(rows - 1, Math.floor((y * rows) / height)) * cells + Math.floor(x / cell);
      if (strength > (best.get(key)?.strength ?? 400)) best.set(key, { strength, point: [x, y] });
    }
  return [...best.values()].map(({ point }) => point);
}

/** Sums of a picture's values and of their squares over all that lies above and to the left, one row and column more than it has. */
interface RunningSums {
  readonly values: Float64Array;
  readonly squares: Float64Array;
}

/** Made once for each picture (summed-area tables: Crow, SIGGRAPH 1984), since thousands of patches are looked for in it. */
const known = new WeakMap<GreyImage, RunningSums>();

function runningSums(image: GreyImage): RunningSums {
  const made = known.get(image);
  if (made) return made;
  const { width, height, data } = image;
  const values = new Float64Array((width + 1) * (height + 1));
  const squares = new Float64Array(values.length);
  for (let y = 0; y < height; y++) {
    let row = 0;
    let rowSquares = 0;
    for (let x = 0; x < width; x++) {
      const value = data[y * width + x] as number;
      row += value;
      rowSquares += value * value;
      const at = (y + 1) * (width + 1) + x + 1;
      values[at] = (values[at - width - 1] as number) + row;
      squares[at] = (squares[at - width - 1] as number) + rowSquares;
    }
  }
  const sums = { values, squares };
  known.set(image, sums);
  return sums;
}

/** Sum over the square of 2 * half + 1 pixels around a place. */
function sumOver(sums: Float64Array, width: number, x: number, y: number, half: number): number {
  const above = (y - half) * (width + 1) + x - half;
  const below = (y + half + 1) * (width + 1) + x - half;
  const side = 2 * half + 1;
  return (
    (sums[below + side] as number) - (sums[below] as number) - (sums[above + side] as number) + (sums[above] as number)
  );
}

export interface Found {
  readonly at: Point;
  /** Correlation of the two patches, -1 to 1. */
  readonly likeness: number;
}

/**
 * Looks in `photo` around `near` (whole pixels either way: `reach`) for the patch that stands at `point` in
 * `reference`; patches are squares of 2 * half + 1. The place is given to a fraction of a pixel by a parabola through
 * the best correlation and its neighbours.
 */
export function findPatch(
  reference: GreyImage,
  point: Point,
  photo: GreyImage,
  near: Point,
  half: number,
  reach: number,
): Found | undefined {
  const side = 2 * half + 1;
  const patch = new Float64Array(side * side);
  const px = Math.round(point[0]);
  const py = Math.round(point[1]);
  if (px < half || py < half || px >= reference.width - half || py >= reference.height - half) return undefined;
  let mean = 0;
  for (let dy = -half, k = 0; dy <= half; dy++)
    for (let dx = -half; dx <= half; dx++, k++) {
      const value = reference.data[(py + dy) * reference.width + px + dx] as number;
      patch[k] = value;
      mean += value;
    }
  mean /= patch.length;
  let energy = 0;
  for (let k = 0; k < patch.length; k++) {
    const value = (patch[k] as number) - mean;
    patch[k] = value;
    energy += value * value;
  }
  if (energy < 1) return undefined;
  const span = 2 * reach + 1;
  const sums = runningSums(photo);
  const { width, data } = photo;
  const scores = new Float64Array(span * span).fill(-1);
  const nx = Math.round(near[0]);
  const ny = Math.round(near[1]);
  let best = -1;
  let bestAt = -1;
  for (let sy = 0; sy < span; sy++) {
    const cy = ny + sy - reach;
    if (cy < half || cy >= photo.height - half) continue;
    for (let sx = 0; sx < span; sx++) {
      const cx = nx + sx - reach;
      if (cx < half || cx >= photo.width - half) continue;
      let cross = 0;
      for (let dy = -half, k = 0; dy <= half; dy++) {
        let at = (cy + dy) * width + cx - half;
        for (const end = at + side; at < end; k++, at++) cross += (data[at] as number) * (patch[k] as number);
      }
      const sum = sumOver(sums.values, photo.width, cx, cy, half);
      const squares = sumOver(sums.squares, photo.width, cx, cy, half);
      const other = squares - (sum * sum) / patch.length;
      const score = other < 1 ? -1 : cross / Math.sqrt(energy * other);
      scores[sy * span + sx] = score;
      if (score > best) {
        best = score;
        bestAt = sy * span + sx;
      }
    }
  }
  if (bestAt < 0) return undefined;
  const sx = bestAt % span;
  const sy = Math.floor(bestAt / span);
  // A best place on the rim of the search is no peak.
  if (sx === 0 || sy === 0 || sx === span - 1 || sy === span - 1) return undefined;
  const shiftX = peak(scores[bestAt - 1] as number, best, scores[bestAt + 1] as number);
  const shiftY = peak(scores[bestAt - span] as number, best, scores[bestAt + span] as number);
  return {
    at: [nx + sx - reach + shiftX + (point[0] - px), ny + sy - reach + shiftY + (point[1] - py)],
    likeness: best,
  };
}

/** Offset of the top of a parabola through three values one step apart, within half a step. */
function peak(before: number, here: number, after: number): number {
  const bend = before - 2 * here + after;
  return bend >= -1e-12 ? 0 : Math.max(-0.5, Math.min(0.5, (before - after) / (2 * bend)));
}
