/** Planting out: from the nursery, from a seedbed, or plants that come from outside. */
import { capital, sayNumber } from "../language/index.ts";
import type { Event } from "../model.ts";
import { cameFromElsewhere, takeArrived } from "./arrivals.ts";
import { begin, nextId, raise } from "./begin-plantings.ts";
import { isExact, isNone, less } from "./counts.ts";
import { habitOf } from "./crop-habits.ts";
import { endPlanting } from "./end-planting.ts";
import { cropOf, type Growing, type Ledger, plantIds } from "./ledger.ts";
import { become, livingNamed } from "./living-plantings.ts";
import type { PlantIds } from "./names.ts";
import { draw, openLotsOf, reportShort } from "./nursery-lots.ts";
import { someOf } from "./sentence-parts.ts";
import { addChange, report } from "./write-down.ts";

/** A planting draws its plants from the nursery, or from a seedbed; bought and given plants come from outside. */
export function plant(ledger: Ledger, event: Event): void {
  if (event.nursery === true) {
    raise(ledger, event);
    return;
  }
  const { bed } = event;
  if (bed === undefined) reportNoBed(ledger, event);
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
    text: ledger.say.planted(ledger.names, event, now, raised),
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
  const name = ledger.names.plants({ variety, crop: ids.crop });
  report(
    ledger,
    "timeline/variety-from-nursery",
    event.place,
    `The line names only ${ledger.names.plants(ids)}; the only ones in the nursery were ${name}, so they were taken to be those.`,
    "Write the variety in the line.",
  );
  return { variety, crop: ids.crop };
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
    reportSeedbedShort(ledger, event, seedbed, alive.value);
  const now = become(seedbed, { movedOut: seedbed.now.movedOut + moved, count: less(seedbed.now.count, moved) }, event);
  const text = ledger.say.movedOut(ledger.names, { ...event, detail: undefined }, now, bed);
  const done = isNone(now.count) ? endPlanting(ledger, seedbed, event.day, "finished") : { plantings: [now] };
  addChange(ledger, event, { kind: "moved", bed: now.bed, text, effect: done });
}

function reportSeedbedShort(ledger: Ledger, event: Event, seedbed: Growing, alive: number): void {
  const { name, were } = someOf(ledger.names, seedbed.now, event.count);
  report(
    ledger,
    "timeline/more-than-there",
    event.place,
    `${capital(name)} ${were} planted, but only ${sayNumber(alive)} stood in ${ledger.names.bed(seedbed.now.bed)}, where they were sown.`,
    `Correct the count here or in the "sowed" line, or write "bought" or "given" before the name if plants came from elsewhere.`,
  );
}

function reportNoBed(ledger: Ledger, event: Event): void {
  const { name, were } = someOf(ledger.names, plantIds(ledger.records, event), undefined);
  report(
    ledger,
    "timeline/no-bed",
    event.place,
    `The line does not say in which bed ${name} ${were} planted.`,
    `Name the bed: "in Long Bed".`,
  );
}
