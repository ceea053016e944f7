/** The first public page: the latest film, what is in flower or being picked, the newest comparison, the week's changes. */
import { addDays } from "../../calendar.ts";
import type { Planting, Stage } from "../../model.ts";
import { changes, sayDay, sayList, sayWeekday } from "../../timeline/index.ts";
import { storyHtml } from "../story-html.ts";
import { episodeCard } from "./episode-pages.ts";
import { pairOf } from "./pictures.ts";
import type { BedChanges, HomePage, VarietyCard } from "./shapes.ts";
import { bedsInOrder, cropOf, episodesInOrder, type View } from "./view.ts";

/** Lines of one bed's week before the bed's own page has to tell the rest. */
const LINES_A_BED = 3;

export function publicHome(view: View): HomePage {
  const { garden, book, links } = view;
  const newest = book.all.find((photo) => photo.bed !== undefined) ?? book.all[0];
  const bed = newest?.bed === undefined ? undefined : garden.beds.get(newest.bed);
  const latest = episodesInOrder(garden)[0];
  return {
    picture: newest === undefined ? undefined : book.picture(newest),
    pictureBed: bed === undefined ? undefined : { href: links.bed(bed.id), text: bed.title },
    about: storyHtml(garden.settings.body),
    latest: latest === undefined ? undefined : episodeCard(view, latest),
    flowering: varietiesIn(view, "flowering"),
    picking: varietiesIn(view, "picking"),
    pair: pairOf(garden, book, book.all, links),
    changed: changedThisWeek(view),
  };
}

/** Varieties of which some planting is at a stage, latest come first. */
function varietiesIn(view: View, stage: Stage): readonly VarietyCard[] {
  const { garden, links } = view;
  const found: { plantings: Planting[]; since: string; card: Omit<VarietyCard, "where"> }[] = [];
  for (const [id, all] of view.plantings) {
    const variety = garden.varieties.get(id);
    const plantings = all.filter((planting) => planting.ended === undefined && planting.stage === stage);
    if (variety === undefined || plantings.length === 0) continue;
    found.push({
      plantings,
      since:
        plantings
          .map(({ stageSince }) => stageSince)
          .sort()
          .at(-1) ?? "",
      card: {
        href: links.variety(id),
        name: variety.title,
        crop: cropOf(garden, variety)?.name ?? "",
        isNew: view.newVarieties.has(id),
      },
    });
  }
  return found
    .sort((a, b) => (a.since === b.since ? view.compare(a.card.name, b.card.name) : a.since < b.since ? 1 : -1))
    .map(({ plantings, card }) => ({
      ...card,
      where: sayList([...new Set(plantings.map(({ bed }) => garden.beds.get(bed)?.title ?? bed))]),
    }));
}

function changedThisWeek(view: View): readonly BedChanges[] {
  const { garden, today, links } = view;
  return bedsInOrder(view).flatMap((bed) => {
    const seen = new Set<string>();
    const week = changes(garden, bed.id, addDays(today, -7), today).filter(
      ({ text }) => !seen.has(text) && seen.add(text),
    );
    if (week.length === 0) return [];
    return [
      {
        bed: { href: links.bed(bed.id), text: bed.title },
        changes: week.slice(-LINES_A_BED).map(({ day, text }) => ({
          iso: day,
          day: `${sayWeekday(day, garden.settings)} ${sayDay(day, { language: garden.settings.language, near: today })}`,
          text,
        })),
      },
    ];
  });
}
