/**
 * What is new to a garden: never sown or planted here before this season. What is new to viewers is another thing
 * (tour/candidates/came-and-went.ts): they may have seen it last month, or not yet what stands here for years.
 */
import { seasonStart } from "../calendar.ts";
import type { Day, Garden } from "../model.ts";

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
  // Seed saved here was grown here, whatever the notes go back to.
  if (garden.varieties.get(variety)?.source?.obtained === "saved") return false;
  const season = seasonStart(day, garden.settings.seasonStarts);
  const first = firstDays(garden).all.get(variety);
  return first !== undefined && first >= season && first <= day && knowsBefore(garden, season, day);
}

function knowsBefore(garden: Garden, season: Day, day: Day): boolean {
  const { all, told } = firstDays(garden);
  const begun = [...all.values()].filter((first) => first <= day);
  const earlier = [...told.values()].filter((first) => first < season).length;
  return earlier > 0 && earlier >= leastKnown * begun.length;
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
