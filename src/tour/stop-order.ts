/** Which beds a tour stops at and in what order: the person's own list when there is one, else the plan. */

import type { Bed, Day, Episode, Garden, Site } from "../model.ts";
import { compare } from "../order.ts";
import type { Wishes } from "./wishes.ts";

/** The beds to stop at, in walking order, and those passed by with the reason. */
export interface StopOrder {
  readonly beds: readonly Bed[];
  /** The person listed the stops, so their order stays. */
  readonly listed: boolean;
  readonly passed: readonly { readonly bed: Bed; readonly why: "not in use" | "private" | "skip" | "not listed" }[];
  /** Ids in the episode's stops that no record and no note knows. */
  readonly unknown: readonly string[];
}

export function orderStops(
  garden: Garden,
  episode: Episode | undefined,
  day: Day,
  { keptBeds, skippedBeds }: Pick<Wishes, "keptBeds" | "skippedBeds">,
): StopOrder {
  const listed =
    episode === undefined || episode.stops.length === 0 ? undefined : episode.stops.map((stop) => stop.bed);
  const beds: Bed[] = [];
  const passed: { bed: Bed; why: StopOrder["passed"][number]["why"] }[] = [];
  const unknown: string[] = [];
  const wanted =
    listed === undefined ? inPlanOrder(garden) : [...listed, ...keptBeds].map((name) => bedNamed(garden, name) ?? name);
  for (const bed of wanted) {
    if (typeof bed === "string") unknown.push(bed);
    else if (beds.includes(bed) || passed.some((other) => other.bed === bed)) continue;
    else if (skippedBeds.has(bed.id)) passed.push({ bed, why: "skip" });
    else if (!inUse(bed, day)) passed.push({ bed, why: "not in use" });
    else if (listed === undefined && !keptBeds.has(bed.id) && isPrivate(garden, bed))
      passed.push({ bed, why: "private" });
    else beds.push(bed);
  }
  if (listed !== undefined) {
    for (const bed of inPlanOrder(garden)) {
      const known = beds.includes(bed) || passed.some((other) => other.bed === bed);
      if (!known && inUse(bed, day)) passed.push({ bed, why: isPrivate(garden, bed) ? "private" : "not listed" });
    }
  }
  return { beds, passed, unknown, listed: listed !== undefined };
}

/**
 * All beds: sites by the person's own order, then by title; within a site along its longer side, from the corner the
 * plan is measured from; beds without a place on the plan last, by title.
 */
function inPlanOrder(garden: Garden): readonly Bed[] {
  const bySite = Map.groupBy(garden.beds.values(), (bed) => bed.site);
  const siteIds = [...bySite.keys()].sort((a, b) => compareSites(siteOf(garden, a), siteOf(garden, b)));
  return siteIds.flatMap((id) => alongTheSite(bySite.get(id) ?? []));
}

function alongTheSite(beds: readonly Bed[]): readonly Bed[] {
  const placed = beds.flatMap((bed) => (bed.plan === undefined ? [] : [{ bed, ...bed.plan }]));
  const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  const alongX = placed.length === 0 || spread(placed.map(({ x }) => x)) >= spread(placed.map(({ y }) => y));
  placed.sort((a, b) => {
    const along = alongX ? a.x - b.x : a.y - b.y;
    const across = alongX ? a.y - b.y : a.x - b.x;
    return along || across || compare(a.bed.id, b.bed.id);
  });
  const unplaced = beds.filter((bed) => bed.plan === undefined).sort((a, b) => compare(a.title, b.title));
  return [...placed.map(({ bed }) => bed), ...unplaced];
}

function siteOf(garden: Garden, id: string | undefined): Site | undefined {
  return id === undefined ? undefined : garden.sites.get(id);
}

function compareSites(a: Site | undefined, b: Site | undefined): number {
  const order = (a?.order ?? Number.MAX_SAFE_INTEGER) - (b?.order ?? Number.MAX_SAFE_INTEGER);
  // Beds that name no site come last: nobody knows where they are.
  if (a === undefined || b === undefined) return (a === undefined ? 1 : 0) - (b === undefined ? 1 : 0);
  return order || compare(a.title, b.title);
}

/** A bed by id, title or another name, without regard to case. */
export function bedNamed(garden: Garden, name: string): Bed | undefined {
  const wanted = name.trim().toLowerCase();
  const byId = garden.beds.get(wanted);
  if (byId !== undefined) return byId;
  return [...garden.beds.values()].find((bed) =>
    [bed.title, ...bed.alsoCalled].some((other) => other.toLowerCase() === wanted),
  );
}

function inUse(bed: Bed, day: Day): boolean {
  return (bed.inUseSince ?? day) <= day && (bed.inUseUntil ?? day) >= day;
}

function isPrivate(garden: Garden, bed: Bed): boolean {
  return bed.private || siteOf(garden, bed.site)?.private === true;
}
