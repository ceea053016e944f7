/** How long a planting takes by its variety's record, from the day that counts for it. */
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
