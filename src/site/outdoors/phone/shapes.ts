/** What the page to write outdoors carries as data, and what the phone keeps of what was written. */
import type { Day } from "../../../model.ts";
import type { TypedGarden } from "../../../records/index.ts";
import type { ShownLine } from "../../note-writing.ts";

export interface OutdoorsData {
  readonly garden: string;
  readonly language: string;
  /** The garden's names, by which a line is read while it is typed. */
  readonly reads: TypedGarden;
  /** Beds in use, the one that was written of last first. */
  readonly beds: readonly BedToTap[];
  readonly spots: readonly Spot[];
  /** Address of the worker that keeps the private pages; undefined in the page that is one file of its own. */
  readonly worker?: string | undefined;
}

export interface BedToTap {
  readonly id: string;
  readonly title: string;
}

/** A place that is photographed again and again. */
export interface Spot {
  /** Bed id. */
  readonly bed: string;
  readonly viewpoint: string;
  readonly title: string;
  /** Name of the photo, with "{day}" and "{time}" in it. */
  readonly fileName: string;
  /** The last photo from there. */
  readonly last?: { readonly src: string; readonly width: number; readonly height: number } | undefined;
}

interface QueuedAs {
  /** What is sent twice is written once. */
  readonly id: string;
  /** Milliseconds since 1970, when it was kept. */
  readonly time: number;
  readonly day: Day;
  /** Name of the garden it was kept for. */
  readonly garden: string;
  /** It may have reached the computer, or it lies in a file: it is not changed any more, only left out. */
  readonly sent?: true | undefined;
  readonly inFile?: true | undefined;
  /** Why the computer did not take it, and what it can be sent again with. */
  readonly refused?: Refused | undefined;
}

export interface Refused {
  readonly told: string;
  readonly reads?: ShownLine | undefined;
  readonly stands?: true | undefined;
  /** It was kept for a garden of another name. */
  readonly elsewhere?: true | undefined;
}

export interface QueuedLine extends QueuedAs {
  readonly kind: "line";
  readonly bed?: string | undefined;
  readonly text: string;
  readonly shown: ShownLine;
  readonly again?: true | undefined;
}

/** Its bytes are kept beside it. */
export interface QueuedPhoto extends QueuedAs {
  readonly kind: "photo";
  readonly bed: string;
  readonly viewpoint?: string | undefined;
  readonly name: string;
  readonly modified: number;
  readonly size: number;
}

export type Queued = QueuedLine | QueuedPhoto;

/** Bytes of the largest photo that the computer takes. */
export const LARGEST = 40 * 1024 * 1024;
