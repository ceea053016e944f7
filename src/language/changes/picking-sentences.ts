/** Pickings and saved seed as one sentence. */

import type { Event, Harvest, PickUnit, PlantsThen } from "../../model.ts";
import { sayVolume, sayWeight } from "../amounts.ts";
import type { Names } from "../names.ts";
import { sayCount, sayList } from "../numbers.ts";
import { pieceWords } from "../pieces.ts";
import { sentence, someOf, wholePlanting } from "./sentence-parts.ts";

/** "twelve stems", "about ten pods", "one crate". */
export function sayPieces(count: NonNullable<Harvest["count"]>, unit: PickUnit): string {
  const [one, many] = pieceWords[unit];
  return `${sayCount(count)} ${(count.upTo ?? count.value) === 1 ? one : many}`;
}

/**
 * "The first picking of Black Beauty courgettes came to 1.4 kg.", "Twelve stems were cut from the Matucana sweet peas.",
 * "Five Musselburgh leeks were lifted." `whole` says that the picking took up the plants, `atOnce` that it is their only one.
 */
export function sayPicked(
  names: Names,
  event: Event,
  planting: PlantsThen,
  { harvest, whole, atOnce }: { readonly harvest: Harvest; readonly whole: boolean; readonly atOnce: boolean },
): string {
  const { count, unit } = harvest;
  const isFirst = !atOnce && planting.implied === false && planting.picked?.times === 0;
  const verb = takenVerb(event.verb);
  const amount = sayAmount(names, harvest);
  const plants = names.plants(planting);
  if (count !== undefined && unit !== undefined) {
    const were = (count.upTo ?? count.value) === 1 ? "was" : "were";
    const asPlants = whole || event.unit === undefined || unit === "piece";
    const taken = asPlants ? someOf(names, planting, count).name : sayPieces(count, unit);
    const from = asPlants ? "" : ` from the ${plants}`;
    return sentence(`${isFirst ? theFirst(taken) : taken} ${were} ${verb}${from}`, amount, event.detail);
  }
  if (amount === undefined) {
    const { name, were } = isFirst
      ? { ...wholePlanting(names, planting), name: `the first ${plants}` }
      : wholePlanting(names, planting);
    return sentence(`${name} ${were} ${verb}`, event.detail);
  }
  return sentence(
    isFirst ? `the first picking of ${plants} came to ${amount}` : `the ${plants} gave ${amount}`,
    event.detail,
  );
}

/** "the first twelve leeks", "the first leek". */
function theFirst(taken: string): string {
  return `the first ${taken.replace(/^one /, "")}`;
}

function sayAmount(names: Names, { grams, litres }: Harvest): string | undefined {
  const { units } = names.settings;
  const amounts = [
    grams === undefined ? undefined : sayWeight(grams, units),
    litres === undefined ? undefined : sayVolume(litres, names.settings),
  ].filter((amount) => amount !== undefined);
  return amounts.length === 0 ? undefined : sayList(amounts);
}

function takenVerb(verb: string): string {
  if (/\bdug\b/.test(verb)) return "dug";
  if (/\bcut\b/.test(verb)) return "cut";
  if (/\blift/.test(verb)) return "lifted";
  if (/\bpulled\b/.test(verb)) return "pulled";
  if (/\b(gather|collect|forag)/.test(verb)) return "gathered";
  return /\bharvest/.test(verb) ? "harvested" : "picked";
}

export function saySavedSeed(names: Names, event: Event): string {
  const { grams, count, detail } = event;
  const plants = names.plants(event);
  if (grams !== undefined)
    return sentence(`${sayWeight(grams, names.settings.units)} of seed was saved from the ${plants}`, detail);
  if (count === undefined) return sentence(`seed was saved from the ${plants}`, detail);
  // "Saved seed: 2 Gardener's Delight" numbers the fruits or plants it came from, "60 seeds" the seeds.
  if (!/\bseeds\b/i.test(event.text.replace(/^\W*(saved|collected|gathered) seeds?\b/i, ""))) {
    return sentence(`seed was saved from ${someOf(names, event, count).name}`, detail);
  }
  return sentence(`${sayCount(count)} seeds were saved from the ${plants}`, detail);
}
