/** The first public page: the latest film, what is in flower or being picked, the newest comparison, the week's changes. */
import { addDays } from "../../calendar.ts";
import type { Stage } from "../../model.ts";
import { capital, changes } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import { newestPair } from "./comparison-book.ts";
import { episodeCard } from "./episode-pages.ts";
import type { BedChanges, CropNames, HomePage } from "./shapes.ts";
import { bedsInOrder, cropOf, episodesInOrder, type View } from "./view.ts";

/** Lines of one bed's week before the bed's own page has to tell the rest. */
const LINES_A_BED = 3;

export function publicHome(view: View): HomePage {
  const { garden, book, links } = view;
  // The first page has the widest place for a photo.
  const newest = book.all.find((photo) => photo.bed !== undefined && book.isWide(photo)) ?? book.all[0];
  const latest = episodesInOrder(garden)[0];
  return {
    picture: newest === undefined ? undefined : book.picture(newest),
    about: storyHtml(garden.settings.body),
    latest: latest === undefined ? undefined : episodeCard(view, latest),
    flowering: varietiesAt(view, "flowering"),
    picking: varietiesAt(view, "picking"),
    pair: newestPair(garden, view.comparisons, links),
    changed: changedThisWeek(view),
  };
}

/** Varieties of which some planting is at a stage, by crop. */
function varietiesAt(view: View, stage: Stage): readonly CropNames[] {
  const { garden, links, speech, words } = view;
  const byCrop = new Map<string, CropNames["varieties"][number][]>();
  for (const [id, all] of view.plantings) {
    const variety = garden.varieties.get(id);
    if (variety === undefined || !all.some((planting) => planting.ended === undefined && planting.stage === stage))
      continue;
    const known = cropOf(garden, variety);
    const crop = known === undefined ? words.varieties.otherCrops : capital(speech.crop(known));
    byCrop.set(crop, [
      ...(byCrop.get(crop) ?? []),
      { href: links.variety(id), name: variety.title, isNew: view.newVarieties.has(id) },
    ]);
  }
  return [...byCrop]
    .map(([crop, varieties]) => ({ crop, varieties: varieties.sort((a, b) => view.compare(a.name, b.name)) }))
    .sort((a, b) => view.compare(a.crop, b.crop));
}

function changedThisWeek(view: View): readonly BedChanges[] {
  const { garden, today, links, speech } = view;
  return bedsInOrder(view).flatMap((bed) => {
    const seen = new Set<string>();
    const week = changes(garden, bed.id, addDays(today, -7), today).filter(
      ({ text }) => !seen.has(text) && seen.add(text),
    );
    if (week.length === 0) return [];
    return [
      {
        bed: { href: links.bed(bed.id), text: bed.title },
        changes: week
          .slice(-LINES_A_BED)
          .toReversed()
          .map(({ day, text }) => ({
            iso: day,
            day: speech.day(day, today),
            text,
          })),
      },
    ];
  });
}
