/** What all pages of a site are made from: the garden on a day, looked at once from every side the pages need. */

import { seasonStart, yearOf } from "../../calendar.ts";
import { bookOf, isNewToGarden, seasonBeginning } from "../../garden/index.ts";
import { type Locale, localeOf } from "../../language/index.ts";
import type { Bed, BedState, Day, Episode, Garden, GrowthSeries, NurseryLot, Planting } from "../../model.ts";
import { compare } from "../../order.ts";
import { coverSeries, heightSeries, type PublishedPhoto, type TimeLapse } from "../../photos/index.ts";
import { type Names, namesOfGarden } from "../../records/index.ts";
import { living } from "../../timeline/index.ts";
import { lapsesOf } from "../time-lapses.ts";
import { siteWords, type Words } from "../words/index.ts";
import { type ComparisonBook, comparisonBook } from "./comparison-book.ts";
import { type Links, linksBelow } from "./links.ts";
import { once } from "./on-demand.ts";
import { type PictureBook, pictureBook } from "./pictures.ts";

export interface View {
  readonly garden: Garden;
  readonly today: Day;
  /** First day of the season that today lies in. */
  readonly seasonStart: Day;
  readonly links: Links;
  /** What pages say around the data, and how numbers and days are said: both in the garden's language. */
  readonly words: Words;
  readonly locale: Locale;
  readonly book: PictureBook;
  /** Photos that lie over one another. */
  readonly comparisons: ComparisonBook;
  /** Those that this site may show. */
  readonly lapses: readonly TimeLapse[];
  readonly isPrivate: boolean;
  readonly covers: readonly GrowthSeries[];
  /** Heights measured this season. */
  readonly heights: {
    readonly byBed: ReadonlyMap<string, readonly MeasuredPlanting[]>;
    readonly byVariety: ReadonlyMap<string | undefined, readonly MeasuredPlanting[]>;
  };
  readonly states: ReadonlyMap<string, BedState>;
  /** Every planting of a variety, oldest first. */
  readonly plantings: ReadonlyMap<string, readonly Planting[]>;
  /** The newest lot of a variety sown this season that still waits to be planted. */
  readonly waitingLots: ReadonlyMap<string, NurseryLot>;
  /** Varieties never grown here before this season. */
  readonly newVarieties: ReadonlySet<string>;
  /** What the garden's names lead to, only to be asked; made when it is first wanted. */
  names(): Names;
  /** Names in the garden's own alphabetical order. */
  compare(a: string, b: string): number;
}

export interface MeasuredPlanting {
  readonly planting: Planting;
  readonly series: GrowthSeries;
}

export function viewGarden(
  garden: Garden,
  today: Day,
  base: string,
  copies: ReadonlyMap<string, PublishedPhoto>,
  comparisons: ReadonlyMap<string, PublishedPhoto>,
  { lapses = [], isPrivate = false }: { readonly lapses?: readonly TimeLapse[]; readonly isPrivate?: boolean } = {},
): View {
  const links = linksBelow(base);
  const gardenBook = bookOf(garden);
  const states = new Map([...garden.beds.keys()].map((bed) => [bed, gardenBook.stateOf(bed, today)]));
  const plantings = new Map([...garden.varieties.keys()].map((id) => [id, gardenBook.plantingsOf(id, today)]));
  const collator = new Intl.Collator(garden.settings.language, { numeric: true, sensitivity: "base" });
  const season = seasonStart(today, garden.settings.seasonStarts);
  const measured = measuredPlantings(garden, states, { from: season, to: today });
  return {
    garden,
    today,
    seasonStart: season,
    links,
    words: siteWords,
    locale: localeOf(garden.settings),
    book: pictureBook(garden, copies, links),
    comparisons: comparisonBook(garden, comparisons, links),
    lapses: lapsesOf(garden, lapses),
    isPrivate,
    covers: coverSeries(garden),
    heights: {
      byBed: Map.groupBy(measured, ({ planting }) => planting.bed),
      byVariety: Map.groupBy(measured, ({ planting }) => planting.variety),
    },
    states,
    plantings,
    waitingLots: new Map(
      garden.nurseryLots.flatMap((lot) =>
        lot.variety !== undefined && lot.closed === undefined && lot.sown >= season && lot.sown <= today
          ? [[lot.variety, lot]]
          : [],
      ),
    ),
    newVarieties: new Set([...garden.varieties.keys()].filter((variety) => isNewToGarden(garden, variety, today))),
    names: once(() => namesOfGarden(garden)),
    compare: (a, b) => collator.compare(a, b) || compare(a, b),
  };
}

function measuredPlantings(
  garden: Garden,
  states: ReadonlyMap<string, BedState>,
  { from, to }: { readonly from: Day; readonly to: Day },
): readonly MeasuredPlanting[] {
  const plantings = new Map(
    [...states.values()].flatMap(({ plantings: all }) => all.map((planting) => [planting.id, planting])),
  );
  return heightSeries(garden).flatMap((series) => {
    const planting = plantings.get(series.planting ?? "");
    const stretches = series.stretches
      .map((points) => points.filter(({ day }) => day >= from && day <= to))
      .filter((points) => points.length > 0);
    return planting === undefined || stretches.length === 0 ? [] : [{ planting, series: { ...series, stretches } }];
  });
}

export function livingIn(view: View, bed: string): readonly Planting[] {
  const known = view.states.get(bed);
  return known === undefined ? [] : living(known);
}

/** Beds that are in use or ever held anything, in order of site and name. */
export function bedsInOrder(view: View): readonly Bed[] {
  const { sites, beds } = view.garden;
  const rank = (bed: Bed) => {
    const site = bed.site === undefined ? undefined : sites.get(bed.site);
    return { order: site?.order ?? Number.POSITIVE_INFINITY, title: site?.title ?? "\uffff" };
  };
  return [...beds.values()].sort((a, b) => {
    const left = rank(a);
    const right = rank(b);
    if (left.order !== right.order) return left.order - right.order;
    return view.compare(left.title, right.title) || view.compare(a.title, b.title) || (a.id < b.id ? -1 : 1);
  });
}

/** By its own word or that of its site. */
export function isPrivateBed({ garden }: View, bed: Bed): boolean {
  return bed.private || (bed.site !== undefined && garden.sites.get(bed.site)?.private === true);
}

/** Newest first. */
export function episodesInOrder(garden: Garden): readonly Episode[] {
  return [...garden.episodes.values()].sort((a, b) => (a.day > b.day ? -1 : a.day < b.day ? 1 : a.id < b.id ? -1 : 1));
}

/** The season a day lies in, as the year in which it begins. */
export function seasonYear({ garden }: View, day: Day): number {
  return yearOf(seasonStart(day, garden.settings.seasonStarts));
}

/** "2026", or "2025/26" where seasons go over New Year. */
export function seasonLabel({ garden }: View, year: number): string {
  return seasonBeginning(year, garden.settings.seasonStarts).label;
}
