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
  /** By what is known of the crop, because the variety's file gives no days. */
  readonly byCrop?: true | undefined;
  /** Where this garden's own records and weather tell more than the packet: the days between which it should come. */
  readonly window?: { readonly from: Day; readonly to: Day } | undefined;
}

/** Something that can be filmed until a day and not after it. */
export interface Deadline extends Sentence {
  readonly id: string;
  readonly kind: "soon gone" | "promise" | "task";
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
  /**
   * Why that day, in words, the most pressing first: what will soon be gone, what is owed by then, what should have come in
   * the week before.
   */
  readonly reasons: readonly string[];
  /** The film the person planned for that day. */
  readonly film?: string | undefined;
}

export interface Ahead {
  readonly from: Day;
  /** The last day looked at. */
  readonly to: Day;
  readonly weeks: number;
  readonly expected: readonly Expected[];
  readonly deadlines: readonly Deadline[];
  /** What viewers were promised for no day, with what it still waits for. */
  readonly owed: readonly Sentence[];
  /** Every day from the first to the last. */
  readonly days: readonly FilmingDay[];
  /** The day of each week with a film planned, else with the most reasons, in order of day; without any, with the most to show. */
  readonly best: readonly FilmingDay[];
}
