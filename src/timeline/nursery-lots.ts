/**
 * Plants raised away from their bed, and where they went.
 *
 * Plants are conserved: what is planted, lost and given away from a lot never exceeds what was sown. A line that asks for
 * more is believed as far as its own planting goes and reported; no lot is ever made larger to fit it.
 */

import { addDays, daysBetween } from "../calendar.ts";
import type { Day, Event, LotTaking, PlantIds } from "../model.ts";
import { atMost, isExact } from "./counts.ts";
import { habitOf } from "./crop-habits.ts";
import { cropOf, isPerennial, isPrivate, type Ledger, type Lot, plantIds, plantKey } from "./ledger.ts";
import { at, report } from "./write-down.ts";

/**
 * Seedlings that nobody planted by then were planted without a line, or thrown away: the longest that annuals are commonly
 * kept is from an autumn sowing to a planting in spring. From memory.
 */
const lotLastsDays = 270;

/** Days after its first planting from which an uncounted lot is taken as used up, if a younger lot waits. */
const usedUpDays = 21;

/** `bed` is the staging or frame it stands in, if the line names one. */
export function openLot(ledger: Ledger, event: Event, bed: string | undefined): Lot {
  const ids = plantIds(ledger.records, event);
  const lot: Lot = {
    now: {
      id: event.id,
      variety: ids.variety,
      crop: ids.crop,
      bed,
      sown: event.day,
      count: event.count,
      taken: [],
      left: event.count === undefined ? undefined : atMost(event.count),
      private: event.private || isPrivate(ledger, ids),
      place: event.place,
    },
  };
  const key = plantKey(ids);
  ledger.lots.set(key, [...(ledger.lots.get(key) ?? []), lot]);
  ledger.openLots.set(key, [...(ledger.openLots.get(key) ?? []), lot]);
  if (ids.crop !== undefined) {
    ledger.lotKeys.set(ids.crop, (ledger.lotKeys.get(ids.crop) ?? new Set()).add(key));
  }
  return lot;
}

/**
 * Open lots from which plants of this name can come on a day, oldest first. A lot sown that same day gives no plants yet.
 * A line that names only the crop can mean any lot of it; a named variety also the lots of which only the crop was noted.
 */
export function openLotsOf(ledger: Ledger, ids: PlantIds, day: Day): readonly Lot[] {
  const own = stillOpen(ledger, plantKey(ids), day);
  if (own.length > 0) return own;
  if (ids.crop === undefined) return [];
  if (ids.variety !== undefined) return stillOpen(ledger, plantKey({ crop: ids.crop }), day);
  const kinds = [...(ledger.lotKeys.get(ids.crop) ?? [])]
    .map((key) => stillOpen(ledger, key, day))
    .filter((lots) => lots.length > 0);
  return kinds.length === 1 ? (kinds[0] ?? []) : [];
}

function stillOpen(ledger: Ledger, key: string, day: Day): readonly Lot[] {
  const lots = ledger.openLots.get(key);
  if (lots === undefined) return [];
  for (const lot of lots) {
    if (isPerennial(ledger, lot.now) !== true && daysBetween(lot.now.sown, day) > lotLastsDays)
      close(lot, addDays(lot.now.sown, lotLastsDays));
  }
  const open = lots.filter((lot) => lot.now.closed === undefined);
  if (open.length === 0) {
    ledger.openLots.delete(key);
    ledger.lotKeys.get(lots[0]?.now.crop ?? "")?.delete(key);
  } else if (open.length < lots.length) ledger.openLots.set(key, open);
  return open.filter((lot) => lot.now.sown < day && !isUsedUp(lot, open, day));
}

/** Closes what nobody asked for any more, as it stands on the last day of the notes. */
export function closeOldLots(ledger: Ledger): void {
  for (const key of [...ledger.openLots.keys()]) stillOpen(ledger, key, ledger.lastDay);
}

function isUsedUp(lot: Lot, open: readonly Lot[], day: Day): boolean {
  const first = lot.now.taken.find((taking) => taking.to === "planted");
  if (lot.now.left !== undefined || first === undefined || daysBetween(first.day, day) <= usedUpDays) return false;
  return open.some((other) => other.now.sown > lot.now.sown && other.now.sown < day);
}

function close(lot: Lot, day: Day): void {
  lot.now = { ...lot.now, closed: day };
}

/** What a line drew from the nursery. */
export interface Drawn {
  /** The lots drawn from, oldest first. */
  readonly lots: readonly Lot[];
  /** Plants no lot could give. */
  readonly short: number;
}

/**
 * Draws plants from the oldest open lots, one after the other. Without a number the line takes what is left of the oldest
 * lot; whether something stays behind is then unknown, so the lot is open but no longer counted.
 */
export function draw(lots: readonly Lot[], number: number | undefined, taking: Omit<LotTaking, "count">): Drawn {
  const [oldest] = lots;
  if (oldest === undefined) return { lots: [], short: number ?? 0 };
  if (number === undefined) {
    oldest.now = { ...oldest.now, taken: [...oldest.now.taken, taking], left: undefined };
    return { lots: [oldest], short: 0 };
  }
  const from: Lot[] = [];
  let wanted = number;
  for (const lot of lots) {
    if (wanted === 0) break;
    const given = Math.min(wanted, lot.now.left ?? wanted);
    if (given === 0) continue;
    wanted -= given;
    from.push(lot);
    const left = lot.now.left === undefined ? undefined : lot.now.left - given;
    lot.now = { ...lot.now, taken: [...lot.now.taken, { ...taking, count: given }], left };
    if (left === 0) close(lot, taking.day);
  }
  return { lots: from, short: wanted };
}

/** The oldest lot is lost as a whole: a line that names no number. */
export function loseLot(lots: readonly Lot[], taking: Omit<LotTaking, "count">): void {
  const [oldest] = lots;
  if (oldest === undefined) return;
  const { left, taken } = oldest.now;
  oldest.now = {
    ...oldest.now,
    taken: [...taken, { ...taking, count: left }],
    left: left === undefined ? undefined : 0,
  };
  close(oldest, taking.day);
}

/**
 * Reports plants that came from nowhere: more than was left of what was sown, or of a crop that is raised and was never
 * sown. Where a count is a guess ("about 20"), a small difference proves nothing and is let pass.
 */
export function reportShort(
  ledger: Ledger,
  event: Event,
  drawn: Drawn,
  before: readonly Lot[],
  doing: "planted" | "lost" | "given away" | "sold",
): void {
  if (drawn.short === 0 && drawn.lots.length > 0) return;
  const ids = plantIds(ledger.records, event);
  const earlier = before.length > 0 ? before : recentLots(ledger, ids, event.day);
  const number = event.count?.value;
  if (earlier.length === 0) {
    if (doing === "planted") reportNoSowing(ledger, event, ids);
    return;
  }
  if (number === undefined || !isExact(event.count) || earlier.some((lot) => !isExact(lot.now.count))) return;
  report(ledger, {
    rule: "timeline/more-than-sown",
    ...at(event),
    plants: ids,
    number,
    left: number - drawn.short,
    sowings: earlier.map(({ now }) => now.sown),
    doing,
  });
}

/** Lots young enough to have been meant, open or not. */
function recentLots(ledger: Ledger, ids: PlantIds, day: Day): readonly Lot[] {
  const lots = ledger.lots.get(plantKey(ids)) ?? [];
  return lots.filter(({ now }) => now.sown < day && daysBetween(now.sown, day) <= lotLastsDays);
}

function reportNoSowing(ledger: Ledger, event: Event, ids: PlantIds): void {
  const crop = cropOf(ledger, ids);
  // Of what nobody knows it is not known either that it is raised from seed.
  if (crop === undefined || isPerennial(ledger, ids) !== false || habitOf(crop).begunInPlace === true) return;
  report(ledger, { rule: "timeline/no-sowing", ...at(event), plants: ids });
}
