/** How each kind of figure of a recap was worked out, and from what. */
import type { Material } from "./material.ts";

export function methods({
  weather,
  forecasts,
  trials,
  nextYear: { needs: wanted, plan },
}: Material): readonly string[] {
  return [
    "Picked: note lines of the days told, added up by weight, by volume and by piece, which are never turned into one another.",
    "A plant's yield: all that its planting gave, over the plants set out less those given away, moved or thinned.",
    ...(weather?.methods ?? []),
    ...(forecasts.length === 0
      ? []
      : [
          "Forecasts: the variety's days, slower while the day is shorter than ten hours, times what this garden's own plantings took; where weather is known, averaged with the same in degree days. The window is made to hold four times in five.",
        ]),
    ...(trials.length === 0
      ? []
      : [
          "Trials: exact permutation test of the difference of means, two-sided; the interval of the difference by Welch's method, 95 %.",
        ]),
    ...(wanted.length === 0
      ? []
      : [
          "Plants needed: goal over own yield of finished plantings; handbook yields are Kansas State University's (MF315) or, where that has none, from memory of such tables; jars by the USDA Complete Guide to Home Canning (AIB 539, 2015).",
        ]),
    "Rotation: same family off a bed for three seasons, two for the lettuce family (West Virginia University Extension, 2025), longer after a disease that stays in the soil.",
    ...(plan.rows.length === 0
      ? []
      : [
          `The draft for ${plan.label} was ${plan.exact ? "found by trying every choice" : "found by search, and a better one may exist"}.`,
        ]),
  ];
}
