/** What a position says of country and time: those of the nearest towns, where these agree. */
import { zoneOfTown } from "./town-zones.ts";
import { type Town, timeZonesOf } from "./towns.ts";

export interface Nearby {
  /** Of all towns near by. */
  readonly country?: string | undefined;
  readonly timeZone?: string | undefined;
  /** That the person chooses from, where the towns keep several. */
  readonly zones: readonly string[];
}

/** Kilometres beyond which a town says nothing of a place. */
const farthest = 600;
/** A border may lie between the place and a town that is hardly nearer than another. */
const leeway = 60;

export function nearbyOf(position: Pick<Town, "latitude" | "longitude">, towns: readonly Town[]): Nearby {
  const far = towns.map((town) => ({ town, km: kilometres(position, town) }));
  const nearest = Math.min(...far.map(({ km }) => km));
  if (!(nearest <= farthest)) return { zones: [] };
  const near = far.filter(({ km }) => km <= nearest * 1.25 + leeway).map(({ town }) => town);
  const countries = [...new Set(near.map(({ country }) => country))];
  const zones = [...new Set(near.map(zoneOf))];
  const [country, another] = countries;
  const choices = [...new Set([...zones.flatMap((zone) => zone ?? []), ...countries.flatMap(timeZonesOf)])];
  return {
    country: another === undefined ? country : undefined,
    timeZone: zones.length === 1 ? zones[0] : undefined,
    zones: choices,
  };
}

function zoneOf(town: Town): string | undefined {
  const [only, another] = timeZonesOf(town.country);
  return zoneOfTown(town) ?? (another === undefined ? only : undefined);
}

/** On a round Earth (haversine). */
function kilometres(a: Pick<Town, "latitude" | "longitude">, b: Pick<Town, "latitude" | "longitude">): number {
  const radians = Math.PI / 180;
  const half = (angle: number) => Math.sin((angle * radians) / 2) ** 2;
  const h =
    half(b.latitude - a.latitude) +
    Math.cos(a.latitude * radians) * Math.cos(b.latitude * radians) * half(b.longitude - a.longitude);
  return 2 * 6371 * Math.asin(Math.sqrt(h));
}
