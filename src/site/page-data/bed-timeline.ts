/** A bed's changes day by day, newest first, with a photo here and there. */
import { daysBetween } from "../../calendar.ts";
import type { Change, Day } from "../../model.ts";
import { sayDay } from "../../timeline/index.ts";
import type { ShownPhoto } from "./pictures.ts";
import type { DayOfChanges } from "./shapes.ts";
import type { View } from "./view.ts";

/** Days between two photos of one timeline: enough for a difference to be seen. */
const PHOTO_EVERY = 21;

/** `photos` newest first. */
export function bedTimeline(
  view: View,
  all: readonly Change[],
  photos: readonly ShownPhoto[],
): readonly DayOfChanges[] {
  const days = new Map<Day, { lines: Set<string>; photo?: ShownPhoto }>();
  for (const change of all) {
    const day = days.get(change.day) ?? { lines: new Set() };
    day.lines.add(change.text);
    days.set(change.day, day);
  }
  let last: Day | undefined;
  for (const photo of photos) {
    if (last !== undefined && daysBetween(photo.day, last) < PHOTO_EVERY) continue;
    last = photo.day;
    days.set(photo.day, { ...(days.get(photo.day) ?? { lines: new Set() }), photo });
  }
  return [...days]
    .sort(([a], [b]) => (a < b ? 1 : -1))
    .map(([iso, { lines, photo }]) => ({
      iso,
      day: sayDay(iso, { language: view.garden.settings.language, near: iso }),
      lines: [...lines],
      picture: photo === undefined ? undefined : view.book.picture(photo),
    }));
}
