/** A page per variety, and the one sentence that says how it did. */

import { daysBetween } from "../../calendar.ts";
import { cropOf } from "../../crop-of.ts";
import { ageOf } from "../../facts/index.ts";
import { capital, cropName, digits, sayPicked } from "../../language/index.ts";
import type { Picked, Planting, Stage, Variety } from "../../model.ts";
import type { PerPlant } from "../../season/index.ts";
import { storyHtml } from "../story-html.ts";
import { heightsIn } from "./bed-growth.ts";
import { notebooks } from "./notebook.ts";
import { pagesOnDemand } from "./on-demand.ts";
import { sayPlanting } from "./planting-words.ts";
import { platePhotos } from "./plate-photos.ts";
import type { GrownHere, VarietyPage } from "./shapes.ts";
import type { Shown } from "./shown.ts";
import { saySource, sourceLine } from "./sources.ts";
import { varietyComparison, varietyPhotos, viewOfBed } from "./variety-photos.ts";
import { varietyPlate } from "./variety-plate.ts";
import { seasonLabel, seasonYear, type View } from "./view.ts";
import { amountOf } from "./year-strips.ts";

export type Harvests = ReadonlyMap<string, ReadonlyMap<number, Picked>>;

/** What a plant gave: by variety id, then the year. */
export type Yields = ReadonlyMap<string, ReadonlyMap<number, PerPlant>>;

export function varietyPages(view: View, shown: Shown, harvests: Harvests, yields: Yields): readonly VarietyPage[] {
  const notes = notebooks(view.garden);
  return pagesOnDemand(
    [...view.garden.varieties.values()].sort((a, b) => view.compare(a.title, b.title) || (a.id < b.id ? -1 : 1)),
    ({ id }) => ({ id }),
    (variety): VarietyPage => ({
      ...varietyPage(view, variety, shown, {
        picked: harvests.get(variety.id) ?? new Map(),
        yields: yields.get(variety.id) ?? new Map(),
      }),
      notes: notes.get(variety.id) ?? [],
    }),
  );
}

function varietyPage(
  view: View,
  variety: Variety,
  shown: Shown,
  { picked, yields }: { readonly picked: ReadonlyMap<number, Picked>; readonly yields: ReadonlyMap<number, PerPlant> },
): Omit<VarietyPage, "notes"> {
  const { garden, today, links, book } = view;
  const seenIn = shown.byVariety.get(variety.id) ?? [];
  const plate = varietyPlate(view, variety, { picked, yields, seenIn });
  const plantings = view.plantings.get(variety.id) ?? [];
  const now = plantings.filter((planting) => planting.ended === undefined);
  const crop = cropOf(garden, variety);
  const [own] = platePhotos(view, variety);
  // A photo of several varieties shows it as a bed's view does, and is nearer.
  const among = own ?? { photo: book.byVariety.get(variety.id)?.[0] };
  const ofBed = among.photo === undefined ? viewOfBed(view, now) : undefined;
  const first = among.photo ?? ofBed?.photo;
  return {
    id: variety.id,
    name: variety.title,
    crop: crop === undefined ? "" : cropName(crop, 1),
    cropHref: crop === undefined ? undefined : links.crop(crop.id),
    botanical: variety.botanical,
    sayAs: variety.sayAs,
    alsoSpelled: variety.alsoSpelled.length === 0 ? "" : view.words.sentences.alsoWritten(variety.alsoSpelled),
    isNew: view.newVarieties.has(variety.id),
    plate,
    caution: variety.caution === undefined ? undefined : capital(variety.caution),
    picture:
      first === undefined ? undefined : { ...book.picture(first), ...(ofBed?.caption && { caption: ofBed.caption }) },
    result: sayResult(view, variety, picked),
    source: sourceLine(view.words, variety.source),
    cameFrom: variety.source && saySource(view.words, variety.source),
    now: now.map((planting) => grownHere(view, planting)),
    before: beforeByYear(view, plantings),
    picked: [...picked]
      .sort(([a], [b]) => b - a)
      .map(([year, of]) => ({
        season: seasonLabel(view, year),
        amount: amountOf(view, of),
        times: digits(of.times),
      })),
    seenIn,
    about: storyHtml(variety.body),
    comparison: varietyComparison(view, plantings),
    heights: heightsIn(view, view.heights.byVariety.get(variety.id))[0],
    photos: varietyPhotos(view, variety, plantings, [
      ...(first === undefined ? [] : [first]),
      ...platePhotos(view, variety).map(({ photo }) => photo),
    ]),
  };

  function grownHere(of: View, planting: Planting): GrownHere {
    const bed = of.garden.beds.get(planting.bed);
    return {
      bed: { href: links.bed(planting.bed), text: bed?.title ?? planting.bed },
      text: sayPlanting(of.garden, planting, planting.ended ?? today),
      isNew: of.newVarieties.has(variety.id),
    };
  }

  function beforeByYear(of: View, all: readonly Planting[]): VarietyPage["before"] {
    const years = new Map<number, GrownHere[]>();
    for (const planting of all) {
      if (planting.ended === undefined) continue;
      const year = seasonYear(of, planting.ended);
      years.set(year, [...(years.get(year) ?? []), grownHere(of, planting)]);
    }
    return [...years]
      .sort(([a], [b]) => b - a)
      .map(([year, grown]) => ({ season: seasonLabel(of, year), plantings: grown }));
  }
}

/** One sentence: what it gave this year, else how it stands, else how it ended when it was last grown. */
export function sayResult(view: View, variety: Variety, picked: ReadonlyMap<number, Picked>): string {
  const { garden, today, locale } = view;
  const { result } = view.words.sentences;
  const day = (of: string) => locale.day(of, today);
  const sayAmount = (year: Picked | undefined) => (year === undefined ? "" : (sayPicked(year, garden.settings) ?? ""));
  const plantings = view.plantings.get(variety.id) ?? [];
  const now = plantings.filter((planting) => planting.ended === undefined);
  const bedName = (planting: Planting) => garden.beds.get(planting.bed)?.title ?? planting.bed;
  const thisYear = picked.get(seasonYear(view, today));
  if (thisYear?.first !== undefined) return result.picked(sayAmount(thisYear), day(thisYear.first), thisYear.times);
  const latest = furthest(now);
  if (latest !== undefined) {
    const bed = bedName(latest);
    if (latest.stage === "flowering") return result.flowering(bed, day(latest.stageSince));
    if (latest.stage === "fruiting") return result.fruiting(bed, day(latest.stageSince));
    if (latest.stage === "sown") return result.sown(bed, day(latest.sown ?? latest.since));
    if (ageOf(garden, latest, today).value.lasting) return result.standing(bed, daysBetween(latest.since, today));
    return result.growing([...new Set(now.map(bedName))], day(now[0]?.since ?? latest.since));
  }
  const lot = view.waitingLots.get(variety.id);
  if (lot !== undefined) return result.waiting(day(lot.sown));
  const last = plantings.at(-1);
  if (last?.ended === undefined) return result.never;
  const year = seasonYear(view, last.ended);
  const amount = sayAmount(picked.get(year));
  return result.last(
    year === seasonYear(view, today) ? undefined : seasonLabel(view, year),
    amount,
    last.stage === "lost",
  );
}

const STAGES_FURTHEST_FIRST: readonly Stage[] = ["picking", "fruiting", "flowering", "growing", "up", "sown"];

/** The lot that has come furthest speaks for the variety. */
function furthest(now: readonly Planting[]): Planting | undefined {
  return STAGES_FURTHEST_FIRST.map((stage) => now.find((planting) => planting.stage === stage)).find(
    (planting) => planting !== undefined,
  );
}
