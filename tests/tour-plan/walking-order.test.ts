import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { EXACT_STOPS, routeLength, shortestRoute } from "../../src/tour/plan/route.ts";

// TSPLIB95 (Reinelt, ORSA Journal on Computing 3:376-384, 1991): coordinates DDD.MM, latitude first, and the optimum of the closed walk.
// burma14's best open path from its first town, 2880, was computed by exhaustive dynamic programming outside the project.
const BURMA14 = [
  [16.47, 96.1],
  [16.47, 94.44],
  [20.09, 92.54],
  [22.39, 93.37],
  [25.23, 97.24],
  [22.0, 96.05],
  [20.47, 97.02],
  [17.2, 96.29],
  [16.3, 97.38],
  [14.05, 98.12],
  [16.53, 97.38],
  [21.52, 95.59],
  [19.41, 97.13],
  [20.09, 94.55],
] as const;
const ULYSSES16 = [
  [38.24, 20.42],
  [39.57, 26.15],
  [40.56, 25.32],
  [36.26, 23.12],
  [33.48, 10.54],
  [37.56, 12.19],
  [38.42, 13.11],
  [37.52, 20.44],
  [41.23, 9.1],
  [41.17, 13.05],
  [36.08, -5.21],
  [38.47, 15.13],
  [38.15, 15.35],
  [37.51, 15.17],
  [35.49, 14.32],
  [39.36, 19.56],
] as const;

/** TSPLIB's GEO distance; its PI has seven digits. */
function geo(towns: readonly (readonly [number, number])[]) {
  const radians = (x: number) => {
    const degrees = Math.trunc(x);
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: TSPLIB defines its PI so
    return (3.141592 * (degrees + (5 * (x - degrees)) / 3)) / 180;
  };
  return (a: number, b: number) => {
    const [latA, lonA] = (towns[a] as readonly [number, number]).map(radians) as [number, number];
    const [latB, lonB] = (towns[b] as readonly [number, number]).map(radians) as [number, number];
    const q1 = Math.cos(lonA - lonB);
    const q2 = Math.cos(latA - latB);
    const q3 = Math.cos(latA + latB);
    return Math.trunc(6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
  };
}

function walk(question: Parameters<typeof shortestRoute>[0]) {
  const order = shortestRoute(question);
  expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: question.stops }, (_, index) => index));
  return { order, length: routeLength(order, question) };
}

describe("walking order", () => {
  it("reaches TSPLIB's optima", () => {
    expect(geo(BURMA14)(0, 1)).toBe(153);
    expect(walk({ stops: 14, distance: geo(BURMA14), closed: true }).length).toBe(3323);
    expect(walk({ stops: 14, distance: geo(BURMA14), start: 0 }).length).toBe(2880);
    expect(walk({ stops: 16, distance: geo(ULYSSES16), closed: true }).length).toBe(6859);
  });

  const plan = fc.array(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 })), {
    minLength: 1,
    maxLength: 7,
  });
  const metres = (points: readonly (readonly [number, number])[]) => (a: number, b: number) =>
    Math.hypot((points[a]?.[0] ?? 0) - (points[b]?.[0] ?? 0), (points[a]?.[1] ?? 0) - (points[b]?.[1] ?? 0));

  it("is as short as trying every order", () => {
    fc.assert(
      fc.property(plan, fc.boolean(), fc.boolean(), fc.boolean(), (points, fixStart, fixEnd, closed) => {
        const stops = points.length;
        const ends = closed ? {} : { ...(fixStart && { start: 0 }), ...(fixEnd && stops > 1 && { end: stops - 1 }) };
        const question = { stops, distance: metres(points), closed, ...ends };
        const { order, length } = walk(question);
        const every = orders(stops).filter(
          (tried) =>
            (ends.start === undefined || tried[0] === ends.start) &&
            (ends.end === undefined || tried.at(-1) === ends.end),
        );
        expect(length).toBeCloseTo(Math.min(...every.map((tried) => routeLength(tried, question))), 6);
        if (ends.start !== undefined) expect(order[0]).toBe(ends.start);
        if (ends.end !== undefined) expect(order.at(-1)).toBe(ends.end);
      }),
      { numRuns: 150 },
    );
  });

  it("is never longer than the order given, also above the exact size", () => {
    const many = fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 })), {
      minLength: EXACT_STOPS + 1,
      maxLength: 24,
    });
    fc.assert(
      fc.property(many, (points) => {
        const question = { stops: points.length, distance: metres(points), start: 0 };
        const given = points.map((_, index) => index);
        const { order, length } = walk(question);
        expect(order[0]).toBe(0);
        expect(length).toBeLessThanOrEqual(routeLength(given, question) + 1e-9);
      }),
      { numRuns: 30 },
    );
  });

  it("walks past two beds at one point, a single bed and none", () => {
    expect(shortestRoute({ stops: 0, distance: () => 0 })).toEqual([]);
    expect(shortestRoute({ stops: 1, distance: () => 0, closed: true })).toEqual([0]);
    expect(walk({ stops: 4, distance: () => 0 }).length).toBe(0);
  });
});

function orders(count: number): number[][] {
  if (count === 0) return [[]];
  const rest = orders(count - 1);
  return rest.flatMap((order) =>
    Array.from({ length: count }, (_, at) => [...order.slice(0, at), count - 1, ...order.slice(at)]),
  );
}
