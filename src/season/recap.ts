/**
 * The recap: the outline of the film that looks back on a season, in the shape of a brief, and everything it rests on, as
 * plain data. Markdown, JSON and pages are made from it and from nothing else.
 *
 * Days are ISO calendar days, weights grams, durations seconds. Every sentence tells where it rests.
 */

import type { Level } from "../films/index.ts";
import type { Season } from "../garden/index.ts";
import type { Sentence } from "../language/index.ts";
import type { Day, PickUnit } from "../model.ts";
import type { BackTest } from "./back-test.ts";
import type { RecapCharts } from "./chart-data.ts";
import type { Need } from "./needs.ts";
import type { PlanDraft } from "./plan-draft.ts";
import type { NotYet } from "./rotation.ts";
import type { SeedRow } from "./seed-list.ts";
import type { TrialResult } from "./trial-results.ts";

export type SegmentKind =
  | "season"
  | "weather"
  | "best"
  | "worst"
  | "results"
  | "growth"
  | "trials"
  | "promises"
  | "to come"
  | "next year"
  | "questions";

/** One thing to say or show. */
export interface RecapPoint extends Sentence {
  /** "R3.2": the second thing of the third segment. */
  readonly id: string;
  readonly level: Level;
  /** Why it is in, as a short phrase. */
  readonly why: string;
  readonly value: number;
  /** Time to say it at the garden's narration rate. */
  readonly seconds: number;
  /** Whether it is in the film of the length asked for; true for all when none was asked. */
  readonly chosen: boolean;
}

/** A photo, by its path in the records. */
export interface RecapPhoto {
  readonly path: string;
  readonly day: Day;
}

/** The same spot first, at its fullest and last in the season. */
export interface PhotoSet extends Sentence {
  readonly bed: string;
  readonly title: string;
  readonly viewpoint: string;
  readonly first: RecapPhoto;
  /** Undefined when it is the first or the last, or there are only two. */
  readonly peak?: RecapPhoto | undefined;
  readonly last: RecapPhoto;
}

export interface Segment {
  /** "R3" */
  readonly id: string;
  readonly number: number;
  readonly kind: SegmentKind;
  readonly title: string;
  readonly show: readonly RecapPoint[];
  readonly photos: readonly PhotoSet[];
  /** Time to say what is chosen of it, its opening included. */
  readonly seconds: number;
}

/** One line of a results table. */
export interface ResultRow {
  readonly id: string;
  readonly title: string;
  /** "4.2 kg", "12 stems"; "no amount noted" when no picking says one. */
  readonly picked: string;
  readonly grams: number;
  readonly litres: number;
  /** Pieces by unit, weighed or not. */
  readonly pieces: Readonly<Partial<Record<PickUnit, number>>>;
  readonly pickings: number;
  readonly withoutAmount: number;
  readonly first?: Day | undefined;
  readonly last?: Day | undefined;
  /** Of all that was weighed, 0 to 1. */
  readonly share?: number | undefined;
  readonly plants?: number | undefined;
  readonly gramsPerPlant?: number | undefined;
  readonly piecesPerPlant?: number | undefined;
  readonly gramsPerPiece?: number | undefined;
  readonly gramsPerRowMetre?: number | undefined;
  readonly gramsPerSquareMetre?: number | undefined;
  readonly daysToFirst?: number | undefined;
  readonly daysPromised?: number | undefined;
  /** "12.50"; only when the person gives prices. Private. */
  readonly value?: string | undefined;
  /** Last season up to the same day. */
  readonly lastYear?: string | undefined;
  readonly private: boolean;
}

export interface Results {
  readonly varieties: readonly ResultRow[];
  readonly crops: readonly ResultRow[];
  readonly beds: readonly ResultRow[];
  readonly sites: readonly ResultRow[];
  readonly total: ResultRow;
  /** What must be known to read the tables: pickings without amounts, pickings of no one planting. */
  readonly remarks: readonly string[];
}

export interface LossRow {
  readonly cause: string;
  /** Whether a line gives the cause. */
  readonly noted: boolean;
  readonly plants: number;
  readonly lastYear: number;
  readonly first: Day;
  readonly last: Day;
  readonly what: readonly string[];
  /** The id of the crop, where all that it took or troubled was of one. */
  readonly crop?: string | undefined;
  readonly tried: readonly string[];
  readonly standing: "open" | "over" | "lost";
  readonly sentence: Sentence;
}

export interface PromiseRow extends Sentence {
  readonly what: string;
  readonly promisedOn: Day;
  readonly standing: "kept" | "broken" | "open";
  readonly kept?: Day | undefined;
  readonly due?: Day | undefined;
}

export interface ForecastRow extends Sentence {
  readonly planting: string;
  /** "Crown Prince squash in the squash bed, planted on 24 May" */
  readonly name: string;
  readonly goal: "flower" | "picking";
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
  /** It should have come by now, and may come by `to`. */
  readonly overdue: boolean;
}

export interface NextYear {
  /** What the person wrote down as planned, in their words. */
  readonly planned: readonly Sentence[];
  readonly needs: readonly Need[];
  readonly rotation: {
    readonly broken: readonly Sentence[];
    readonly notYet: Readonly<Record<string, readonly NotYet[]>>;
  };
  readonly advice: readonly Sentence[];
  readonly soil: readonly Sentence[];
  readonly plan: PlanDraft;
  readonly seeds: readonly SeedRow[];
  readonly seedsSaid?: string | undefined;
}

export interface Recap {
  /** Also the name of its files: "2026", "2025-26", "2026-06", "2026-since-2026-03-01". */
  readonly recap: string;
  readonly title: string;
  readonly kind: "season" | "month" | "since the last recap";
  readonly season: Season;
  /** First and last day it tells of. */
  readonly from: Day;
  readonly to: Day;
  /** "1 January to 18 July 2026" */
  readonly spanText: string;
  /** Whether the season has ended. */
  readonly finished: boolean;
  /** Seconds the film should last. */
  readonly target?: number | undefined;
  /** The film may begin with one of these. */
  readonly opening: readonly Sentence[];
  /** The season in one paragraph. */
  readonly paragraph: readonly Sentence[];
  readonly segments: readonly Segment[];
  /** What the length asked for has no room for. */
  readonly leftOut: readonly RecapPoint[];
  /** Time to say everything marked must, with what should be said, all of it, and what is chosen. */
  readonly seconds: { readonly must: number; readonly should: number; readonly all: number; readonly chosen: number };
  readonly results: Results;
  readonly losses: readonly LossRow[];
  readonly trials: readonly TrialResult[];
  readonly promises: readonly PromiseRow[];
  readonly forecasts: readonly ForecastRow[];
  /** How such forecasts did in this garden's past; undefined when there is nothing to hold them against. */
  readonly forecastsChecked?: BackTest | undefined;
  readonly nextYear: NextYear;
  readonly questions: readonly Sentence[];
  readonly thanks: readonly Sentence[];
  /** What must be said of things given, lent, paid for or linked. */
  readonly disclosures: readonly Sentence[];
  readonly cautions: readonly Sentence[];
  /** How each kind of figure was worked out, and from what. */
  readonly methods: readonly string[];
  readonly charts: RecapCharts;
}
