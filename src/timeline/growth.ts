/** How plantings come on: up, potted on, thinned, in flower, in fruit, measured. */
import type { Event, Planting, Stage } from "../model.ts";
import { impliedPlanting } from "./begin-plantings.ts";
import { exactly, isExact } from "./counts.ts";
import { bedsMeant, type Growing, type Ledger, type Lot } from "./ledger.ts";
import { become, byBed } from "./living-plantings.ts";
import { plantingsMeant } from "./plantings-meant.ts";
import { addChange, type ChangeFacts } from "./write-down.ts";

/** Stages in the order in which plants go through them. */
const stageOrder: readonly Stage[] = ["sown", "up", "growing", "flowering", "fruiting", "picking", "finished", "lost"];

/** The stage after an event that shows `shown`: plants go on, never back, though a picked courgette flowers again. */
function reach(planting: Planting, shown: Stage, event: Event): Partial<Planting> {
  const further = planting.ended === undefined && stageOrder.indexOf(shown) > stageOrder.indexOf(planting.stage);
  return further ? { stage: shown, stageSince: event.day } : {};
}

export function comeUp(ledger: Ledger, event: Event): void {
  grow(ledger, event, {
    kind: "up",
    is: "up",
    patch: (planting) => reach(planting, "up", event),
    lot: (lot) => {
      lot.now = { ...lot.now, up: lot.now.up ?? event.day };
    },
  });
}

export function potOn(ledger: Ledger, event: Event): void {
  grow(ledger, event, {
    kind: "did",
    is: "potted on",
    patch: (planting) => reach(planting, "growing", event),
    lot: (lot) => {
      lot.now = { ...lot.now, pottedOn: event.day };
    },
  });
}

export function thin(ledger: Ledger, event: Event): void {
  grow(ledger, event, {
    kind: "did",
    is: "thinned",
    patch: (planting) => ({
      ...reach(planting, "growing", event),
      ...thinned(planting, event),
      spacingCm: event.spacingCm ?? planting.spacingCm,
    }),
  });
}

/** "Thinned to one a station", "to 3 a hill" number each place, not the planting. */
const perStation =
  /\b(stations?|clumps?|modules?|cells?|(each|every|per|a|to a) (hole|hill|mound|pot|pocket|square|foot|metre|ft|m|cm|inch))\b/i;

function countsPlants({ count, text }: Event): boolean {
  return count !== undefined && !perStation.test(text);
}

/** Only counted plants can be said to have been taken out; from now on what is left is counted. */
function thinned(planting: Planting, event: Event): Partial<Planting> {
  const { count } = event;
  if (count === undefined || !countsPlants(event)) return {};
  const out = isExact(planting.count) ? Math.max(0, planting.count.value - count.value) : 0;
  return isExact(planting.count) && isExact(count) && planting.count.value < count.value
    ? { count: exactly(planting.count.value), seeds: undefined }
    : {
        count: isInPart(planting) ? { ...count, approx: true } : count,
        seeds: undefined,
        thinnedOut: planting.thinnedOut + out,
      };
}

/** Counted when it began and not any more: some were lifted. */
function isInPart({ count, began }: Planting): boolean {
  return count === undefined && began !== undefined;
}

export function flower(ledger: Ledger, event: Event): void {
  grow(ledger, event, {
    kind: "stage",
    is: "flowered",
    patch: (planting) => reach(planting, "flowering", event),
  });
}

export function fruit(ledger: Ledger, event: Event): void {
  grow(ledger, event, {
    kind: "stage",
    is: "fruited",
    patch: (planting) => reach(planting, "fruiting", event),
  });
}

export function measure(ledger: Ledger, event: Event): void {
  const { heightCm } = event;
  grow(ledger, event, {
    kind: "grew",
    is: "measured",
    patch: (planting) => ({
      ...(planting.stage === "up" ? reach(planting, "growing", event) : {}),
      ...(heightCm === undefined ? {} : { heightCm, heightOn: event.day }),
    }),
  });
}

interface Growth {
  readonly kind: ChangeFacts["kind"];
  readonly is: "up" | "potted on" | "thinned" | "flowered" | "fruited" | "measured";
  readonly patch: (planting: Planting) => Partial<Planting>;
  readonly lot?: (lot: Lot) => void;
}

function grow(ledger: Ledger, event: Event, growth: Growth): void {
  const meant = plantingsMeant(ledger, event);
  if (meant.is === "lots") {
    const [oldest] = meant.lots;
    if (oldest === undefined) return;
    growth.lot?.(oldest);
    const { bed } = oldest.now;
    if (bed !== undefined) addChange(ledger, event, { kind: growth.kind, bed, told: { is: growth.is, plantings: [] } });
    return;
  }
  const named = event.variety !== undefined || event.crop !== undefined;
  const implied = meant.is === "nothing" && named ? impliedPlanting(ledger, event) : undefined;
  const plantings: readonly Growing[] =
    meant.is === "plantings" ? meant.plantings : implied === undefined ? [] : [implied];
  if (plantings.length === 0) {
    sayOfNone(ledger, event, growth);
    return;
  }
  for (const [bed, growing] of byBed(plantings)) {
    const before = growing.map(({ now }) => now);
    const after = growing.map((one) => become(one, growth.patch(one.now), event));
    addChange(ledger, event, {
      kind: growth.kind,
      bed,
      told: { is: growth.is, plantings: before },
      effect: { plantings: after },
    });
  }
}

/** A line whose planting could not be found, or that names none (a soil temperature), is told of its bed. */
function sayOfNone(ledger: Ledger, event: Event, growth: Growth): void {
  for (const bed of bedsMeant(ledger, event)) {
    addChange(ledger, event, { kind: growth.kind, bed, told: { is: growth.is, plantings: [] } });
  }
}
