/** A site's beds drawn from their plan positions: who lies where, in centimetres, and no place on Earth. */
import type { Bed } from "../../model.ts";
import type { Words } from "../words/index.ts";
import type { PlanBed, PlanDrawing } from "./shapes.ts";

/** Bed drawn where nobody wrote its size, and the path left free around the beds; centimetres. */
const UNKNOWN_SIZE = 100;
const MARGIN = 60;

/** Letters are this part of the longer side of the drawing: about as high as text when a phone shows it. */
const LETTERS = 1 / 21;

/** Beds that are named as lying next to another: no more than so many, and no farther apart than a wide path; centimetres. */
const NEIGHBOURS = 2;
const WIDE_PATH = 200;

/** Parts of a site in which a bed lies, by its middle. */
export type SitePart =
  | "north"
  | "north-east"
  | "east"
  | "south-east"
  | "south"
  | "south-west"
  | "west"
  | "north-west"
  | "middle";

interface PlacedBed {
  readonly bed: Bed;
  readonly number: number;
  readonly left: number;
  readonly south: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Undefined when fewer than two beds of the site tell where they lie: there would be nothing to see. What the drawing shows
 * is told as well: where one bed lies and beside which others, or where each of them lies.
 */
export function planOf(
  site: string,
  beds: readonly { readonly bed: Bed; readonly number: number }[],
  words: Words["beds"],
  here?: string,
): PlanDrawing | undefined {
  const placed = beds.flatMap(({ bed, number }): PlacedBed[] => {
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
  const partOf = ({ left, width, south: from, height }: PlacedBed) =>
    sitePart((left + width / 2 - west) / (east - west), (from + height / 2 - south) / (north - south));
  const self = placed.find(({ bed }) => bed.id === here);
  return {
    site,
    told:
      self === undefined
        ? words.plan(
            site,
            placed.map((one) => ({ bed: one.bed.title, part: partOf(one) })),
          )
        : words.planOf(site, self.bed.title, partOf(self), neighboursOf(self, placed)),
    width: east - west,
    height: north - south,
    letters: Math.round(Math.max(east - west, north - south) * LETTERS),
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

/** The part of a site by thirds, counted from the west and from the south. */
function sitePart(across: number, up: number): SitePart {
  const row = up < 1 / 3 ? "south" : up > 2 / 3 ? "north" : "";
  const column = across < 1 / 3 ? "west" : across > 2 / 3 ? "east" : "";
  const part = [row, column].filter((word) => word !== "").join("-");
  return part === "" ? "middle" : (part as SitePart);
}

/** The nearest beds, edge to edge. */
function neighboursOf(self: PlacedBed, all: readonly PlacedBed[]): readonly string[] {
  return all
    .filter((one) => one !== self)
    .map((one) => ({ name: one.bed.title, apart: apart(self, one) }))
    .filter((one) => one.apart <= WIDE_PATH)
    .sort((a, b) => a.apart - b.apart || (a.name < b.name ? -1 : 1))
    .slice(0, NEIGHBOURS)
    .map(({ name }) => name);
}

/** Ground between the edges of two beds, in centimetres. */
function apart(a: PlacedBed, b: PlacedBed): number {
  const across = Math.max(0, a.left - b.left - b.width, b.left - a.left - a.width);
  const up = Math.max(0, a.south - b.south - b.height, b.south - a.south - a.height);
  return Math.hypot(across, up);
}

function cm(metres: number): number {
  return Math.round(metres * 100);
}
