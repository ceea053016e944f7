/**
 * OpenTimelineIO as every reader since 0.14 opens it: Timeline.1, Stack.1, Track.1, Clip.1, ExternalReference.1, Marker.2 with
 * its range under the old name too (a newer schema than a reader knows makes it refuse the whole file; the schemas are in
 * the project's CORE_VERSION_MAP.cpp). Marks of a film are on the stack: their times are the timeline's.
 */
import type { FrameRate } from "../../model.ts";
import { framesIn } from "./timecode.ts";
import type { Timeline, TimelineClip, TimelineMark } from "./timeline.ts";

const colours: Readonly<Record<TimelineMark["kind"], string>> = {
  stop: "GREEN",
  shot: "CYAN",
  variety: "BLUE",
  promise: "ORANGE",
  question: "YELLOW",
  check: "RED",
  name: "MAGENTA",
};

export function openTimeline({ name, rate, clips, marks }: Timeline): object {
  const item = (metadata: object = {}) => ({ metadata, source_range: null, effects: [], markers: [], enabled: true });
  return {
    OTIO_SCHEMA: "Timeline.1",
    metadata: { plotreel: {} },
    name,
    global_start_time: null,
    tracks: {
      OTIO_SCHEMA: "Stack.1",
      ...item(),
      name: "tracks",
      markers: marks.map((mark) => marker(mark, rate)),
      children: [
        {
          OTIO_SCHEMA: "Track.1",
          ...item(),
          name: "Film",
          kind: "Video",
          children: clips.map((clip) => ({ ...item({ plotreel: { note: clip.note } }), ...clipObject(clip, rate) })),
        },
      ],
    },
  };
}

function marker({ at, frames, name, text, note, kind, seconds }: TimelineMark, rate: FrameRate): object {
  const where = range(at, frames, rate);
  return {
    OTIO_SCHEMA: "Marker.2",
    metadata: { plotreel: { kind, said: text, milliseconds: Math.round(seconds * 1000) } },
    name,
    color: colours[kind],
    comment: [text, note].filter((part) => part !== "").join(" · "),
    marked_range: where,
    range: where,
  };
}

function clipObject({ name, reel, from, frames }: TimelineClip, rate: FrameRate): object {
  if (reel === undefined) {
    const whole = range(0, frames, rate);
    const missing = { OTIO_SCHEMA: "MissingReference.1", metadata: {}, name, available_range: whole };
    return { OTIO_SCHEMA: "Clip.1", name, source_range: whole, media_reference: missing };
  }
  // A file's own time is told in its own rate.
  const first = framesIn(from + 1e-3, reel.rate);
  const length = framesIn((frames * rate.den * 1000) / rate.num + 1e-3, reel.rate);
  return {
    OTIO_SCHEMA: "Clip.1",
    name,
    source_range: range(reel.start + first, Math.max(1, Math.min(length, reel.frames - first)), reel.rate),
    media_reference: {
      OTIO_SCHEMA: "ExternalReference.1",
      metadata: {},
      name: reel.file,
      target_url: reel.url,
      available_range: range(reel.start, reel.frames, reel.rate),
    },
  };
}

function range(start: number, length: number, { num, den }: FrameRate): object {
  const time = (value: number) => ({ OTIO_SCHEMA: "RationalTime.1", rate: num / den, value });
  return { OTIO_SCHEMA: "TimeRange.1", start_time: time(start), duration: time(length) };
}
