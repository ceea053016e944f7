/** What pickings come to. */
import type { Change, Day, Harvest, PickUnit } from "./model.ts";

export type Pieces = ReadonlyMap<PickUnit, number>;

/**
 * Pickings added up without counting anything twice: a crate that was weighed is a weight and pieces, and only pieces
 * that were never weighed may be said beside a weight.
 */
export interface HarvestSum {
  readonly times: number;
  readonly first?: Day | undefined;
  readonly last?: Day | undefined;
  readonly grams: number;
  readonly litres: number;
  /** Pieces of pickings that were weighed too. */
  readonly weighed: Pieces;
  /** Pieces of pickings that were only counted. */
  readonly counted: Pieces;
  /** Some pickings were weighed without a count. */
  readonly weightAlone: boolean;
}

/** Pickings after `from`, up to and with `to`. */
export function harvestBetween(changes: readonly Change[], from: Day, to: Day): HarvestSum {
  const picked = changes.filter(({ kind, day }) => kind === "picked" && day > from && day <= to);
  return sumOf(picked.map(({ harvest = {}, day }) => ({ harvest, day })));
}

/** What one line brought in. */
export function sumOf(pickings: readonly { readonly harvest: Harvest; readonly day: Day }[]): HarvestSum {
  let [grams, litres] = [0, 0];
  let weightAlone = false;
  const weighed = new Map<PickUnit, number>();
  const counted = new Map<PickUnit, number>();
  for (const { harvest } of pickings) {
    grams += harvest.grams ?? 0;
    litres += harvest.litres ?? 0;
    const measured = harvest.grams !== undefined || harvest.litres !== undefined;
    if (harvest.count === undefined) weightAlone ||= measured;
    else {
      const pieces = measured ? weighed : counted;
      const unit = harvest.unit ?? "piece";
      pieces.set(unit, (pieces.get(unit) ?? 0) + harvest.count.value);
    }
  }
  const days = pickings.map(({ day }) => day).sort();
  return { times: pickings.length, first: days[0], last: days.at(-1), grams, litres, weighed, counted, weightAlone };
}

export function added(a: Pieces, b: Pieces): Pieces {
  const sum = new Map(a);
  for (const [unit, count] of b) sum.set(unit, (sum.get(unit) ?? 0) + count);
  return sum;
}

/** Whether two sums are told in the same measures: anything else would compare kilograms with stems. */
export function comparable(a: HarvestSum, b: HarvestSum): boolean {
  const shape = ({ grams, litres, counted, weighed, weightAlone }: HarvestSum) =>
    [
      grams > 0 && (weighed.size === 0 || weightAlone || counted.size === 0) ? "weight" : "",
      litres > 0 ? "volume" : "",
      ...counted.keys(),
      ...(weightAlone ? [] : weighed.keys()),
    ]
      .filter((each) => each !== "")
      .sort()
      .join(" ");
  return shape(a) !== "" && shape(a) === shape(b);
}

/** A rough size for ranking: kilograms and litres, and pieces by what they come to: forty stems or ten of anything else. */
export function harvestSize({ grams, litres, counted, weighed, weightAlone }: HarvestSum): number {
  const pieces = weightAlone ? counted : added(counted, grams > 0 ? new Map() : weighed);
  const size = [...pieces].reduce((sum, [unit, count]) => sum + count / (unit === "stem" ? 40 : 10), 0);
  return grams / 1000 + litres + size;
}
