/** A figure as it is spoken: two digits, and what it comes to beside another. */

/** Two significant digits: 527 is 530. */
export function twoDigits(n: number): number {
  return n === 0 ? 0 : Number(n.toPrecision(2));
}

/** Upper bounds and what is said below them; the bounds lie half-way between the shares that are named. */
const ratios: readonly (readonly [below: number, words: string])[] = [
  [0.28, "hardly a quarter of"],
  [0.41, "about a third of"],
  [0.58, "about half"],
  [0.71, "two thirds of"],
  [0.82, "a quarter under"],
  [0.94, "a little under"],
  [1.06, "much the same as"],
  [1.18, "a little over"],
  [1.29, "a quarter over"],
  [1.42, "a third over"],
  [1.75, "half as much again as"],
  [1.95, "nearly double"],
  [2.1, "double"],
  [2.6, "more than double"],
  [3.5, "about three times"],
];

export function ratioWords(ratio: number): string | undefined {
  if (!Number.isFinite(ratio) || ratio <= 0) return undefined;
  return ratios.find(([below]) => ratio < below)?.[1] ?? "far more than";
}
