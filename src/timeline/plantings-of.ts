/** All plantings of a variety, over every bed and year. */
import type { Day, Garden, Planting } from "../model.ts";
import { changesUpTo } from "./bed-state.ts";

/**
 * Beds in which a variety ever grew. Worked out once per garden: a page per variety would otherwise look through the
 * changes of every bed for each of them (2,000 varieties in 300 beds).
 */
const bedsOfVarieties = new WeakMap<Garden["changes"], ReadonlyMap<string, ReadonlySet<string>>>();

/** The plantings of a variety begun by a day, each as it stands on that day, oldest first. */
export function plantingsOf(garden: Garden, variety: string, on: Day): readonly Planting[] {
  const found = new Map<string, Planting>();
  for (const bed of bedsOf(garden, variety)) {
    for (const change of changesUpTo(garden, bed, on)) {
      for (const planting of change.effect.plantings ?? []) {
        if (planting.variety === variety) found.set(planting.id, planting);
      }
    }
  }
  return [...found.values()].sort((a, b) => compare(a.since, b.since) || compare(a.id, b.id));
}

function bedsOf(garden: Garden, variety: string): ReadonlySet<string> {
  let known = bedsOfVarieties.get(garden.changes);
  if (known === undefined) {
    const beds = new Map<string, Set<string>>();
    for (const [bed, all] of garden.changes) {
      for (const planting of all.flatMap((change) => change.effect.plantings ?? [])) {
        if (planting.variety === undefined) continue;
        beds.set(planting.variety, (beds.get(planting.variety) ?? new Set()).add(bed));
      }
    }
    known = beds;
    bedsOfVarieties.set(garden.changes, known);
  }
  return known.get(variety) ?? new Set();
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
