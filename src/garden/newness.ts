/**
 * What is new to a garden: never sown or planted here before this season. What is new to viewers is another thing
 * (tour/candidates/came-and-went.ts): they may have seen it last month, or not yet what stands here for years.
 */
import { seasonStart, yearBefore } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import type { Day, Garden, Planting } from "../model.ts";

/**
 * Share of all varieties begun by a day that must have been begun before its season. In the first season of the notes a few
 * old perennials would otherwise make everything else new.
 */
const leastKnown = 0.2;

interface FirstDays {
  /** When each variety was first sown or planted. */
  readonly all: ReadonlyMap<string, Day>;
  /** By the open lines alone: an old private table names what somebody remembered, and not all that grew. */
  readonly told: ReadonlyMap<string, Day>;
}

const made = new WeakMap<Garden["events"], FirstDays>();

/** In the first season of the notes nobody can tell, so nothing is new. */
export function isNewToGarden(garden: Garden, variety: string, day: Day): boolean {
  if (isOwnSeed(garden, variety)) return false;
  const season = seasonStart(day, garden.settings.seasonStarts);
  const first = firstDays(garden).all.get(variety);
  return first !== undefined && first >= season && first <= day && knowsBefore(garden, season, day);
}

/** Seed saved here was grown here, whatever the notes go back to. */
function isOwnSeed({ varieties }: Garden, variety: string | undefined): boolean {
  return varieties.get(variety ?? "")?.source?.obtained === "saved";
}

function knowsBefore(garden: Garden, season: Day, day: Day): boolean {
  const { all, told } = firstDays(garden);
  if (!tellSeasonBefore(garden, season)) return false;
  const countTo = (days: FirstDays["all"], isIn: (first: Day) => boolean) => {
    let count = 0;
    for (const first of days.values()) if (isIn(first)) count += 1;
    return count;
  };
  return countTo(told, (first) => first < season) >= leastKnown * countTo(all, (first) => first <= day);
}

/**
 * Whether the open notes tell of the season before a season's first day, begun by some day. A single old day is no season of notes:
 * one line may be put in for a year long ago, and a private table tells what somebody remembered.
 */
function tellSeasonBefore({ events }: Garden, season: Day, begunBy: Day = season): boolean {
  const known = told.get(events) ?? new Map<string, boolean>();
  told.set(events, known);
  const key = `${season} ${begunBy}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const days = [...new Set(events.filter((event) => !event.private && event.day < season).map(({ day }) => day))];
  const begun = days.filter((day) => day < begunBy);
  const tells = begun.length > 1 && (days.at(-1) ?? "") >= yearBefore(season);
  known.set(key, tells);
  return tells;
}

/** By season: it is asked for every planting. */
const told = new WeakMap<Garden["events"], Map<string, boolean>>();

/**
 * Whether a planting's crop was never grown in the garden before the season of a day, though the notes know the whole season before
 * it. Of what the notes only find there, rhubarb for one, nobody knows.
 */
export function isFirstOfItsCrop(garden: Garden, planting: Planting, day: Day): boolean {
  const crop = cropOf(garden, planting);
  if (crop === undefined || planting.implied || isOwnSeed(garden, planting.variety)) return false;
  const season = seasonStart(day, garden.settings.seasonStarts);
  const of = cropsSince(garden).get(crop.id);
  return of !== undefined && of >= season && tellSeasonBefore(garden, season, yearBefore(season));
}

const crops = new WeakMap<Garden["events"], ReadonlyMap<string, Day>>();

/** The first day on which the notes speak of each crop. */
function cropsSince(garden: Garden): ReadonlyMap<string, Day> {
  const { events } = garden;
  const known = crops.get(events);
  if (known !== undefined) return known;
  const first = new Map<string, Day>();
  for (const event of events) {
    const id = cropOf(garden, event)?.id;
    if (id !== undefined && !first.has(id)) first.set(id, event.day);
  }
  crops.set(events, first);
  return first;
}

function firstDays({ events }: Garden): FirstDays {
  const known = made.get(events);
  if (known !== undefined) return known;
  const [all, told] = [new Map<string, Day>(), new Map<string, Day>()];
  for (const { kind, variety, day, private: hidden } of events) {
    if ((kind !== "sowed" && kind !== "planted") || variety === undefined) continue;
    for (const first of hidden ? [all] : [all, told]) if (day < (first.get(variety) ?? "9999")) first.set(variety, day);
  }
  const found = { all, told };
  made.set(events, found);
  return found;
}
