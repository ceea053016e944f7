/**
 * The garden's book up to a day, as results need it: every planting with its pickings and its season, every trouble. Recaps,
 * forecasts and plans look things up here and never go through the changes themselves.
 */

import type { Weather } from "../almanac/index.ts";
import { cropOf } from "../crop-of.ts";
import { plantsOf } from "../facts/index.ts";
import {
  type Book,
  bookOf,
  eventsBehind,
  type Picking,
  type Season,
  seasonBeginning,
  seasonOf,
} from "../garden/index.ts";
import type { Bed, Crop, Day, Event, Garden, Planting, Site, Trouble, Variety } from "../model.ts";
import { betweenDays, compare } from "../order.ts";

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
  const book = bookOf(garden);
  const pickings = betweenDays(book.pickings, "", until);
  const beds = [...garden.changes.keys()].map((bed) => book.stateOf(bed, until));
  const current = seasonOf(until, seasonStarts).year;
  const lots = beds
    .flatMap(({ plantings }) => plantings)
    .map((planting) => lotOf(book, planting, until))
    .sort((a, b) => compare(a.planting.since, b.planting.since) || compare(a.planting.id, b.planting.id));
  const events = betweenDays(garden.events, "", until);
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
    pickings,
    troubles: beds
      .flatMap(({ bed, troubles }) => troubles.map((trouble) => ({ trouble, bed })))
      .sort((a, b) => compare(a.trouble.opened, b.trouble.opened)),
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

/** Lots of which all that is on record was over by the day they were last asked for: later seasons tell the same of them. */
const closed = new WeakMap<Garden, WeakMap<Planting, Lot>>();

function lotOf(book: Book, planting: Planting, until: Day): Lot {
  const known = closed.get(book.garden) ?? new WeakMap<Planting, Lot>();
  closed.set(book.garden, known);
  const isOver =
    planting.ended !== undefined &&
    (book.historyOf(planting).at(-1)?.day ?? "") <= until &&
    (book.pickingsOf(planting).at(-1)?.day ?? "") <= until;
  const before = isOver ? known.get(planting) : undefined;
  if (before !== undefined) return before;
  const lot = readLot(book, planting, until);
  if (isOver) known.set(planting, lot);
  return lot;
}

function readLot(book: Book, planting: Planting, until: Day): Lot {
  const { garden } = book;
  const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
  const history = book.historyOf(planting).filter(({ day }) => day <= until);
  const events = eventsBehind(history, book.event);
  const pickings = book.pickingsOf(planting).filter(({ day }) => day <= until);
  const firstPicked = pickings[0]?.day;
  const counts = firstPicked ?? planting.ended ?? until;
  return {
    planting,
    variety,
    crop: cropOf(garden, planting),
    bed: garden.beds.get(planting.bed),
    events,
    pickings,
    plants: plantsOf(garden, planting, until).value.borne,
    firstFlower: events.find(({ kind }) => kind === "flowered")?.day,
    firstPicked,
    season: seasonOf(counts, garden.settings.seasonStarts).year,
  };
}
