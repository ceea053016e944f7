/** What was picked between two days, and how it is said. */
import type { Change, Day, GardenSettings, Picked, PickUnit } from "../model.ts";
import { sayCount, sayList, sayNumber, sayPlural, sayVolume, sayWeight } from "../timeline/index.ts";

/** Pickings after `from`, up to and with `to`, of changes in order of day. */
export function harvestBetween(changes: readonly Change[], from: Day, to: Day): Picked {
  let [grams, litres, times] = [0, 0, 0];
  const counts: Partial<Record<PickUnit, number>> = {};
  const days: Day[] = [];
  for (const { kind, day, harvest } of changes) {
    if (kind !== "picked" || day <= from || day > to) continue;
    times += 1;
    days.push(day);
    grams += harvest?.grams ?? 0;
    litres += harvest?.litres ?? 0;
    if (harvest?.count !== undefined) {
      const unit = harvest.unit ?? "piece";
      counts[unit] = (counts[unit] ?? 0) + harvest.count.value;
    }
  }
  return { grams, litres, times, counts, first: days[0], last: days.at(-1) };
}

const unitWords: Readonly<Record<PickUnit, readonly [one: string, many: string]>> = {
  stem: ["stem", "stems"],
  bunch: ["bunch", "bunches"],
  head: ["head", "heads"],
  fruit: ["fruit", "fruits"],
  pod: ["pod", "pods"],
  punnet: ["punnet", "punnets"],
  crate: ["crate", "crates"],
  root: ["root", "roots"],
  bulb: ["bulb", "bulbs"],
  ear: ["ear", "ears"],
  handful: ["handful", "handfuls"],
  piece: ["", ""],
};

/** "4.2 kg", "twelve stems and 300 g"; undefined when only the picking itself was noted. */
export function sayHarvest(
  picked: Pick<Picked, "grams" | "litres" | "counts">,
  settings: GardenSettings,
): string | undefined {
  const parts: string[] = [];
  if (picked.grams > 0) parts.push(sayWeight(picked.grams, settings.units));
  if (picked.litres > 0) parts.push(sayVolume(picked.litres, settings.units));
  for (const [unit, [one, many]] of Object.entries(unitWords)) {
    const count = picked.counts[unit as PickUnit];
    if (count === undefined || count <= 0) continue;
    parts.push(one === "" ? sayNumber(count) : sayPlural(count, one, many));
  }
  return parts.length === 0 ? undefined : sayList(parts);
}

/** "in five pickings", "in one picking" */
export function sayPickings(times: number): string {
  return `in ${sayCount({ value: times, approx: false })} ${times === 1 ? "picking" : "pickings"}`;
}
