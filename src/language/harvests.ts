/** How a harvest is said. */
import type { GardenSettings } from "../model.ts";
import { added, type HarvestSum, type Pieces } from "../picked.ts";
import { sayVolume, sayWeight } from "./amounts.ts";
import { sayList, sayNumber, sayPlural } from "./numbers.ts";
import { pieceWords } from "./pieces.ts";

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

/** "in five pickings", "in one picking" */
export function sayPickings(times: number): string {
  return `in ${sayNumber(times)} ${times === 1 ? "picking" : "pickings"}`;
}
