/** Sentences of what came, came up by itself, came back, is doing well, was put up, given away, sold, planned. */

import type { Event, PlantIds, PlantsThen } from "../../model.ts";
import { sayVolume, sayWeight } from "../amounts.ts";
import type { Names } from "../names.ts";
import { fullStop, sayList } from "../numbers.ts";
import { sayPieces } from "./picking-sentences.ts";
import { placing, plantsMeant, sentence, someOf, wholePlanting } from "./sentence-parts.ts";

/** "Six Sungold tomatoes came from a neighbour.", "Three Elsanta strawberries were bought." What was paid is nobody's business. */
export function sayAcquired(names: Names, event: Event): string {
  const { gear, what, from, plantsFrom } = event;
  const isPlant = event.variety !== undefined || event.crop !== undefined;
  const some = isPlant ? someOf(names, event, event.count) : undefined;
  const thing = some?.name ?? (gear === undefined ? (what ?? "something") : names.gear(gear));
  const were = some?.were ?? "was";
  if (plantsFrom === "bought") return sentence(`${thing} ${were} bought${said("from", from)}`, event.detail);
  if (plantsFrom === "given") return sentence(`${thing} ${were} given to the garden${said("by", from)}`, event.detail);
  return sentence(`${thing} came${from === undefined ? " to the garden" : said("from", from)}`, event.detail);
}

function said(preposition: string, who: string | undefined): string {
  return who === undefined ? "" : ` ${preposition} ${who}`;
}

export function saySelfSown(names: Names, event: Event, planting: PlantIds): string {
  const { name } = someOf(names, planting, event.count, "self-sown");
  return sentence(`${name} came up`, ...placing(names, event), event.detail);
}

export function sayCameBack(names: Names, event: Event, plantings: readonly PlantsThen[]): string {
  const { name } =
    event.count === undefined
      ? plantsMeant(names, event, plantings)
      : someOf(names, plantings[0] ?? event, event.count);
  const came = /winter/.test(event.verb) ? "came through the winter" : "came back";
  return sentence(`${name} ${came}`, ...placing(names, event), event.detail);
}

/** The person's own words behind whom they are said of. */
export function sayDoing(names: Names, event: Event, bed: string, plantings: readonly PlantsThen[]): string {
  const named = event.variety !== undefined || event.crop !== undefined;
  const of = named ? plantsMeant(names, event, plantings).name : names.bed(bed);
  return sentence(`${of}: ${event.what ?? event.detail ?? event.text}`);
}

export function sayPreserved({ what, detail, text }: Event): string {
  return fullStop(`Put up: ${what ?? detail ?? text}`);
}

export function sayPlanned(what: string): string {
  return fullStop(`Planned: ${what}`);
}

/** `doing` says how it left. Bunches and weights are told as such; a number alone counts plants, or fruit once they bear. */
export function sayGivenAway(names: Names, event: Event, planting: PlantsThen, doing: "given away" | "sold"): string {
  const { name, were } = whatLeft(names, event, planting);
  return sentence(`${name} ${were} ${doing}`, event.detail);
}

function whatLeft(names: Names, event: Event, planting: PlantsThen) {
  const { count, unit, grams, litres } = event;
  const { units } = names.settings;
  const nameless = planting.variety === undefined && planting.crop === undefined;
  const of = nameless ? "" : ` of ${names.plants(planting)}`;
  const one = count !== undefined && (count.upTo ?? count.value) === 1;
  if (count !== undefined && unit !== undefined && unit !== "piece")
    return { name: `${sayPieces(count, unit)}${of}`, were: one ? "was" : "were" };
  const amounts = [
    ...(grams === undefined ? [] : [sayWeight(grams, units)]),
    ...(litres === undefined ? [] : [sayVolume(litres, names.settings)]),
  ];
  if (amounts.length > 0) return { name: `${sayList(amounts)}${of}`, were: "was" };
  if (nameless) return { name: event.what ?? event.detail ?? "something", were: "was" };
  if (count !== undefined) return someOf(names, planting, count);
  const { name, were } = wholePlanting(names, planting);
  return { name: `some of ${name}`, were };
}
