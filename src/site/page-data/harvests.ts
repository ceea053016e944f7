/** What each variety gave in each year, from the pickings the timeline credits to its plantings. */
import type { Picked } from "../../model.ts";
import { nothingPicked, pickedMore } from "../../picked.ts";
import { changes } from "../../timeline/index.ts";
import { seasonYear, type View } from "./view.ts";

/** By variety id, then the year in which the season begins. */
export function harvestsByYear(view: View): ReadonlyMap<string, ReadonlyMap<number, Picked>> {
  const found = new Map<string, Map<number, Picked>>();
  for (const [bed, { plantings }] of view.states) {
    const varietyOf = new Map(plantings.map((planting) => [planting.id, planting.variety]));
    for (const change of changes(view.garden, bed, "", view.today)) {
      const variety = change.planting === undefined ? undefined : varietyOf.get(change.planting);
      if (change.kind !== "picked" || change.harvest === undefined || variety === undefined) continue;
      const years = found.get(variety) ?? new Map<number, Picked>();
      found.set(variety, years);
      const year = seasonYear(view, change.day);
      years.set(year, pickedMore(years.get(year) ?? nothingPicked, change.harvest, change.day));
    }
  }
  return found;
}
