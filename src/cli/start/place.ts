/** Where a garden is, from what a person says: a town, latitude and longitude, or nothing. */
import { nearestName } from "../../records/index.ts";
import { nearbyOf } from "./place-nearby.ts";
import { zoneOfTown } from "./town-zones.ts";
import { sayTown, type Town, townsCalled } from "./towns.ts";

export interface StartPlace {
  /** Undefined when the person leaves it open. */
  readonly position?: { readonly latitude: number; readonly longitude: number } | undefined;
  /** Of a town. */
  readonly country?: string | undefined;
  /** Of a town that lies well within one. */
  readonly timeZone?: string | undefined;
  /** Of a position near which several are kept. */
  readonly zones?: readonly string[] | undefined;
}

export type PlaceRead =
  | { readonly place: StartPlace }
  /** Several towns of that name. */
  | { readonly towns: readonly Town[] }
  /** One or two sentences. */
  | { readonly refused: string };

export const SKIP = "skip";

export function readPlace(written: string, towns: readonly Town[]): PlaceRead {
  const text = written.trim();
  if (text === "" || text.toLowerCase() === SKIP) return { place: {} };
  const position = readPosition(text);
  if (position !== undefined) {
    const { latitude, longitude } = position;
    if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)
      return { place: { position, ...nearbyOf(position, towns) } };
    return { refused: `"${text}" is no place on Earth. Write latitude, then longitude: 54.3, -5.6.` };
  }
  const found = townsCalled(text, towns);
  const [first] = found;
  if (found.length === 1 && first !== undefined) return { place: placeOf(first) };
  if (found.length > 0) return { towns: found };
  const [name = ""] = text.split(",");
  const near = nearestName(name, new Set(towns.map((town) => town.name)));
  const meant = near === undefined ? "" : ` Did you mean "${near}"?`;
  return {
    refused: `No town of 20,000 people or more is called "${text}".${meant} Name a larger town nearby, which does as well for light and time; or write latitude and longitude such as 54.3, -5.6, or "${SKIP}".`,
  };
}

export function placeOf(town: Town): StartPlace {
  const { latitude, longitude, country } = town;
  return { position: { latitude, longitude }, country, timeZone: zoneOfTown(town) };
}

/** How a town is told from others of its name: by its country and region, else by where it lies. */
export function sayChoice(town: Town, all: readonly Town[]): string {
  const said = sayTown(town);
  const isAlone = all.filter((other) => sayTown(other) === said).length === 1;
  return isAlone ? said : `${town.latitude}, ${town.longitude}`;
}

/** "54.3, -5.6", "54.3 N 5.6 W", "54.3° north, 5.6° west". */
function readPosition(text: string): { latitude: number; longitude: number } | undefined {
  const [, north = "", ns = "", east = "", ew = ""] =
    /^([+-]?\d{1,3}(?:\.\d{1,9})?)°? ?(n|s|north|south)?(?:, ?| )([+-]?\d{1,3}(?:\.\d{1,9})?)°? ?(e|w|east|west)?$/i.exec(
      text.replace(/\s+/g, " "),
    ) ?? [];
  if (north === "" || east === "") return undefined;
  const sign = (letter: string) => (/^[sw]/i.test(letter) ? -1 : 1);
  return { latitude: Number(north) * sign(ns), longitude: Number(east) * sign(ew) };
}
