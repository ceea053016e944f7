/** When viewers last saw a bed: the last published tour that showed it, else the bed's own start. */

import { addDays, seasonStart } from "../calendar.ts";
import { sayDay } from "../language/index.ts";
import type { Bed, Day, Episode, Garden } from "../model.ts";
import type { Since } from "./brief.ts";

/** Published episodes filmed before the day that stopped at a bed, oldest first. */
export function publishedTours(garden: Garden, day: Day, but: string | undefined): readonly Episode[] {
  return [...garden.episodes.values()]
    .filter(
      (episode) =>
        episode.status === "published" &&
        episode.stops.length > 0 &&
        episode.id !== but &&
        episode.day < day &&
        (episode.published ?? episode.day) <= day,
    )
    .sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.id < b.id ? -1 : 1));
}

/** Episodes filmed before the day, whether or not their records tell that they are out and what they show. */
export function filmsBefore(garden: Garden, day: Day, but: string | undefined): readonly Episode[] {
  return [...garden.episodes.values()].filter((episode) => episode.id !== but && episode.day < day);
}

/** Whether viewers may have seen a bed that no record says they did: a film before the day does not tell its stops. */
export function mayHaveBeenSeen(garden: Garden, since: Since, day: Day): boolean {
  return since.episode === undefined && filmsBefore(garden, day, undefined).some(({ stops }) => stops.length === 0);
}

/** `tours` as `publishedTours` gives them; `day` is the filming day. */
export function sinceFor(garden: Garden, bed: Bed, day: Day, tours: readonly Episode[]): Since {
  const { language } = garden.settings;
  const tour = tours.findLast((episode) => episode.stops.some((stop) => stop.bed === bed.id));
  if (tour !== undefined) {
    const last = tour === tours.at(-1) ? "the last tour" : `the tour of ${sayDay(tour.day, { language, near: day })}`;
    return { day: tour.day, episode: tour.id, title: tour.title, text: `since ${last}` };
  }
  const start = bedStart(garden, bed, day);
  return { day: start, text: "for the first time" };
}

/** The first day on which anything is known of a bed; never after `day`. */
function bedStart(garden: Garden, bed: Bed, day: Day): Day {
  const first = garden.changes.get(bed.id)?.[0]?.day;
  const known = [bed.inUseSince, first].filter((each) => each !== undefined).sort();
  const start = known[0] ?? day;
  return start < day ? start : day;
}

/**
 * The day after which changes count as new. A tour showed what there was on its filming day; a bed that no tour has
 * shown is new from its first day on.
 */
export function changesAfter(since: Since): Day {
  return since.episode === undefined ? addDays(since.day, -1) : since.day;
}

/**
 * The day after which things are worth telling as news. A bed that no tour ever showed may be years old; what happened
 * before this season is its history, not its news.
 */
export function newsAfter(since: Since, day: Day, seasonStarts: string): Day {
  const from = changesAfter(since);
  if (since.episode !== undefined) return from;
  const season = addDays(seasonStart(day, seasonStarts), -1);
  if (season > from) return season;
  return from;
}
