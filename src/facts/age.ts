/** How old a planting is on a day, and which year of its life that is. */
import { daysBetween, seasonStart } from "../calendar.ts";
import { bookOf } from "../garden/index.ts";
import type { Day, Garden, Planting } from "../model.ts";
import { yearOfLife } from "../timeline/index.ts";
import type { Fact } from "./fact.ts";

export interface Age {
  /** What the days are counted from: where no line tells how it began, from the first that speaks of it. */
  readonly counted: "planting" | "sowing" | "first note";
  readonly days: number;
  /** Which year it stands in its bed: the season it came in is the first, and the next one for what came late in a season. */
  readonly year: number;
  /** A perennial from an earlier season: its year says more than its days. */
  readonly lasting: boolean;
}

export function ageOf(garden: Garden, planting: Planting, on: Day): Fact<Age> {
  const { seasonStarts } = garden.settings;
  const { planted, sown, since, perennial, firstEvent } = planting;
  const first = bookOf(garden).event(firstEvent);
  return {
    value: {
      counted: planted !== undefined ? "planting" : sown !== undefined ? "sowing" : "first note",
      days: daysBetween(planted ?? sown ?? since, on),
      year: yearOfLife(since, on, seasonStarts),
      lasting: perennial && since < seasonStart(on, seasonStarts),
    },
    sources: first === undefined ? [] : [first.place],
    private: planting.private,
    day: on,
  };
}
