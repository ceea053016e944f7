/** What pages show of photos of one spot laid over one another, and of growth measured in them. */
import type { Amount, Link, Picture } from "./shapes.ts";

/** The same spot on two days. */
export interface PicturePair {
  readonly bed: Link;
  readonly before: Picture;
  readonly after: Picture;
  /** "Five weeks apart. Cover went from 35 % to 80 %." */
  readonly between: string;
  /** What was done to the two photos. */
  readonly method: string;
}

/** A photo of a spot in the frame that all of its photos share. */
export interface SpotPicture {
  readonly iso: string;
  readonly picture: Picture;
  /** "35 %"; undefined when it could not be measured. */
  readonly cover?: string | undefined;
}

/** Two photos under a slider, and the others to choose from. */
export interface Comparison {
  /** Anchor. */
  readonly id: string;
  /** "From the gate" */
  readonly spot: string;
  /** Oldest first. */
  readonly frames: readonly SpotPicture[];
  /** Places in `frames` of the two shown first. */
  readonly before: number;
  readonly after: number;
  readonly pair: PicturePair;
  /** "Cover went from {from} to {to}.", to be filled in when other days are chosen. */
  readonly coverWords: string;
  /** Points of cover from which on a change is said. */
  readonly coverTold: number;
}

/** A season's weeks from its last photo back to its first. */
export interface WeekStrip {
  /** "From the gate, 4 April to 17 July 2026" */
  readonly caption: string;
  readonly weeks: readonly {
    readonly iso: string;
    /** "17 July" of the photo, or of the week's Monday where there is none. */
    readonly day: string;
    readonly picture?: Picture | undefined;
  }[];
}

/** A season from one spot, one picture a week. */
export interface Lapse {
  /** "From the gate, 4 April to 17 July 2026: 14 photos, one a week" */
  readonly caption: string;
  readonly alt: string;
  /** Addresses: its last picture, and the one that moves. */
  readonly still: string;
  readonly moving: string;
  readonly width: number;
  readonly height: number;
  /** Address of a film to cut with; only on private pages. */
  readonly film?: string | undefined;
}

/** A photo with the age of the plants on its day. */
export interface AgedPicture {
  readonly picture: Picture;
  readonly age: string;
  /** Other photos of the same moment. */
  readonly others: readonly Link[];
}

export interface ChartLine {
  readonly name: string;
  /** The season or planting the page is about; others stand behind it. */
  readonly isMain: boolean;
  /** SVG path of each stretch; between two of them nobody measured. */
  readonly paths: readonly string[];
  readonly points: readonly {
    readonly x: number;
    readonly y: number;
    /** Reach of the uncertainty, one standard deviation either way. */
    readonly low?: number | undefined;
    readonly high?: number | undefined;
    /** A height read off a photo, among those measured with a rule. */
    readonly isOpen: boolean;
  }[];
  /** Where its name stands. */
  readonly label: { readonly x: number; readonly y: number; readonly isLeft: boolean };
}

/** A chart with every place worked out, in units of its own drawing. */
export interface GrowthChart {
  /** Anchor. */
  readonly id: string;
  /** "How much of Long Bed is green" */
  readonly title: string;
  /** What the chart shows, for those who do not see it. */
  readonly summary: string;
  /** How it was measured. */
  readonly method: string;
  readonly width: number;
  readonly height: number;
  /** Edges of the field in which the lines lie. */
  readonly field: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  readonly across: readonly { readonly at: number; readonly text: string }[];
  readonly up: readonly { readonly at: number; readonly text: string }[];
  readonly lines: readonly ChartLine[];
  readonly table: { readonly head: readonly string[]; readonly rows: readonly (readonly (string | Amount)[])[] };
}

/** Then and now of one bed. */
export interface ThenAndNowPage {
  readonly id: string;
  readonly bed: Link;
  /** What was done to the photos. */
  readonly method: string;
  readonly spots: readonly {
    readonly comparison: Comparison;
    readonly pairs: readonly { readonly heading: string; readonly pair: PicturePair }[];
    readonly strip?: WeekStrip | undefined;
    readonly lapse?: Lapse | undefined;
  }[];
}
