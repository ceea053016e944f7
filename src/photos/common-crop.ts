/** What all photos of a series show: the largest piece of the reference frame that lies inside every one of them. */

import type { Alignment, Point } from "./similarity.ts";
import { toReference } from "./similarity.ts";

/** A piece of the reference frame as fractions of its width and height. It has the frame's own proportions. */
export interface Crop {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/**
 * One side of a photo's frame, laid over the reference: points with normal . p <= limit are inside. Fractions of the
 * frame.
 */
interface Side {
  readonly x: number;
  readonly y: number;
  readonly limit: number;
}

/**
 * The largest crop of the frame's proportions inside all aligned frames and the reference itself. Undefined when there
 * is none, or none that is at least a tenth of the frame wide.
 */
export function commonCrop(alignments: readonly Alignment[]): Crop | undefined {
  const sides: Side[] = [
    { x: -1, y: 0, limit: 0 },
    { x: 1, y: 0, limit: 1 },
    { x: 0, y: -1, limit: 0 },
    { x: 0, y: 1, limit: 1 },
    ...alignments.flatMap(frameSides),
  ];
  // For a centre the possible size is the smallest of straight-line limits, so it has one top: climb it by narrowing
  // twice over.
  const reaches = sides.map((side) => ({ ...side, reach: (Math.abs(side.x) + Math.abs(side.y)) / 2 }));
  // Asked some fifteen thousand times, so without a list made for each.
  const sizeAt = (x: number, y: number): number => {
    let size = Number.POSITIVE_INFINITY;
    for (const side of reaches) size = Math.min(size, (side.limit - side.x * x - side.y * y) / side.reach);
    return size;
  };
  const best = (x: number): Top => narrowed((y) => sizeAt(x, y));
  const across = narrowed((x) => best(x).value);
  const down = best(across.at);
  // A hair inside, so that no rounding reaches over the edge.
  const size = down.value - 1e-6;
  if (size < 0.1) return undefined;
  return { left: across.at - size / 2, top: down.at - size / 2, width: size, height: size };
}

interface Top {
  readonly at: number;
  readonly value: number;
}

/**
 * Top of a function with one top between 0 and 1 (ternary search, 60 steps reach well below a hundredth of a pixel).
 */
function narrowed(value: (x: number) => number): Top {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const a = low + (high - low) / 3;
    const b = high - (high - low) / 3;
    if (value(a) < value(b)) low = a;
    else high = b;
  }
  const at = (low + high) / 2;
  return { at, value: value(at) };
}

function frameSides(alignment: Alignment): Side[] {
  const { width, height } = alignment;
  const corners: readonly Point[] = (
    [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ] as const
  ).map((corner) => {
    const [x, y] = toReference(alignment, corner);
    return [x / width, y / height];
  });
  return corners.map((a, i) => {
    const b = corners[(i + 1) % 4] as Point;
    const x = b[1] - a[1];
    const y = a[0] - b[0];
    return { x, y, limit: x * a[0] + y * a[1] };
  });
}
