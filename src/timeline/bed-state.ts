/** A bed as it stands on a day, and what changed between two days. Both only read what `growGarden` worked out once. */
import type { BedState, Change, Day, Garden, Planting, Task, Trouble, UnassignedPicking } from "../model.ts";

/** How a bed stands at the end of a day. An id no record knows gives an empty bed. */
export function state(garden: Garden, bed: string, on: Day): BedState {
  return foldChanges(beforeAll(garden, bed, on), upTo(changesOf(garden, bed), on), on);
}

/** What changed in a bed after `from`, up to and with `to`, in order of day. */
export function changes(garden: Garden, bed: string, from: Day, to: Day): readonly Change[] {
  const all = changesOf(garden, bed);
  return all.slice(firstAfter(all, from), firstAfter(all, to));
}

/** The state after a change: folding `changes(a, b)` over the state of `a` gives the state of `b`. */
export function applyChange(before: BedState, change: Change): BedState {
  return foldChanges(before, [change], change.day);
}

/**
 * The state after several changes, `on` a day on or after the last of them. The lists are built up once rather than per
 * change, which is what makes a bed with thousands of changes cheap.
 */
export function foldChanges(before: BedState, all: readonly Change[], on: Day): BedState {
  const plantings = byId(before.plantings);
  const troubles = byId(before.troubles);
  const tasks = byId(before.tasks);
  const unassigned = new Map<string, UnassignedPicking>(before.unassigned.map((one) => [nameKey(one), one]));
  const built = [...before.built];
  const filled = [...before.filled];
  let { gear, soilPh } = before;
  for (const { effect } of all) {
    // Most changes leave most of these alone, and an empty list made for each would cost more than the rest.
    if (effect.plantings !== undefined) for (const planting of effect.plantings) plantings.set(planting.id, planting);
    if (effect.troubles !== undefined) for (const trouble of effect.troubles) troubles.set(trouble.id, trouble);
    if (effect.tasks !== undefined) for (const task of effect.tasks) tasks.set(task.id, task);
    if (effect.unassigned !== undefined) unassigned.set(nameKey(effect.unassigned), effect.unassigned);
    if (effect.built !== undefined) built.push(effect.built);
    if (effect.filled !== undefined) filled.push(effect.filled);
    gear = effect.gear ?? gear;
    soilPh = effect.soilPh ?? soilPh;
  }
  return {
    bed: before.bed,
    on,
    plantings: [...plantings.values()],
    gear,
    troubles: [...troubles.values()],
    tasks: [...tasks.values()],
    soilPh,
    built,
    filled,
    unassigned: [...unassigned.values()],
  };
}

/** Plantings that live at the end of the state's day. */
export function living(bedState: BedState): readonly Planting[] {
  return bedState.plantings.filter((planting) => planting.ended === undefined);
}

function beforeAll(garden: Garden, bed: string, on: Day): BedState {
  const record = garden.beds.get(bed);
  return {
    bed,
    on,
    plantings: [],
    gear: [],
    troubles: [],
    tasks: [],
    built: record?.built.filter((work) => work.day === undefined) ?? [],
    filled: record?.filled.filter((work) => work.day === undefined) ?? [],
    unassigned: [],
  };
}

function byId<T extends Planting | Trouble | Task>(all: readonly T[]): Map<string, T> {
  return new Map(all.map((one) => [one.id, one]));
}

function nameKey({ variety, crop }: UnassignedPicking): string {
  return `${variety ?? ""}/${crop ?? ""}`;
}

function changesOf(garden: Garden, bed: string): readonly Change[] {
  return garden.changes.get(bed) ?? [];
}

function upTo(all: readonly Change[], day: Day): readonly Change[] {
  return all.slice(0, firstAfter(all, day));
}

/** Index of the first change after a day; the list is in order of day, so half of what is left falls away at each look. */
function firstAfter(all: readonly Change[], day: Day): number {
  let low = 0;
  let high = all.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((all[middle]?.day ?? "") <= day) low = middle + 1;
    else high = middle;
  }
  return low;
}
