/** Arithmetic with counts of plants, some of which nobody counted exactly. */
import type { Count } from "../model.ts";

/** What is left of a count when `n` are gone; never below none. */
export function less(count: Count | undefined, n: number): Count | undefined {
  if (count === undefined) return undefined;
  const { value, upTo, approx } = count;
  return { value: Math.max(0, value - n), upTo: upTo === undefined ? undefined : Math.max(0, upTo - n), approx };
}

export function exactly(value: number): Count {
  return { value, approx: false };
}

/** Whether a count was made exactly, so that a mismatch with it can be proved. */
export function isExact(count: Count | undefined): count is Count {
  return count !== undefined && !count.approx && (count.upTo === undefined || count.upTo === count.value);
}

/** Nothing left, for certain. */
export function isNone(count: Count | undefined): boolean {
  return isExact(count) && count.value === 0;
}

/** The most there can be: the upper end of a range. */
export function atMost(count: Count): number {
  return count.upTo ?? count.value;
}
