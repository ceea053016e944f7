/** What trials are told from, and their sentences by the garden's language. */
import type { GardenSettings, PickUnit } from "../../model.ts";
import { type Language, languageOf } from "../../timeline/index.ts";
import type { MeasureKind } from "../trial-measures.ts";
import { englishTrials } from "./english-trials.ts";
import { germanTrials } from "./german-trials.ts";

export interface ArmFacts {
  readonly name: string;
  readonly kind: MeasureKind;
  /** What a share counts: "clean". */
  readonly word?: string | undefined;
  /** What one figure is of. */
  readonly per: "picking" | "arm" | "planting" | "measuring";
  readonly mean: number;
  readonly figures: number;
  readonly pieces: number;
  readonly plants?: number | undefined;
  readonly unit?: PickUnit | undefined;
}

export interface TellsFacts {
  readonly kind: MeasureKind;
  readonly higher: string;
  readonly per: ArmFacts["per"];
  /** Figures of the higher and the lower arm. */
  readonly n: number;
  readonly m: number;
  readonly what: "one each" | "no difference" | "too few" | "chance" | "stands out";
  /** Chance of a difference as large, and the smallest that so many figures could show. */
  readonly p: number;
  readonly smallestP: number;
  /** Every figure of one arm lies above every one of the other. */
  readonly isClean: boolean;
  /** Figures a side that could tell more. */
  readonly enough: number;
  /** Of the difference, in grams. */
  readonly interval?: readonly [low: number, high: number] | undefined;
}

export interface BesidesFacts {
  readonly name: string;
  readonly losses: readonly { readonly plants: number; readonly cause?: string | undefined }[];
  readonly troubles: readonly string[];
}

export interface TrialWords {
  readonly noFigures: string;
  figures(arms: readonly ArmFacts[], settings: GardenSettings): string;
  nothingFor(arms: readonly string[]): string;
  tells(facts: TellsFacts, settings: GardenSettings): string;
  besides(arms: readonly BesidesFacts[]): string;
}

const tables: Readonly<Record<Language, TrialWords>> = { en: englishTrials, de: germanTrials };

export function trialWords({ language }: Pick<GardenSettings, "language">): TrialWords {
  return tables[languageOf(language)];
}
