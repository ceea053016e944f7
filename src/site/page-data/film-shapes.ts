/** What a film's page shows of what is said in it. */
import type { SourceLine } from "./shapes.ts";

/** A moment of a film. */
export interface FilmMoment {
  /** "6:40", as players show it. */
  readonly time: string;
  /** Opens the film there, or the transcript where the film has no address; undefined when neither can be. */
  readonly href?: string | undefined;
}

/** A stretch of what is said, from one chapter's beginning to the next. */
export interface TranscriptPart {
  /** "t-400", by seconds into the film. */
  readonly anchor: string;
  /** The chapter's name; undefined in a film too short for chapters. */
  readonly title?: string | undefined;
  /** Plain text, names set right. */
  readonly paragraphs: readonly {
    readonly at: FilmMoment;
    /** Undefined where the part's own anchor stands for it. */
    readonly anchor?: string | undefined;
    readonly text: string;
  }[];
}

export interface EpisodeWrapShown {
  readonly chapters: readonly {
    readonly at: FilmMoment;
    readonly title: string;
    /** Of the transcript's part. */
    readonly anchor: string;
  }[];
  /** In order of the time at which each is first named. */
  readonly varieties: readonly {
    readonly at: FilmMoment;
    readonly href: string;
    readonly name: string;
    readonly crop: string;
    readonly source?: SourceLine | undefined;
  }[];
  readonly transcript: readonly TranscriptPart[];
}
