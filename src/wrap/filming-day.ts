/** The garden as it was on the day of the film: what stood in which bed, what had lately ended there, what waited to go out. */
import { addDays } from "../calendar.ts";
import { bookOf } from "../garden/index.ts";
import type { Bed, BedState, Day, Episode, Garden, Planting } from "../model.ts";
import { changes, foldChanges, living } from "../timeline/index.ts";

export interface BedThatDay {
  readonly bed: Bed;
  readonly state: BedState;
  readonly living: readonly Planting[];
  /** Ended within the season before: films still speak of them. */
  readonly ended: readonly Planting[];
  /** Begun in the weeks after: films speak of what goes in next. */
  readonly coming: readonly Planting[];
}

export interface FilmingDay {
  readonly garden: Garden;
  readonly episode: Episode;
  readonly day: Day;
  /** Every bed in use, by id. */
  readonly beds: ReadonlyMap<string, BedThatDay>;
  /** Beds in which a variety lived that day, by variety id. */
  readonly growing: ReadonlyMap<string, readonly string[]>;
  /** Varieties with plants waiting to be planted out. */
  readonly nursery: ReadonlySet<string>;
}

/** Days after its end for which a planting is still spoken of at its bed, and days before its beginning. */
const SPOKEN_OF_AFTER = 150;
const SPOKEN_OF_BEFORE = 60;

export function filmingDay(garden: Garden, episode: Episode): FilmingDay {
  const { day } = episode;
  const since = addDays(day, -SPOKEN_OF_AFTER);
  const beds = new Map<string, BedThatDay>();
  const growing = new Map<string, string[]>();
  for (const bed of garden.beds.values()) {
    const then = bookOf(garden).stateOf(bed.id, day);
    const alive = living(then);
    const ended = then.plantings.filter((lot) => lot.ended !== undefined && lot.ended >= since);
    const soon = addDays(day, SPOKEN_OF_BEFORE);
    const later = foldChanges(then, changes(garden, bed.id, day, soon), soon);
    const coming = later.plantings.filter((lot) => lot.since > day);
    beds.set(bed.id, { bed, state: then, living: alive, ended, coming });
    for (const variety of new Set(alive.map((lot) => lot.variety))) {
      if (variety !== undefined) growing.set(variety, [...(growing.get(variety) ?? []), bed.id]);
    }
  }
  const nursery = new Set<string>();
  for (const lot of garden.nurseryLots) {
    if (lot.variety !== undefined && lot.sown <= day && (lot.closed === undefined || lot.closed > day)) {
      nursery.add(lot.variety);
    }
  }
  return { garden, episode, day, beds, growing, nursery };
}
