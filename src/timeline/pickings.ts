/** Pickings and their totals. Weights, pieces and litres are added up side by side and never turned into one another. */
import { cropOf } from "../crop-of.ts";
import type { ChangeEffect, Event, Harvest, Planting } from "../model.ts";
import { nothingPicked, pickedMore } from "../picked.ts";
import { pieceOf } from "../records/index.ts";
import { impliedPlanting, standsElsewhere } from "./begin-plantings.ts";
import { isExact, isNone, less } from "./counts.ts";
import { habitOf } from "./crop-habits.ts";
import { endPlanting } from "./end-planting.ts";
import { bedLedger, bedsMeant, type Growing, type Ledger, plantIds, plantKey } from "./ledger.ts";
import { become, byBed } from "./living-plantings.ts";
import { plantingsMeant } from "./plantings-meant.ts";
import { addChange, at, report } from "./write-down.ts";

export function pick(ledger: Ledger, event: Event): void {
  if (event.variety === undefined && event.crop === undefined) return;
  const meant = plantingsMeant(ledger, event);
  const implied = meant.is === "nothing" ? impliedPlanting(ledger, event) : undefined;
  const plantings = meant.is === "plantings" ? meant.plantings : implied === undefined ? [] : [implied];
  const [only, another] = plantings;
  if (only !== undefined && another === undefined) pickFrom(ledger, event, only);
  else pickUnassigned(ledger, event, plantings);
}

function pickFrom(ledger: Ledger, event: Event, growing: Growing): void {
  const before = growing.now;
  const harvest = harvestOf(ledger, event);
  const taken = wholePlants(ledger, event, growing);
  const left = less(before.count, taken);
  const last = taken > 0 && before.ended === undefined && isNone(left);
  const atOnce = last || habitOf(cropOf(ledger.records, before)).atOnce === true;
  const told = { is: "picked", plants: before, whole: taken > 0, atOnce } as const;
  const stage =
    before.ended === undefined && before.stage !== "picking"
      ? { stage: "picking" as const, stageSince: event.day }
      : {};
  const patch: Partial<Planting> = {
    ...stage,
    picked: pickedMore(before.picked, harvest, event.day),
    pickedWhole: before.pickedWhole + taken,
    count: isTakenInPart(ledger, event, before) ? undefined : left,
  };
  const effect: ChangeEffect = last
    ? endPlanting(ledger, growing, event.day, "finished", patch, event)
    : { plantings: [become(growing, patch, event)] };
  addChange(ledger, event, { kind: "picked", bed: before.bed, told, effect, harvest });
}

/**
 * A picking that cannot be credited to one planting ("2 kg of tomatoes" where three kinds stand) is added up for the bed,
 * and not shared out.
 */
function pickUnassigned(ledger: Ledger, event: Event, among: readonly Growing[]): void {
  const ids = plantIds(ledger.records, event);
  const harvest = harvestOf(ledger, event);
  const beds = [...byBed(among).keys()];
  const [bed] = beds.length > 0 ? beds : bedsMeant(ledger, event);
  if (bed === undefined || (beds.length === 0 && standsElsewhere(ledger, event, ids, bed))) return;
  if (among.length > 0) report(ledger, { rule: "timeline/picked-of-several", ...at(event), plants: ids, beds, bed });
  const { unassigned } = bedLedger(ledger, bed);
  const key = plantKey(ids);
  const total = { ...ids, picked: pickedMore(unassigned.get(key)?.picked ?? nothingPicked, harvest, event.day) };
  unassigned.set(key, total);
  const told = { is: "picked", plants: ids, whole: false, atOnce: false } as const;
  addChange(ledger, event, { kind: "picked", bed, told, effect: { unassigned: total }, harvest });
}

export function saveSeed(ledger: Ledger, event: Event): void {
  const meant = plantingsMeant(ledger, event);
  const plantings = meant.is === "plantings" ? meant.plantings : [];
  const told = { is: "seed saved" } as const;
  for (const [bed, growing] of byBed(plantings)) {
    const after = growing.map((one) => become(one, {}, event));
    addChange(ledger, event, { kind: "did", bed, told, effect: { plantings: after } });
  }
  if (plantings.length > 0) return;
  for (const bed of bedsMeant(ledger, event)) addChange(ledger, event, { kind: "did", bed, told });
}

function harvestOf(ledger: Ledger, event: Event): Harvest {
  const { grams, litres, count } = event;
  const unit = count === undefined ? undefined : (event.unit ?? pieceOf(cropOf(ledger.records, event)));
  return { grams, litres, count, unit };
}

/** How many plants a picking takes up: of crops that are taken whole, counted by the plant, where plants are counted. */
function wholePlants(ledger: Ledger, event: Event, { now: planting }: Growing): number {
  const { count, unit, verb, text } = event;
  const { takenWhole } = habitOf(cropOf(ledger.records, planting));
  if (count === undefined || !isExact(planting.count) || takenWhole === undefined) return 0;
  if (planting.perennial || !plantUnits.has(unit ?? "root")) return 0;
  // "Cut 20 pieces of garlic, the scapes": the bulbs stay where they are.
  if (partOfPlant.test(text) || (takenWhole === "lifted" && verb.includes("cut"))) return 0;
  // A count of seeds says nothing about how many plants are left.
  if (planting.seeds === true) return 0;
  return Math.min(count.value, planting.count.value);
}

/** "Lifted some of the onions": how many are left nobody knows any more. */
function isTakenInPart(ledger: Ledger, { count, text, verb }: Event, planting: Planting): boolean {
  const { takenWhole, atOnce } = habitOf(cropOf(ledger.records, planting));
  if (takenWhole !== "lifted" || count !== undefined || planting.perennial) return false;
  if (partOfPlant.test(text) || verb.includes("cut")) return false;
  return atOnce === true || /\b(?:some|part|half|most|several|a few)\b/i.test(text);
}

const plantUnits: ReadonlySet<string> = new Set(["head", "root", "bulb", "piece"]);

const partOfPlant = /\b(scapes?|tops|greens|leaves|leaf|thinnings|shoots|side shoots|flowers|pods|seed|seeds)\b/i;
