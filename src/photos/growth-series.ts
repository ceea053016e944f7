/**
 * Growth as series of points in time: canopy cover of a viewpoint, height of a planting. Every point is kept as it was
 * measured; nothing is averaged, smoothed or filled in, and where nobody looked for too long the series has a gap.
 */

import { daysBetween } from "../calendar.ts";
import type { Day, GrowthPoint, GrowthSeries } from "../model.ts";
import { compare } from "../order.ts";

export type { GrowthPoint, GrowthSeries };

/**
 * Days between two points after which they are no longer joined by a line (common practice: three missed weekly
 * visits).
 */
export const longestJoin = 24;

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

export interface GrowthStep {
  readonly from: GrowthPoint;
  readonly to: GrowthPoint;
  readonly days: number;
  /** Change in the series' unit, and the same for seven days. */
  readonly change: number;
  readonly perWeek: number;
}

function step(from: GrowthPoint, to: GrowthPoint): GrowthStep {
  const days = daysBetween(from.day, to.day);
  const change = to.value - from.value;
  return { from, to, days, change, perWeek: (change / days) * 7 };
}

/** Growth from each point to the next within a stretch; points of one day are not set against each other. */
export function weeklyGrowth(series: GrowthSeries): readonly GrowthStep[] {
  return series.stretches.flatMap((stretch) =>
    stretch.slice(1).flatMap((to, i) => {
      const from = stretch[i] as GrowthPoint;
      return from.day === to.day ? [] : [step(from, to)];
    }),
  );
}

/**
 * Growth between two days as it can be said: from the last point on or before `since` (or, within `slack` days, the
 * first after it) to the last point on or before `on`. Undefined when there are no two such points, or the older one
 * lies more than `slack` days before `since`.
 */
export function growthBetween(series: GrowthSeries, since: Day, on: Day, slack = 10): GrowthStep | undefined {
  const points = series.stretches.flat();
  const to = points.findLast((point) => point.day <= on);
  const from =
    points.findLast((point) => point.day <= since && daysBetween(point.day, since) <= slack) ??
    points.find((point) => point.day > since && daysBetween(since, point.day) <= slack);
  return from && to && from.day < to.day ? step(from, to) : undefined;
}
