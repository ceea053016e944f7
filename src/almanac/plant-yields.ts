/**
 * What one plant gives by handbooks, as a range: a row's yield over the plants of a row, at the widest and the closest spacing
 * that tables name, and where crops are also told by the plant, those figures with it. Tables of rows are for many plants and
 * give the least; a tomato at 100 lb in 100 ft of row is a small one.
 */
import { gramsPerPound } from "../measures.ts";
import { cropFacts, type Fact, type FactSource } from "./crop-facts.ts";

export interface PlantYield {
  readonly low: number;
  readonly high: number;
  /** Between them in ratio, for where one figure is needed. */
  readonly middle: number;
}

const byThePlant: FactSource = { title: "typical of extension fact sheets, by the plant", fromMemory: true };

/** Pounds a plant. */
const pounds: ReadonlyMap<string, readonly [low: number, high: number]> = new Map(
  Object.entries({
    tomato: [5, 15],
    courgette: [3, 10],
    "summer-squash": [3, 10],
    cucumber: [3, 5],
    aubergine: [2, 5],
    pepper: [1, 3],
  }),
);

/** Grams, or pieces of the crop's own unit; undefined for a crop that no row knows. */
export function plantYield(crop: string | undefined, of: "grams" | "pieces"): Fact<PlantYield> | undefined {
  const known = cropFacts(crop);
  if (known?.rowYield === undefined || known.inRowCm === undefined) return undefined;
  const { value, source } = known.rowYield;
  const perMetre = "gramsPerMetre" in value ? value.gramsPerMetre : value.piecesPerMetre;
  if ("gramsPerMetre" in value !== (of === "grams") || perMetre <= 0) return undefined;
  const { from, to } = known.inRowCm.value;
  const plants = of === "grams" ? pounds.get(crop ?? "") : undefined;
  const [low, high] = [
    Math.min((perMetre * from) / 100, (plants?.[0] ?? Number.POSITIVE_INFINITY) * gramsPerPound),
    Math.max((perMetre * to) / 100, (plants?.[1] ?? 0) * gramsPerPound),
  ];
  return {
    value: { low, high, middle: Math.sqrt(low * high) },
    source:
      plants === undefined
        ? { ...source, fromMemory: source.fromMemory || known.inRowCm.source.fromMemory }
        : byThePlant,
  };
}
