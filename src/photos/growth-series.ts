/**
 * Growth as series of points in time: canopy cover of a viewpoint, height of a planting. Every point is kept as it was
 * measured; nothing is averaged, smoothed or filled in, and where nobody looked for too long the series has a gap.
 */

import { daysBetween } from "../calendar.ts";
import type { GrowthPoint, GrowthSeries } from "../model.ts";
import { compare } from "../order.ts";

export type { GrowthPoint, GrowthSeries };

/**
 * Days between two points after which they are no longer joined by a line (common practice: three missed weekly
 * visits).
 */
const longestJoin = 24;

/** Orders points by day (then by source) and breaks them where nobody measured for more than `join` days. */
export function growthSeries(
  about: Omit<GrowthSeries, "stretches">,
  points: readonly GrowthPoint[],
  join = longestJoin,
): GrowthSeries {
  const inOrder = [...points].sort((a, b) => (a.day === b.day ? compare(a.source, b.source) : compare(a.day, b.day)));
  const stretches: GrowthPoint[][] = [];
  for (const point of inOrder) {
    const last = stretches.at(-1)?.at(-1);
    if (last && daysBetween(last.day, point.day) <= join) stretches.at(-1)?.push(point);
    else stretches.push([point]);
  }
  return { ...about, stretches };
}

/** Days that must lie between two points before a rate is made of them: what measuring is off by is divided by them. */
const leastForRate = 14;

/**
 * One standard deviation of the difference between two covers, as a share: light, wind and wet leaves (docs/photos.md: trust ten
 * points and more, which is two of these).
 */
const coverDifference = 0.05;

/** One standard deviation of a plant measured with a rule, centimetres: where its top is, is a matter of a finger's width. */
const ruleUncertainty = 1;

/** Differences of two covers from which on they are told: two standard deviations. */
export const toldCover = 2 * coverDifference;

export interface GrowthStep {
  readonly from: GrowthPoint;
  readonly to: GrowthPoint;
  readonly days: number;
  /** Change in the series' unit, with one standard deviation of it. */
  readonly change: number;
  readonly uncertainty: number;
  /** The same for seven days. */
  readonly perWeek: number;
  readonly perWeekUncertainty: number;
  /** More than measuring may be off by: two standard deviations. */
  readonly isTold: boolean;
}

function step(what: GrowthSeries["what"], from: GrowthPoint, to: GrowthPoint): GrowthStep {
  const days = daysBetween(from.day, to.day);
  const change = to.value - from.value;
  const uncertainty =
    what === "cover"
      ? coverDifference
      : Math.hypot(from.uncertainty ?? ruleUncertainty, to.uncertainty ?? ruleUncertainty);
  const weeks = days / 7;
  return {
    from,
    to,
    days,
    change,
    uncertainty,
    perWeek: change / weeks,
    perWeekUncertainty: uncertainty / weeks,
    // A hair less, so that 72 % to 82 % is ten points in binary fractions too.
    isTold: Math.abs(change) >= 2 * uncertainty - 1e-9,
  };
}

/** Growth up to each point within a stretch, from the last point that lies two weeks back or more. */
export function weeklyGrowth(series: GrowthSeries): readonly GrowthStep[] {
  return series.stretches.flatMap((stretch) =>
    stretch.flatMap((to) => {
      const from = stretch.findLast((point) => point.day < to.day && daysBetween(point.day, to.day) >= leastForRate);
      return from === undefined ? [] : [step(series.what, from, to)];
    }),
  );
}
