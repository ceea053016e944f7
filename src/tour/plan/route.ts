/**
 * The shortest walk past all stops of a site. Exact by dynamic programming (Held & Karp, J. SIAM 10:196-210, 1962) up to
 * EXACT_STOPS, above that 2-opt with Or-opt from several starts; never longer than the order given.
 */

import { shortRing } from "./ring.ts";

/** Distance from stop a to stop b, by index; any unit, the same both ways. */
export type Distance = (a: number, b: number) => number;

export interface RouteQuestion {
  readonly stops: number;
  readonly distance: Distance;
  /** Index of the stop the walk must begin or end with. */
  readonly start?: number | undefined;
  readonly end?: number | undefined;
  /** The walk comes back to where it began. */
  readonly closed?: boolean | undefined;
}

/** 13 stops are 13² · 2¹³ steps, about 1.4 million: a few milliseconds. A way in and out are two more points. */
export const EXACT_STOPS = 13;

/** Order of stops, as indexes. */
export function shortestRoute(question: RouteQuestion): readonly number[] {
  const { stops } = question;
  const given = Array.from({ length: stops }, (_, index) => index);
  if (stops <= 2 && question.start === undefined && question.end === undefined) return given;
  const fixedEnds =
    question.closed === true ? 0 : Number(question.start !== undefined) + Number(question.end !== undefined);
  const found = stops - fixedEnds <= EXACT_STOPS ? exact(question) : improved(question);
  const fits = respects(given, question);
  return fits && routeLength(given, question) <= routeLength(found, question) + 1e-9 ? given : found;
}

export function routeLength(
  order: readonly number[],
  { distance, closed }: Pick<RouteQuestion, "distance" | "closed">,
): number {
  let length = 0;
  for (let i = 1; i < order.length; i += 1) length += distance(order[i - 1] as number, order[i] as number);
  if (closed === true && order.length > 1) length += distance(order.at(-1) as number, order[0] as number);
  return length;
}

function respects(order: readonly number[], { start, end }: RouteQuestion): boolean {
  return (start === undefined || order[0] === start) && (end === undefined || order.at(-1) === end);
}

/** By subsets of the stops that are not fixed at an end; the ends only add to the first and the last step. */
function exact(question: RouteQuestion): number[] {
  const { stops, distance, closed } = question;
  // A closed walk may begin anywhere, so it begins at its start or at stop 0, and comes back there.
  const first = closed === true ? (question.start ?? 0) : question.start;
  const last = closed === true ? first : question.end;
  const free = Array.from({ length: stops }, (_, index) => index).filter((stop) => stop !== first && stop !== last);
  const ends = (order: readonly number[]) => [
    ...(first === undefined ? [] : [first]),
    ...order,
    ...(last === undefined || last === first ? [] : [last]),
  ];
  const n = free.length;
  if (n === 0) return ends([]);
  const between = Float64Array.from({ length: n * n }, (_, at) =>
    distance(free[Math.floor(at / n)] as number, free[at % n] as number),
  );
  const sets = 1 << n;
  const cost = new Float64Array(sets * n).fill(Number.POSITIVE_INFINITY);
  const from = new Int8Array(sets * n).fill(-1);
  for (const [index, stop] of free.entries()) {
    cost[(1 << index) * n + index] = first === undefined ? 0 : distance(first, stop);
  }
  for (let set = 1; set < sets; set += 1) {
    for (let here = 0; here < n; here += 1) {
      const soFar = cost[set * n + here] as number;
      if (soFar === Number.POSITIVE_INFINITY) continue;
      for (let next = 0; next < n; next += 1) {
        if ((set & (1 << next)) !== 0) continue;
        const cell = (set | (1 << next)) * n + next;
        const total = soFar + (between[here * n + next] as number);
        if (total < (cost[cell] as number)) {
          cost[cell] = total;
          from[cell] = here;
        }
      }
    }
  }
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [index, stop] of free.entries()) {
    const total = (cost[(sets - 1) * n + index] as number) + (last === undefined ? 0 : distance(stop, last));
    if (total < least) {
      least = total;
      best = index;
    }
  }
  const order: number[] = [];
  for (let set = sets - 1, here = best; here >= 0; ) {
    order.unshift(free[here] as number);
    const before = from[set * n + here] as number;
    set &= ~(1 << here);
    here = before;
  }
  return ends(order);
}

/**
 * Above the exact size every walk is a ring: an open one is closed by a stop that costs nothing to reach, and that no
 * saving can part from a fixed end.
 */
function improved(question: RouteQuestion): number[] {
  const { stops, distance, start, end, closed } = question;
  const open = closed !== true;
  const size = open ? stops + 1 : stops;
  const metres = new Float64Array(size * size);
  let most = 0;
  for (let a = 0; a < stops; a += 1) {
    for (let b = 0; b < stops; b += 1) {
      const apart = a === b ? 0 : distance(a, b);
      metres[a * size + b] = apart;
      if (apart > most) most = apart;
    }
  }
  const bond = -(most + 1) * size;
  for (const fixed of open ? [start, end] : []) {
    if (fixed === undefined) continue;
    metres[fixed * size + stops] = bond;
    metres[stops * size + fixed] = bond;
  }
  const ring = shortRing(metres, size);
  const cut = ring.indexOf(open ? stops : (start ?? 0));
  const turned = [...ring.slice(cut), ...ring.slice(0, cut)];
  if (!open) return turned;
  const walk = turned.slice(1);
  const wrongWay =
    (start !== undefined && walk[0] !== start) || (end !== undefined && start === undefined && walk.at(-1) !== end);
  return wrongWay ? walk.toReversed() : walk;
}
