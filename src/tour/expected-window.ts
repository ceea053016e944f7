/** The window in which plants should be ready or in flower, made where the garden's past and its weather are known. */
import { daysBetween } from "../calendar.ts";
import { dayOnly, type Voice } from "../language/index.ts";
import type { Day } from "../model.ts";

export interface ExpectedWindow {
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
  /** Learned from plantings here, or from the warmth here; else from the packet alone. */
  readonly own?: boolean | undefined;
}

/** By planting id. */
export type ExpectedWindows = ReadonlyMap<string, ExpectedWindow>;

/** A window of more days than this says only that nobody knows. */
const usefulWindow = 42;

export function isUseful({ from, to }: ExpectedWindow): boolean {
  return daysBetween(from, to) <= usefulWindow;
}

/** "between 24 July and 3 August"; what could have come already is told by its end. */
export function spanSaid({ from, to }: ExpectedWindow, voice: Voice): string {
  const end = dayOnly(to, voice);
  return from <= voice.day ? `mostly by ${end}` : `between ${dayOnly(from, voice)} and ${end}`;
}

/** ", by this garden's own records": nothing, where it rests on the packet alone. */
export function basisSaid({ own }: ExpectedWindow): string {
  return own === true ? " by this garden's own records" : "";
}
