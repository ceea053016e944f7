/** What the parts of a recap are drafted from, and the points they are drafted into. */

import type { Level } from "../films/index.ts";
import type { Season } from "../garden/index.ts";
import type { Sentence } from "../language/index.ts";
import type { Day } from "../model.ts";
import type { ForecastRow, LossRow, NextYear, PhotoSet, PromiseRow, Recap, SegmentKind } from "./recap.ts";
import type { SeasonBook } from "./season-book.ts";
import type { Standings } from "./standings.ts";
import type { Credits } from "./thanks.ts";
import type { TrialResult } from "./trial-results.ts";
import type { WeatherStory } from "./weather-story.ts";

export interface DraftPoint {
  readonly sentence: Sentence;
  readonly level: Level;
  readonly why: string;
  readonly value: number;
}

export interface DraftSegment {
  readonly kind: SegmentKind;
  readonly title: string;
  readonly points: readonly DraftPoint[];
  readonly photos: readonly PhotoSet[];
}

/** What the segments are drafted from. */
export interface Material {
  readonly book: SeasonBook;
  readonly season: Season;
  readonly from: Day;
  readonly to: Day;
  readonly kind: Recap["kind"];
  /** The days told are over. */
  readonly past: boolean;
  readonly paragraph: readonly Sentence[];
  readonly weather?: WeatherStory | undefined;
  readonly standings: Standings;
  readonly losses: readonly LossRow[];
  readonly photos: readonly PhotoSet[];
  readonly trials: readonly TrialResult[];
  readonly promises: readonly PromiseRow[];
  readonly forecasts: readonly ForecastRow[];
  readonly sowing: readonly Sentence[];
  readonly nextYear: NextYear;
  readonly credits: Credits;
}

export const point = (sentence: Sentence, level: Level, why: string, value: number): DraftPoint => ({
  sentence,
  level,
  why,
  value,
});

/** A value that falls from the first to the last of a list, so that a short film keeps the first. */
export const falling = (start: number, index: number) => Math.max(1, start - index * 4);
