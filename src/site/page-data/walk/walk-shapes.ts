/** A stop of a film, as its page shows it. */
import type { FilmMoment } from "../film-shapes.ts";
import type { SmallPlate } from "../plate-shapes.ts";
import type { Link, Picture, SourceLine } from "../shapes.ts";

/** What grew at a stop on the filming day. */
export interface WalkVariety {
  readonly href?: string | undefined;
  readonly name: string;
  readonly crop: string;
  readonly source?: SourceLine | undefined;
  readonly isNew: boolean;
  /** "Since then: 4.2 kg picked, cleared on 3 October."; empty when nothing was noted. */
  readonly since: string;
}

export interface WalkStop {
  /** "stop-1" */
  readonly anchor: string;
  readonly number: number;
  readonly bed: Link;
  readonly at?: FilmMoment | undefined;
  /** Of the chapter that tells it, in the transcript. */
  readonly said?: string | undefined;
  readonly picture?: Picture | undefined;
  /** "Two days before the film."; undefined for a photo of the filming day. */
  readonly taken?: string | undefined;
  /** Named in the film here, each with the time. */
  readonly named: readonly { readonly at: FilmMoment; readonly plate: SmallPlate }[];
  /** What else grew there. */
  readonly others: readonly WalkVariety[];
}
