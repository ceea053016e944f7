/** One thing that asks to be shown at a stop, before it is known whether the film has room for it. */

import type { Sentence } from "../../language/index.ts";
import type { Day } from "../../model.ts";
import type { Lot } from "../bed-on-the-day.ts";
import type { ShowKind } from "../brief.ts";

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
  /** Of what will soon be gone: the last day on which it is likely to be there. */
  readonly until?: Day | undefined;
}
