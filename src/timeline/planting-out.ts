/** Planting out: from the nursery, from a seedbed, or plants that come from outside. */
import type { Event, PlantIds } from "../model.ts";
import { cameFromElsewhere, takeArrived } from "./arrivals.ts";
import { begin, nextId, raise } from "./begin-plantings.ts";
import { isExact, isNone, less } from "./counts.ts";
import { habitOf } from "./crop-habits.ts";
import { endPlanting } from "./end-planting.ts";
import { cropOf, type Growing, type Ledger, plantIds } from "./ledger.ts";
import { become, livingNamed } from "./living-plantings.ts";
import { draw, openLotsOf, reportShort } from "./nursery-lots.ts";
import { addChange, at, report } from "./write-down.ts";

/** A planting draws its plants from the nursery, or from a seedbed; bought and given plants come from outside. */
export function plant(ledger: Ledger, event: Event): void {
  if (event.nursery === true) {
    raise(ledger, event);
    return;
  }
  const { bed } = event;
  if (bed === undefined) {
    const plants = plantIds(ledger.records, event);
    report(ledger, { rule: "timeline/no-bed", ...at(event), plants, doing: "planted", one: event.count?.value === 1 });
  }
  const ids = withVarietyOfLot(ledger, event);
  const number = event.count?.value;
  const lots = event.plantsFrom === undefined ? openLotsOf(ledger, ids, event.day) : [];
  const seedbed = lots.length === 0 && event.plantsFrom === undefined ? seedbedOf(ledger, ids, event) : undefined;
  const id = bed === undefined ? undefined : nextId(ledger, bed, ids, event.day);
  const drawn = draw(lots, number, { day: event.day, to: "planted", planting: id, place: event.place });
  const raisedHere = lots.length > 0 || seedbed !== undefined;
  const came = event.plantsFrom === undefined && !raisedHere ? takeArrived(ledger, ids, event) : undefined;
  const missesSowing = event.plantsFrom === undefined && seedbed === undefined;
  if (missesSowing && (raisedHere || !cameFromElsewhere(ledger, ids, event)))
    reportShort(ledger, event, drawn, lots, "planted");
  if (bed === undefined) return;
  const lot = drawn.lots[0]?.now;
  const growing = begin(ledger, event, {
    bed,
    ids,
    stage: "growing",
    count: event.count,
    sown: lot?.sown ?? seedbed?.now.sown,
    planted: event.day,
    plantsFrom: event.plantsFrom ?? came?.plantsFrom,
    source: event.from ?? came?.from,
  });
  const { now } = growing;
  const raised =
    seedbed !== undefined
      ? { sown: seedbed.now.sown ?? seedbed.now.since, bed: seedbed.now.bed }
      : lot !== undefined && (!lot.private || event.private)
        ? { sown: lot.sown }
        : undefined;
  addChange(ledger, event, {
    kind: "planted",
    bed,
    told: { is: "planted", plants: now, raised },
    effect: { plantings: [now] },
  });
  if (seedbed !== undefined) takeFromSeedbed(ledger, event, seedbed, bed);
}

/** "planted 12 leeks" when the leeks in the nursery are all of one variety means that variety. */
function withVarietyOfLot(ledger: Ledger, event: Event): PlantIds {
  const ids = plantIds(ledger.records, event);
  if (ids.variety !== undefined || event.plantsFrom !== undefined) return ids;
  const variety = openLotsOf(ledger, ids, event.day)[0]?.now.variety;
  if (variety === undefined) return ids;
  const meant = { variety, crop: ids.crop };
  report(ledger, { rule: "timeline/variety-from-nursery", ...at(event), plants: ids, meant });
  return meant;
}

/** Seedlings of a direct sowing in another bed, from which leeks and cabbages are commonly set out. */
function seedbedOf(ledger: Ledger, ids: PlantIds, event: Event): Growing | undefined {
  if (ids.variety === undefined || habitOf(cropOf(ledger, ids)).begunInPlace === true) return undefined;
  return livingNamed(ledger, ids).find(
    ({ now }) =>
      now.bed !== event.bed &&
      now.planted === undefined &&
      now.sown !== undefined &&
      now.sown < event.day &&
      (now.stage === "sown" || now.stage === "up" || now.stage === "growing"),
  );
}

function takeFromSeedbed(ledger: Ledger, event: Event, seedbed: Growing, bed: string): void {
  const number = event.count?.value ?? 0;
  const alive = seedbed.now.count;
  const moved = alive === undefined ? number : Math.min(number, alive.value);
  if (isExact(alive) && isExact(event.count) && alive.value < number)
    report(ledger, {
      rule: "timeline/more-than-there",
      ...at(event),
      plants: seedbed.now,
      bed: seedbed.now.bed,
      number,
      left: alive.value,
      doing: "planted",
    });
  const now = become(seedbed, { movedOut: seedbed.now.movedOut + moved, count: less(seedbed.now.count, moved) }, event);
  const done = isNone(now.count) ? endPlanting(ledger, seedbed, event.day, "finished") : { plantings: [now] };
  // What else the line says is told of the bed they went to.
  addChange(
    ledger,
    { ...event, detail: undefined },
    { kind: "moved", bed: now.bed, told: { is: "moved out", plants: now, to: bed }, effect: done },
  );
}
