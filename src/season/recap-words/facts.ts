/** What the sentences of a recap are told from: worked out already, nothing left but the words. */
import type { Bed, Crop, Day, Picked, Variety } from "../../model.ts";

export interface Plants {
  readonly variety?: Variety | undefined;
  readonly crop?: Crop | undefined;
}

export type BedName = Pick<Bed, "title">;

export interface TotalFacts {
  readonly season: string;
  readonly from: Day;
  readonly to: Day;
  /** From the season's first day on. */
  readonly whole: boolean;
  /** The days told are over; the season is over. */
  readonly past: boolean;
  readonly finished: boolean;
  readonly grams: number;
  /** Of cut flowers. */
  readonly stems: number;
  readonly pickings: number;
  readonly lastYearGrams?: number | undefined;
  readonly lastYear: number;
  readonly mean?: { readonly grams: number; readonly seasons: number } | undefined;
}

export interface TakenPlants {
  readonly cause: string;
  readonly plants: number;
  /** Whether a line gives the cause. */
  readonly noted: boolean;
  /** Where all were of one. */
  readonly crop?: Crop | undefined;
}

export interface RainFacts {
  readonly millimetres: number;
  readonly wetDays: number;
  readonly rainDays: number;
  readonly dry?: { readonly days: number; readonly from: Day; readonly to: Day } | undefined;
}

export interface HeatFacts {
  readonly since: Day;
  readonly heat: number;
  readonly base: number;
  /** Worth comparing. */
  readonly lastYear?: number | undefined;
  /** Days by which the same heat came earlier; undefined when that is not known. */
  readonly daysAhead?: number | undefined;
  /** Days that were added up, because both years have them; undefined where these are all. */
  readonly days?: { readonly inBoth: number; readonly of: number } | undefined;
}

export interface StationFacts {
  readonly station?: string | undefined;
  readonly distanceKm?: number | undefined;
  readonly higherM?: number | undefined;
  readonly days: number;
}

export interface StandingFacts {
  readonly plants: Plants;
  readonly now: Picked;
  /** Grams from each of so many plants, and what it was last year. */
  readonly each?:
    | { readonly grams: number; readonly plants: number; readonly lastYear?: number | undefined }
    | undefined;
  /** Last season's, in the same measures. */
  readonly before?: Picked | undefined;
  /** Plants they are of, where these differ. */
  readonly set?: { readonly now?: number | undefined; readonly before?: number | undefined } | undefined;
  readonly span: "same days" | "same day" | "whole year";
  readonly allLost: boolean;
  readonly lost: number;
  /** Plants it began with, where more than were lost. */
  readonly began?: number | undefined;
  readonly causes: readonly string[];
  /** Why nothing was picked at all. */
  readonly never?: "not planted" | { readonly gone: Day } | undefined;
  readonly otherTroubles: readonly string[];
}

export interface LossFacts {
  /** Names, and how many more kinds there are. */
  readonly names: readonly string[];
  readonly moreKinds: number;
  readonly bed?: BedName | undefined;
  /** Undefined when no line gives it. */
  readonly cause?: string | undefined;
  readonly plants: number;
  /** A line says that all were lost. */
  readonly all: boolean;
  readonly first: Day;
  readonly last: Day;
  readonly end: "open" | "open, past" | { readonly over: Day } | undefined;
  /** Plants lost to it last year by then. */
  readonly lastYear?: number | undefined;
  readonly tried: readonly string[];
}

export interface BedYieldFacts {
  readonly bed: BedName;
  readonly amount: string;
  readonly pickings: number;
  /** What most of the weight was, a share of it (0 to 1); without a share all of it. */
  readonly mostly?: { readonly crop: Crop; readonly share?: number | undefined } | undefined;
}

export interface PhotoSetFacts {
  readonly bed: BedName;
  readonly days: readonly Day[];
  readonly span: number;
  /** Shares 0 to 1. */
  readonly green?: { readonly from: number; readonly to: number; readonly of: "bed" | "photo" } | undefined;
}

export interface PromiseFacts {
  readonly what: string;
  readonly promisedOn: Day;
  readonly kept?: Day | undefined;
  readonly due?: Day | undefined;
  readonly standing: "kept" | "broken" | "open";
}

export interface ForecastFacts {
  readonly plants: Plants;
  readonly goal: "flower" | "picking";
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
  /** The window before anybody waited in vain. */
  readonly expected: { readonly from: Day; readonly by: Day };
  readonly days: number;
  readonly counted: "sowing" | "planting";
  /** What this garden's own plantings took, over what the record promises. */
  readonly ratio: number;
  readonly learnedFrom: number;
  readonly byHeat: boolean;
}

export interface RotationFacts {
  readonly bed: BedName;
  readonly crops: readonly Crop[];
  readonly family: string;
  readonly gap: number;
  readonly years: number;
  /** Its name in the table of diseases. */
  readonly disease?: string | undefined;
}

export interface ThanksFacts {
  /** Undefined where the records do not allow the giver's name. */
  readonly to?: string | undefined;
  readonly plants: readonly Plants[];
  /** Titles of gear. */
  readonly gear: readonly string[];
  readonly more: number;
  /** Undefined when it was got in several ways. */
  readonly how?: "lent" | "gifted" | "swapped" | undefined;
}
