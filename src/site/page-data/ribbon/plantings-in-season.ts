/** Plantings of a bed that stood in it at any time of a season, as far as it is known, by beginning. */
import { bookOf, type Season } from "../../../garden/index.ts";
import type { Day, Garden, Planting } from "../../../model.ts";

export function plantingsInSeason(garden: Garden, bed: string, { from }: Season, until: Day): readonly Planting[] {
  return bookOf(garden)
    .stateOf(bed, until)
    .plantings.filter(({ ended }) => ended === undefined || ended >= from);
}
