/** One thing that a speaker claims of plants. */
import type { Subject } from "../spoken-subjects.ts";
import type { Period } from "./periods.ts";

/** What is said to have happened at a time. */
export type Milestone = "sown" | "planted" | "begun" | "first picked" | "first flower" | "taken up";

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
    | { readonly kind: "source"; readonly how: "bought" | "given" | "saved" }
    | { readonly kind: "stands here" }
  );
