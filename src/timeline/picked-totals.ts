/** Adding pickings up: for a planting, for a bed where they cannot be told apart, for a season. */
import type { Day, Harvest, Picked } from "../model.ts";

export const nothingPicked: Picked = {
  grams: 0,
  counts: {},
  weighed: {},
  weightAlone: false,
  litres: 0,
  times: 0,
};

/** The lower end of a range is counted: a total is never larger than what was picked. */
export function pickedMore(picked: Picked, { grams, litres, count, unit = "piece" }: Harvest, day: Day): Picked {
  const measured = grams !== undefined || litres !== undefined;
  const plus = (of: Picked["counts"]) => (count === undefined ? of : { ...of, [unit]: (of[unit] ?? 0) + count.value });
  return {
    grams: sum(picked.grams, grams),
    counts: plus(picked.counts),
    weighed: measured ? plus(picked.weighed) : picked.weighed,
    weightAlone: picked.weightAlone || (measured && count === undefined),
    litres: sum(picked.litres, litres),
    times: picked.times + 1,
    first: picked.first === undefined || day < picked.first ? day : picked.first,
    last: picked.last === undefined || day > picked.last ? day : picked.last,
  };
}

/** Adds without the dust of binary fractions (0.1 + 0.2): to the milligram and the millilitre. */
function sum(total: number, more = 0): number {
  return Math.round((total + more) * 1000) / 1000;
}
