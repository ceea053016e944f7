/**
 * What handbooks say of crops: days to maturity, spacing, yield, hardiness, soil pH, base temperature of growth. A starting
 * point for a garden that has no records of its own; what the person's records say goes before it.
 *
 * Every value carries its source, and says when it was written from memory of such tables and has to be looked up before it
 * is shown as a fact.
 */
import { facts } from "./crop-fact-rows.ts";
import type { HeatScale } from "./heat-units.ts";

export interface FactSource {
  /** Publication, publisher, year. */
  readonly title: string;
  /** Typical of extension tables, not read in one: to be verified before it is quoted. */
  readonly fromMemory: boolean;
}

export interface Fact<Value> {
  readonly value: Value;
  readonly source: FactSource;
}

export interface Range {
  readonly from: number;
  readonly to: number;
}

export type Hardiness = "hardy" | "half-hardy" | "tender" | "very tender";

/** Of a row: grams of it, or pieces that must never be turned into a weight. */
export type RowYield =
  | { readonly gramsPerMetre: number }
  | { readonly piecesPerMetre: number; readonly unit: "head" | "fruit" | "bunch" | "stem" | "ear" };

export interface CropFacts {
  /** Crop id. */
  readonly crop: string;
  /** Days from sowing or planting to the first picking (flowers: to the first flower). */
  readonly maturity?: Fact<Range & { readonly counted: "sowing" | "planting" }> | undefined;
  /** Centimetres between plants of a row, and between rows. */
  readonly inRowCm?: Fact<Range> | undefined;
  readonly betweenRowsCm?: Fact<Range> | undefined;
  readonly rowYield?: Fact<RowYield> | undefined;
  readonly hardiness?: Fact<Hardiness> | undefined;
  readonly ph?: Fact<Range> | undefined;
  readonly heat: Fact<HeatScale>;
}

const byCrop = new Map(facts.map((row) => [row.crop, row]));

/** Undefined for a crop that no row knows: then only the person's own records can tell. */
export function cropFacts(crop: string | undefined): CropFacts | undefined {
  return crop === undefined ? undefined : byCrop.get(crop);
}

export const allCropFacts: readonly CropFacts[] = facts;

/** Middle of a range: what is reckoned with where one figure is needed. */
export function middle({ from, to }: Range): number {
  return (from + to) / 2;
}

/**
 * Square metres that one plant takes: by the handbook's distances in beds, where rows stand as close as plants in them,
 * or half of what field rows with paths between them take, whichever is more (common practice of bed growing).
 */
export function areaPerPlant(crop: string | undefined, spacingCm?: number): number | undefined {
  if (spacingCm !== undefined && spacingCm > 0) return (spacingCm / 100) ** 2;
  const known = cropFacts(crop);
  if (known?.inRowCm === undefined) return undefined;
  const inRow = middle(known.inRowCm.value) / 100;
  const rows = known.betweenRowsCm === undefined ? inRow : middle(known.betweenRowsCm.value) / 100;
  return Math.max(inRow * inRow, (inRow * rows) / 2);
}

/** What one plant gives by the handbook, grams or pieces: the row's yield by the plants that stand in a metre of it. */
export function yieldPerPlant(
  crop: string | undefined,
): Fact<{ readonly grams?: number; readonly pieces?: number }> | undefined {
  const known = cropFacts(crop);
  if (known?.rowYield === undefined || known.inRowCm === undefined) return undefined;
  const perMetre = 100 / middle(known.inRowCm.value);
  const { value, source } = known.rowYield;
  const each =
    "gramsPerMetre" in value ? { grams: value.gramsPerMetre / perMetre } : { pieces: value.piecesPerMetre / perMetre };
  return { value: each, source: { ...source, fromMemory: source.fromMemory || known.inRowCm.source.fromMemory } };
}
