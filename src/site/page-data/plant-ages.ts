/** How old the plants of a bed were on the day of a photo. */
import { daysBetween, seasonStart } from "../../calendar.ts";
import type { Day, Garden, Planting } from "../../model.ts";
import { capital, cropName, fullStop, living, sayAge, sayNumber, sayYearOfLife, state } from "../../timeline/index.ts";
import { cropOf } from "./view.ts";

/** Crops named before the rest is only counted. */
const NAMED = 3;

/** "Squash nearly eight weeks after planting; beetroot nine weeks after sowing." The oldest lot speaks for its crop; empty when nothing grew. */
export function plantAges(garden: Garden, bed: string, on: Day): string {
  const crops = new Map<string, string>();
  for (const planting of living(state(garden, bed, on))) {
    const crop = cropOf(garden, planting);
    const name = crop === undefined ? garden.varieties.get(planting.variety ?? "")?.title : cropName(crop);
    if (name !== undefined && !crops.has(name)) crops.set(name, ageOf(garden, planting, on));
  }
  const told = [...crops].map(([name, age]) => `${name} ${age}`);
  if (told.length === 0) return "";
  const rest = told.length - NAMED;
  const more = rest > 1 ? [`and ${sayNumber(rest)} other crops`] : told.slice(NAMED);
  return fullStop(capital([...told.slice(0, NAMED), ...more].join("; ")));
}

/** "54 days after planting", "in its third year". */
export function ageOf(garden: Garden, planting: Planting, on: Day): string {
  if (planting.perennial && planting.since < seasonStart(on, garden.settings.seasonStarts))
    return `in ${sayYearOfLife(planting.since, on)} here`;
  const { planted, sown } = planting;
  if (planted !== undefined) return `${passed(planted, on)} planting`;
  if (sown !== undefined) return `${passed(sown, on)} sowing`;
  const days = daysBetween(planting.since, on);
  return days === 0 ? "first noted that day" : `first noted ${sayAge(days)} before`;
}

function passed(from: Day, on: Day): string {
  const days = daysBetween(from, on);
  return days === 0 ? "on the day of" : `${sayAge(days)} after`;
}
