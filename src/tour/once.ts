/** Work that candidates, facts and notes all ask for, done once: for a stop, or for plants at a stop. */
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

/** A lot or a batch belongs to one stop, so it alone is what the work is remembered by. */
export function oncePerPlants<Plants extends object, T>(
  work: (plants: Plants, here: BedOnTheDay) => T,
): (plants: Plants, here: BedOnTheDay) => T {
  const known = new WeakMap<Plants, { readonly done: T; readonly here: BedOnTheDay }>();
  return (plants, here) => {
    const before = known.get(plants);
    if (before?.here === here) return before.done;
    const done = work(plants, here);
    known.set(plants, { done, here });
    return done;
  };
}
