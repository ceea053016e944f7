/** What trials are told from, and the shape of their sentences. */
import type { Day, GardenSettings, PickUnit } from "../../model.ts";
import type { Hindrance } from "../trial-matching.ts";
import type { MeasureKind } from "../trial-measures.ts";

export interface ArmFacts {
  readonly name: string;
  readonly kind: MeasureKind;
  /** What a share counts: "clean". */
  readonly word?: string | undefined;
  /** Of the plots' values. */
  readonly mean: number;
  /** Whether the mean of a total is that of each plant. */
  readonly eachPlant: boolean;
  /** All figures added up. */
  readonly total: number;
  readonly figures: number;
  /** Figures of days on which the other arm has none. */
  readonly leftOut: number;
  readonly pieces: number;
  readonly plots: number;
  /** "row", "pot", "bed". */
  readonly plotKind?: string | undefined;
  readonly plants?: number | undefined;
  readonly unit?: PickUnit | undefined;
  readonly counted?: "sowing" | "planting" | undefined;
  /** First and last day, where the arms' days differ. */
  readonly span?: { readonly from: Day; readonly to: Day } | undefined;
}

export interface TellsFacts {
  readonly kind: MeasureKind;
  readonly word?: string | undefined;
  /** What keeps the arms from being set against one another; then nothing is found. */
  readonly hindrance?: Hindrance | undefined;
  readonly plotKind?: string | undefined;
  /** Plots of the higher and the lower arm. */
  readonly n: number;
  readonly m: number;
  /** Some plot has several figures. */
  readonly often: boolean;
  readonly seasons: number;
  /** Plots a side of which a clean split stands out at all. */
  readonly fewest: number;
  readonly found?:
    | {
        readonly what: "alone" | "no difference" | "too few" | "chance" | "stands out";
        readonly higher: string;
        /** Chance of a difference as large, and the smallest that so many plots could show. */
        readonly p: number;
        readonly smallestP: number;
        /** Every plot of one arm lies above every one of the other. */
        readonly isClean: boolean;
        /** Plots a side that show a difference of this size four times in five. */
        readonly needed?: number | undefined;
        /** Of the difference, in the measure's own unit: grams, centimetres, days, shares. */
        readonly interval?: readonly [low: number, high: number] | undefined;
      }
    | undefined;
}

export interface BesidesFacts {
  readonly name: string;
  readonly losses: readonly { readonly plants: number; readonly cause?: string | undefined }[];
  readonly troubles: readonly string[];
}

export interface TrialWords {
  readonly noFigures: string;
  /** `on`: the day on which heights or photos of all arms were taken. */
  figures(arms: readonly ArmFacts[], on: Day | undefined, settings: GardenSettings): string;
  nothingFor(arms: readonly string[]): string;
  tells(facts: TellsFacts, settings: GardenSettings): string;
  besides(arms: readonly BesidesFacts[]): string;
}
