/** When what has not come yet should, by this garden's own records and, where there are weather files, its warmth. */
import type { Day } from "../model.ts";
import { forecaster, seasonBook, stillWaiting, waits } from "../season/index.ts";
import type { ExpectedWindows } from "../tour/index.ts";
import type { Loaded } from "./load-garden.ts";

/** As far as it was known on a day. Roots and leeks that wait in the ground until somebody wants them have no window. */
export function expectedWindows(
  { garden, weather, today }: Pick<Loaded, "garden" | "weather" | "today">,
  on: Day = today,
): ExpectedWindows {
  const book = seasonBook(garden, weather, today);
  const forecast = forecaster(book);
  const waiting = stillWaiting(book, on).filter(({ lot }) => !waits(lot.crop?.id));
  return new Map(
    waiting.map((one) => {
      const { from, likely, to, basis } = forecast(one, on);
      const own = basis.learnedFrom > 0 || (basis.byHeat && weather.days.size > 0);
      return [one.lot.planting.id, { from, likely, to, own }];
    }),
  );
}
