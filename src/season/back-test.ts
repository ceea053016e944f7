/** Forecasts held against the past: made from what was known on the day, compared with what came. */
import { addDays, daysBetween } from "../calendar.ts";
import { forecaster } from "./forecast.ts";
import { allTimed, waits } from "./maturity.ts";
import type { SeasonBook } from "./season-book.ts";

export interface BackTest {
  /** Plantings that reached their goal and could be forecast from at least one that had done so before. */
  readonly plantings: number;
  /** Mean and median of how many days forecasts were off, and the same of the varieties' days alone. */
  readonly meanError: number;
  readonly medianError: number;
  readonly catalogueMeanError: number;
  readonly catalogueMedianError: number;
  /** Share of plantings that came within their window; it is made to hold four in five. */
  readonly coverage: number;
  /** Mean width of the windows, days. */
  readonly windowDays: number;
  /** Share that came within windows of the same width about the packet's own day. */
  readonly catalogueCoverage: number;
}

/**
 * `share`: how far into the variety's days the forecast is made; 0 on the day it was begun. Undefined when there is nothing
 * to test.
 */
export function backTest(book: SeasonBook, share = 0): BackTest | undefined {
  const forecast = forecaster(book);
  const all = allTimed(book);
  const rows = all.flatMap((one) => {
    const { reached, begun, catalogueDays, lot } = one;
    // When kale is first picked is the cook's choice, and no forecast of a crop.
    if (reached === undefined || waits(lot.crop?.id)) return [];
    const on = addDays(begun, Math.round(catalogueDays * share));
    if (on >= reached || !all.some((other) => other.reached !== undefined && other.reached < on)) return [];
    const { from, likely, to } = forecast(one, on);
    const width = daysBetween(from, to);
    const catalogue = Math.abs(daysBetween(addDays(begun, catalogueDays), reached));
    return [
      {
        error: Math.abs(daysBetween(likely, reached)),
        catalogue,
        inside: reached >= from && reached <= to,
        width,
        insideCatalogue: catalogue <= width / 2,
      },
    ];
  });
  if (rows.length === 0) return undefined;
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
  return {
    plantings: rows.length,
    meanError: mean(rows.map(({ error }) => error)),
    medianError: median(rows.map(({ error }) => error)),
    catalogueMeanError: mean(rows.map(({ catalogue }) => catalogue)),
    catalogueMedianError: median(rows.map(({ catalogue }) => catalogue)),
    coverage: mean(rows.map(({ inside }) => (inside ? 1 : 0))),
    windowDays: mean(rows.map(({ width }) => width)),
    catalogueCoverage: mean(rows.map(({ insideCatalogue }) => (insideCatalogue ? 1 : 0))),
  };
}
