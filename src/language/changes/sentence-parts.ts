/** What sentences about plants are put together from: their subject, its number, its place. */

import type { Count, Event, PlantIds, PlantsThen } from "../../model.ts";
import { sayLength } from "../amounts.ts";
import type { Names } from "../names.ts";
import { capital, fullStop, sayCount, sayList } from "../numbers.ts";

/** The parts that are said, joined by commas into one sentence. */
export function sentence(...parts: readonly (string | undefined | false)[]): string {
  return fullStop(capital(parts.filter((part) => part !== undefined && part !== false && part !== "").join(", ")));
}

/** Whom a sentence speaks of, and the words that agree with it. */
export interface Subject {
  /** "the Musselburgh leeks", "three Musselburgh leeks". */
  readonly name: string;
  readonly were: "were" | "was";
  readonly their: "their" | "its";
  readonly they: "they" | "it";
}

function subject(name: string, plural: boolean): Subject {
  return plural
    ? { name, were: "were", their: "their", they: "they" }
    : { name, were: "was", their: "its", they: "it" };
}

/** All plants of a planting: "the Musselburgh leeks", "the Crown Prince squash", of a single plant "the Ailsa Craig tomato". */
export function wholePlanting(names: Names, planting: PlantsThen): Subject {
  const only =
    planting.count?.value === 1 && planting.count.upTo === undefined && !planting.count.approx ? 1 : undefined;
  return subject(`the ${names.plants(planting, only)}`, names.arePlural(planting, only));
}

/**
 * The plants a line spoke of: those it touched, each kind named once, or the name it gave when it touched none. A crop stays
 * a crop, however many kinds of it stand there: "all tomatoes" are the tomatoes.
 */
export function plantsMeant(names: Names, event: PlantIds, plantings: readonly PlantsThen[]): Subject {
  if (event.variety === undefined && event.crop !== undefined) return wholePlanting(names, { crop: event.crop });
  const kinds = new Map(plantings.map((planting) => [names.plants(planting), planting]));
  const [first, second] = kinds.values();
  if (first === undefined) return wholePlanting(names, event);
  return second === undefined
    ? wholePlanting(names, plantings.length === 1 ? first : { ...first, count: undefined })
    : subject(`the ${sayKinds(names, [...kinds.values()])}`, true);
}

/** "Bishop of Llandaff, Café au Lait and David Howard dahlias": kinds of one crop share its word. */
function sayKinds(names: Names, kinds: readonly PlantIds[]): string {
  const crop = names.plants({ crop: kinds[0]?.crop });
  const shared = kinds.every((kind) => names.plants(kind) === `${names.title(kind)} ${crop}`);
  return shared ? `${sayList(kinds.map(names.title))} ${crop}` : sayList(kinds.map((kind) => names.plants(kind)));
}

/** A number of plants, "eleven Crown Prince squash"; their name alone when nobody counted. `such` says what kind: "bought-in". */
export function someOf(names: Names, ids: PlantIds, count: Count | undefined, such?: string): Subject {
  const most = count?.upTo ?? count?.value;
  const name = [sayCount(count), such, names.plants(ids, most)].filter((part) => part !== undefined).join(" ");
  return subject(name, names.arePlural(ids, most));
}

/** "No Musselburgh leeks grow", "no Victoria rhubarb grows": where is for the sentence to say. */
export function sayNoneGrow(names: Names, ids: PlantIds): string {
  return `No ${names.plants(ids)} ${names.arePlural(ids) ? "grow" : "grows"}`;
}

/** Where in the bed, how far apart and on what: each part as it is said, or undefined. */
export function placing(names: Names, { spacingCm, spot, gear }: Event): readonly (string | undefined)[] {
  return [
    spacingCm === undefined ? undefined : `${sayLength(spacingCm, names.settings.units)} apart`,
    spot === undefined ? undefined : sayWhere(spot),
    gear === undefined ? undefined : sayOnGear(names.gear(gear)),
  ];
}

const alreadyPlaced =
  /^(in|on|at|by|between|under|near|along|beside|behind|next|against|around|among|up|over|below|above|from|opposite|inside|outside|across|beneath|round|to|half|halfway|towards?|within)\b/i;

/** "row 2" becomes "in row 2", "the north end" "at the north end"; "by the gate" is said as it is. */
export function sayWhere(spot: string): string {
  if (alreadyPlaced.test(spot)) return spot;
  // "Row 2", "pots 1 to 4, the door end": what carries a number needs no article.
  if (/^[a-z]+\s+(\d|[A-Z]\b)/.test(spot)) return `in ${spot}`;
  if (/\b(end|edge|side|front|back|top|bottom)\b/i.test(spot)) return `at ${withThe(spot)}`;
  return `in ${withThe(spot)}`;
}

function withThe(spot: string): string {
  return /^(the|a|an|my|our|its|every|each|one|two|three|both|all)\b/i.test(spot) ? spot : `the ${spot}`;
}

/** "under the net", "in the tubs", "on the hazel arch". */
function sayOnGear(gear: string): string {
  if (/\b(net|netting|mesh|fleece|cloches?|tunnel|cage|cover|cloth)\b/i.test(gear)) return `under ${gear}`;
  return `${/\b(pots?|tubs?|bags?|trough|trays?|box|boxes|barrel|buckets?|trainers?|frame|sacks?)\b/i.test(gear) ? "in" : "on"} ${gear}`;
}
