/** How each kind of figure of a recap was worked out, and from what. */
import type { Material } from "./material.ts";
import { recapWords } from "./recap-words/words.ts";

export function methods({
  weather,
  forecasts,
  trials,
  nextYear: { needs: wanted, plan },
}: Material): readonly string[] {
  const { methods: words } = recapWords;
  return [
    words.picked,
    words.plant,
    ...(weather?.methods ?? []),
    ...(forecasts.length === 0 ? [] : [words.forecasts]),
    ...(trials.length === 0 ? [] : [words.trials]),
    ...(wanted.length === 0 ? [] : [words.needs]),
    words.rotation,
    ...(plan.rows.length === 0 ? [] : [words.draft(plan.label, plan.exact)]),
  ];
}
