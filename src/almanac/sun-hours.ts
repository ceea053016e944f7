/** Hours of direct sun a bed has on a clear day, with what stands around it: what decides which crops it can carry. */
import type { Bed, Day, Position } from "../model.ts";
import { isLeafless, readObstacle, takesSun } from "./obstacles.ts";
import { sunAtMilliseconds } from "./sun.ts";

const stepMinutes = 10;

/** Fruit and most vegetables want six hours and more of direct sun (common practice; "full sun" on seed packets). */
export const fullSun = 6;

/** Undefined when no line tells what takes the bed's sun. */
export function sunHours(bed: Bed, place: Position, day: Day): number | undefined {
  const obstacles = bed.shade.map(readObstacle).filter((obstacle) => obstacle !== undefined);
  if (obstacles.length === 0) return undefined;
  const leafless = isLeafless(Number(day.slice(5, 7)), place.latitude);
  const midnight = Date.parse(day) - (place.longitude / 15) * 3_600_000;
  let lit = 0;
  for (let minute = 0; minute < 1440; minute += stepMinutes) {
    const sun = sunAtMilliseconds(midnight + minute * 60_000, place);
    if (sun.altitude > 0 && !obstacles.some((obstacle) => takesSun(obstacle, sun, leafless))) lit += stepMinutes;
  }
  return lit / 60;
}
