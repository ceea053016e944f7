/** A season in one row: a photo a week from the same spot, and an empty place for every week without one. */
import { addDays, daysBetween, weekday } from "../../calendar.ts";
import type { Day } from "../../model.ts";
import { type Frame, type Spot, saySpot } from "./comparison-book.ts";
import type { WeekStrip } from "./shapes.ts";
import type { View } from "./view.ts";

/** Weeks that make a strip worth the room. */
const FEWEST = 3;

/** Of the season in which the spot's newest photo lies; undefined when it has too few. */
export function weekStrip(view: View, spot: Spot): WeekStrip | undefined {
  const { locale, words } = view;
  const season = spot.frames.filter(({ photo }) => photo.day >= view.seasonStart);
  const byWeek = new Map<Day, Frame>(season.map((frame) => [mondayOf(frame.photo.day), frame]));
  const mondays = [...byWeek.keys()];
  const [first, last] = [mondays[0], mondays.at(-1)];
  const [start, end] = [season[0], season.at(-1)];
  if (mondays.length < FEWEST || first === undefined || last === undefined || !start || !end) return undefined;
  const all = Array.from({ length: daysBetween(first, last) / 7 + 1 }, (_, week) => addDays(first, week * 7));
  const near = end.photo.day;
  return {
    caption: `${saySpot(spot.viewpoint)}, ${words.sentences.compared.span(locale.day(start.photo.day, near), locale.day(near))}`,
    weeks: all.toReversed().map((monday) => {
      const frame = byWeek.get(monday);
      const iso = frame?.photo.day ?? monday;
      return {
        iso,
        day: locale.day(iso, near),
        picture: frame === undefined ? undefined : view.comparisons.pictures.picture(frame.photo),
      };
    }),
  };
}

function mondayOf(day: Day): Day {
  return addDays(day, 1 - weekday(day));
}
