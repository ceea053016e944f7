/** Times of captions at the turn of the minute and the hour, as WebVTT (W3C, webvtt1, section 4.1) and SubRip write them. */
import { type CaptionFormat, readTime, writeTime } from "../../src/wrap/caption-times.ts";
import type { TruthRow } from "./table.ts";

/** Seconds, and how they must be written: rounded to the millisecond, never "59:60.000". */
export const rollovers: readonly (readonly [seconds: number, format: CaptionFormat, written: string])[] = [
  [3599.9996, "vtt", "01:00:00.000"],
  [3599.9996, "srt", "01:00:00,000"],
  [3599.9994, "vtt", "00:59:59.999"],
  [59.9996, "vtt", "00:01:00.000"],
  [3661.5, "vtt", "01:01:01.500"],
  [3661.5, "srt", "01:01:01,500"],
  [0.0005, "vtt", "00:00:00.001"],
  [360_000, "vtt", "100:00:00.000"],
];

export function captionRows(): readonly TruthRow[] {
  const wrong = rollovers.filter(([seconds, format, written]) => writeTime(seconds * 1000, format) !== written);
  return [
    {
      quantity: "times of captions at the turn of minute and hour (3599.9996 s)",
      cases: rollovers.length,
      found: wrong.length === 0 ? "none written otherwise" : `${wrong.length} written otherwise`,
      against: "WebVTT (W3C, section 4.1); SubRip has no standard, its form from memory",
      goal: "none",
      met: wrong.length === 0,
    },
  ];
}

/** Every millisecond round the turn of the first hour reads back as it was written. */
export function readsBack(format: CaptionFormat): boolean {
  return Array.from({ length: 2001 }, (_, at) => 3_599_000 + at).every(
    (ms) => readTime(writeTime(ms, format), format)?.ms === ms,
  );
}
