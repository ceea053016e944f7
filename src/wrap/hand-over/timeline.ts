/** A timeline before it is written in any program's form: what lies where, and what is marked. All in whole pictures. */
import type { FrameRate } from "../../model.ts";
import type { Mark } from "../edit-log.ts";
import { framesIn, hasDropFrame } from "./timecode.ts";

/** A film file as it came from a camera. */
export interface Reel {
  /** Its name with its folder. */
  readonly file: string;
  /** "file:///…" */
  readonly url: string;
  readonly rate: FrameRate;
  /** Pictures of its own rate: the number of the first, and how many there are. */
  readonly start: number;
  readonly frames: number;
  readonly width?: number | undefined;
  readonly height?: number | undefined;
  readonly hasSound: boolean;
}

export interface TimelineClip {
  readonly name: string;
  readonly note: string;
  /** Undefined for a film that has no file yet. */
  readonly reel?: Reel | undefined;
  /** Milliseconds into the reel. */
  readonly from: number;
  /** Of the timeline's rate. */
  readonly frames: number;
}

export interface TimelineMark {
  readonly at: number;
  readonly frames: number;
  /** At most 40 letters. */
  readonly name: string;
  readonly text: string;
  readonly note: string;
  readonly kind: Mark["kind"];
  readonly seconds: number;
}

export interface Timeline {
  readonly name: string;
  readonly rate: FrameRate;
  readonly isDrop: boolean;
  readonly clips: readonly TimelineClip[];
  readonly marks: readonly TimelineMark[];
}

/** The finished film with its marks. */
export function filmTimeline(name: string, seconds: number, marks: readonly Mark[], rate: FrameRate): Timeline {
  const frames = Math.max(1, framesIn(seconds * 1000, rate));
  return {
    name,
    rate,
    isDrop: hasDropFrame(rate),
    clips: [{ name, note: "", from: 0, frames }],
    marks: marks.map(({ at, until, kind, what, note }) => {
      const from = Math.min(frames - 1, framesIn(at * 1000, rate));
      const last = Math.min(frames, framesIn(until * 1000, rate));
      return { at: from, frames: Math.max(1, last - from), name: shortName(what), text: what, note, kind, seconds: at };
    }),
  };
}

const LONGEST_NAME = 40;

/** Cut at a word. */
export function shortName(text: string): string {
  const line = text.replace(/\s+/g, " ").trim();
  if (line.length <= LONGEST_NAME) return line;
  const cut = line.slice(0, LONGEST_NAME - 1);
  const space = cut.lastIndexOf(" ");
  return `${(space > 15 ? cut.slice(0, space) : cut).trimEnd()}…`;
}
