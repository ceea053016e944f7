/** How plants leave: lost, cleared, moved to another bed. What is given away or sold is in giving-away.ts. */
import type { ChangeEffect, Doubt, Event, Planting } from "../model.ts";
import { arrive } from "./begin-plantings.ts";
import { exactly, isExact, isNone, less } from "./counts.ts";
import { endPlanting, joined } from "./end-planting.ts";
import { bedsMeant, type Growing, type Ledger, type Lot, plantIds } from "./ledger.ts";
import { become, byBed } from "./living-plantings.ts";
import { draw, loseLot, openLotsOf, reportShort } from "./nursery-lots.ts";
import { plant } from "./planting-out.ts";
import { plantingsMeant } from "./plantings-meant.ts";
import { addChange, at, report } from "./write-down.ts";

type NotThere = Extract<Doubt, { rule: "timeline/nothing-there" }>;
type TooMany = Extract<Doubt, { rule: "timeline/more-than-there" }>;

/** "lost some of the leeks": part of them, nobody counted how many. */
const partOnly = /\b(some|a few|few|several|many|most|half|part|a couple)\b/i;

export function lose(ledger: Ledger, event: Event): void {
  const meant = plantingsMeant(ledger, event);
  if (meant.is === "lots") {
    takeFromNursery(ledger, event, meant.lots, "lost");
    return;
  }
  if (meant.is === "nothing") {
    reportNothing(ledger, event, "lost");
    return;
  }
  const part = event.count === undefined && partOnly.test(event.text);
  for (const growing of meant.plantings) {
    if (part) loseSome(ledger, event, growing);
    else if (event.count === undefined) loseAll(ledger, event, growing);
    else loseCounted(ledger, event, growing, event.count.value);
  }
}

function loseAll(ledger: Ledger, event: Event, growing: Growing): void {
  const { bed, count, lost } = growing.now;
  const gone = count?.value ?? 0;
  const told = { is: "lost", plants: growing.now, number: "all" } as const;
  const left = count === undefined ? undefined : exactly(0);
  const effect = endIfAlive(ledger, growing, event, "lost", { lost: lost + gone, count: left });
  addChange(ledger, event, { kind: "lost", bed, told, effect, cause: event.cause });
}

function loseSome(ledger: Ledger, event: Event, growing: Growing): void {
  const { bed, count } = growing.now;
  const now = become(growing, { count: count === undefined ? undefined : { ...count, approx: true } }, event);
  addChange(ledger, event, {
    kind: "lost",
    bed,
    told: { is: "lost", plants: now, number: "some" },
    effect: { plantings: [now] },
    cause: event.cause,
  });
}

function loseCounted(ledger: Ledger, event: Event, growing: Growing, number: number): void {
  const { bed, lost } = growing.now;
  const gone = takeable(ledger, event, growing, number, "lost");
  const patch = { lost: lost + gone, count: less(growing.now.count, gone) };
  const told = { is: "lost", plants: growing.now, number: "counted" } as const;
  const effect = isNone(patch.count)
    ? endIfAlive(ledger, growing, event, "lost", patch)
    : { plantings: [become(growing, patch, event)] };
  addChange(ledger, event, { kind: "lost", bed, told, effect, cause: event.cause });
}

export function clear(ledger: Ledger, event: Event): void {
  const meant = plantingsMeant(ledger, event);
  if (meant.is !== "plantings") {
    clearWhatIsNotThere(ledger, event);
    return;
  }
  for (const [bed, plantings] of byBed(meant.plantings)) {
    const before = plantings.map(({ now }) => now);
    const effects = plantings.map((growing) => endIfAlive(ledger, growing, event, "finished"));
    addChange(ledger, event, {
      kind: "cleared",
      bed,
      told: { is: "cleared", plantings: before },
      effect: joined(effects),
    });
  }
}

/** "cleared the bed" names no plants and means all of them; a name that does not grow there is reported. */
function clearWhatIsNotThere(ledger: Ledger, event: Event): void {
  if (event.variety !== undefined || event.crop !== undefined) {
    reportNothing(ledger, event, "cleared");
    return;
  }
  for (const bed of bedsMeant(ledger, event)) {
    const growing = ledger.beds.get(bed)?.living.filter(({ now }) => !now.perennial) ?? [];
    const effects = growing.map((one) => endPlanting(ledger, one, event.day, "finished", {}, event));
    addChange(ledger, event, {
      kind: "cleared",
      bed,
      told: { is: "cleared", plantings: [] },
      effect: joined(effects),
    });
  }
}

export function move(ledger: Ledger, event: Event): void {
  const { toBed } = event;
  const meant = plantingsMeant(ledger, event);
  if (meant.is !== "plantings") {
    // "Transplanted 12 leeks from Cold Frame to Long Bed": the frame held no planting but seedlings.
    if (toBed !== undefined && openLotsOf(ledger, plantIds(ledger.records, event), event.day).length > 0) {
      plant(ledger, { ...event, bed: toBed, toBed: undefined });
      return;
    }
    reportNothing(ledger, event, "moved");
    if (toBed !== undefined) arrive(ledger, event, toBed, undefined, event.count);
    return;
  }
  for (const growing of meant.plantings) {
    if (toBed === undefined || toBed === growing.now.bed) {
      moveWithin(ledger, event, growing);
      continue;
    }
    const from = growing.now;
    const told = { is: "moved out", plants: from, to: toBed } as const;
    const whole = event.count === undefined;
    const gone = whole ? (from.count?.value ?? 0) : takeable(ledger, event, growing, event.count.value, "moved");
    const patch = {
      movedOut: from.movedOut + gone,
      count: whole && from.count !== undefined ? exactly(0) : less(from.count, gone),
    };
    const effect =
      whole || isNone(patch.count)
        ? endIfAlive(ledger, growing, event, "finished", patch)
        : { plantings: [become(growing, patch, event)] };
    addChange(ledger, event, { kind: "moved", bed: from.bed, told, effect });
    arrive(ledger, event, toBed, from, whole ? from.count : event.count);
  }
}

/** To another place of the same bed: the planting stays what it is. */
function moveWithin(ledger: Ledger, event: Event, growing: Growing): void {
  const now = become(growing, { spot: event.spot ?? growing.now.spot }, event);
  const told = { is: "moved within", plants: now } as const;
  addChange(ledger, event, { kind: "moved", bed: now.bed, told, effect: { plantings: [now] } });
}

/** Ends it, or, when it has ended already (a line about that same day), only writes down the rest. */
export function endIfAlive(
  ledger: Ledger,
  growing: Growing,
  event: Event,
  stage: "finished" | "lost",
  patch: Partial<Planting> = {},
): ChangeEffect {
  return growing.now.ended === undefined
    ? endPlanting(ledger, growing, event.day, stage, patch, event)
    : { plantings: [become(growing, patch, event)] };
}

/** Plants that can be gone of a planting: no more than there were. A line that says more is reported. */
export function takeable(
  ledger: Ledger,
  event: Event,
  growing: Growing,
  number: number,
  doing: TooMany["doing"],
): number {
  const { count } = growing.now;
  if (!isExact(count) || number <= count.value) return number;
  if (isExact(event.count)) {
    const { now } = growing;
    report(ledger, {
      rule: "timeline/more-than-there",
      ...at(event),
      plants: now,
      bed: now.bed,
      number,
      left: count.value,
      doing,
    });
  }
  return count.value;
}

export function takeFromNursery(
  ledger: Ledger,
  event: Event,
  lots: readonly Lot[],
  to: "lost" | "given away" | "sold",
): void {
  const taking = { day: event.day, to, place: event.place };
  if (to === "lost" && event.count === undefined && !partOnly.test(event.text)) {
    loseLot(lots, taking);
    return;
  }
  reportShort(ledger, event, draw(lots, event.count?.value, taking), lots, to);
}

export function reportNothing(ledger: Ledger, event: Event, doing: NotThere["doing"]): void {
  const plants = plantIds(ledger.records, event);
  report(ledger, { rule: "timeline/nothing-there", ...at(event), plants, beds: bedsMeant(ledger, event), doing });
}
