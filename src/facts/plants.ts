/** How many plants a planting has and had: of what was sown in place and never thinned to a number, nobody knows. */
import { bookOf } from "../garden/index.ts";
import type { Count, Day, Garden, Planting } from "../model.ts";
import type { Fact } from "./fact.ts";

export interface Plants {
  /** Alive. */
  readonly alive?: Count | undefined;
  /** It began with; of what was sown in place, those it was thinned to. */
  readonly begun?: Count | undefined;
  /** There to bear: alive, lost or taken up whole, without those that left the bed or were thinned out. */
  readonly borne?: number | undefined;
}

export function plantsOf(garden: Garden, planting: Planting, on: Day): Fact<Plants> {
  const first = bookOf(garden).event(planting.firstEvent);
  return {
    value: planting.seeds === true ? {} : counted(planting),
    sources: first === undefined ? [] : [first.place],
    private: planting.private,
    day: on,
  };
}

function counted({ count, began, sown, planted, lost, pickedWhole }: Planting): Plants {
  const borne = count === undefined ? 0 : count.value + lost + pickedWhole;
  const thinned = planted === undefined && sown !== undefined;
  return {
    alive: count,
    begun: !thinned ? (began ?? count) : borne > 0 ? { value: borne, approx: count?.approx === true } : undefined,
    borne: borne > 0 ? borne : undefined,
  };
}
