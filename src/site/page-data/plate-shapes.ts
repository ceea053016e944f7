/** A variety on a small label: the row of a list, what a search finds, a name in a film. */
import type { SourceLine } from "./shapes.ts";

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
