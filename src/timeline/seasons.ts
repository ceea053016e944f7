/** When a planting ends by itself, if no line says so. */
import { addDays, daysBetween, inYear, seasonStart, yearOf } from "../calendar.ts";
import type { Crop, Day, Variety } from "../model.ts";
import { habitOf } from "./crop-habits.ts";

/** A planting begun in this many last days of a season is begun for the next, if it is a crop that overwinters: from September on in a season that is the calendar year. */
const lateDays = 122;

/** What stands over the winter is picked until it runs to flower: by the end of May in a season that is the calendar year. */
export const daysIntoSpring = 151;

/** Days for which a crop is usually picked after the first picking, before a season's end would cut it short. */
const pickingDays = 28;

/** The last day of the season in which a day lies. `seasonStarts` is a month and day, "01-01". */
function seasonEnd(day: Day, seasonStarts: string): Day {
  return addDays(nextSeason(day, seasonStarts), -1);
}

/** The first day of the season after the one in which a day lies. */
export function nextSeason(day: Day, seasonStarts: string): Day {
  return inYear(seasonStarts, yearOf(seasonStart(day, seasonStarts)) + 1);
}

/**
 * Which year of its life a perennial is in: the season it was begun in is the first, and what was planted late in a season
 * has its first year in the next.
 */
export function yearOfLife(begun: Day, on: Day, seasonStarts: string): number {
  const season = (day: Day) => yearOf(seasonStart(day, seasonStarts));
  const first = season(begun) + (isLate(begun, seasonStarts) ? 1 : 0);
  return Math.max(1, season(on) - first + 1);
}

function isLate(day: Day, seasonStarts: string): boolean {
  return daysBetween(day, nextSeason(day, seasonStarts)) <= lateDays;
}

/**
 * The last day a planting can be taken to stand without a line that clears it; undefined unless it is known as an annual,
 * for of plants that nobody knows no calendar can say that they are over. Garlic and
 * broad beans put in late in one season stand through the next, in which they are picked; leeks and kale stand until spring.
 */
export function endsWithoutWord(
  begun: Day,
  crop: Crop | undefined,
  variety: Variety | undefined,
  seasonStarts: string,
): Day | undefined {
  if ((variety?.perennial ?? crop?.perennial) !== false) return undefined;
  const end = seasonEnd(begun, seasonStarts);
  const { winter } = habitOf(crop);
  if (winter === "stands") return addDays(end, daysIntoSpring);
  const next = () => seasonEnd(nextSeason(begun, seasonStarts), seasonStarts);
  if (winter === "biennial") return next();
  if (!isLate(begun, seasonStarts)) return end;
  const maturesInTime = variety?.maturity !== undefined && addDays(begun, variety.maturity.days + pickingDays) <= end;
  return winter === "autumn" && !maturesInTime ? next() : end;
}
