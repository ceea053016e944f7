/** The site a photo was taken at, by its GPS position: only the site, and only when no other one can be meant. */
import type { Position, Site } from "../model.ts";

export interface PhotoPosition {
  /** Degrees. */
  readonly latitude: number;
  readonly longitude: number;
  /** What the phone says of its own error (EXIF GPSHPositioningError, metres). */
  readonly errorMetres?: number | undefined;
}

/** How far a garden, a plot or a yard reaches from the point its record gives, in metres. Common practice, no standard. */
const reach = 75;

/** A phone's error when it does not say: beside walls and under trees several times what it is in the open. */
const usualError = 30;

/** A phone that is this unsure, in metres, knows the town at best. */
const tooUnsure = 300;

/** Mean radius of the Earth, metres (IUGG). */
const earthRadius = 6_371_008.8;

/**
 * A photo belongs to the nearest site within that site's reach, the phone's error and the rounding of the site's own
 * position together, unless a second one may be just as near.
 */
export function siteAround(photo: PhotoPosition, sites: Iterable<Site>): string | undefined {
  const error = photo.errorMetres ?? usualError;
  if (error > tooUnsure) return undefined;
  const near = [...sites]
    .flatMap(({ id, position }) => {
      const rounding = position ? roundingOf(position) : undefined;
      if (!position || rounding === undefined) return [];
      const distance = metresBetween(photo, position);
      return distance <= reach + error + rounding ? [{ id, distance, doubt: error + rounding }] : [];
    })
    .sort((a, b) => a.distance - b.distance);
  const [first, second] = near;
  if (first && second && first.distance + first.doubt >= second.distance - second.doubt) return undefined;
  return first?.id;
}

/** Haversine formula (Sinnott, Sky and Telescope 68, 1984). */
export function metresBetween(a: PhotoPosition, b: PhotoPosition): number {
  const radians = Math.PI / 180;
  const north = Math.sin(((b.latitude - a.latitude) * radians) / 2) ** 2;
  const east = Math.sin(((b.longitude - a.longitude) * radians) / 2) ** 2;
  const chord = north + Math.cos(a.latitude * radians) * Math.cos(b.latitude * radians) * east;
  return 2 * earthRadius * Math.asin(Math.min(1, Math.sqrt(chord)));
}

/** Half of the last digit that the record writes, in metres; undefined when that is a whole village. */
function roundingOf({ latitude, longitude }: Position): number | undefined {
  const decimals = Math.max(...[latitude, longitude].map((degrees) => String(degrees).split(".")[1]?.length ?? 0));
  return decimals < 3 ? undefined : (10 ** -decimals / 2) * (Math.PI / 180) * earthRadius;
}
