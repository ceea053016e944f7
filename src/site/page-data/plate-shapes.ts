/** A variety on a label: small as the row of a list, what a search finds, a name in a film; and large on its own page. */
import type { Amount } from "../../language/index.ts";
import type { FilmMoment } from "./film-shapes.ts";
import type { Link, Picture, SourceLine } from "./shapes.ts";

/** The smallest copy of a photo, shown in a square. */
export interface Thumb {
  readonly src: string;
  readonly alt: string;
}

export interface SmallPlate {
  readonly href: string;
  readonly name: string;
  /** "squash" */
  readonly crop: string;
  readonly sayAs?: string | undefined;
  readonly isNew: boolean;
  /** Of the variety itself, never of its bed; undefined while there is none. */
  readonly thumb?: Thumb | undefined;
  readonly source?: SourceLine | undefined;
  /** How it did, in one sentence. */
  readonly says: string;
}

/** A variety at the head of its own page. */
export interface VarietyPlate {
  /** What it looks like, each photo another part of it: the first leads. */
  readonly photos: readonly { readonly picture: Picture; readonly shows?: string | undefined }[];
  readonly years?: YearStrips | undefined;
  /** The newest film that shows it, at the moment it does. */
  readonly film?: { readonly episode: Link; readonly day: string; readonly at?: FilmMoment | undefined } | undefined;
  /** "Would grow it again." */
  readonly again?: string | undefined;
}

/** Places in hundredths of the year. */
export interface YearStrips {
  /** Where months begin; only some are named. */
  readonly months: readonly { readonly at: number; readonly text?: string | undefined }[];
  /** Newest first. */
  readonly years: readonly YearStrip[];
}

export interface YearStrip {
  readonly year: string;
  readonly rows: number;
  readonly bars: readonly StripBar[];
  /** The same in words. */
  readonly told: string;
  readonly amount?: Amount | undefined;
  /** "2.5 kg a plant" */
  readonly each?: string | undefined;
}

export interface StripBar {
  readonly kind: "raised" | "grown" | "picked";
  /** 0 is the upper one. */
  readonly row: number;
  readonly from: number;
  readonly width: number;
}
