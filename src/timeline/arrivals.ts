/** What came: plants, seed, gear. Plants are kept in mind until they are planted, so that it is known where they came from. */
import { daysBetween } from "../calendar.ts";
import type { Event, PlantIds } from "../model.ts";
import { atMost } from "./counts.ts";
import { type Arrival, type Ledger, plantIds, plantKey } from "./ledger.ts";
import { addChange } from "./write-down.ts";

/** A plant in its pot is set out within a year, or nobody remembers where it came from. From memory. */
const waitsDays = 270;

/** Told of a bed only when the line names one: where plants will stand is mostly not known when they come. */
export function acquire(ledger: Ledger, event: Event): void {
  const ids = plantIds(ledger.records, event);
  if ((ids.variety !== undefined || ids.crop !== undefined) && !isSeed(event)) {
    const key = plantKey(ids);
    const arrival: Arrival = { event, left: event.count === undefined ? undefined : atMost(event.count) };
    ledger.arrivals.set(key, [...(ledger.arrivals.get(key) ?? []), arrival]);
  }
  const { bed } = event;
  if (bed === undefined) return;
  addChange(ledger, event, { kind: "acquired", bed, told: { is: "acquired" } });
}

/** "2 packets of Nantes", but not seed potatoes, which are planted. */
function isSeed({ text }: Event): boolean {
  return /\b(?:seeds?|packets?|packs?|pkts?)\b(?!\s+(?:potato|tater|spud|garlic))/i.test(text);
}

/**
 * Where the plants of a planting came from, when that is certain: one lot of them waits, and it has as many. Takes them off
 * it.
 */
export function takeArrived(ledger: Ledger, ids: PlantIds, event: Event): Event | undefined {
  const waiting = (ledger.arrivals.get(plantKey(ids)) ?? []).filter(
    ({ event: came, left }) => left !== 0 && daysBetween(came.day, event.day) <= waitsDays,
  );
  const [only, another] = waiting;
  if (only === undefined || another !== undefined) return undefined;
  const wanted = event.count?.value;
  if (wanted === undefined) {
    only.left = only.left === undefined ? undefined : 0;
    return only.event;
  }
  if (only.left !== undefined && wanted > only.left) return undefined;
  only.left = only.left === undefined ? undefined : only.left - wanted;
  return only.event;
}

/** Whether plants of this name came from elsewhere of late, however many: then no sowing is missed. */
export function cameFromElsewhere(ledger: Ledger, ids: PlantIds, event: Event): boolean {
  const came = ledger.arrivals.get(plantKey(ids)) ?? [];
  return came.some((arrival) => daysBetween(arrival.event.day, event.day) <= waitsDays);
}
