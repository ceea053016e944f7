/** Moments of a film: milliseconds of the captions to the seconds that data carries and the time that players show. */
import { sayTime } from "./caption-times.ts";
import type { Moment } from "./wrap.ts";

export function moment(ms: number): Moment {
  return { at: Math.round(ms / 100) / 10, time: sayTime(ms) };
}
