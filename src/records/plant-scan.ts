/** The state of reading a line about plants: what was found so far, and what may come next. */
import type { EventKind } from "../model.ts";
import type { Line } from "./line.ts";
import type { Amount } from "./quantities.ts";

export interface PlantItem {
  variety?: string | undefined;
  crop?: string | undefined;
  amount?: Amount | undefined;
  spacingCm?: number | undefined;
  /** The word its name begins at. */
  at?: number | undefined;
  /** Index into `places`. */
  place: number;
}

export interface PlantPlace {
  bed?: string | undefined;
  /** Further beds of "in Long Bed and Cold Frame". */
  alsoBeds?: string[] | undefined;
  toBed?: string | undefined;
  spot?: string | undefined;
  gear?: string | undefined;
}

/** What a line about plants says. */
export interface PlantLine {
  readonly items: PlantItem[];
  readonly places: PlantPlace[];
  /** An amount that no item took. */
  loose?: Amount | undefined;
  heightCm?: number | undefined;
  celsius?: number | undefined;
  /** A distance said before any plant. */
  spacingCm?: number | undefined;
  /** Plants left after thinning. */
  leftOver?: Amount | undefined;
  nursery: boolean;
  plantsFrom?: "bought" | "given" | undefined;
  cause?: string | undefined;
  /** From whom what came. */
  from?: string | undefined;
}

export interface Scan {
  readonly line: Line;
  readonly kind: EventKind;
  readonly read: PlantLine;
  at: number;
  /** Whether a name without an amount may stand here: at the beginning, and after a separator in a list. */
  listOpen: boolean;
  /** Whether the last thing understood was an item, so that a separator continues the list. */
  afterItem: boolean;
  /** Whether words were passed over that mean nothing here; after them no word in lower case is taken for a name. */
  passedOver: boolean;
  /** A crop whose varieties follow, with what they have not yet counted of its number. */
  head?: PlantItem | undefined;
  /** The crop of "tomatoes: 6 Sungold, 4 Black Krim", which is that of every name up to the end of the clause. */
  headCrop?: string | undefined;
  /** "6 each of Crown Prince and Uchiki Kuri": the amount of every item that has none of its own. */
  each?: Amount | undefined;
  /** The word after the last bed said. */
  bedEnd?: number | undefined;
}

export function currentPlace(read: PlantLine): PlantPlace {
  return read.places.at(-1) as PlantPlace;
}
