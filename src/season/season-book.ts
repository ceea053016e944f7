/**
 * The garden's book up to a day, as results need it: every planting with its pickings and its season, every trouble. Recaps,
 * forecasts and plans look things up here and never go through the changes themselves.
 */
import type { Weather } from "../almanac/index.ts";
import { plantsOf } from "../facts/index.ts";
import { type Book, bookOf, type Picking, type Season, seasonBeginning, seasonOf } from "../garden/index.ts";
import type { Bed, Change, Crop, Day, Event, Garden, Planting, Site, Trouble, Variety } from "../model.ts";

/** One planting as it stands on the book's day, with its history. */
export interface Lot {
  readonly planting: Planting;
  readonly variety?: Variety | undefined;
  readonly crop?: Crop | undefined;
  readonly bed?: Bed | undefined;
  /** Lines that spoke of it, oldest first. */
  readonly events: readonly Event[];
  readonly pickings: readonly Picking[];
  /** Plants that were there to bear; undefined when nobody counted plants. */
  readonly plants?: number | undefined;
  readonly firstFlower?: Day | undefined;
  readonly firstPicked?: Day | undefined;
  /** The season it counts for: of its first picking; while nothing was picked, of its end or else of the day of the book. */
  readonly season: number;
}

export interface BedTrouble {
  readonly trouble: Trouble;
  readonly bed: string;
}

export interface SeasonBook {
  readonly garden: Garden;
  readonly weather: Weather;
  /** The last day of which anything is known. */
  readonly until: Day;
  /** From the first note to `until`, oldest first, without holes. */
  readonly seasons: readonly Season[];
  /** In order of beginning. */
  readonly lots: readonly Lot[];
  /** In order of day. */
  readonly pickings: readonly Picking[];
  /** In order of opening, with the bed each was seen in. */
  readonly troubles: readonly BedTrouble[];
  /** Up to `until`, in order of day. */
  readonly events: readonly Event[];
  lotsOf(variety: string): readonly Lot[];
  lotsOfCrop(crop: string): readonly Lot[];
  lotsIn(bed: string): readonly Lot[];
  siteOf(bed: string): Site | undefined;
}

export function seasonBook(garden: Garden, weather: Weather, until: Day): SeasonBook {
  const { seasonStarts } = garden.settings;
  const read = readChanges(bookOf(garden), until);
  const current = seasonOf(until, seasonStarts).year;
  const lots = [...read.plantings.values()]
    .map((planting) => lotOf(garden, planting, read, until))
    .sort((a, b) => compare(a.planting.since, b.planting.since) || compare(a.planting.id, b.planting.id));
  const events = garden.events.filter(({ day }) => day <= until);
  const firstDay = [events[0]?.day, lots[0]?.planting.since].filter((day) => day !== undefined).sort()[0] ?? until;
  const firstYear = Math.min(current, seasonOf(firstDay, seasonStarts).year);
  const seasons = Array.from({ length: current - firstYear + 1 }, (_, i) =>
    seasonBeginning(firstYear + i, seasonStarts),
  );
  const byVariety = Map.groupBy(lots, ({ planting }) => planting.variety ?? "");
  const byCrop = Map.groupBy(lots, ({ crop }) => crop?.id ?? "");
  const byBed = Map.groupBy(lots, ({ planting }) => planting.bed);
  return {
    garden,
    weather,
    until,
    seasons,
    lots,
    pickings: read.pickings,
    troubles: [...read.troubles.values()].sort((a, b) => compare(a.trouble.opened, b.trouble.opened)),
    events,
    lotsOf: (variety) => byVariety.get(variety) ?? [],
    lotsOfCrop: (crop) => byCrop.get(crop) ?? [],
    lotsIn: (bed) => byBed.get(bed) ?? [],
    siteOf(bed) {
      const site = garden.beds.get(bed)?.site;
      return site === undefined ? undefined : garden.sites.get(site);
    },
  };
}

interface ReadChanges {
  readonly plantings: ReadonlyMap<string, Planting>;
  readonly eventsOf: ReadonlyMap<string, Event[]>;
  readonly pickings: readonly Picking[];
  readonly pickingsOf: ReadonlyMap<string, Picking[]>;
  readonly troubles: ReadonlyMap<string, BedTrouble>;
}

/** Once through everything that changed. What the calendar brings after the day (a season's end) is not known yet. */
function readChanges(book: Book, until: Day): ReadChanges {
  const plantings = new Map<string, Planting>();
  const eventsOf = new Map<string, Event[]>();
  const troubles = new Map<string, BedTrouble>();
  const pickings = book.pickings.filter(({ day }) => day <= until);
  const pickingsOf = new Map<string, Picking[]>();
  for (const [bed, changes] of book.garden.changes) {
    for (const change of changes) {
      if (change.day > until) break;
      const event = change.event === undefined ? undefined : book.event(change.event);
      const touched = change.effect.plantings ?? [];
      for (const planting of touched) plantings.set(planting.id, planting);
      for (const trouble of change.effect.troubles ?? []) troubles.set(`${bed} ${trouble.id}`, { trouble, bed });
      if (event !== undefined && event.day === change.day) {
        for (const id of touchedIds(change)) noteEvent(eventsOf, id, event);
      }
    }
  }
  for (const picking of pickings)
    if (picking.planting !== undefined) listIn(pickingsOf, picking.planting).push(picking);
  return { plantings, eventsOf, pickings, pickingsOf, troubles };
}

function touchedIds({ planting, effect }: Change): readonly string[] {
  const ids = new Set(effect.plantings?.map(({ id }) => id));
  if (planting !== undefined) ids.add(planting);
  for (const trouble of effect.troubles ?? []) for (const id of trouble.plantings) ids.add(id);
  return [...ids];
}

function noteEvent(eventsOf: Map<string, Event[]>, planting: string, event: Event): void {
  const known = listIn(eventsOf, planting);
  if (known.at(-1) !== event) known.push(event);
}

function lotOf(garden: Garden, planting: Planting, { eventsOf, pickingsOf }: ReadChanges, until: Day): Lot {
  const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
  const crop = planting.crop ?? variety?.crop;
  const events = eventsOf.get(planting.id) ?? [];
  const pickings = pickingsOf.get(planting.id) ?? [];
  const firstPicked = pickings[0]?.day;
  const counts = firstPicked ?? planting.ended ?? until;
  return {
    planting,
    variety,
    crop: crop === undefined ? undefined : garden.crops.get(crop),
    bed: garden.beds.get(planting.bed),
    events,
    pickings,
    plants: plantsOf(garden, planting, until).value.borne,
    firstFlower: events.find(({ kind }) => kind === "flowered")?.day,
    firstPicked,
    season: seasonOf(counts, garden.settings.seasonStarts).year,
  };
}

function listIn<T>(lists: Map<string, T[]>, key: string): T[] {
  const known = lists.get(key);
  if (known !== undefined) return known;
  const made: T[] = [];
  lists.set(key, made);
  return made;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
