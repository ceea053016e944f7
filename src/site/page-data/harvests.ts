/** What each variety gave in each year, from the pickings the timeline credits to its plantings. */
import { bookOf } from "../../garden/index.ts";
import type { Picked } from "../../model.ts";
import { nothingPicked, pickedMore } from "../../picked.ts";
import { seasonYear, type View } from "./view.ts";

/** By variety id, then the year in which the season begins. */
export function harvestsByYear(view: View): ReadonlyMap<string, ReadonlyMap<number, Picked>> {
  const found = new Map<string, Map<number, Picked>>();
  for (const { day, planting, variety, harvest } of bookOf(view.garden).pickings) {
    if (planting === undefined || variety === undefined || day > view.today) continue;
    const years = found.get(variety) ?? new Map<number, Picked>();
    found.set(variety, years);
    const year = seasonYear(view, day);
    years.set(year, pickedMore(years.get(year) ?? nothingPicked, harvest, day));
  }
  return found;
}
