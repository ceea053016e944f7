/** Of a stop: where the camera stands, what it films, and which earlier films are pointed to. */
import type { Level } from "../films/index.ts";
import type { Sentence } from "../language/index.ts";
import type { Day } from "../model.ts";

/** Where the camera stands, and the photo it should match. */
export interface Spot {
  readonly viewpoint?: string | undefined;
  /** "from the gate post, chest height" */
  readonly spot?: string | undefined;
  /** Degrees from north. */
  readonly looking?: number | undefined;
  /** Last photo from there before this tour's filming day, best from the day viewers last saw the bed. */
  readonly photo?: { readonly path: string; readonly day: Day } | undefined;
  /** The same as one phrase: "from the gate post, chest height, looking north-west; match the photo of 12 June". */
  readonly text: string;
}

/** Two photos from one spot to be shown beside each other: from the day viewers last saw the bed, and now. */
export interface SideBySide {
  readonly viewpoint: string;
  readonly before: { readonly path: string; readonly day: Day };
  readonly after: { readonly path: string; readonly day: Day };
  /** Shares of the bed that are green, 0 to 1, when both were measured. */
  readonly cover?: { readonly from: number; readonly to: number } | undefined;
}

/** One shot of a stop; the field list and the wrap go by its key. */
export interface Shot {
  /** "S3.1": where it stands in this plan. */
  readonly id: string;
  /** What it is of, whatever else the plan holds: "long-bed/wide". */
  readonly key: string;
  readonly kind: "wide" | "walk-in" | "close-up" | "insert" | "cutaway";
  readonly text: string;
  readonly level?: Level | undefined;
  /** Path of the photo to match. */
  readonly match?: string | undefined;
}

/** The text reads "Planting day, 24 May, at 6:40". */
export interface PointTo extends Sentence {
  readonly episode: string;
  readonly title: string;
  readonly day: Day;
  readonly link?: string | undefined;
  /** Seconds into that film; undefined when neither its captions nor its stops tell. */
  readonly at?: number | undefined;
  /** What it has on the matter: "Crown Prince", "the long bed". */
  readonly about: string;
}
