/** How a harvest is said. */
import type { Picked, PickUnit } from "../model.ts";
import { onlyCounted } from "../picked.ts";
import { type Measures, sayVolume, sayWeight } from "./amounts.ts";
import type { Amount } from "./locale.ts";
import { sayList, sayNumber, sayPlural } from "./numbers.ts";
import { pieceWords } from "./pieces.ts";

/** In the order in which they are told. */
const units = Object.keys(pieceWords) as readonly PickUnit[];

/** What was picked, without when. */
export type PickedAmount = Pick<Picked, "grams" | "litres" | "counts" | "weighed" | "weightAlone">;

/** "4.2 kg", "twelve stems", "20 roots, 900 g", "1.2 kg and five heads"; undefined when only the picking itself was noted. */
export function sayPicked(picked: PickedAmount, settings: Measures): string | undefined {
  const { counts, weighed, weightAlone } = picked;
  const measured = sayMeasured(picked, settings);
  const alone = sayPieces(onlyCounted(picked));
  const listed = (parts: readonly string[]) => (parts.length === 0 ? undefined : sayList(parts));
  if (Object.keys(weighed).length === 0 || weightAlone) return listed([...measured, ...alone]);
  // All pieces were counted; where some were weighed and some not, the number alone tells the truth.
  if (alone.length === 0) return `${sayList(sayPieces(weighed))}, ${sayList(measured)}`;
  return listed(sayPieces(counts));
}

/** The same, with its weights and volumes in the other units: "1.4 kg and three bunches", "3.1 lb". */
export function pickedAmount(picked: PickedAmount, settings: Measures): Amount {
  const text = sayPicked(picked, settings) ?? "";
  const other = sayMeasured(picked, { ...settings, units: settings.units === "us" ? "metric" : "us" });
  const toldByNumber = !sayMeasured(picked, settings).every((measure) => text.includes(measure));
  return { text, other: other.length === 0 || toldByNumber ? undefined : sayList(other) };
}

/** Its weight and its volume. */
function sayMeasured({ grams, litres }: Pick<Picked, "grams" | "litres">, settings: Measures): readonly string[] {
  return [
    ...(grams > 0 ? [sayWeight(grams, settings.units)] : []),
    ...(litres > 0 ? [sayVolume(litres, settings)] : []),
  ];
}

function sayPieces(counts: Picked["counts"]): readonly string[] {
  return units.flatMap((unit) => {
    const count = counts[unit] ?? 0;
    return count > 0 ? [sayPlural(count, ...pieceWords[unit])] : [];
  });
}

/** The same with what it was: "4.2 kg of Alderman peas", "28 bulbs of Germidour garlic, 1.9 kg in all". */
export function sayPickedOf(picked: PickedAmount, produce: string, settings: Measures): string | undefined {
  const said = sayPicked(picked, settings);
  if (said === undefined) return undefined;
  const { weighed, weightAlone } = picked;
  const both = Object.keys(weighed).length > 0 && !weightAlone && Object.keys(onlyCounted(picked)).length === 0;
  return both ? `${said.replace(", ", ` of ${produce}, `)} in all` : `${said} of ${produce}`;
}

/** "in five pickings", "in one picking" */
export function sayPickings(times: number): string {
  return `in ${sayNumber(times)} ${times === 1 ? "picking" : "pickings"}`;
}
