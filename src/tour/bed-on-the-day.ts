/** One bed as the tour finds it: what grows, what grew when viewers last saw it, and all that happened in between. */

import { addDays, seasonStart } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { plantsOf } from "../facts/index.ts";
import { type Book, eventsBehind } from "../garden/index.ts";
import { type Ground, sayOrdinal, type Voice } from "../language/index.ts";
import type {
  Bed,
  BedState,
  Change,
  Crop,
  Day,
  Event,
  GardenSettings,
  Gear,
  Planting,
  Site,
  Variety,
} from "../model.ts";
import { changes, living } from "../timeline/index.ts";
import type { Since } from "./brief.ts";
import type { ExpectedWindows } from "./expected-window.ts";
import { changesAfter, newsAfter } from "./since.ts";

/** One planting with what the sentences about it need. */
export interface Lot {
  readonly planting: Planting;
  readonly variety?: Variety | undefined;
  readonly crop?: Crop | undefined;
  readonly gear?: Gear | undefined;
  /** Plants alive; undefined when nobody counted them, or only the seeds were counted. */
  readonly plants?: number | undefined;
  /** The number is not exact. */
  readonly about: boolean;
  /** Events that spoke of it up to the day, oldest first. */
  readonly events: readonly Event[];
  /** Changes it went through up to the day, oldest first. */
  readonly changes: readonly Change[];
  /** The lines that tell how it began, then the variety's record. */
  readonly grounds: readonly Ground[];
  /** "first sowing", when the bed holds several lots of the variety from different days. */
  readonly turn?: string | undefined;
  /** As it stood when viewers last saw the bed; undefined when it was not there yet. */
  readonly before?: Planting | undefined;
}

export interface BedOnTheDay {
  readonly index: Book;
  readonly bed: Bed;
  readonly site?: Site | undefined;
  readonly day: Day;
  readonly since: Since;
  /** What happened after this day is news. */
  readonly newsAfter: Day;
  /** First day of the season in which the day lies. */
  readonly season: Day;
  /** The day before it. */
  readonly seasonEve: Day;
  readonly now: BedState;
  /** What lived in it when viewers last saw it, as it stood then; nothing when they never did. */
  readonly past: readonly Planting[];
  /** Alive, in order of beginning. */
  readonly growing: readonly Lot[];
  /** Ended since viewers last saw it (of a bed never shown: this season). What only the calendar ended is no news. */
  readonly ended: readonly Lot[];
  /** Everything that changed since viewers last saw the bed; of a bed they never saw, this season. */
  readonly changes: readonly Change[];
  /** Events behind those changes, oldest first. */
  readonly news: readonly Event[];
  /** When what has not come yet should, where that was reckoned. */
  readonly windows?: ExpectedWindows | undefined;
}

export function voiceOf(here: {
  readonly index: { readonly garden: { readonly settings: GardenSettings } };
  readonly day: Day;
}): Voice {
  return { settings: here.index.garden.settings, day: here.day };
}

export function bedOnTheDay(index: Book, bed: Bed, day: Day, since: Since, windows?: ExpectedWindows): BedOnTheDay {
  const { garden } = index;
  const { seasonStarts } = garden.settings;
  const from = changesAfter(since);
  const newsFrom = newsAfter(since, day, seasonStarts);
  const now = index.stateOf(bed.id, day);
  const past = livingOn(index, now, from);
  const seen = new Map(past.map((planting) => [planting.id, planting]));
  const lot = (planting: Planting) => lotOf(index, planting, day, seen.get(planting.id));
  const changed = changes(garden, bed.id, newsFrom, day);
  const season = seasonStart(day, seasonStarts);
  return {
    index,
    bed,
    site: bed.site === undefined ? undefined : garden.sites.get(bed.site),
    day,
    since,
    newsAfter: newsFrom,
    season,
    seasonEve: addDays(season, -1),
    now,
    past,
    growing: withTurns(living(now).map(lot)),
    ended: now.plantings
      .filter(({ ended, takenToBeOver }) => ended !== undefined && ended > newsFrom && takenToBeOver !== true)
      .map(lot),
    changes: changed,
    news: eventsBehind(changed, index.event),
    windows,
  };
}

/**
 * The plantings of a bed that lived on an earlier day, as they stood then. Read from the later state and their own
 * histories, which is much less work than building the bed up a second time.
 */
export function livingOn(index: Book, later: BedState, day: Day): readonly Planting[] {
  return later.plantings.flatMap((planting) => {
    if (planting.since > day || (planting.ended !== undefined && planting.ended <= day)) return [];
    return index.standing(planting, day) ?? [];
  });
}

/** Tells lots of one variety apart by their turn: "first sowing", "second planting". */
function withTurns(lots: readonly Lot[]): readonly Lot[] {
  const begun = ({ planting }: Lot) => planting.planted ?? planting.sown ?? planting.since;
  return lots.map((lot) => {
    const { variety } = lot.planting;
    const same = variety === undefined ? [] : lots.filter((other) => other.planting.variety === variety);
    const days = [...new Set(same.map(begun))].sort();
    if (days.length < 2) return lot;
    const word = same.every(({ planting }) => planting.planted === undefined) ? "sowing" : "planting";
    return { ...lot, turn: `${sayOrdinal(days.indexOf(begun(lot)) + 1)} ${word}` };
  });
}

/** A planting as it stands on a day, of any bed and season; `before` is the same planting as viewers last saw it. */
export function lotOf(index: Book, planting: Planting, day: Day, before?: Planting): Lot {
  const { garden } = index;
  const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
  const history = index.historyOf(planting).filter((change) => change.day <= day);
  const events = eventsBehind(history, index.event);
  const { alive } = plantsOf(garden, planting, day).value;
  return {
    planting,
    variety,
    crop: cropOf(garden, planting),
    gear: planting.gear === undefined ? undefined : garden.gear.get(planting.gear),
    plants: alive?.value,
    about: planting.count?.approx === true || planting.count?.upTo !== undefined,
    events,
    changes: history,
    grounds: beginnings(index, planting, events, variety),
    before,
  };
}

function beginnings(
  index: Book,
  planting: Planting,
  events: readonly Event[],
  variety: Variety | undefined,
): readonly Ground[] {
  const nursery = planting.planted === undefined ? undefined : index.nurseryLot(planting);
  const begun = events.filter(
    (event) =>
      event.kind === "sowed" || event.kind === "planted" || event.kind === "moved" || event.kind === "volunteer",
  );
  const grounds: Ground[] = [...(nursery === undefined ? [] : [nursery]), ...begun];
  return grounds.length > 0 ? grounds : [...events.slice(0, 1), ...(variety === undefined ? [] : [variety])];
}

/** Lots begun since viewers last saw the bed. In a bed they never saw everything is new to them. */
export function isNews(lot: Lot, here: BedOnTheDay): boolean {
  if (here.since.episode === undefined) return lot.planting.since > here.newsAfter;
  return lot.before === undefined;
}
