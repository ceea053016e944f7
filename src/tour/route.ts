/**
 * The shortest walk past all stops of a site. Exact by dynamic programming (Held & Karp, J. SIAM 10:196-210, 1962) up to
 * EXACT_STOPS, above that 2-opt with Or-opt from several starts; never longer than the order given.
 */

/** Distance from stop a to stop b, by index; any unit. */
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

/** 13 stops are 13² · 2¹³ steps, about 1.4 million: a few milliseconds. */
export const EXACT_STOPS = 13;

/** Order of stops, as indexes. */
export function shortestRoute(question: RouteQuestion): readonly number[] {
  const { stops } = question;
  const given = Array.from({ length: stops }, (_, index) => index);
  if (stops <= 2 && question.start === undefined && question.end === undefined) return given;
  const found = stops <= EXACT_STOPS ? exact(question) : improved(question);
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

function exact({ stops, distance, start, end, closed }: RouteQuestion): number[] {
  // A closed walk may begin anywhere, so it begins at its start or at stop 0 and ends where the way back is counted in.
  const first = closed === true ? (start ?? 0) : start;
  const sets = 1 << stops;
  const cost = new Float64Array(sets * stops).fill(Number.POSITIVE_INFINITY);
  const from = new Int8Array(sets * stops).fill(-1);
  for (let stop = 0; stop < stops; stop += 1) {
    if (first === undefined ? stop !== end || stops === 1 : stop === first) cost[(1 << stop) * stops + stop] = 0;
  }
  for (let set = 1; set < sets; set += 1) {
    for (let last = 0; last < stops; last += 1) {
      const here = cost[set * stops + last] as number;
      if (here === Number.POSITIVE_INFINITY) continue;
      for (let next = 0; next < stops; next += 1) {
        if ((set & (1 << next)) !== 0) continue;
        const grown = set | (1 << next);
        if (next === end && grown !== sets - 1 && closed !== true) continue;
        const total = here + distance(last, next);
        if (total < (cost[grown * stops + next] as number)) {
          cost[grown * stops + next] = total;
          from[grown * stops + next] = last;
        }
      }
    }
  }
  const full = sets - 1;
  let best = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let last = 0; last < stops; last += 1) {
    if (end !== undefined && closed !== true && last !== end) continue;
    const back = closed === true && first !== undefined && stops > 1 ? distance(last, first) : 0;
    const total = (cost[full * stops + last] as number) + back;
    if (total < least) {
      least = total;
      best = last;
    }
  }
  const order: number[] = [];
  for (let set = full, last = best; last >= 0; ) {
    order.unshift(last);
    const before = from[set * stops + last] as number;
    set &= ~(1 << last);
    last = before;
  }
  return order;
}

/** Starts tried: the order given, a greedy walk, and greedy walks from other stops. More gave no gain on 60 random stops. */
const STARTS = 12;

function improved(question: RouteQuestion): number[] {
  const { stops, distance, start, end } = question;
  const given = Array.from({ length: stops }, (_, index) => index);
  const firsts = start === undefined ? given.filter((stop) => stop !== end) : [start];
  const step = Math.max(1, Math.floor(firsts.length / STARTS));
  const walks = firsts.filter((_, index) => index % step === 0).map((first) => greedy(stops, distance, first, end));
  const begins = respects(given, question) ? [given, ...walks] : walks;
  let best: number[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const begin of begins) {
    const order = shorten(begin, question);
    const length = routeLength(order, question);
    if (length < least) {
      least = length;
      best = order;
    }
  }
  return best;
}

function greedy(stops: number, distance: Distance, first: number, end: number | undefined): number[] {
  const order = [first];
  const left = new Set(
    Array.from({ length: stops }, (_, index) => index).filter((stop) => stop !== first && stop !== end),
  );
  while (left.size > 0) {
    const here = order.at(-1) as number;
    let nearest = -1;
    for (const stop of left) if (nearest < 0 || distance(here, stop) < distance(here, nearest)) nearest = stop;
    order.push(nearest);
    left.delete(nearest);
  }
  if (end !== undefined && end !== first) order.push(end);
  return order;
}

/** 2-opt (turn a stretch round) and Or-opt (move up to three stops elsewhere) until neither shortens the walk. */
function shorten(begin: readonly number[], question: RouteQuestion): number[] {
  const { distance, start, end, closed } = question;
  let order = [...begin];
  const n = order.length;
  const firstFree = start === undefined ? 0 : 1;
  const lastFree = end === undefined ? n - 1 : n - 2;
  const between = (a: number, b: number): number => {
    const outside = a < 0 || b >= n;
    if (outside && closed !== true) return 0;
    return distance(order[(a + n) % n] as number, order[b % n] as number);
  };
  for (let shorter = true; shorter; ) {
    shorter = false;
    for (let i = firstFree; i < lastFree; i += 1) {
      for (let j = i + 1; j <= lastFree; j += 1) {
        const whole = closed === true && i === 0 && j === n - 1;
        if (whole) continue;
        const now = between(i - 1, i) + between(j, j + 1);
        const turned =
          (i - 1 < 0 && closed !== true ? 0 : distance(order[(i - 1 + n) % n] as number, order[j] as number)) +
          (j + 1 >= n && closed !== true ? 0 : distance(order[i] as number, order[(j + 1) % n] as number));
        if (turned < now - 1e-9) {
          order = [...order.slice(0, i), ...order.slice(i, j + 1).reverse(), ...order.slice(j + 1)];
          shorter = true;
        }
      }
    }
    const moved = moveStretch(order, question, firstFree, lastFree);
    if (moved !== undefined) {
      order = moved;
      shorter = true;
    }
  }
  return order;
}

function moveStretch(
  order: readonly number[],
  question: RouteQuestion,
  firstFree: number,
  lastFree: number,
): number[] | undefined {
  const length = routeLength(order, question);
  for (let size = 1; size <= 3; size += 1) {
    for (let i = firstFree; i + size - 1 <= lastFree; i += 1) {
      const stretch = order.slice(i, i + size);
      const rest = [...order.slice(0, i), ...order.slice(i + size)];
      for (let j = firstFree; j <= lastFree - size + 1; j += 1) {
        if (j === i) continue;
        const candidate = [...rest.slice(0, j), ...stretch, ...rest.slice(j)];
        if (routeLength(candidate, question) < length - 1e-9) return candidate;
      }
    }
  }
  return undefined;
}
