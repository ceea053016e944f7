/** The walk past the stops: its order where the person gave none, its legs, and what another order would save. */

import { offFilm } from "../../films/index.ts";
import { say, sayList, sayPlural, theBed } from "../../language/index.ts";
import type { Bed, Episode, Garden, PlanPoint, Site } from "../../model.ts";
import type { Reorder } from "./plan.ts";
import { routeLength, shortestRoute } from "./route.ts";

/** From one stop to the next; undefined parts are not known. */
export interface Leg {
  /** Metres on foot within a site, must-pass points included. */
  readonly metres?: number | undefined;
  /** Degrees from north; undefined for two beds at one point. */
  readonly direction?: number | undefined;
  /** Metres between two sites, as the crow flies. */
  readonly betweenSites?: number | undefined;
  readonly otherSite: boolean;
}

/** A saving of fewer metres than this is within the guess of a plan drawn by eye. */
const worthSaying = 3;

/** Stops in the order of the shortest walk within each site; sites stay in the order in which their first stop is given. */
export function shortestWalk(garden: Garden, beds: readonly Bed[], episode: Episode | undefined): readonly Bed[] {
  return [...bySite(beds)].flatMap(([site, ofSite]) =>
    withItsEnds(walkOf(siteOf(garden, site), ofSite, episode).beds, episode),
  );
}

/** The person's first and last stop stand there whatever the way, beds without a place on the plan too. */
function withItsEnds(beds: readonly Bed[], episode: Episode | undefined): readonly Bed[] {
  const first = beds.filter(({ id }) => id === episode?.firstStop);
  const last = beds.filter(({ id }) => id === episode?.lastStop && id !== episode?.firstStop);
  return [...first, ...beds.filter((bed) => !first.includes(bed) && !last.includes(bed)), ...last];
}

/** Groups of stops by site, each at the place of its first. */
export function bySite(beds: readonly Bed[]): ReadonlyMap<string | undefined, readonly Bed[]> {
  return Map.groupBy(beds, (bed) => bed.site);
}

interface Walk {
  readonly beds: readonly Bed[];
  /** Of the beds with a place on the plan. */
  readonly metres: number;
}

/** The shortest walk past the beds of one site: in by a gate or the start, past every point to pass, out again. */
function walkOf(site: Site | undefined, beds: readonly Bed[], episode: Episode | undefined): Walk {
  const placed = beds.filter((bed) => bed.plan !== undefined);
  const unplaced = beds.filter((bed) => bed.plan === undefined);
  const { question, bedAt, eitherWay } = questionFor(site, placed, episode);
  const found = shortestRoute(question);
  const order = eitherWay ? facingForward(found, placed.length) : found;
  return {
    beds: [...order.flatMap((index) => bedAt(index) ?? []), ...unplaced],
    metres: routeLength(order, question),
  };
}

/** The walk in the order given, with the points to pass put where they cost least. */
function lengthAsGiven(site: Site | undefined, placed: readonly Bed[], episode: Episode | undefined): number {
  const { question, gates } = questionFor(site, placed, episode);
  const given = placed.map((_, index) => index);
  const ends = (order: readonly number[]) => [...gates.slice(0, 1), ...order, ...gates.slice(1)];
  let order: readonly number[] = ends(given);
  for (let point = placed.length; point < placed.length + (site?.mustPass.length ?? 0); point += 1) {
    const tries = Array.from({ length: order.length + 1 }, (_, at) => [
      ...order.slice(0, at),
      point,
      ...order.slice(at),
    ]).filter((tried) => gates.length === 0 || (tried[0] === gates[0] && tried.at(-1) === gates[1]));
    order = tries.reduce(
      (best, one) => (routeLength(one, question) < routeLength(best, question) ? one : best),
      tries[0] ?? order,
    );
  }
  return routeLength(order, question);
}

/**
 * Points of the question: the beds, the points to pass, then, where the site has gates or ends, the way in and the way
 * out, each as far from a point as the nearest gate is.
 */
function questionFor(site: Site | undefined, placed: readonly Bed[], episode: Episode | undefined) {
  const stops = placed.flatMap(({ plan }) => (plan === undefined ? [] : [plan]));
  const points = [...stops, ...(site?.mustPass ?? [])];
  const endOf = (bed: string | undefined, end: PlanPoint | string | undefined): readonly PlanPoint[] => {
    const ofBed = [bed, end].map((id) => placed.find((one) => one.id === id)?.plan).find((plan) => plan !== undefined);
    if (ofBed !== undefined) return [ofBed];
    return typeof end === "object" ? [end] : (site?.gates ?? []);
  };
  const wayIn = endOf(episode?.firstStop, site?.start);
  const wayOut = endOf(episode?.lastStop, site?.end);
  const bedAt = (index: number): Bed | undefined => placed[index];
  if (wayIn.length + wayOut.length === 0 || points.length === 0) {
    const distance = (a: number, b: number) => metresBetween(points[a] as PlanPoint, points[b] as PlanPoint);
    return { question: { stops: points.length, distance }, bedAt, gates: [], eitherWay: true };
  }
  const [entrance, exit] = [points.length, points.length + 1];
  const toEnd = (ends: readonly PlanPoint[], point: PlanPoint | undefined) =>
    ends.length === 0 || point === undefined ? 0 : Math.min(...ends.map((end) => metresBetween(end, point)));
  const distance = (a: number, b: number): number => {
    if (a >= entrance && b >= entrance) return 0;
    if (a === entrance || b === entrance) return toEnd(wayIn, points[a === entrance ? b : a]);
    if (a === exit || b === exit) return toEnd(wayOut, points[a === exit ? b : a]);
    return metresBetween(points[a] as PlanPoint, points[b] as PlanPoint);
  };
  return {
    question: { stops: points.length + 2, distance, start: entrance, end: exit },
    bedAt,
    gates: [entrance, exit],
    eitherWay: wayIn === site?.gates && wayOut === site?.gates,
  };
}

/** A walk that may run either way runs the way the plan is read. */
function facingForward(order: readonly number[], beds: number): readonly number[] {
  const stops = order.filter((index) => index < beds);
  return (stops[0] ?? 0) > (stops.at(-1) ?? 0) ? order.toReversed() : order;
}

/** What the shortest walk would save against the person's own order, summed over sites; undefined when it is not worth a word. */
export function reorderOf(garden: Garden, beds: readonly Bed[], episode: Episode | undefined): Reorder | undefined {
  let saves = 0;
  const order: Bed[] = [];
  const changed: Bed[] = [];
  for (const [id, ofSite] of bySite(beds)) {
    const site = siteOf(garden, id);
    const placed = ofSite.filter((bed) => bed.plan !== undefined);
    const walk = walkOf(site, ofSite, undefined);
    const less = lengthAsGiven(site, placed, undefined) - walk.metres;
    const better = less >= worthSaying;
    order.push(...(better ? walk.beds : ofSite));
    if (!better) continue;
    saves += less;
    changed.push(...walk.beds);
  }
  if (changed.length === 0) return undefined;
  const steps = Math.round(saves / offFilm.step);
  const names = sayList(changed.map((bed) => theBed(bed).replace(/^the /, "")));
  const text = `Your order stays. In the order ${names}, the walk would be ${sayPlural(steps, "step", "steps")} shorter.`;
  return { ...say(text, [episode]), saves: Math.round(saves * 10) / 10, beds: order.map(({ id }) => id) };
}

/** Legs of the walk, one before each stop; the first has nothing before it. */
export function legsOf(garden: Garden, beds: readonly Bed[]): readonly Leg[] {
  return beds.map((bed, index) => {
    const before = beds[index - 1];
    if (before === undefined) return { otherSite: false };
    if (before.site !== bed.site) {
      const [a, b] = [siteOf(garden, before.site)?.position, siteOf(garden, bed.site)?.position];
      return { otherSite: true, betweenSites: a === undefined || b === undefined ? undefined : overGround(a, b) };
    }
    if (before.plan === undefined || bed.plan === undefined) return { otherSite: false };
    const metres = metresBetween(before.plan, bed.plan);
    const [east, north] = [bed.plan.x - before.plan.x, bed.plan.y - before.plan.y];
    const direction = metres < 0.5 ? undefined : ((Math.atan2(east, north) * 180) / Math.PI + 360) % 360;
    return { otherSite: false, metres, direction };
  });
}

function metresBetween(a: PlanPoint, b: PlanPoint): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Great-circle distance, metres, by the haversine formula on a sphere of 6,371 km (mean radius of the earth, IUGG). */
function overGround(
  a: { readonly latitude: number; readonly longitude: number },
  b: { readonly latitude: number; readonly longitude: number },
): number {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const half = (from: number, to: number) => Math.sin(radians(to - from) / 2) ** 2;
  const h =
    half(a.latitude, b.latitude) +
    Math.cos(radians(a.latitude)) * Math.cos(radians(b.latitude)) * half(a.longitude, b.longitude);
  return 2 * 6_371_000 * Math.asin(Math.min(1, Math.sqrt(h)));
}

function siteOf(garden: Garden, id: string | undefined): Site | undefined {
  return id === undefined ? undefined : garden.sites.get(id);
}
