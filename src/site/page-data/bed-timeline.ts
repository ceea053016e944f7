/** A bed's changes and photos day by day, newest first; under each photo how old the plants were. */
import { changeSentence, withWordsOnce } from "../../language/index.ts";
import type { Change, Day } from "../../model.ts";
import type { ShownPhoto } from "./pictures.ts";
import { plantAges } from "./plant-ages.ts";
import type { DayOfChanges } from "./shapes.ts";
import type { View } from "./view.ts";

/** `photos` newest first. */
export function bedTimeline(
  view: View,
  all: readonly Change[],
  photos: readonly ShownPhoto[],
): readonly DayOfChanges[] {
  const days = new Map<Day, { lines: Set<string>; photos: ShownPhoto[] }>();
  const on = (day: Day) => {
    const known = days.get(day) ?? { lines: new Set(), photos: [] };
    days.set(day, known);
    return known;
  };
  // What only the calendar ended is no news of that day; the planting itself says that it is taken to be over.
  for (const change of withWordsOnce(all))
    if (change.kind !== "taken to be over") on(change.day).lines.add(changeSentence(change, view.garden));
  for (const photo of photos) on(photo.day).photos.push(photo);
  return [...days]
    .sort(([a], [b]) => (a < b ? 1 : -1))
    .map(([iso, { lines, photos: taken }]) => ({
      iso,
      day: view.locale.day(iso, iso),
      lines: [...lines],
      pictures: taken.map((photo) => ({
        picture: view.book.picture(photo),
        others: view.book.others(photo),
        age: photo.bed === undefined ? "" : plantAges(view.garden, photo.bed, photo.day),
      })),
    }));
}
