/** What the page of a field list carries as data, and what the phone keeps of it. */
import type { Day, PlannedShot, Take } from "../../../model.ts";
import type { TypedGarden } from "../../../records/index.ts";
import type { PlanToKeep } from "../../../tour/index.ts";

export interface ListedShot {
  /** "S3.1" */
  readonly id: string;
  /** What its tick is kept under: what it is of, so that a list made anew keeps the ticks of shots it still has. */
  readonly key: string;
  /** What it is to show, as the plan has it; the text is the card's, shorter. */
  readonly words: string;
  readonly text: string;
  readonly level?: PlannedShot["level"];
}

export interface ListedStop {
  /** Bed id. */
  readonly bed: string;
  readonly title: string;
  /** When it is planned to begin and to be left, seconds from the start of filming. */
  readonly begins: number;
  readonly ends: number;
  readonly shots: readonly ListedShot[];
  /** What to say, in order. */
  readonly outline: readonly string[];
}

export interface ListData {
  /** Episode id, or the day when there is no episode. */
  readonly tour: string;
  readonly title: string;
  readonly garden: string;
  /** Words a minute. */
  readonly rate: number;
  readonly stops: readonly ListedStop[];
  /** Address of the worker that keeps the private pages; undefined in the list that is one file of its own. */
  readonly worker?: string | undefined;
  /** The garden's names, by which a note is read while it is typed. */
  readonly reads?: TypedGarden | undefined;
  /** What it was made from, brought home with the ticks. */
  readonly plan: PlanToKeep;
}

/** What was done about a shot. */
export interface Tick {
  /** In the order in which they were made. */
  readonly takes: readonly Take[];
  /** Left out: why, or nothing said. */
  readonly skipped?: { readonly reason?: string | undefined } | undefined;
  /** Wall clock "09:24:31" of the last change. */
  readonly at: string;
}

export interface KeptBed {
  readonly ticks: Readonly<Record<string, Tick>>;
  readonly note?: string | undefined;
}

/** The cover's number among the stops. */
export const COVER = -1;

/** Everything a phone keeps of one tour. */
export interface Kept {
  readonly version: 2;
  /** Number of the stop on the screen, from 0; the cover is before the first. */
  readonly stop: number;
  /** Day of the first tick or note. */
  readonly day?: Day | undefined;
  /** When the clock was started and stopped, milliseconds since 1970. */
  readonly started?: number | undefined;
  readonly stopped?: number | undefined;
  readonly beds: Readonly<Record<string, KeptBed>>;
}
