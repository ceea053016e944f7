/** One thing that asks to be shown at a stop, before it is known whether the film has room for it. */

import type { Level } from "../../films/index.ts";
import type { Sentence } from "../../language/index.ts";
import { mentions } from "../../language/index.ts";
import type { Day } from "../../model.ts";
import type { Lot } from "../bed-on-the-day.ts";
import type { FollowUpLine, ShowKind } from "../brief.ts";

export interface Candidate {
  readonly kind: ShowKind;
  /** As a note to the person; said aloud as it is unless `said` is given. */
  readonly sentence: Sentence;
  /** As said to viewers, where the note speaks to the person: "I promised" for "you promised". */
  readonly said?: Sentence | undefined;
  /** The reason, as a short phrase after "because". */
  readonly why: string;
  /** What it speaks of, as a name: "the Chioggia beetroot". */
  readonly about: string;
  /** What is to be told of that, in a few words: "ready from about 26 July". */
  readonly gist: string;
  /** The word that keeps it in the film when written behind `keep:`; it is found by `speaksOf`. */
  readonly keepBy: string;
  readonly lots: readonly Lot[];
  /** What it is of where plants do not tell: a promise, a cause, a trial, gear. It stays the same from day to day. */
  readonly of?: string | undefined;
  /** Of what will soon be gone: the last day on which it is likely to be there. */
  readonly until?: Day | undefined;
}

/** A candidate with its worth and its length on film. */
export interface Weighed extends Candidate {
  /** Stands for the candidate until stops are numbered: "long-bed 3". */
  readonly key: string;
  readonly level: Level;
  readonly value: number;
  /** Words and handling, whole seconds. */
  readonly seconds: number;
  /** What the person wrote in the episode's record: always in, always out, or nothing. */
  readonly wish?: "must" | "keep" | "skip" | undefined;
}

/** Whether a candidate is what a name in `must`, `keep` or `skip` means: plants by any name, else words of the sentence. */
export function speaksOf({ sentence, about, lots }: Candidate, name: string): boolean {
  if (mentions(sentence.text, [name]) || mentions(about, [name])) return true;
  const wanted = name.trim().toLowerCase();
  return lots.some(({ planting, variety, crop }) =>
    [planting.variety, variety?.title, ...(variety?.alsoSpelled ?? []), crop?.name, crop?.plural].some(
      (other) => other?.toLowerCase() === wanted,
    ),
  );
}

/** A follow-up with the bed id of the stop that can keep it, before the stops are numbered. */
export interface OwedLine extends Omit<FollowUpLine, "stop"> {
  readonly keptAt?: string | undefined;
  /** The plants it speaks of at that stop. */
  readonly lots: readonly Lot[];
}
