/** What each variety gave in each year, from the pickings the timeline credits to its plantings. */
import type { Harvest, Picked } from "../../model.ts";
import { changes } from "../../timeline/index.ts";
import { seasonYear, type View } from "./view.ts";

export type YearPicked = Picked;

/** By variety id, then the year in which the season begins. */
export function harvestsByYear(view: View): ReadonlyMap<string, ReadonlyMap<number, YearPicked>> {
  const found = new Map<string, Map<number, YearPicked>>();
  for (const [bed, { plantings }] of view.states) {
    const varietyOf = new Map(plantings.map((planting) => [planting.id, planting.variety]));
    for (const change of changes(view.garden, bed, "", view.today)) {
      const variety = change.planting === undefined ? undefined : varietyOf.get(change.planting);
      if (change.kind !== "picked" || change.harvest === undefined || variety === undefined) continue;
      const years = found.get(variety) ?? new Map<number, YearPicked>();
      found.set(variety, years);
      const year = seasonYear(view, change.day);
      years.set(year, plus(years.get(year), change.harvest, change.day));
    }
  }
  return found;
}

function plus(before: YearPicked | undefined, harvest: Harvest, day: string): YearPicked {
  const { unit = "piece", count } = harvest;
  const measured = harvest.grams !== undefined || harvest.litres !== undefined;
  const more = (of: Picked["counts"] = {}) =>
    count === undefined ? of : { ...of, [unit]: (of[unit] ?? 0) + count.value };
  return {
    grams: (before?.grams ?? 0) + (harvest.grams ?? 0),
    litres: (before?.litres ?? 0) + (harvest.litres ?? 0),
    counts: more(before?.counts),
    weighed: measured ? more(before?.weighed) : (before?.weighed ?? {}),
    weightAlone: (before?.weightAlone ?? false) || (measured && count === undefined),
    times: (before?.times ?? 0) + 1,
    first: before?.first === undefined || day < before.first ? day : before.first,
    last: before?.last === undefined || day > before.last ? day : before.last,
  };
}
