/** A site's beds drawn from their plan positions: who lies where, in centimetres, and no place on Earth. */
import type { Bed, PlanPoint } from "../../model.ts";
import type { Words } from "../words/index.ts";
import type { PlanBed, PlanDrawing } from "./shapes.ts";

/** Bed drawn where nobody wrote its size, and the path left free around the beds; centimetres. */
const UNKNOWN_SIZE = 100;
const MARGIN = 60;

/** Letters are this part of the longer side of the drawing: about as high as text when a phone shows it. */
const LETTERS = 1 / 21;

/** A letter is about this part of its height wide. */
const LETTER_WIDTH = 0.55;

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

export interface PlacedBed {
  readonly bed: Bed;
  readonly number: number;
  readonly left: number;
  readonly south: number;
  readonly width: number;
  readonly height: number;
}

export interface PlanOptions {
  /** The bed whose page it is. */
  readonly here?: string | undefined;
  /** Where each box leads. */
  readonly hrefOf?: ((bed: string) => string) | undefined;
  /** A numbered list stands beside it. */
  readonly numbered?: boolean | undefined;
  readonly gates?: readonly PlanPoint[] | undefined;
}

/** Where beds and gates lie in the drawing. */
export interface Layout {
  readonly placed: readonly PlacedBed[];
  readonly width: number;
  readonly height: number;
  readonly letters: number;
  /** Of metres on the site's plan. */
  point(at: PlanPoint): { readonly x: number; readonly y: number };
  partOf(bed: PlacedBed): SitePart;
}

/** Undefined when fewer than two beds of the site tell where they lie: there would be nothing to see. */
export function layOut(
  beds: readonly { readonly bed: Bed; readonly number: number }[],
  gates: readonly PlanPoint[] = [],
): Layout | undefined {
  const placed = beds.flatMap(({ bed, number }): PlacedBed[] => {
    if (bed.plan === undefined) return [];
    const width = bed.size === undefined ? UNKNOWN_SIZE : cm(bed.size.length);
    const height = bed.size === undefined ? UNKNOWN_SIZE : cm(bed.size.width);
    return [{ bed, number, left: cm(bed.plan.x), south: cm(bed.plan.y), width, height }];
  });
  if (placed.length < 2) return undefined;
  const corners = [
    ...placed.flatMap(({ left, south, width, height }) => [
      { x: left, y: south },
      { x: left + width, y: south + height },
    ]),
    ...gates.map(({ x, y }) => ({ x: cm(x), y: cm(y) })),
  ];
  const [across, up] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const west = Math.min(...across) - MARGIN;
  const south = Math.min(...up) - MARGIN;
  const [width, wide] = [Math.max(...across) + MARGIN - west, Math.max(...up) + MARGIN - south];
  const letters = Math.round(Math.max(width, wide) * LETTERS);
  // Above the beds there is room for the arrow to the north.
  const height = wide + letters;
  return {
    placed,
    width,
    height,
    letters,
    // Drawings count down from the top, plans up from the south.
    point: ({ x, y }) => ({ x: cm(x) - west, y: height - (cm(y) - south) }),
    partOf: (bed) => sitePart((bed.left + bed.width / 2 - west) / width, (bed.south + bed.height / 2 - south) / wide),
  };
}

/** A bed as a box with what is written in it. */
export function boxOf(
  { letters, point }: Pick<Layout, "letters" | "point">,
  { bed, number, width, height }: PlacedBed,
  { hrefOf, mark, isThis = false }: { hrefOf: PlanOptions["hrefOf"]; mark: string; isThis?: boolean },
): PlanBed {
  const corner = point({ x: bed.plan?.x ?? 0, y: bed.plan?.y ?? 0 });
  const whole = `${mark} ${bed.title}`.trim();
  const hasRoom = whole.length * letters * LETTER_WIDTH + letters / 2 <= width && height >= letters;
  return {
    name: bed.title,
    number,
    isThis,
    href: hrefOf?.(bed.id),
    label: hasRoom ? whole : mark,
    said: whole,
    x: corner.x,
    y: corner.y - height,
    width,
    height,
  };
}

/** What the drawing shows is told as well: where one bed lies and beside which others, or where each of them lies. */
export function planOf(
  site: string,
  beds: readonly { readonly bed: Bed; readonly number: number }[],
  words: Words["beds"],
  { here, hrefOf, numbered, gates = [] }: PlanOptions = {},
): PlanDrawing | undefined {
  const layout = layOut(beds, gates);
  if (layout === undefined) return undefined;
  const { placed, partOf, width, height, letters, point } = layout;
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
    width,
    height,
    letters,
    beds: placed.map((one) =>
      boxOf(layout, one, { hrefOf, mark: numbered === true ? String(one.number) : "", isThis: one.bed.id === here }),
    ),
    gates: gates.map(point),
    route: [],
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
