/** The weeks ahead: what is expected in the coming weeks, which days would make a rich film, what must be filmed in time. Plain data. */

import type { Sentence } from "../../language/index.ts";
import type { Day } from "../../model.ts";

/** A day on which something should be there to be seen. */
export interface Expected extends Sentence {
  /** Stays the same from one look ahead to the next: "ready long-bed/chioggia/2026-05-02". */
  readonly id: string;
  readonly kind: "ready" | "in flower" | "verdict";
  readonly day: Day;
  /** "the Chioggia beetroot" */
  readonly about: string;
  /** Bed id; undefined of a trial in several beds. */
  readonly bed?: string | undefined;
  /** Where this garden's own records and weather tell more than the packet: the days between which it should come. */
  readonly window?: { readonly from: Day; readonly to: Day } | undefined;
}

/** Something that can be filmed until a day and not after it. */
export interface Deadline extends Sentence {
  readonly id: string;
  readonly kind: "soon gone" | "promise";
  /** The last day. */
  readonly day: Day;
  readonly about: string;
  readonly bed?: string | undefined;
}

/** What a film of one day would have to show, as the notes stand today. */
export interface FilmingDay {
  readonly day: Day;
  /** Things that must or should be shown. */
  readonly things: number;
  /** Sum of the values of all that could be shown. */
  readonly value: number;
  /** What is expected to have come in the week before that day, and what will soon be gone. */
  readonly news: readonly string[];
}

export interface Ahead {
  readonly from: Day;
  /** The last day looked at. */
  readonly to: Day;
  readonly weeks: number;
  readonly expected: readonly Expected[];
  readonly deadlines: readonly Deadline[];
  /** Every day from the first to the last. */
  readonly days: readonly FilmingDay[];
  /** The richest day of each week, in order of day. */
  readonly best: readonly FilmingDay[];
}
