/** A season across a page: bars for what grew, beads for photos, and the days on which something changed. */
import type { AgedPicture, DayOfChanges, Link } from "../shapes.ts";

/** Places are hundredths of the ribbon's width, with one decimal. */
export interface RibbonBar {
  /** Raised elsewhere, standing in the bed, picked. */
  readonly kind: "raised" | "grown" | "picked";
  readonly at: number;
  readonly wide: number;
}

export interface RibbonRow {
  /** Undefined when the notes name only the crop. */
  readonly href?: string | undefined;
  readonly name: string;
  readonly crop: string;
  readonly isNew: boolean;
  /** The bars in words. */
  readonly told: string;
  readonly bars: readonly RibbonBar[];
}

/** A day on which something changed, or a photo was taken. */
export interface RibbonDay extends DayOfChanges {
  readonly at: number;
  /** Rows that stood there at its end, by their place in the list. */
  readonly standing: readonly number[];
  /** On private pages: what the notes say of it, as written, each with the way to its line. */
  readonly notes?: readonly Link[] | undefined;
  /** The week up to it. */
  readonly weather?: string | undefined;
}

export interface RibbonBead extends Link {
  readonly at: number;
}

export interface SeasonRibbon {
  /** Tells it apart from others of its page. */
  readonly id: string;
  readonly season: string;
  readonly months: readonly { readonly at: number; readonly name: string }[];
  readonly rows: readonly RibbonRow[];
  /** A photo each, oldest first; each leads to its file. */
  readonly beads: readonly RibbonBead[];
  /** Newest first. The newest photo stands on the stage and in no day. */
  readonly days: readonly RibbonDay[];
  /** Where it begins, by its place in the days: with its newest photo, else on its newest day. */
  readonly begins: number;
  readonly stage?: { readonly aged: AgedPicture; readonly iso: string } | undefined;
  /** What stood there on the day it begins with, by name; undefined where its rows are beds. */
  readonly stands?: string | undefined;
}
