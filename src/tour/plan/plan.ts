/** How a tour is planned: its length against the target, its clock, its light. Plain data, part of the brief. */

import type { Sentence } from "../../language/index.ts";
export interface StartScore {
  /** "9:15" */
  readonly start: string;
  /** 0 to 1: mean worth of the light at every stop at its own time, when filming begins then. */
  readonly score: number;
  /** Stops in good light, of those whose light is known. */
  readonly good: number;
}

/** What the person's own order costs in steps. Nothing is changed by it. */
export interface Reorder extends Sentence {
  /** Metres that the shortest walk would save. */
  readonly saves: number;
  /** Bed ids in the order of that walk. */
  readonly beds: readonly string[];
}

export interface Plan {
  /** Planned length of the film, greeting and goodbye included, seconds. */
  readonly seconds: number;
  /** Seconds the film should last; undefined when nobody said. */
  readonly target?: number | undefined;
  /** Seconds by which what must be in is longer than the target; 0 when it fits. */
  readonly over: number;
  /** "9:15"; undefined when nobody said and no light is known. */
  readonly start?: string | undefined;
  /** "9:52": clock at which filming ends. */
  readonly end?: string | undefined;
  /** Whether the person chose the start, or the light did. */
  readonly startBy?: "person" | "light" | undefined;
  /** By quarter hour through the hours in which the person can film; empty when no light is known. */
  readonly startScores: readonly StartScore[];
  /** Stops whose light is known. */
  readonly litStops: number;
  /** "light good to 10:40", "better light from 8:15"; undefined when no light is known. */
  readonly light?: string | undefined;
  /** "Sunrise 5:09, sunset 21:42; low sun until 6:01 and from 20:50." */
  readonly sun?: string | undefined;
  /** Metres walked from stop to stop, where the plan tells. */
  readonly metres: number;
  readonly reorder?: Reorder | undefined;
}
