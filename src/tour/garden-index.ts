/** Look-ups over a whole garden, made once per brief, so that each stop reads only what belongs to it. */
import { seasonStart } from "../calendar.ts";
import type { Change, Day, Event, Garden, NurseryLot, Planting } from "../model.ts";
import { plantingsOf } from "../timeline/index.ts";

export interface GardenIndex {
  readonly garden: Garden;
  readonly event: (id: string) => Event | undefined;
  /** Every change of a planting, oldest first. */
  readonly historyOf: (planting: Planting) => readonly Change[];
  /** The nursery lot a planting was raised in, by its sowing day. */
  readonly nurseryLot: (planting: Planting) => NurseryLot | undefined;
  /** Plantings of a variety over all beds and seasons, as they stand on a day. */
  readonly plantingsOf: (variety: string, on: Day) => readonly Planting[];
  /** First day of the season in which a variety was first sown or planted. */
  readonly firstSeason: (variety: string) => Day | undefined;
  /** Whether the notes go back far enough before a season to tell what was new in it. */
  readonly knowsBefore: (season: Day) => boolean;
}

/**
 * Share of all varieties begun by a season that must have been begun before it. In the first season of the notes a few
 * old perennials would otherwise make everything else "new this year".
 */
const leastKnown = 0.2;

export function indexGarden(garden: Garden): GardenIndex {
  const { seasonStarts } = garden.settings;
  const byId = new Map<string, Event>();
  const begun = new Map<string, Day>();
  for (const event of garden.events) {
    byId.set(event.id, event);
    const begins = event.kind === "sowed" || event.kind === "planted";
    if (begins && event.variety !== undefined && !begun.has(event.variety)) begun.set(event.variety, event.day);
  }
  const lots = new Map(garden.nurseryLots.map((lot) => [`${lot.variety ?? lot.crop} ${lot.sown}`, lot]));
  const histories = new Map<string, ReadonlyMap<string, readonly Change[]>>();
  const historiesOf = (bed: string) => {
    const known = histories.get(bed) ?? groupByPlanting(garden.changes.get(bed) ?? []);
    histories.set(bed, known);
    return known;
  };
  const season = (day: Day | undefined) => (day === undefined ? undefined : seasonStart(day, seasonStarts));
  return {
    garden,
    event: (id) => byId.get(id),
    historyOf: (planting) => historiesOf(planting.bed).get(planting.id) ?? [],
    nurseryLot: (planting) => lots.get(`${planting.variety ?? planting.crop} ${planting.sown}`),
    plantingsOf: (variety, on) => plantingsOf(garden, variety, on),
    firstSeason: (variety) => season(begun.get(variety)),
    knowsBefore: (first) => {
      const days = [...begun.values()];
      const earlier = days.filter((day) => day < first).length;
      return (
        earlier >= leastKnown * days.filter((day) => seasonStart(day, seasonStarts) <= first).length && earlier > 0
      );
    },
  };
}

function groupByPlanting(changes: readonly Change[]): ReadonlyMap<string, readonly Change[]> {
  const groups = new Map<string, Change[]>();
  const put = (id: string, change: Change) => {
    const group = groups.get(id);
    if (group === undefined) groups.set(id, [change]);
    else if (group.at(-1) !== change) group.push(change);
  };
  for (const change of changes) {
    if (change.planting !== undefined) put(change.planting, change);
    for (const planting of change.effect.plantings ?? []) put(planting.id, change);
  }
  return groups;
}
