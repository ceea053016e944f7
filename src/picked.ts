/** What pickings come to: added up for a planting, a bed or a season, and held against one another. */
import type { Day, Harvest, Picked, PickUnit } from "./model.ts";

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

export function pickedInAll(
  pickings: readonly { readonly harvest?: Harvest | undefined; readonly day: Day }[],
): Picked {
  return pickings.reduce((picked, { harvest = {}, day }) => pickedMore(picked, harvest, day), nothingPicked);
}

/** Pieces that were counted and never weighed or measured. */
export function onlyCounted({ counts, weighed }: Pick<Picked, "counts" | "weighed">): Picked["counts"] {
  const left = Object.entries(counts).map(([unit, count]) => [unit, count - (weighed[unit as PickUnit] ?? 0)] as const);
  return Object.fromEntries(left.filter(([, count]) => count > 0));
}

/** Whether two sums are told in the same measures: anything else would compare kilograms with stems. */
export function comparable(a: Picked, b: Picked): boolean {
  const shape = (picked: Picked) => {
    const { grams, litres, weighed, weightAlone } = picked;
    const alone = Object.keys(onlyCounted(picked));
    const both = Object.keys(weighed);
    return [
      grams > 0 && (both.length === 0 || weightAlone || alone.length === 0) ? "weight" : "",
      litres > 0 ? "volume" : "",
      ...new Set([...alone, ...(weightAlone ? [] : both)]),
    ]
      .filter((each) => each !== "")
      .sort()
      .join(" ");
  };
  return shape(a) !== "" && shape(a) === shape(b);
}

/** A rough size for ranking: kilograms and litres, and pieces by what they come to: forty stems or ten of anything else. */
export function pickedSize(picked: Picked): number {
  const { grams, litres, counts, weightAlone } = picked;
  const pieces = Object.entries(weightAlone || grams > 0 ? onlyCounted(picked) : counts);
  const size = pieces.reduce((sum, [unit, count]) => sum + count / (unit === "stem" ? 40 : 10), 0);
  return grams / 1000 + litres + size;
}
