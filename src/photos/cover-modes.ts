/**
 * The heaps of a histogram of Excess Green, and which of them are ground. A heap ends where the counts fall to a small part of
 * both neighbours' tops and rise again: an obvious valley.
 */

import { greenAt, levels } from "./excess-green.ts";

export interface Mode {
  /** Mean Excess Green, and mean Excess Green minus Excess Red, which is below 0 for what is redder than it is green. */
  readonly green: number;
  readonly lead: number;
  /** Standard deviation of its Excess Green: one kind of thing has little, soil and leaves that run into one another much. */
  readonly spread: number;
  /** Of all pixels, 0 to 1. */
  readonly share: number;
  /** Level at which the valley above it begins. */
  readonly end: number;
}

/** Levels to either side that are counted together: a twelfth of the way from soil to leaf, and wider than a flat colour's steps. */
const reach = 3;

/** What a valley may hold of the lower one of the tops beside it. */
const deepest = 0.3;

/** Share of the pixels below which a heap is a label, a tool or a few petals. */
const leastShare = 0.03;

/** Heaps from the reddest to the greenest; `leads` adds up the lead of all pixels of each level. */
export function modesOf(histogram: Float64Array, leads: Float64Array): readonly Mode[] {
  const smooth = smoothed(histogram);
  const total = histogram.reduce((sum, count) => sum + count, 0);
  const modes: Mode[] = [];
  let start = 0;
  for (const end of [...valleys(smooth), levels - 1]) {
    let [count, green, squares, lead] = [0, 0, 0, 0];
    for (let level = start; level <= end; level++) {
      count += histogram[level] as number;
      green += greenAt(level) * (histogram[level] as number);
      squares += greenAt(level) ** 2 * (histogram[level] as number);
      lead += leads[level] as number;
    }
    start = end + 1;
    if (count < leastShare * total) continue;
    const mean = green / count;
    const spread = Math.sqrt(Math.max(0, squares / count - mean ** 2));
    modes.push({ green: mean, lead: lead / count, spread, share: count / total, end });
  }
  return modes;
}

function smoothed(histogram: Float64Array): Float64Array {
  return histogram.map((_, level) => {
    let sum = 0;
    for (let near = Math.max(0, level - reach); near <= Math.min(levels - 1, level + reach); near++)
      sum += histogram[near] as number;
    return sum;
  });
}

/** The first level of each valley that lies deep between two tops. */
function valleys(smooth: Float64Array): readonly number[] {
  const found: number[] = [];
  let [top, lowest, at] = [0, Number.POSITIVE_INFINITY, 0];
  smooth.forEach((count, level) => {
    if (lowest < deepest * top && count * deepest > lowest && count > 0) {
      found.push(at);
      [top, lowest] = [count, Number.POSITIVE_INFINITY];
    } else if (count > top) [top, lowest] = [count, Number.POSITIVE_INFINITY];
    else if (count < lowest) [lowest, at] = [count, level];
  });
  return found;
}
