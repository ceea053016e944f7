/** One row of the table of plants that can hurt: what of the plant, whom, how badly, the line to show, and where it is from. */
import type { HazardSource } from "./hazard-sources.ts";

/** For people; "food for people" harms only animals. */
export type Grade =
  | "can kill"
  | "can make very ill"
  | "short illness"
  | "mild or rare"
  | "skin, eyes or lungs"
  | "food for people";

export type Route = "eaten" | "skin" | "skin in sun" | "eye" | "breathed";

/**
 * When the line is shown: always with the plant; only where animals are kept or named; only in a full list; or only when
 * these words stand in the lines told of it.
 */
export type Shown = "always" | "with animals" | "in a full list" | RegExp;

/** How far the people's side of a row rests on pages that were read; "animals only": the grade for people is from memory. */
export type Proof = "seen" | "partly" | "animals only" | "memory";

export interface PlantHazard {
  /** Botanical names as references list them: "Solanum tuberosum", "Conium, Oenanthe". */
  readonly title: string;
  readonly genera: readonly string[];
  /** Of genera that hold food and poison: the only species meant. Without it: all species that no other row names. */
  readonly species?: readonly string[];
  /** Species that the row does not mean, though no other row names them. */
  readonly notSpecies?: readonly string[];
  /** Crop ids. */
  readonly crops: readonly string[];
  /** Whole common names. */
  readonly names: readonly string[];
  readonly part: string;
  readonly routes: readonly Route[];
  readonly grade: Grade;
  /** What animal lists say. An animal that is missing is not listed, which is no clearance. */
  readonly animals?: string;
  readonly caution: string;
  readonly show: Shown;
  readonly sources: readonly HazardSource[];
  readonly proof: Proof;
  /** What of the row rests on which source, where that differs. */
  readonly remark?: string;
}

/** Words that bring a row out, as whole words. */
export function words(alternatives: string): RegExp {
  return new RegExp(`\\b(?:${alternatives})\\b`, "i");
}
