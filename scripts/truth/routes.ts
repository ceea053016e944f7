/** Closed walks against the optima of TSPLIB95 (Reinelt, ORSA Journal on Computing 3:376-384, 1991). */
import { routeLength, shortestRoute } from "../../src/tour/plan/route.ts";
import type { TruthRow } from "./table.ts";
import { att48, bays29, gr17, type Town, ulysses22 } from "./tsplib-towns.ts";

/** A problem of TSPLIB with its proven optimum. */
interface Problem {
  readonly name: string;
  readonly stops: number;
  readonly distance: (a: number, b: number) => number;
  readonly optimum: number;
}

export const problems: readonly Problem[] = [
  { name: "gr17", stops: 17, distance: lowerRows(gr17), optimum: 2085 },
  { name: "ulysses22", stops: 22, distance: geographic(ulysses22), optimum: 7013 },
  { name: "bays29", stops: 29, distance: lowerRows(bays29), optimum: 2020 },
  { name: "att48", stops: 48, distance: pseudoEuclidean(att48), optimum: 10628 },
];

export function walkLength({ stops, distance }: Problem): number {
  const question = { stops, distance, closed: true };
  return routeLength(shortestRoute(question), question);
}

/** All four have more stops than are walked exactly; a garden walk a hundredth longer than the best is good enough. */
export const longestWalk = 1.01;

export function routeRows(): readonly TruthRow[] {
  return problems.map((problem) => {
    const length = walkLength(problem);
    const over = length / problem.optimum - 1;
    return {
      quantity: `walk past ${problem.stops} stops (${problem.name})`,
      cases: 1,
      found: `${(100 * over).toFixed(2)} % over the optimum`,
      against: `TSPLIB95, ${problem.name}: ${problem.optimum}`,
      goal: `0 to ${(100 * (longestWalk - 1)).toFixed(0)} % over`,
      met: over >= 0 && length <= problem.optimum * longestWalk,
    };
  });
}

/** LOWER_DIAG_ROW: each row of the lower half with its diagonal. */
function lowerRows(numbers: readonly number[]) {
  return (a: number, b: number) => {
    const [row, column] = a > b ? [a, b] : [b, a];
    return numbers[(row * (row + 1)) / 2 + column] ?? Number.NaN;
  };
}

/** ATT: the root of a tenth of the square, rounded up. */
function pseudoEuclidean(towns: readonly Town[]) {
  return (a: number, b: number) => {
    const [from, to] = [towns[a], towns[b]] as [Town, Town];
    return Math.ceil(Math.sqrt(((from[0] - to[0]) ** 2 + (from[1] - to[1]) ** 2) / 10));
  };
}

/** GEO: degrees and minutes as DDD.MM, on a ball of 6378.388 km; TSPLIB's PI has seven digits. */
function geographic(towns: readonly Town[]) {
  const radians = (x: number) => {
    const degrees = Math.trunc(x);
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: TSPLIB defines its PI so
    return (3.141592 * (degrees + (5 * (x - degrees)) / 3)) / 180;
  };
  return (a: number, b: number) => {
    const [latA, lonA] = (towns[a] as Town).map(radians) as [number, number];
    const [latB, lonB] = (towns[b] as Town).map(radians) as [number, number];
    const [q1, q2, q3] = [Math.cos(lonA - lonB), Math.cos(latA - latB), Math.cos(latA + latB)];
    return Math.trunc(6378.388 * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
  };
}
