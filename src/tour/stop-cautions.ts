/** Which cautions stand at a stop itself, and which in the list at the end. */
import type { Cautions } from "../almanac/index.ts";
import type { Sentence } from "../language/index.ts";

/** Lines that always stand are no longer read: so many of the table's plants at one stop, the others at the brief's end. */
const plantsAtStop = 3;

/** What stands at a stop itself, and what only in the list at the end. */
export function atStop({ own, plants, work }: Cautions): {
  readonly here: readonly Sentence[];
  readonly further: readonly Sentence[];
} {
  return { here: [...own, ...plants.slice(0, plantsAtStop), ...work], further: plants.slice(plantsAtStop) };
}
