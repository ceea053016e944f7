/** What earlier seasons had of trouble and loss, by crop: it comes back when the same crop stands again. */
import { seasonStart, yearBefore } from "../../calendar.ts";
import { cropOf } from "../../crop-of.ts";
import { cropName } from "../../language/index.ts";
import type { Crop, Day, Event, Garden } from "../../model.ts";
import type { BedOnTheDay, Lot } from "../bed-on-the-day.ts";

export interface Remembered {
  readonly crop: Crop;
  /** "leek moth" */
  readonly cause: string;
  /** "last year", "in 2024" */
  readonly when: string;
  /** Of last year, and not of an older one. */
  readonly lastYear: boolean;
  /** The bed it was in. */
  readonly bed?: string | undefined;
  /** The latest line that tells of it. */
  readonly event: Event;
  /** Open again on the same crop in this bed. */
  readonly again: boolean;
}

const made = new WeakMap<Garden["events"], ReadonlyMap<string, readonly Event[]>>();

/** Lines that tell of a trouble or a loss with its cause, by crop, oldest first. */
function troublesByCrop(garden: Garden): ReadonlyMap<string, readonly Event[]> {
  const { events } = garden;
  const known = made.get(events);
  if (known !== undefined) return known;
  const told = events.filter(
    (event) => (event.kind === "trouble" || event.kind === "lost") && event.cause !== undefined && !event.private,
  );
  const byCrop = Map.groupBy(told, (event) => cropOf(garden, event)?.id ?? "");
  made.set(events, byCrop);
  return byCrop;
}

/** Seasons a story is remembered for. */
const seasons = 2;

/** Troubles of the last seasons on what grows here now, the strongest first: come again, then in this bed, then the latest. */
export function rememberedAt(here: BedOnTheDay): readonly Remembered[] {
  const { garden } = here.index;
  const troubles = troublesByCrop(garden);
  const year = Number(here.season.slice(0, 4));
  const yearOf = (day: Day) => Number(seasonStart(day, garden.settings.seasonStarts).slice(0, 4));
  const crops = new Map(
    here.growing.flatMap(({ crop, planting }) => (crop === undefined || planting.private ? [] : [[crop.id, crop]])),
  );
  const found = [...crops.values()].flatMap((crop): Remembered[] => {
    const earlier = (troubles.get(crop.id) ?? []).filter(
      ({ day }) => day < here.season && year - yearOf(day) <= seasons,
    );
    return [...Map.groupBy(earlier, ({ cause = "" }) => bareCause(cause).toLowerCase()).values()].flatMap((events) => {
      const event = events.at(-1);
      if (event?.cause === undefined) return [];
      const ago = year - yearOf(event.day);
      return [
        {
          crop,
          cause: bareCause(event.cause),
          when: ago === 1 ? "last year" : `in ${event.day.slice(0, 4)}`,
          lastYear: ago === 1,
          bed: event.bed,
          event,
          again: openNow(here, crop, event.cause),
        },
      ];
    });
  });
  const worth = (one: Remembered) =>
    (one.again ? 8 : 0) +
    (one.lastYear ? 4 : 0) +
    (one.bed === here.bed.id ? 1 : 0) +
    (one.event.kind === "trouble" ? 2 : 0);
  return found.toSorted((a, b) => worth(b) - worth(a) || (a.event.day < b.event.day ? 1 : -1));
}

/** The same cause on the same crop in this bed, this season. */
function openNow(here: BedOnTheDay, crop: Crop, cause: string): boolean {
  return (troublesByCrop(here.index.garden).get(crop.id) ?? []).some(
    (event) =>
      event.day >= here.season &&
      event.day <= here.day &&
      event.bed === here.bed.id &&
      bareCause(event.cause ?? "").toLowerCase() === bareCause(cause).toLowerCase(),
  );
}

/** The cause without what was said behind a comma: "slugs, in one night" is "slugs". */
export function bareCause(cause: string): string {
  return (cause.split(/[,;(]/)[0] ?? cause).trim().replace(/^the\s+/i, "");
}

export interface LastSeason {
  readonly lots: readonly Event[];
  /** Bed ids in which it grew. */
  readonly beds: readonly string[];
  /** First day of the season on which it went into the ground. */
  readonly begun: Day;
}

/** How the same variety was begun in the season before, by plants set out or by seed, as this year's lot was. */
export function lastSeasonOf(lot: Lot, here: BedOnTheDay): LastSeason | undefined {
  const { variety } = lot.planting;
  if (variety === undefined || lot.planting.perennial) return undefined;
  const kind = lot.planting.planted === undefined ? "sowed" : "planted";
  const { seasonStarts } = here.index.garden.settings;
  const before = seasonStart(here.seasonEve, seasonStarts);
  const lots = here.index
    .everyLotOf(variety)
    .flatMap(({ events }) =>
      events.filter(
        (event) => event.kind === kind && event.day >= before && event.day < here.season && event.nursery !== true,
      ),
    );
  const [first] = lots.toSorted((a, b) => (a.day < b.day ? -1 : 1));
  if (first === undefined) return undefined;
  return { lots, beds: [...new Set(lots.flatMap(({ bed }) => bed ?? []))], begun: first.day };
}

/** Seasons in which the garden grew a variety, this one counted. */
export function seasonsGrown(lot: Lot, here: BedOnTheDay): number {
  const { variety, since } = lot.planting;
  if (variety === undefined) return 1;
  const { seasonStarts } = here.index.garden.settings;
  const days = [since, ...here.index.plantingsOf(variety, here.day).map((planting) => planting.since)];
  return new Set(days.map((day) => seasonStart(day, seasonStarts))).size;
}

/**
 * Whether a planting's crop was never grown in the garden before this season, though the notes know the whole season before it.
 * Of what the notes only find there, rhubarb for one, nobody knows.
 */
export function isFirstOfCrop({ crop, planting }: Lot, here: BedOnTheDay): boolean {
  if (crop === undefined || planting.implied) return false;
  const { garden } = here.index;
  const ofCrop = cropsSince(garden).get(crop.id);
  // What a private table tells of years ago is no record of all that grew then.
  const first = garden.events.find((event) => !event.private);
  return ofCrop !== undefined && ofCrop >= here.season && first !== undefined && first.day < yearBefore(here.season);
}

const crops = new WeakMap<Garden["events"], ReadonlyMap<string, Day>>();

/** The first day on which the notes speak of each crop. */
function cropsSince(garden: Garden): ReadonlyMap<string, Day> {
  const { events } = garden;
  const known = crops.get(events);
  if (known !== undefined) return known;
  const found = new Map<string, Day>();
  for (const event of events) {
    const id = cropOf(garden, event)?.id;
    if (id !== undefined && !found.has(id)) found.set(id, event.day);
  }
  crops.set(events, found);
  return found;
}

/** "leeks": what a crop is called of many, "tomato" where one stands. */
export function many(crop: Crop): string {
  return cropName(crop, 2);
}
