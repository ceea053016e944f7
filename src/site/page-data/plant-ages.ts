/** How old the plants of a bed were on the day of a photo. */

import { ageOf } from "../../facts/index.ts";
import { capital, cropName, fullStop } from "../../language/index.ts";
import type { Day, Garden, Planting } from "../../model.ts";
import { living, state } from "../../timeline/index.ts";
import { siteWords } from "../words/index.ts";
import { cropOf } from "./view.ts";

/** Crops named before the rest is only counted. */
const NAMED = 3;

/** "Squash nearly eight weeks after planting; beetroot nine weeks after sowing." The oldest lot speaks for its crop; empty when nothing grew. */
export function plantAges(garden: Garden, bed: string, on: Day): string {
  const { age: said } = siteWords.sentences;
  const crops = new Map<string, string>();
  for (const planting of living(state(garden, bed, on))) {
    const crop = cropOf(garden, planting);
    const name = crop === undefined ? garden.varieties.get(planting.variety ?? "")?.title : cropName(crop);
    if (name !== undefined && !crops.has(name)) crops.set(name, sayAgeOf(garden, planting, on));
  }
  const told = [...crops].map(([name, age]) => said.of(name, age));
  if (told.length === 0) return "";
  const rest = told.length - NAMED;
  const more = rest > 1 ? [said.otherCrops(rest)] : told.slice(NAMED);
  return fullStop(capital([...told.slice(0, NAMED), ...more].join("; ")));
}

/** "54 days after planting", "in its third year". */
export function sayAgeOf(garden: Garden, planting: Planting, on: Day): string {
  const { age: said } = siteWords.sentences;
  const { counted, days, year, lasting } = ageOf(garden, planting, on).value;
  if (lasting) return said.inYear(year);
  if (counted === "planting") return said.planted(days);
  return counted === "sowing" ? said.sown(days) : said.noted(days);
}
