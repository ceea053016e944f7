/** What was picked between two days, and how it is said. */
import { pieceWords, sayList, sayNumber, sayPlural, sayVolume, sayWeight } from "../language/index.ts";
import type { Change, Day, GardenSettings, Harvest, PickUnit } from "../model.ts";

type Pieces = ReadonlyMap<PickUnit, number>;

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

/** "4.2 kg", "twelve stems", "20 roots, 900 g", "1.2 kg and five heads"; undefined when only the picking itself was noted. */
export function sayHarvest(sum: HarvestSum, settings: GardenSettings): string | undefined {
  const measures = [
    ...(sum.grams > 0 ? [sayWeight(sum.grams, settings.units)] : []),
    ...(sum.litres > 0 ? [sayVolume(sum.litres, settings)] : []),
  ];
  const pieces = (all: Pieces) => [...all].map(([unit, count]) => sayPlural(count, ...pieceWords[unit]));
  const listed = (parts: readonly string[]) => (parts.length === 0 ? undefined : sayList(parts));
  if (sum.weighed.size === 0 || sum.weightAlone) return listed([...measures, ...pieces(sum.counted)]);
  // All pieces were counted; where some were weighed and some not, the number alone tells the truth.
  if (sum.counted.size === 0) return `${sayList(pieces(sum.weighed))}, ${sayList(measures)}`;
  return listed(pieces(added(sum.weighed, sum.counted)));
}

/** The same with what it was: "4.2 kg of Alderman peas", "28 bulbs of Germidour garlic, 1.9 kg in all". */
export function sayHarvestOf(sum: HarvestSum, produce: string, settings: GardenSettings): string | undefined {
  const said = sayHarvest(sum, settings);
  if (said === undefined) return undefined;
  const both = sum.weighed.size > 0 && !sum.weightAlone && sum.counted.size === 0;
  return both ? `${said.replace(", ", ` of ${produce}, `)} in all` : `${said} of ${produce}`;
}

function added(a: Pieces, b: Pieces): Pieces {
  const sum = new Map(a);
  for (const [unit, count] of b) sum.set(unit, (sum.get(unit) ?? 0) + count);
  return sum;
}

/** "in five pickings", "in one picking" */
export function sayPickings(times: number): string {
  return `in ${sayNumber(times)} ${times === 1 ? "picking" : "pickings"}`;
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
