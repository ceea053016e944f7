/**
 * Look-ups over a whole garden, made once per garden, so that each stop of each brief reads only what belongs to it.
 */
import type { BedState, Change, Day, Event, Garden, NurseryLot, Planting } from "../model.ts";
import { state } from "../timeline/index.ts";

/** A planting of any bed and season as it last stood, with all it went through. Compare days before use: it may reach past the tour. */
export interface PastLot {
  readonly planting: Planting;
  /** Oldest first. */
  readonly changes: readonly Change[];
  /** Oldest first. */
  readonly events: readonly Event[];
}

export interface GardenIndex {
  readonly garden: Garden;
  readonly event: (id: string) => Event | undefined;
  /** Every change of a planting, oldest first. */
  readonly historyOf: (planting: Planting) => readonly Change[];
  /** A bed as it stands on a day. */
  readonly stateOf: (bed: string, day: Day) => BedState;
  /** The nursery lot a planting was raised in, by its sowing day. */
  readonly nurseryLot: (planting: Planting) => NurseryLot | undefined;
  /** All plantings of a variety, over all beds and seasons, in order of beginning. */
  readonly everyLotOf: (variety: string) => readonly PastLot[];
}

const made = new WeakMap<Garden, GardenIndex>();

export function indexGarden(garden: Garden): GardenIndex {
  const known = made.get(garden) ?? makeIndex(garden);
  made.set(garden, known);
  return known;
}

function makeIndex(garden: Garden): GardenIndex {
  const byId = new Map(garden.events.map((event) => [event.id, event]));
  const { histories, last } = groupByPlanting(garden);
  const byVariety = Map.groupBy(last.values(), (planting) => planting.variety ?? "");
  const nurseries = new Map(garden.nurseryLots.map((lot) => [`${lot.variety ?? lot.crop} ${lot.sown}`, lot]));
  const pastLots = remember((variety: string): readonly PastLot[] =>
    (byVariety.get(variety) ?? [])
      .map((planting) => {
        const changes = histories.get(planting.id) ?? [];
        return { planting, changes, events: eventsBehind(changes, (id) => byId.get(id)) };
      })
      .sort((a, b) => (a.planting.since < b.planting.since ? -1 : 1)),
  );
  return {
    garden,
    event: (id) => byId.get(id),
    stateOf: stateByDay(garden),
    historyOf: (planting) => histories.get(planting.id) ?? [],
    nurseryLot: (planting) => nurseries.get(`${planting.variety ?? planting.crop} ${planting.sown}`),
    everyLotOf: pastLots,
  };
}

/** The state of each bed as it was last asked for: briefs, their follow-ups and the days of an outlook ask again and again. */
function stateByDay(garden: Garden): GardenIndex["stateOf"] {
  const known = new Map<string, BedState>();
  return (bed, day) => {
    const last = known.get(bed);
    if (last?.on === day) return last;
    const found = state(garden, bed, day);
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
