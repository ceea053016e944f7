/**
 * How many plants a bed has room for, by placing them one by one: in a small bed the density per square metre promises
 * plants that have no place. Every plant stands at least half a spacing from the edge (common practice).
 */

/** Metres. */
export interface BedSize {
  readonly length: number;
  readonly width: number;
}

export interface Spacing {
  /** Metres between plants of a row. */
  readonly inRow: number;
  /** Metres between rows; the same as in the row when absent. */
  readonly betweenRows?: number | undefined;
}

export interface BedFit {
  readonly plants: number;
  /** Plants of each row. */
  readonly rows: readonly number[];
}

/** Rounding in floating point must not cost a plant: 3 / 0.3 is a whisker under 10. */
const WHISKER = 1e-9;

/** Rows side by side, plant beside plant, rows running along the bed. */
export function squareFit(bed: BedSize, spacing: Spacing): BedFit {
  const between = spacing.betweenRows ?? spacing.inRow;
  const perRow = along(bed.length, spacing.inRow);
  const rows = Array.from({ length: along(bed.width, between) }, () => perRow);
  return { plants: rows.length * perRow, rows: perRow === 0 ? [] : rows };
}

/** Every second row moved by half a spacing, so that rows come closer: √3/2 of the spacing. Rows run along or across the bed, whichever holds more. */
export function offsetFit(bed: BedSize, spacing: number): BedFit {
  const lengthwise = offsetRows(bed.length, bed.width, spacing);
  const crosswise = offsetRows(bed.width, bed.length, spacing);
  return lengthwise.plants >= crosswise.plants ? lengthwise : crosswise;
}

export function offsetRows(rowLength: number, across: number, spacing: number): BedFit {
  const full = along(rowLength, spacing);
  const pitch = (spacing * Math.sqrt(3)) / 2;
  const count = across < spacing - WHISKER || full === 0 ? 0 : Math.floor((across - spacing) / pitch + WHISKER) + 1;
  // A moved row keeps its place for as many plants only where half a spacing is left over at the end.
  const moved = Math.floor((rowLength - spacing * 1.5) / spacing + WHISKER) + 1;
  const rows = Array.from({ length: count }, (_, row) => (row % 2 === 0 ? full : Math.max(0, moved)));
  return { plants: rows.reduce((total, plants) => total + plants, 0), rows };
}

/** Plants in a row of that length with half a spacing at both ends: floor(length / spacing). */
function along(length: number, spacing: number): number {
  return spacing <= 0 ? 0 : Math.max(0, Math.floor(length / spacing + WHISKER));
}
