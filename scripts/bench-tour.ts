/**
 * `node scripts/bench-tour.ts`: how long it takes to plan a large tour and to find a walk, and how good the walk is. Times
 * are the least of several runs in one warm process: the work itself, without what else the machine does.
 */
import type { Garden } from "../src/model.ts";
import { makeBrief, makeCards } from "../src/tour/index.ts";
import { routeLength, shortestRoute } from "../src/tour/plan/route.ts";
import { busyTour, tourDay } from "./bench/busy-tour.ts";
import { least, sayTook, took } from "./bench/processor-time.ts";

const RUNS = 40;

const [whole, half] = [briefTimes(await busyTour(40, 40)), briefTimes(await busyTour(20, 20))];
row(
  "brief of a large tour, after loading",
  `${sayTook(whole.time)} for ${whole.stops} stops and ${whole.candidates} candidates`,
  "≤ 100 ms for 40 and 1,500",
);
row("its cover, cards and dossier", sayTook(whole.cards), "≤ 100 ms for 40");
row("the same in a process that has just read the garden", sayTook(whole.cold));
row(
  "growth exponent from half the stops",
  (Math.log(whole.time.cpuMs / half.time.cpuMs) / Math.log(whole.candidates / half.candidates)).toFixed(2),
);

const walks = [1, 2, 3, 4].map((seed) => walkAgainstBest(60, seed));
row("walk past 60 stops", `${Math.max(...walks.map(({ ms }) => ms)).toFixed(1)} ms at most`, "≤ 100 ms");
row(
  "the same against long random restarts",
  `${(100 * Math.max(...walks.map(({ over }) => over))).toFixed(1)} % longer at most`,
  "≤ 5 %",
);
const sizes = [120, 240].map((stops) => walkAgainstBest(stops, 5, 0).ms.toFixed(1));
row("walk past 120 and 240 stops", `${sizes.join(" and ")} ms`);

function briefTimes(garden: Garden) {
  const make = () => makeBrief(garden, { episode: "july", today: tourDay });
  const makeSet = () => makeCards(garden, { episode: "july", today: tourDay });
  const cold = took(makeSet);
  const cards = least(Array.from({ length: RUNS / 2 }, () => took(makeSet)));
  const brief = make();
  const time = least(Array.from({ length: RUNS }, () => took(make)));
  const shown = brief.stops.reduce((sum, { show }) => sum + show.length, 0);
  const left = brief.leftOut.filter(({ what }) => what === "thing").length;
  return { time, cards, cold, stops: brief.stops.length, candidates: shown + left };
}

function walkAgainstBest(stops: number, seed: number, restarts = 80) {
  const chance = chances(seed);
  const points = Array.from({ length: stops }, () => [chance() * 60, chance() * 40] as const);
  const distance = (a: number, b: number) =>
    Math.hypot((points[a]?.[0] ?? 0) - (points[b]?.[0] ?? 0), (points[a]?.[1] ?? 0) - (points[b]?.[1] ?? 0));
  const question = { stops, distance };
  shortestRoute(question);
  let ms = Number.POSITIVE_INFINITY;
  let order: readonly number[] = [];
  for (let run = 0; run < 5; run += 1) {
    const began = performance.now();
    order = shortestRoute(question);
    ms = Math.min(ms, performance.now() - began);
  }
  let best = routeLength(order, question);
  for (let restart = 0; restart < restarts; restart += 1) {
    best = Math.min(best, routeLength(turnedRound(shuffled(stops, chance), distance), question));
  }
  return { ms, over: routeLength(order, question) / best - 1 };
}

/** A plain 2-opt with moves of single stops, from a random order: slow and independent of the planner's own search. */
function turnedRound(begin: readonly number[], distance: (a: number, b: number) => number): readonly number[] {
  const order = [...begin];
  const n = order.length;
  const leg = (i: number, j: number) => (i < 0 || j >= n ? 0 : distance(order[i] as number, order[j] as number));
  for (let shorter = true; shorter; ) {
    shorter = false;
    for (let i = 0; i < n - 1; i += 1) {
      for (let j = i + 1; j < n; j += 1) {
        if (leg(i - 1, j) + leg(i, j + 1) < leg(i - 1, i) + leg(j, j + 1) - 1e-9) {
          order.splice(i, j - i + 1, ...order.slice(i, j + 1).reverse());
          shorter = true;
        }
      }
    }
    for (let i = 0; i < n; i += 1) {
      const length = routeLength(order, { distance });
      const [stop] = order.splice(i, 1) as [number];
      let at = i;
      let least = length - 1e-9;
      for (let j = 0; j < n; j += 1) {
        order.splice(j, 0, stop);
        const tried = routeLength(order, { distance });
        if (tried < least) [least, at] = [tried, j];
        order.splice(j, 1);
      }
      order.splice(at, 0, stop);
      shorter ||= at !== i;
    }
  }
  return order;
}

function shuffled(count: number, chance: () => number): readonly number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  for (let at = count - 1; at > 0; at -= 1) {
    const other = Math.floor(chance() * (at + 1));
    [order[at], order[other]] = [order[other] as number, order[at] as number];
  }
  return order;
}

/** Numerical Recipes' quick generator (Press et al., 2nd ed., 7.1), 0 to 1. */
function chances(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

function row(what: string, figure: string, goal?: string): void {
  console.log(`${what.padEnd(52)} ${figure}${goal === undefined ? "" : `   (goal ${goal})`}`);
}
