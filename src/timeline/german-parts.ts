/** What German sentences about plants are put together from: their number and name, and their place. */
import type { Count, Event, PickUnit, Planting } from "../model.ts";
import type { Names, PlantIds } from "./names.ts";
import { germanPieces } from "./speech/pieces.ts";

/** "zwölf Lauch Musselburgh", "eine Tomate Ochsenherz", "etwa zehn Dahlien"; the name alone when nobody counted. */
export function some(names: Names, ids: PlantIds, count: Count | undefined): string {
  if (count === undefined) return names.plants(ids);
  const most = count.upTo ?? count.value;
  if (most === 1) return `${count.approx ? "etwa " : ""}${names.one(ids)}`;
  return `${names.speech.count(count)} ${names.plants(ids, most)}`;
}

/** All plants of a planting: "Lauch Musselburgh", of a single one "Tomate Ochsenherz". */
export function whole(names: Names, planting: PlantIds & Partial<Pick<Planting, "count">>): string {
  const { count } = planting;
  const single = count?.value === 1 && count.upTo === undefined && !count.approx;
  return names.plants(planting, single ? 1 : undefined);
}

/** The plants a line spoke of, each kind named once. A crop stays a crop, however many kinds of it stand there. */
export function meant(names: Names, event: PlantIds, plantings: readonly Planting[]): string {
  if (event.variety === undefined && event.crop !== undefined) return whole(names, { crop: event.crop });
  const kinds = new Map(plantings.map((planting) => [names.plants(planting), planting]));
  const [first, second] = kinds.values();
  if (first === undefined) return whole(names, event);
  if (second !== undefined) return names.speech.list([...kinds.keys()]);
  return whole(names, plantings.length === 1 ? first : { ...first, count: undefined });
}

/** Those the line counts, else those it means. */
export function countedOr(names: Names, event: Event, plantings: readonly Planting[]): string {
  return event.count === undefined ? meant(names, event, plantings) : some(names, plantings[0] ?? event, event.count);
}

/** The rows that notes name in English; every other spot stays as it is written. */
export function spotIn(spot: string): string {
  return spot.replace(/^rows?\b/iu, (word) => (word.toLowerCase() === "row" ? "Reihe" : "Reihen"));
}

export function placing(names: Names, { spacingCm, spot, gear }: Event): readonly (string | undefined)[] {
  return [
    spacingCm === undefined ? undefined : `${names.speech.length(spacingCm)} Abstand`,
    spot === undefined ? undefined : spotIn(spot),
    gear === undefined ? undefined : `mit ${names.gearTitle(gear)}`,
  ];
}

/** "zwölf Stiele", "etwa ein Bund". */
export function sayPieces(names: Names, count: Count, unit: PickUnit): string {
  const [one, many] = germanPieces[unit];
  return (count.upTo ?? count.value) === 1
    ? `${count.approx ? "etwa " : ""}${one}`
    : `${names.speech.count(count)} ${many}`;
}
