/** Work on a stop that its candidates, its facts and its notes all ask for, done once for each stop. */
import type { BedOnTheDay } from "./bed-on-the-day.ts";

export function oncePerStop<T>(work: (here: BedOnTheDay) => T): (here: BedOnTheDay) => T {
  const known = new WeakMap<BedOnTheDay, { readonly done: T }>();
  return (here) => {
    const before = known.get(here);
    if (before !== undefined) return before.done;
    const done = work(here);
    known.set(here, { done });
    return done;
  };
}
