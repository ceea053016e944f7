/** Numbers by chance that are the same on every machine. */

export interface Chance {
  /** From 0 up to 1. */
  next(): number;
  /** Standard normal, by the polar method of Box and Muller. */
  normal(): number;
  /** A whole number from the first to the last. */
  whole(from: number, to: number): number;
}

/** mulberry32 */
export function chance(seed: number): Chance {
  let state = seed | 0;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    whole: (from, to) => from + Math.floor(next() * (to - from + 1)),
  };
}
