/** Lines that are questions and, as likely as not, tell of an amount picked. */
import type { Event, Garden, OpenPicking } from "../model.ts";

/** Of each plant that a line may name the largest amount it may tell. */
export function openPickings({ readings }: Pick<Garden, "readings">): readonly OpenPicking[] {
  return readings
    .filter((line) => line.as === "question" && !line.private)
    .flatMap((line) => {
      const picked = line.readings.flatMap(({ events }, at) =>
        events.filter(
          (event) =>
            event.kind === "picked" &&
            (event.grams !== undefined || event.litres !== undefined || (at === 0 && event.count !== undefined)),
        ),
      );
      const largest = new Map<string, Event>();
      for (const event of picked.toSorted((a, b) => size(a) - size(b)))
        largest.set(`${event.variety}/${event.crop}`, event);
      return [...largest.values()].map(({ day, variety, crop, grams, litres, count, unit }) => ({
        day,
        variety,
        crop,
        grams,
        litres,
        count,
        unit,
      }));
    });
}

function size({ grams = 0, litres = 0, count }: Event): number {
  return grams + litres * 1000 + (count?.value ?? 0);
}
