/** The page "then and now" of each bed: from one spot, the last tour against now, and the same week of the years before. */
import { daysBetween, inYear, monthDayOf, yearOf } from "../../calendar.ts";
import { sameWeekDays } from "../../photos/index.ts";
import { comparisonOf, type Frame, frameNear, pairOf, type Spot } from "./comparison-book.ts";
import { lapseOf } from "./lapse.ts";
import type { PicturePair, ThenAndNowPage } from "./shapes.ts";
import { bedsInOrder, type View } from "./view.ts";
import { weekStrip } from "./week-strip.ts";

/** Newest photos older than this many days are not "now". */
const NOW = 14;

export function thenAndNowPages(view: View): readonly ThenAndNowPage[] {
  const book = view.comparisons;
  return bedsInOrder(view).flatMap((bed): ThenAndNowPage[] => {
    const spots = (book.byBed.get(bed.id) ?? []).flatMap((spot) => {
      const pairs = pairsOf(view, spot);
      const comparison = comparisonOf(view.garden, book, view.links, spot);
      return comparison === undefined
        ? []
        : [{ comparison, pairs, strip: weekStrip(view, spot), lapse: lapseOf(view, spot) }];
    });
    if (spots.length === 0) return [];
    const method = view.words.sentences.compared.longMethod;
    return [{ id: bed.id, bed: { href: view.links.bed(bed.id), text: bed.title }, method, spots }];
  });
}

function pairsOf(view: View, spot: Spot): readonly { heading: string; pair: PicturePair }[] {
  const { garden, today, links, locale, comparisons: book } = view;
  const { compared } = view.words.sentences;
  const now = spot.frames.at(-1);
  if (now === undefined) return [];
  const { day } = now.photo;
  const isNow = daysBetween(day, today) <= NOW;
  const until = isNow ? compared.now : locale.day(day, today);
  const pair = (before: Frame) => pairOf(garden, book, links, spot, { before, after: now });
  const found: { heading: string; pair: PicturePair }[] = [];

  const tour = [...garden.episodes.values()]
    .filter(
      ({ status, stops, day: filmed }) =>
        status === "published" && filmed < day && stops.some(({ bed }) => bed === spot.bed),
    )
    .reduce<string | undefined>(
      (last, { day: filmed }) => (last === undefined || filmed > last ? filmed : last),
      undefined,
    );
  const then = tour === undefined ? undefined : frameNear(spot.frames, tour, sameWeekDays);
  if (tour !== undefined && then !== undefined && then !== now)
    found.push({ heading: compared.tour(locale.day(tour, today), until), pair: pair(then) });

  const years = new Set(spot.frames.map(({ photo }) => yearOf(photo.day)).filter((year) => year < yearOf(day)));
  for (const year of [...years].sort((a, b) => b - a)) {
    const before = frameNear(spot.frames, inYear(monthDayOf(day), year), sameWeekDays);
    if (before === undefined) continue;
    found.push({ heading: compared.sameWeek(yearOf(day) - year, until), pair: pair(before) });
  }
  return found;
}
