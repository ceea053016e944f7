/**
 * The one index of a garden: its plantings with what they went through, its pickings, its beds on any day. Made once for a garden;
 * briefs, recaps, wraps and pages look things up here and do not go through the changes themselves.
 */

import type { BedState, Change, Day, Event, Garden, NurseryLot, Planting } from "../model.ts";
import { compare } from "../order.ts";
import { changes, foldChanges, state } from "../timeline/index.ts";
import { type Picking, pickingsIn } from "./pickings.ts";

/** A planting of any bed and season as it last stood, with all it went through. Compare days before use: it may reach past the tour. */
export interface PastLot {
  readonly planting: Planting;
  /** Oldest first. */
  readonly changes: readonly Change[];
  /** Oldest first. */
  readonly events: readonly Event[];
}

export interface Book {
  readonly garden: Garden;
  readonly event: (id: string) => Event | undefined;
  /** Every change of a planting, oldest first. */
  readonly historyOf: (planting: Pick<Planting, "id">) => readonly Change[];
  /** A planting as it stood at the end of a day; undefined before it began. */
  readonly standing: (planting: Pick<Planting, "id">, on: Day) => Planting | undefined;
  /** What became of plants of it that went to other beds, each as it last stood, oldest first. */
  readonly movedOn: (planting: Pick<Planting, "id">) => readonly Planting[];
  /** In order of day. */
  readonly pickings: readonly Picking[];
  /** Those credited to a planting, in order of day. */
  readonly pickingsOf: (planting: Pick<Planting, "id">) => readonly Picking[];
  /** The plantings of a variety begun by a day, over all beds and seasons, each as it stood on that day, oldest first. */
  readonly plantingsOf: (variety: string, on: Day) => readonly Planting[];
  /** A bed as it stands on a day. */
  readonly stateOf: (bed: string, day: Day) => BedState;
  /** The nursery lot a planting was raised in, by its sowing day. */
  readonly nurseryLot: (planting: Planting) => NurseryLot | undefined;
  /** All plantings of a variety, over all beds and seasons, in order of beginning. */
  readonly everyLotOf: (variety: string) => readonly PastLot[];
}

const made = new WeakMap<Garden, Book>();

export function bookOf(garden: Garden): Book {
  const known = made.get(garden) ?? makeIndex(garden);
  made.set(garden, known);
  return known;
}

function makeIndex(garden: Garden): Book {
  const byId = new Map(garden.events.map((event) => [event.id, event]));
  const { histories, last } = groupByPlanting(garden);
  const byVariety = Map.groupBy(last.values(), (planting) => planting.variety ?? "");
  const nurseries = new Map(garden.nurseryLots.map((lot) => [`${lot.variety ?? lot.crop} ${lot.sown}`, lot]));
  const event: Book["event"] = (id) => byId.get(id);
  const pastLots = remember((variety: string): readonly PastLot[] =>
    (byVariety.get(variety) ?? [])
      .map((planting) => {
        const changes = histories.get(planting.id) ?? [];
        return { planting, changes, events: eventsBehind(changes, event) };
      })
      .sort((a, b) => (a.planting.since < b.planting.since ? -1 : 1)),
  );
  const historyOf: Book["historyOf"] = ({ id }) => histories.get(id) ?? [];
  const standing: Book["standing"] = (planting, on) => stoodOn(historyOf(planting), planting.id, on);
  let pickings: readonly Picking[] | undefined;
  const allPickings = () => {
    pickings ??= pickingsIn(garden, event);
    return pickings;
  };
  let byOrigin: ReadonlyMap<string, readonly Planting[]> | undefined;
  let byPlanting: ReadonlyMap<string, readonly Picking[]> | undefined;
  return {
    garden,
    event,
    stateOf: stateByDay(garden),
    historyOf,
    standing,
    movedOn({ id }) {
      byOrigin ??= Map.groupBy([...last.values()].sort(byBeginning), ({ movedFrom }) => movedFrom ?? "");
      return byOrigin.get(id) ?? [];
    },
    get pickings() {
      return allPickings();
    },
    pickingsOf({ id }) {
      byPlanting ??= Map.groupBy(allPickings(), ({ planting }) => planting ?? "");
      return byPlanting.get(id) ?? [];
    },
    plantingsOf: (variety, on) =>
      (byVariety.get(variety) ?? []).flatMap((planting) => standing(planting, on) ?? []).sort(byBeginning),
    nurseryLot: (planting) => nurseries.get(`${planting.variety ?? planting.crop} ${planting.sown}`),
    everyLotOf: pastLots,
  };
}

function byBeginning(a: Planting, b: Planting): number {
  return compare(a.since, b.since) || compare(a.id, b.id);
}

function stoodOn(history: readonly Change[], id: string, on: Day): Planting | undefined {
  for (let at = history.length - 1; at >= 0; at--) {
    const change = history[at];
    if (change === undefined || change.day > on) continue;
    const stood = change.effect.plantings?.find((planting) => planting.id === id);
    if (stood !== undefined) return stood;
  }
  return undefined;
}

/**
 * The state of each bed as it was last asked for: briefs, their follow-ups and the days of a look ahead ask again and again, and a
 * later day goes on from there.
 */
function stateByDay(garden: Garden): Book["stateOf"] {
  const known = new Map<string, BedState>();
  return (bed, day) => {
    const last = known.get(bed);
    if (last?.on === day) return last;
    const found =
      last !== undefined && last.on < day
        ? foldChanges(last, changes(garden, bed, last.on, day), day)
        : state(garden, bed, day);
    known.set(bed, found);
    return found;
  };
}

function remember<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const value = known.get(key) ?? work(key);
    known.set(key, value);
    return value;
  };
}

function groupByPlanting(garden: Garden) {
  const histories = new Map<string, Change[]>();
  const last = new Map<string, Planting>();
  const put = (id: string, change: Change) => {
    const group = histories.get(id);
    if (group === undefined) histories.set(id, [change]);
    else if (group.at(-1) !== change) group.push(change);
  };
  for (const changes of garden.changes.values()) {
    for (const change of changes) {
      if (change.planting !== undefined) put(change.planting, change);
      for (const planting of change.effect.plantings ?? []) {
        put(planting.id, change);
        last.set(planting.id, planting);
      }
    }
  }
  return { histories, last };
}

/** The events that changes rest on, each once. */
export function eventsBehind(changes: readonly Change[], find: (id: string) => Event | undefined): readonly Event[] {
  const found = new Set<Event>();
  for (const { event: id, day } of changes) {
    const event = id === undefined ? undefined : find(id);
    // A season's end rests on the old event that began the planting: no news in itself.
    if (event !== undefined && event.day === day) found.add(event);
  }
  return [...found];
}
