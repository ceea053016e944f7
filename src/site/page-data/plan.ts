/** A site's beds drawn from their plan positions: who lies where, in centimetres, and no place on Earth. */
import type { Bed } from "../../model.ts";
import type { PlanBed, PlanDrawing } from "./shapes.ts";

/** Bed drawn where nobody wrote its size, and the path left free around the beds; centimetres. */
const UNKNOWN_SIZE = 100;
const MARGIN = 60;

/** Undefined when fewer than two beds of the site tell where they lie: there would be nothing to see. */
export function planOf(
  site: string,
  beds: readonly { readonly bed: Bed; readonly number: number }[],
  here?: string,
): PlanDrawing | undefined {
  const placed = beds.flatMap(({ bed, number }) => {
    if (bed.plan === undefined) return [];
    const width = bed.size === undefined ? UNKNOWN_SIZE : cm(bed.size.length);
    const height = bed.size === undefined ? UNKNOWN_SIZE : cm(bed.size.width);
    return [{ bed, number, left: cm(bed.plan.x), south: cm(bed.plan.y), width, height }];
  });
  if (placed.length < 2) return undefined;
  const west = Math.min(...placed.map(({ left }) => left)) - MARGIN;
  const east = Math.max(...placed.map(({ left, width }) => left + width)) + MARGIN;
  const south = Math.min(...placed.map((one) => one.south)) - MARGIN;
  const north = Math.max(...placed.map((one) => one.south + one.height)) + MARGIN;
  return {
    site,
    width: east - west,
    height: north - south,
    beds: placed.map(
      ({ bed, number, left, south: from, width, height }): PlanBed => ({
        name: bed.title,
        number,
        isThis: bed.id === here,
        x: left - west,
        // Drawings count down from the top, plans up from the south.
        y: north - from - height,
        width,
        height,
      }),
    ),
  };
}

function cm(metres: number): number {
  return Math.round(metres * 100);
}
