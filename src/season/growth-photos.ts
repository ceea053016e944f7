/** The same spot through a season: its first photo, the one that shows the bed at its fullest, and its last. */

import { daysBetween } from "../calendar.ts";
import { type Sentence, say } from "../language/index.ts";
import type { Day, Photo } from "../model.ts";
import { compare } from "../order.ts";
import { toldCover } from "../photos/index.ts";
import type { PhotoSet, RecapPhoto } from "./recap.ts";
import { recapWords } from "./recap-words/words.ts";
import type { SeasonBook } from "./season-book.ts";

/** Days between the first and the last photo before they are worth comparing. */
const leastApart = 21;

type Dated = Photo & { readonly day: Day; readonly bed: string; readonly viewpoint: string };

/** One set per bed, from the viewpoint with most photos in the stretch of days. */
export function photoSets(book: SeasonBook, from: Day, to: Day): readonly PhotoSet[] {
  const photos = book.garden.photos.filter(
    (photo): photo is Dated =>
      photo.bed !== undefined &&
      photo.viewpoint !== undefined &&
      photo.day !== undefined &&
      photo.day >= from &&
      photo.day <= to &&
      book.garden.beds.has(photo.bed),
  );
  return [...Map.groupBy(photos, ({ bed }) => bed)]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([bed, all]) => {
      const [best] = [...Map.groupBy(all, ({ viewpoint }) => viewpoint).values()].sort((a, b) => b.length - a.length);
      return best === undefined ? [] : setOf(book, bed, best, to);
    });
}

function setOf(book: SeasonBook, id: string, all: readonly Dated[], to: Day): readonly PhotoSet[] {
  const photos = all.toSorted((a, b) => compare(a.day, b.day) || compare(a.path, b.path));
  const [first, last] = [photos[0], photos.at(-1)];
  const bed = book.garden.beds.get(id);
  if (first === undefined || last === undefined || bed === undefined) return [];
  if (daysBetween(first.day, last.day) < leastApart) return [];
  const fullest = photos.toSorted((a, b) => fullness(book, b) - fullness(book, a) || compare(a.day, b.day))[0];
  const peak = fullest === undefined || fullest.day === first.day || fullest.day === last.day ? undefined : fullest;
  const days: readonly RecapPhoto[] = [first, ...(peak === undefined ? [] : [peak]), last].map(({ path, day }) => ({
    path,
    day,
  }));
  return [
    {
      ...setSentence(book, bed, first, peak, last, to),
      bed: id,
      title: bed.title,
      viewpoint: first.viewpoint,
      first: days[0] as RecapPhoto,
      peak: peak === undefined ? undefined : (days[1] as RecapPhoto),
      last: days.at(-1) as RecapPhoto,
    },
  ];
}

/** Measured cover where photos were measured; else how many plantings had stood for a month and not yet ended. */
function fullness(book: SeasonBook, photo: Dated): number {
  const measured = coverOf(book, photo.path);
  if (measured !== undefined) return measured;
  return book.lotsIn(photo.bed).filter(({ planting }) => {
    const begun = planting.planted ?? planting.since;
    return daysBetween(begun, photo.day) >= 30 && (planting.ended === undefined || planting.ended > photo.day);
  }).length;
}

function coverOf({ garden }: SeasonBook, path: string): number | undefined {
  return garden.growth?.photos.find(({ photo }) => photo === path)?.cover;
}

function setSentence(
  book: SeasonBook,
  bed: SeasonBook["garden"]["beds"] extends ReadonlyMap<string, infer One> ? One : never,
  first: Dated,
  peak: Dated | undefined,
  last: Dated,
  to: Day,
): Sentence {
  const { settings } = book.garden;
  const [a, b] = [coverOf(book, first.path), coverOf(book, (peak ?? last).path)];
  const of = book.garden.growth?.photos.find(({ photo }) => photo === first.path)?.coverOf ?? "photo";
  const text = recapWords.photos(
    {
      bed,
      days: [first, ...(peak === undefined ? [] : [peak]), last].map(({ day }) => day),
      span: daysBetween(first.day, last.day),
      green: a === undefined || b === undefined || Math.abs(b - a) < toldCover ? undefined : { from: a, to: b, of },
    },
    { settings, day: to },
  );
  return say(text, [bed]);
}
