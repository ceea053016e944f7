/** The standard normal curve: how much lies above a point, and the point above which so much lies. */

/** Share above z. Complementary error function by Numerical Recipes' Chebyshev fit, relative error below 1.2e-7 everywhere. */
export function shareAbove(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + x / 2);
  const terms = [
    0.17087277, -0.82215223, 1.48851587, -1.13520398, 0.27886807, -0.18628806, 0.09678418, 0.37409196, 1.00002368,
  ];
  const fit = terms.reduce((sum, term) => term + t * sum, 0);
  const above = (t * Math.exp(-x * x - 1.26551223 + t * fit)) / 2;
  return z >= 0 ? above : 1 - above;
}

/** The z above which a share lies, for shares between 0 and 1; by halving, since it is asked a few times only. */
export function pointAbove(share: number): number {
  let [low, high] = [-40, 40];
  for (let step = 0; step < 60; step += 1) {
    const middle = (low + high) / 2;
    if (shareAbove(middle) > share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Mean of what lies above z: where one that is known to lie above it is to be expected. */
export function meanAbove(z: number): number {
  const above = shareAbove(z);
  // So far out the mean is a little above z itself (Mills' ratio).
  return above < 1e-12 ? z + 1 / z : Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / above;
}
