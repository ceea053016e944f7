/** One thing that a speaker claims of plants. */
import type { Subject } from "../spoken-subjects.ts";
import type { Period } from "./periods.ts";

/** What is said to have happened at a time. */
export type Milestone = "sown" | "up" | "planted" | "begun" | "first picked" | "first flower" | "taken up";

export type Obtaining = "bought" | "given" | "swapped" | "saved";

export type AmountUnit = "g" | "stem" | "bunch" | "head" | "fruit";

interface Said {
  readonly subject: Subject;
  /** Words of the speech. */
  readonly from: number;
  readonly to: number;
}

export type Claim = Said &
  (
    | { readonly kind: "count"; readonly value: number; readonly isNow: boolean }
    | { readonly kind: "lost" | "given away"; readonly value: number }
    | { readonly kind: "none picked" }
    | { readonly kind: "amount" | "amount last year"; readonly value: number; readonly unit: AmountUnit }
    | { readonly kind: "height"; readonly cm: number }
    | { readonly kind: "day"; readonly of: Milestone; readonly period: Period }
    | { readonly kind: "age" | "days to up"; readonly days: number; readonly slack: number }
    /** `whom`: the words from whom or where, plain; `isSaid`: the verb tells how, and not they; without `how` they name one on record. */
    | { readonly kind: "source"; readonly how?: Obtaining | undefined; readonly whom: string; readonly isSaid: boolean }
    | { readonly kind: "first time" }
    | { readonly kind: "stands here" }
  );
