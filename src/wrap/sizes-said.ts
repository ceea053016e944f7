/** Sizes of beds said aloud against the records. */
import { saySide } from "../language/index.ts";
import { metresPerFoot } from "../measures.ts";
import { type Check, disagreement } from "./fact-check.ts";
import { spokenNumber } from "./spoken-numbers.ts";
import type { Stretch } from "./stops-heard.ts";
import type { Disagreement } from "./wrap.ts";

/** "The long bed. Eight metres": a length said where a bed is first named. */
export function sizes(check: Check, stretches: readonly Stretch[]): Disagreement[] {
  const { film, plain } = check;
  const { garden } = film.day;
  return stretches.flatMap(({ bed, from, to }) => {
    const record = bed === undefined ? undefined : garden.beds.get(bed);
    if (record?.size === undefined) return [];
    for (let at = from; at < Math.min(to, from + 12); at += 1) {
      const number = spokenNumber(plain, at);
      if (number === undefined || !/^(?:metres?|meters?|feet|foot)$/.test(plain[number.end] ?? "")) continue;
      const metres = number.value * (/^f/.test(plain[number.end] ?? "") ? metresPerFoot : 1);
      const { length, width } = record.size;
      if ([length, width].some((side) => Math.abs(side - metres) <= 0.1 * side)) return [];
      const units = garden.settings.units;
      const told = `The records have ${record.title} as ${saySide(length, units)} by ${saySide(width, units)}.`;
      const place = record.place === undefined ? [] : [record.place];
      return [{ ...disagreement(check, "size", from, number.end + 1, told, bed, []), sources: place }];
    }
    return [];
  });
}
