/** From what fits into the film to a tour with an order, a clock and its light. */
import { clock } from "../../almanac/index.ts";
import { stopOverhead } from "../../films/index.ts";
import type { Bed, Day, Episode, Garden } from "../../model.ts";
import type { BedOnTheDay } from "../bed-on-the-day.ts";
import type { Weighed } from "../candidates/candidate.ts";
import { type Choice, frame } from "./choose.ts";
import { minutesOf, type StopTimes, timesOf } from "./clock.ts";
import type { Plan } from "./plan.ts";
import {
  bestStart,
  type LitStop,
  lightAhead,
  lightWords,
  scoreAt,
  startScores,
  sunLine,
  type TourLight,
  tourLight,
} from "./tour-light.ts";
import { bySite, type Leg, legsOf, reorderOf, shortestWalk } from "./walk.ts";

export interface PlanRequest {
  readonly garden: Garden;
  readonly day: Day;
  readonly choice: Choice;
  readonly episode: Episode | undefined;
  /** The person listed the stops: their order stays. */
  readonly listed: boolean;
  readonly target: number | undefined;
  /** Wall clock the person fixed. */
  readonly start: string | undefined;
  readonly overcast: boolean;
}

export interface PlannedStop {
  readonly here: BedOnTheDay;
  readonly show: readonly Weighed[];
  readonly seconds: number;
  readonly leg: Leg;
  readonly begins: number;
  /** "9:21" */
  readonly from?: string | undefined;
  readonly light?: string | undefined;
}

export interface PlannedTour {
  readonly stops: readonly PlannedStop[];
  readonly plan: Plan;
}

type Stop = Choice["stops"][number];

export function planTour(request: PlanRequest): PlannedTour {
  const { garden, day, choice, episode, listed, target } = request;
  const light = tourLight(garden, day, request.start, request.overcast);
  const stops = listed ? choice.stops : inWalkingOrder(request, light);
  const beds = stops.map(({ here }) => here.bed);
  const legs = legsOf(garden, beds);
  const seconds = stops.map(lengthOf);
  const times = timesOf(seconds, legs);
  const lit = litStops(stops, times, light);
  const filmed = seconds.reduce((sum, length) => sum + length, stops.length === 0 ? 0 : frame);
  const lasts = minutesInTheGarden(times, seconds);
  const scores = stops.length === 0 ? [] : startScores(lit, lasts, garden.settings);
  const chosen = request.start ?? bestStart(scores)?.start;
  const start = chosen === undefined ? undefined : minutesOf(chosen);
  return {
    stops: stops.map(({ here, show }, index) => {
      const { begins, inTheGarden } = times[index] as StopTimes;
      return {
        here,
        show,
        seconds: seconds[index] as number,
        leg: legs[index] as Leg,
        begins,
        from: start === undefined ? undefined : clock(start + Math.floor(inTheGarden / 60)),
        light: start === undefined ? undefined : lightWords(lit[index] as LitStop, start),
      };
    }),
    plan: {
      seconds: filmed,
      target,
      over: choice.over,
      start: start === undefined ? undefined : clock(start),
      end: start === undefined ? undefined : clock(start + Math.ceil(lasts)),
      startBy: start === undefined ? undefined : request.start === undefined ? "light" : "person",
      startScores: scores,
      litStops: lit.filter(({ spans }) => spans !== undefined).length,
      light: start === undefined ? undefined : lightAhead(lit, start, scores),
      sun: stops.length === 0 ? undefined : sunLine(garden, beds, day),
      metres: Math.round(legs.reduce((sum, { metres = 0 }) => sum + metres, 0)),
      reorder: listed ? reorderOf(garden, beds, episode) : undefined,
    },
  };
}

function lengthOf({ show }: Stop): number {
  return show.reduce((sum, { seconds }) => sum + seconds, stopOverhead);
}

/** A stop is filmed around its middle. */
function litStops(stops: readonly Stop[], times: readonly StopTimes[], light: TourLight): readonly LitStop[] {
  return stops.map((stop, index) => ({
    spans: light.spansOf(stop.here.bed),
    after: ((times[index]?.inTheGarden ?? 0) + lengthOf(stop) / 2) / 60,
  }));
}

function minutesInTheGarden(times: readonly StopTimes[], seconds: readonly number[]): number {
  return ((times.at(-1)?.inTheGarden ?? 0) + (seconds.at(-1) ?? 0)) / 60;
}

/** Walks of sites that nobody put in order go by the light; more than this many would take too long to try. */
const mostSitesTried = 5;

function inWalkingOrder({ garden, choice, episode, start }: PlanRequest, light: TourLight): readonly Stop[] {
  const stopAt = new Map(choice.stops.map((stop) => [stop.here.bed, stop]));
  const walked = shortestWalk(garden, [...stopAt.keys()], episode);
  const sites = [...bySite(walked).values()];
  const orders = siteOrders(garden, sites, episode);
  const inOrder = (order: readonly (readonly Bed[])[]) => order.flat().flatMap((bed) => stopAt.get(bed) ?? []);
  const [first] = orders;
  if (first === undefined) return [];
  if (orders.length === 1) return inOrder(first);
  const scored = orders.map((order) => {
    const stops = inOrder(order);
    const times = timesOf(
      stops.map(lengthOf),
      legsOf(
        garden,
        stops.map(({ here }) => here.bed),
      ),
    );
    const lasts = minutesInTheGarden(times, stops.map(lengthOf));
    const lit = litStops(stops, times, light);
    const known = lit.filter(({ spans }) => spans !== undefined);
    const best =
      start === undefined ? bestStart(startScores(lit, lasts, garden.settings)) : scoreAt(known, minutesOf(start));
    return { stops, score: best?.score ?? 0 };
  });
  return scored.reduce((best, one) => (one.score > best.score + 1e-9 ? one : best)).stops;
}

/** The one order the person gave, or every order to be tried; the first is the order of the plan. */
function siteOrders(
  garden: Garden,
  sites: readonly (readonly Bed[])[],
  episode: Episode | undefined,
): readonly (readonly (readonly Bed[])[])[] {
  const holds = (beds: readonly Bed[], bed: string | undefined) => beds.some(({ id }) => id === bed);
  const opening = sites.filter((beds) => holds(beds, episode?.firstStop));
  const closing = sites.filter((beds) => !opening.includes(beds) && holds(beds, episode?.lastStop));
  const between = sites.filter((beds) => !opening.includes(beds) && !closing.includes(beds));
  const ordered = between.some(([bed]) => garden.sites.get(bed?.site ?? "")?.order !== undefined);
  const orders = ordered || between.length > mostSitesTried ? [between] : everyOrder(between);
  return orders.map((order) => [...opening, ...order, ...closing]);
}

function everyOrder<T>(things: readonly T[]): readonly (readonly T[])[] {
  if (things.length < 2) return [things];
  return things.flatMap((first, at) =>
    everyOrder([...things.slice(0, at), ...things.slice(at + 1)]).map((rest) => [first, ...rest]),
  );
}
