/**
 * Growing degree days, each total with its method's name, because the methods differ by more than they agree.
 *
 * Temperatures and sums are in degrees Celsius (a sum in Fahrenheit degrees is 1.8 times this; 32 is never taken off a sum).
 */
/**
 * The readings of "average less base":
 * - `mean first`: floor the day's mean at the base (interpretation 1 of McMaster & Wilhelm, Agric. For. Meteorol. 87:291-300, 1997); a cap holds the mean.
 * - `limits first`: hold minimum and maximum within base and cap, then average (interpretation 2; with 10 and 30 °C it is the 86/50 °F method of US extension services).
 */
export type HeatMethod = "mean first" | "limits first";

export interface HeatScale {
  readonly method: HeatMethod;
  /** °C below which nothing grows. */
  readonly base: number;
  /** °C above which growth gains no more. */
  readonly cap?: number | undefined;
}

/** The "modified" or 86/50 °F method of maize growers. */
export const CAPPED_86_50: HeatScale = { method: "limits first", base: 10, cap: 30 };

/** Degree days of one day, °C. */
export function heatOfDay(
  tmax: number,
  tmin: number,
  { method, base, cap = Number.POSITIVE_INFINITY }: HeatScale,
): number {
  const within = (temperature: number) => Math.min(Math.max(temperature, base), cap);
  return method === "mean first" ? within((tmax + tmin) / 2) - base : (within(tmax) + within(tmin)) / 2 - base;
}

export interface HeatSum {
  readonly degreeDays: number;
  /** Days counted. */
  readonly days: number;
  /** Days of the span without a temperature; the sum says nothing of them. */
  readonly missing: number;
  readonly scale: HeatScale;
}
