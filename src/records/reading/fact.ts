/** What a clause may say, before it is an event: names are not taken yet, and no id is given. */
import type { Count, Day, EventKind, PickUnit } from "../../model.ts";

export interface Fact {
  readonly kind: EventKind;
  /** Id of a variety the garden knows. */
  readonly variety?: string | undefined;
  /** Name of one it does not. */
  readonly title?: string | undefined;
  readonly crop?: string | undefined;
  /** The crop's other name that the line calls it by: "edamame". */
  readonly said?: string | undefined;
  readonly count?: Count | undefined;
  readonly unit?: PickUnit | undefined;
  readonly grams?: number | undefined;
  readonly litres?: number | undefined;
  readonly heightCm?: number | undefined;
  readonly girthCm?: number | undefined;
  readonly spacingCm?: number | undefined;
  readonly celsius?: number | undefined;
  readonly ph?: number | undefined;
  readonly bed?: string | undefined;
  readonly toBed?: string | undefined;
  readonly nursery?: boolean | undefined;
  readonly day?: Day | undefined;
  readonly due?: Day | undefined;
  readonly cause?: string | undefined;
  readonly reason?: string | undefined;
  readonly from?: string | undefined;
  readonly price?: string | undefined;
  readonly gear?: string | undefined;
  readonly what?: string | undefined;
  /** Of gear, what follows its name: "over the figs". */
  readonly detail?: string | undefined;
}
