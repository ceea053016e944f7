/**
 * Otsu's threshold: N. Otsu, "A threshold selection method from gray-level histograms", IEEE Trans. SMC 9(1):62-66
 * (1979).
 */

export interface Split {
  /** Levels up to and including this one are the lower class. */
  readonly threshold: number;
  /** Share of the lower class, 0 to 1, and the mean level of each class. */
  readonly lowerShare: number;
  readonly lowerMean: number;
  readonly upperMean: number;
  /** w0 w1 (m0 - m1)^2, in levels squared. */
  readonly betweenVariance: number;
  /** Between-class variance as a share of all variance, 0 to 1: how well two classes describe the picture. */
  readonly separability: number;
}

/**
 * The level that splits a histogram into the two classes furthest apart. The lower class holds levels <= threshold
 * (others count the background as < T and name the next level for the same split). Among equal splits the lowest level
 * is taken. Undefined when fewer than two levels occur, because then there is nothing to split.
 */
export function otsu(histogram: ArrayLike<number>): Split | undefined {
  let total = 0;
  let sum = 0;
  let squares = 0;
  for (let level = 0; level < histogram.length; level++) {
    const count = histogram[level] as number;
    total += count;
    sum += count * level;
    squares += count * level * level;
  }
  const variance = squares / total - (sum / total) ** 2;
  let best: Split | undefined;
  let lower = 0;
  let lowerSum = 0;
  for (let level = 0; level < histogram.length - 1; level++) {
    const count = histogram[level] as number;
    lower += count;
    lowerSum += count * level;
    if (lower === 0 || lower === total) continue;
    const share = lower / total;
    const lowerMean = lowerSum / lower;
    const upperMean = (sum - lowerSum) / (total - lower);
    const betweenVariance = share * (1 - share) * (lowerMean - upperMean) ** 2;
    if (!best || betweenVariance > best.betweenVariance)
      best = {
        threshold: level,
        lowerShare: share,
        lowerMean,
        upperMean,
        betweenVariance,
        separability: betweenVariance / variance,
      };
  }
  return best;
}
