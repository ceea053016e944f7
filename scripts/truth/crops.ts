/** Figures of crops against what was published of them. */

import { allCropFacts, cropFacts, type Range } from "../../src/almanac/index.ts";
import { centimetresPerInch, gramsPerPound, metresPerFoot } from "../../src/measures.ts";
import { averageCrops, heldRows, maineDistances, typicalRows } from "./published-crops.ts";
import type { TruthRow } from "./table.ts";

const metresPer100Feet = 100 * metresPerFoot;

/** "40-50", or "18" for both ends. */
export function rangeOf(text: string): Range {
  const [from = Number.NaN, to = from] = text.split("-").map(Number);
  return { from, to };
}

/** What 100 ft of row give by our table, in the published unit: "100 lb". */
export function ourCrop(crop: string): string | undefined {
  const gives = cropFacts(crop)?.rowYield?.value;
  if (gives === undefined) return undefined;
  const amount =
    "gramsPerMetre" in gives
      ? (gives.gramsPerMetre * metresPer100Feet) / gramsPerPound
      : gives.piecesPerMetre * metresPer100Feet;
  return `${Number(amount.toFixed(6))} ${"gramsPerMetre" in gives ? "lb" : gives.unit}`;
}

/** The published average; of a range its middle. */
export function publishedCrop(crop: string): string | undefined {
  const [amount = "", unit] = averageCrops.get(crop)?.split(" ") ?? [];
  const { from, to } = rangeOf(amount);
  return unit === undefined ? undefined : `${(from + to) / 2} ${unit}`;
}

/** Inches by which our range and Maine's miss one another; 0 where they overlap. */
export function missedBy(crop: string, inRow: string, between: string): number {
  const ours = cropFacts(crop);
  const apart = (own: Range | undefined, theirs: Range) =>
    own === undefined
      ? Number.POSITIVE_INFINITY
      : Math.max(0, own.from / centimetresPerInch - theirs.to, theirs.from - own.to / centimetresPerInch);
  return Math.max(apart(ours?.inRowCm?.value, rangeOf(inRow)), apart(ours?.betweenRowsCm?.value, rangeOf(between)));
}

export function cropRows(): readonly TruthRow[] {
  const cited = allCropFacts.filter(({ rowYield }) => rowYield?.source.title.includes("MF315") === true);
  const other = cited.filter(({ crop }) => ourCrop(crop) !== publishedCrop(crop));
  const missed = maineDistances
    .map(([crop = "", inRow = "", between = ""]) => ({ crop, inches: missedBy(crop, inRow, between) }))
    .filter(({ inches }) => inches > 0.1);
  return [
    {
      quantity: "crop of 100 ft of row, where our row names the bulletin",
      cases: cited.length,
      found: other.length === 0 ? "no other figure" : `other: ${other.map(({ crop }) => crop).join(", ")}`,
      against: "Kansas State Univ. MF315 (of a range the middle)",
      goal: "none",
      met: other.length === 0,
    },
    {
      quantity: "distances in and between rows, inches between the ranges",
      cases: maineDistances.length * 2,
      found: missed.map(({ crop, inches }) => `${crop} ${inches.toFixed(0)} in`).join(", "),
      against: "Univ. of Maine Coop. Ext., planting chart; bulletins differ, and ours are from memory of others",
      goal: "",
    },
    {
      quantity: "days, distances, hardiness, pH of crops from memory",
      cases: typicalRows.length + heldRows.length,
      found: "held still by a test, not looked up",
      against: `extension tables from memory for ${typicalRows.length} crops, common practice for ${heldRows.length}`,
      goal: "",
    },
  ];
}
