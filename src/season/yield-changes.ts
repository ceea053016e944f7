/** How much more or less each plant gave than before, or than handbooks tell, as logarithms from -1 to 1. */
import { plantYield } from "../almanac/index.ts";
import type { Season } from "../garden/index.ts";
import type { Picked } from "../model.ts";
import { comparable } from "../picked.ts";
import { perPlant } from "./results.ts";
import type { Lot } from "./season-book.ts";

/** Plants that pickings of this season and of the one before are of; undefined when some were not counted. */
export interface PlantsSet {
  readonly now?: number | undefined;
  readonly before?: number | undefined;
}

const clip = (value: number) => Math.max(-1, Math.min(1, value));

/** What a plant gave now over what it gave in earlier seasons, of finished plantings only. `all`: every planting there was. */
export function yieldChange(all: readonly Lot[], lots: readonly Lot[], season: Season): number | undefined {
  const own = perPlant(lots.filter((lot) => lot.season === season.year))?.grams;
  const then = perPlant(all.filter((lot) => lot.season < season.year))?.grams;
  return own === undefined || then === undefined || own <= 0 || then <= 0 ? undefined : clip(Math.log(own / then));
}

/**
 * Of plantings that are still picked: what each plant gave so far over what it had given by the same day last year. Thirty plants
 * with 9 kg have done worse than one with five.
 */
export function soFarChange(now: Picked, before: Picked | undefined, set: PlantsSet): number | undefined {
  if (before === undefined || set.now === undefined || set.before === undefined || !comparable(now, before))
    return undefined;
  const [a, b] = [amountOf(now) / set.now, amountOf(before) / set.before];
  // Pickings that have only begun say less than finished ones.
  return a > 0 && b > 0 ? clip(Math.log(a / b)) * 0.6 : undefined;
}

function amountOf({ grams, litres, counts }: Picked): number {
  if (grams > 0) return grams;
  if (litres > 0) return litres;
  return Object.values(counts).reduce((sum, n) => sum + n, 0);
}

/** What a plant gave over the nearer end of the handbooks' range; 0 within it. */
export function handbookChange(lots: readonly Lot[]): number | undefined {
  const own = perPlant(lots)?.grams;
  const usual = plantYield(lots[0]?.crop?.id, "grams")?.value;
  if (own === undefined || usual === undefined || own <= 0) return undefined;
  if (own < usual.low) return clip(Math.log(own / usual.low));
  return own > usual.high ? clip(Math.log(own / usual.high)) : 0;
}
