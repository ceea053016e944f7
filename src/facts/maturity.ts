/** How long a planting takes by its variety's record, from the day that counts for it. */
import { cropFacts, middle } from "../almanac/index.ts";
import { addDays } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { bookOf } from "../garden/index.ts";
import type { Day, Garden, Planting } from "../model.ts";
import type { Fact } from "./fact.ts";

export interface Maturity {
  /** What ends the wait: the first flower of what is grown for flowers, else the first picking. */
  readonly goal: "flower" | "picking";
  readonly counted: "sowing" | "planting";
  /** The day from which the days count. */
  readonly begun: Day;
  readonly days: number;
  /** The day on which they have passed. */
  readonly ready: Day;
}

/** Undefined when the variety gives no days, they count from a day nobody wrote down, or it stands from year to year. */
export function maturityOf(garden: Garden, planting: Planting): Fact<Maturity> | undefined {
  const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
  const { maturity } = variety ?? {};
  const begun = maturity?.from === "planting" ? planting.planted : planting.sown;
  if (maturity === undefined || maturity.days <= 0 || planting.perennial || begun === undefined) return undefined;
  const first = bookOf(garden).event(planting.firstEvent);
  return {
    value: {
      goal: cropOf(garden, planting)?.use === "flower" ? "flower" : "picking",
      counted: maturity.from,
      begun,
      days: maturity.days,
      ready: addDays(begun, maturity.days),
    },
    sources: [first?.place, variety?.place].filter((place) => place !== undefined),
    private: planting.private || variety?.private === true,
    day: begun,
  };
}

/** When a planting should be ready by what is known of its crop: a rule of thumb, for want of its variety's own days. */
export interface UsualMaturity extends Maturity {
  /** Days it usually takes, least and most. */
  readonly takes: { readonly from: number; readonly to: number };
  /** The day on which the most have passed. */
  readonly latest: Day;
}

/** Undefined when the variety gives its days, when no table knows the crop, or when nobody wrote down the day that counts. */
export function usualMaturityOf(garden: Garden, planting: Planting): Fact<UsualMaturity> | undefined {
  const variety = planting.variety === undefined ? undefined : garden.varieties.get(planting.variety);
  const crop = cropOf(garden, planting);
  const takes = cropFacts(crop?.id)?.maturity?.value;
  if (variety?.maturity !== undefined || takes === undefined || planting.perennial || planting.implied)
    return undefined;
  const begun = takes.counted === "planting" ? planting.planted : (planting.sown ?? planting.planted);
  // Plants set out without a sowing day have less of the way before them than the table counts from seed.
  if (begun === undefined || (takes.counted === "sowing" && planting.sown === undefined)) return undefined;
  const first = bookOf(garden).event(planting.firstEvent);
  const days = Math.round(middle(takes));
  return {
    value: {
      goal: crop?.use === "flower" ? "flower" : "picking",
      counted: takes.counted,
      begun,
      days,
      ready: addDays(begun, days),
      takes: { from: takes.from, to: takes.to },
      latest: addDays(begun, takes.to),
    },
    sources: first === undefined ? [] : [first.place],
    private: planting.private || variety?.private === true,
    day: begun,
  };
}
