/** The first public page: the latest film, what is in flower or being picked, the newest comparison, the week's changes. */

import { addDays } from "../../calendar.ts";
import { cropOf } from "../../crop-of.ts";
import { capital, changeSentence, cropName } from "../../language/index.ts";
import type { Day, Planting, Stage } from "../../model.ts";
import { changes, isBeingPicked } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import { newestPair } from "./comparison-book.ts";
import { episodeCard } from "./episode-pages.ts";
import type { EpisodeWraps } from "./episode-wrap.ts";
import { type FilmPlate, filmPlates } from "./film-plates.ts";
import { namelessCrops } from "./nameless-crops.ts";
import type { BedChanges, CropNames, HomePage, NamesNow } from "./shapes.ts";
import type { Shown } from "./shown.ts";
import type { SmallPlates } from "./small-plates.ts";
import { bedsInOrder, episodesInOrder, type View } from "./view.ts";

/** Lines of one bed's week before the bed's own page has to tell the rest. */
const LINES_A_BED = 3;

/** Beds of the week, and names at a stage, before other pages have to tell the rest: a few screens of a phone. */
const BEDS = 16;
const NAMES = 48;

/** Plates on the first page: what a phone scrolls through in a few strokes. */
const PLATES = 12;

/** Plates with photos from which on they stand before the garden's newest photo: a row of a desk's screen. */
const PICTURED = 3;

interface Films {
  readonly shown: Shown;
  readonly wraps: EpisodeWraps;
  readonly plates: SmallPlates;
}

export function publicHome(view: View, films: Films): HomePage {
  const { garden, book, links, words } = view;
  // The first page has the widest place for a photo.
  const newest = book.all.find((photo) => photo.bed !== undefined && book.isWide(photo)) ?? book.all[0];
  const latest = episodesInOrder(garden)[0];
  const compared = newestPair(garden, view.comparisons, links);
  const plates = latest === undefined ? growingNow(view, films.plates) : filmPlates(latest, films);
  const all = latest === undefined ? links.varieties : links.episode(latest.id);
  return {
    picture: newest === undefined ? undefined : book.picture(newest),
    about: storyHtml(garden.settings.body),
    latest: latest === undefined ? undefined : episodeCard(view, latest),
    plates: picturesFirst(plates).slice(0, PLATES),
    platesLead: plates.filter(({ plate }) => plate.thumb !== undefined).length >= PICTURED,
    morePlates:
      plates.length <= PLATES ? undefined : { href: all, text: words.home.morePlates(plates.length, latest?.title) },
    flowering: varietiesAt(view, "flowering"),
    picking: varietiesAt(view, "picking"),
    pair: compared?.pair,
    pairMore: compared && {
      href: links.thenAndNow(compared.bed),
      text: words.bed.thenAndNowOf(compared.pair.bed.text),
    },
    varieties: garden.varieties.size === 0 ? undefined : { href: links.varieties, text: words.home.all },
    changed: changedThisWeek(view),
  };
}

/** What somebody saw is known again by its picture; else they stand in their own order. */
function picturesFirst(plates: readonly FilmPlate[]): readonly FilmPlate[] {
  return plates.toSorted((a, b) => Number(b.plate.thumb !== undefined) - Number(a.plate.thumb !== undefined));
}

/** By name, crops without a variety among them. */
function growingNow(view: View, plates: SmallPlates): readonly FilmPlate[] {
  const grown = [...view.plantings].filter(([, all]) => all.some(({ ended }) => ended === undefined));
  const varieties = grown.flatMap(([id]) => plates.get(id) ?? []);
  const crops = namelessCrops(view).filter(({ isGrowing }) => isGrowing);
  return [...varieties, ...crops.map(({ plate }) => plate)]
    .sort((a, b) => view.compare(a.name, b.name))
    .map((plate) => ({ plate }));
}

function isAt(planting: Planting, stage: Stage, today: Day): boolean {
  return stage === "picking"
    ? isBeingPicked(planting, today)
    : planting.ended === undefined && planting.stage === stage;
}

/** Varieties of which some planting is at a stage, by crop. */
function varietiesAt(view: View, stage: Stage): NamesNow {
  const { garden, links, words } = view;
  const byCrop = new Map<string, CropNames["varieties"][number][]>();
  for (const [id, all] of view.plantings) {
    const variety = garden.varieties.get(id);
    if (variety === undefined || !all.some((planting) => isAt(planting, stage, view.today))) continue;
    const known = cropOf(garden, variety);
    const crop = known === undefined ? words.varieties.otherCrops : capital(cropName(known));
    byCrop.set(crop, [
      ...(byCrop.get(crop) ?? []),
      { href: links.variety(id), name: variety.title, isNew: view.newVarieties.has(id) },
    ]);
  }
  const crops = [...byCrop]
    .map(([crop, varieties]) => ({ crop, varieties: varieties.sort((a, b) => view.compare(a.name, b.name)) }))
    .sort((a, b) => view.compare(a.crop, b.crop));
  const all = crops.reduce((sum, { varieties }) => sum + varieties.length, 0);
  let left = NAMES;
  const shown = crops.flatMap(({ crop, varieties }): CropNames[] => {
    const few = varieties.slice(0, left);
    left -= few.length;
    return few.length === 0 ? [] : [{ crop, varieties: few }];
  });
  return {
    crops: shown,
    more: all <= NAMES ? undefined : { href: links.varieties, text: words.home.andMore(all - NAMES) },
  };
}

/** Beds that changed last come first when there are too many; else they stand in their own order. */
function changedThisWeek(view: View): readonly BedChanges[] {
  const all = changesOfWeek(view);
  if (all.length <= BEDS) return all;
  const last = ({ changes: [newest] }: BedChanges) => newest?.iso ?? "";
  return all.toSorted((a, b) => (last(a) < last(b) ? 1 : last(a) > last(b) ? -1 : 0)).slice(0, BEDS);
}

function changesOfWeek(view: View): readonly BedChanges[] {
  const { garden, today, links, locale } = view;
  return bedsInOrder(view).flatMap((bed) => {
    const seen = new Set<string>();
    const week = changes(garden, bed.id, addDays(today, -7), today)
      .map((change) => ({ day: change.day, text: changeSentence(change, garden) }))
      .filter(({ text }) => !seen.has(text) && seen.add(text));
    if (week.length === 0) return [];
    return [
      {
        bed: { href: links.bed(bed.id), text: bed.title },
        changes: week
          .slice(-LINES_A_BED)
          .toReversed()
          .map(({ day, text }) => ({
            iso: day,
            day: locale.day(day, today),
            text,
          })),
      },
    ];
  });
}
