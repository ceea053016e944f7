/** What the page of a field list carries as data, and what the phone keeps of it. */
import type { Day, ShotState } from "../../../model.ts";
import type { TypedGarden } from "../../../records/index.ts";

export interface ListedShot {
  /** "S3.1" */
  readonly id: string;
  /** What its tick is kept under: its words, so that a list made anew keeps the ticks of shots it still has. */
  readonly key: string;
  readonly text: string;
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
}

/** How a shot stands on the phone. */
export interface Tick {
  readonly state: ShotState | "open";
  readonly takes: number;
  /** Wall clock "09:24:31" of the last change. */
  readonly at: string;
  readonly reason?: string | undefined;
}

export interface KeptBed {
  readonly ticks: Readonly<Record<string, Tick>>;
  readonly note?: string | undefined;
}

/** Everything a phone keeps of one tour. */
export interface Kept {
  readonly version: 1;
  /** Number of the stop on the screen, from 0. */
  readonly stop: number;
  /** Day of the first tick or note. */
  readonly day?: Day | undefined;
  /** When the clock was started and stopped, milliseconds since 1970. */
  readonly started?: number | undefined;
  readonly stopped?: number | undefined;
  readonly beds: Readonly<Record<string, KeptBed>>;
}
