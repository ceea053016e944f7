/** Whether any of some plantings stood in its bed at the end of a day. */
import { bookOf } from "../../../garden/index.ts";
import type { Day, Garden, Planting } from "../../../model.ts";

export function anyStands(garden: Garden, plantings: readonly Planting[], day: Day): boolean {
  const book = bookOf(garden);
  return plantings.some((planting) => {
    const then = book.standing(planting, day);
    return then !== undefined && then.ended === undefined;
  });
}
