/**
 * The best take of each shot one after the other, in the order of filming, as a cut to begin with. Something is left at both
 * ends of every file as handles; where captions of a clip tell when is spoken, the words with a second around them stay.
 */
import type { FrameRate } from "../../model.ts";
import type { LoggedClip } from "../clips/clip-log.ts";
import type { ClipNames } from "../clips/clip-rows.ts";
import { framesIn, hasDropFrame } from "./timecode.ts";
import type { Reel, Timeline, TimelineClip } from "./timeline.ts";

/** Milliseconds left at either end, at most, and at most this share of the clip: common practice. */
const HANDLE = 2000;
const SHARE = 0.1;
const AROUND_WORDS = 1000;
/** Faster pictures are for slow motion; no film is cut at that rate. */
const FASTEST = 60;

export interface RoughCutRequest {
  readonly name: string;
  readonly clips: readonly LoggedClip[];
  readonly names: ClipNames;
  /** Of a file's name, "file:///…". */
  readonly url: (file: string) => string;
  /** Of the film, where it is known; else the commonest of the clips. */
  readonly rate?: FrameRate | undefined;
}

/** Undefined when no good take has a length and a rate. */
export function roughCut({ name, clips, names, url, rate: given }: RoughCutRequest): Timeline | undefined {
  const best = clips
    .filter((clip) => clip.isBest && clip.length !== undefined && clip.rate !== undefined)
    .sort((a, b) => (a.begins ?? 0) - (b.begins ?? 0));
  const rate = given ?? commonRate(best);
  if (rate === undefined) return undefined;
  return {
    name: `${name}, rough cut`,
    rate,
    isDrop: hasDropFrame(rate),
    clips: best.map((clip): TimelineClip => {
      const { length = 0, bed = "", shot = "" } = clip;
      const handle = Math.min(HANDLE, length * SHARE);
      const from = clip.spoken === undefined ? handle : Math.max(0, clip.spoken.from - AROUND_WORDS);
      const to = clip.spoken === undefined ? length - handle : Math.min(length, clip.spoken.to + AROUND_WORDS);
      // On a picture of the timeline, so that no edge lies between two.
      const first = Math.ceil((from * rate.num) / (rate.den * 1000) - 1e-6);
      const what = names.shot(bed, shot);
      const take = clip.take === undefined ? "" : `, take ${clip.take}`;
      return {
        name: `${names.stop(bed)} ${shot}`,
        note: `${what === undefined ? "" : `${what}; `}${clip.file}${take}${clip.isVariable ? "; its rate varies" : ""}${clip.isSure ? "" : "; not sure"}`,
        reel: reelOf(clip, clip.rate as FrameRate, url),
        from: (first * rate.den * 1000) / rate.num,
        frames: Math.max(1, framesIn(to, rate) - first),
      };
    }),
    marks: [],
  };
}

export function commonRate(clips: readonly LoggedClip[]): FrameRate | undefined {
  const counts = new Map<string, { rate: FrameRate; count: number }>();
  for (const { rate } of clips) {
    if (rate === undefined || rate.num / rate.den > FASTEST) continue;
    const key = `${rate.num}/${rate.den}`;
    counts.set(key, { rate, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((a, b) => b.count - a.count)[0]?.rate;
}

function reelOf(clip: LoggedClip, rate: FrameRate, url: (file: string) => string): Reel {
  return {
    file: clip.file,
    url: url(clip.file),
    rate,
    start: clip.startFrame ?? 0,
    frames: Math.max(1, framesIn(clip.length ?? 0, rate)),
    width: clip.width,
    height: clip.height,
    hasSound: clip.hasSound ?? false,
  };
}
