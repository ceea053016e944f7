/** What the style page shows, as plain data. */

import type { Comparison, GrowthChart } from "./comparison-shapes.ts";
import type { NoteLine } from "./note-shapes.ts";
import type { CropGroup, DayOfChanges, Picture, VarietyRow } from "./shapes.ts";

export interface LooksPage {
  readonly href: string;
  /** The four colour schemes, those of public pages first. */
  readonly schemes: readonly LookScheme[];
  readonly letters: readonly LookSize[];
  readonly distances: readonly LookSize[];
  /** Names in many alphabets, to see whether the lettering has them. */
  readonly alphabets: readonly string[];
  /** Rules of this page alone: its schemes side by side, and one example for each token. */
  readonly css: string;
  /** From the garden's own records; what it does not have yet is undefined. */
  readonly row?: VarietyRow | undefined;
  readonly group?: CropGroup | undefined;
  readonly picture?: Picture | undefined;
  readonly comparison?: Comparison | undefined;
  readonly chart?: GrowthChart | undefined;
  readonly days: readonly DayOfChanges[];
  readonly reading: readonly NoteLine[];
}

export interface LookScheme {
  /** Class of the part of the page that wears it. */
  readonly id: string;
  readonly title: string;
  readonly isPrivate: boolean;
  readonly pairs: readonly LookPair[];
}

export interface LookPair {
  /** Class of its example. */
  readonly id: string;
  readonly name: string;
  /** "17.7 to 1; wanted 7" */
  readonly contrast: string;
  readonly isText: boolean;
}

/** A token and its value. */
export interface LookSize {
  readonly name: string;
  readonly value: string;
}
