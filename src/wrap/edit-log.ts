/** The wrap as an editor's log: stops, names, promises and disagreements in order of time, as rows and as OpenTimelineIO. */
import { sayTime, writeTime } from "./caption-times.ts";
import { bestTake } from "./takes.ts";
import type { Wrap } from "./wrap.ts";

export interface LogRow {
  /** "00:01:05.000" */
  readonly begin: string;
  readonly end: string;
  readonly kind: "stop" | "shot" | "variety" | "promise" | "question" | "check" | "name";
  readonly what: string;
  readonly note: string;
}

interface Mark {
  readonly at: number;
  readonly until: number;
  readonly kind: LogRow["kind"];
  readonly what: string;
  readonly note: string;
}

/** How long a mark of a moment is shown, seconds. */
const GLANCE = 2;

function marksOf(wrap: Wrap, title: (bed: string | undefined) => string): readonly Mark[] {
  const at = (kind: LogRow["kind"], from: number, what: string, note: string): Mark => ({
    at: from,
    until: Math.min(wrap.length, from + GLANCE),
    kind,
    what,
    note,
  });
  return [
    ...wrap.stops.map(({ bed, at: from, until, confidence, planned }) => ({
      at: from,
      until,
      kind: "stop" as const,
      what: title(bed),
      note: `${planned || bed === undefined ? "" : "not planned; "}sure to ${Math.round(confidence * 100)} %`,
    })),
    ...wrap.coverage.things.flatMap(({ id, key, at: from, text, covered }) => {
      const shot = wrap.coverage.shots.find((one) => one.key === key);
      const note = [covered, shot === undefined ? undefined : bestTake(shot)].filter((part) => part !== undefined);
      return from === undefined ? [] : [at("shot", from, `${id}: ${text}`, note.join("; "))];
    }),
    ...wrap.coverage.named.map(({ at: from, title: what, times }) =>
      at("variety", from, what, `named ${times === 1 ? "once" : `${times} times`}`),
    ),
    ...wrap.followUps.map(({ at: from, what, due }) =>
      at("promise", from, what, due === undefined ? "" : `due ${due}`),
    ),
    ...wrap.questions.map(({ at: from, said, kind }) => at("question", from, said, kind)),
    ...wrap.disagreements.map(({ at: from, said, records }) => at("check", from, said, records)),
    ...wrap.corrections
      .filter(({ sort, applied }) => sort === "spelling" && !applied)
      .map(({ at: from, heard, name }) => at("name", from, heard, `${name}?`)),
  ].sort((a, b) => a.at - b.at);
}

export function editLog(wrap: Wrap, title: (bed: string | undefined) => string): readonly LogRow[] {
  return marksOf(wrap, title).map(({ at, until, kind, what, note }) => ({
    begin: writeTime(at * 1000, "vtt"),
    end: writeTime(until * 1000, "vtt"),
    kind,
    what,
    note,
  }));
}

/** Marker colours of OpenTimelineIO, by what a mark is. */
const colours: Readonly<Record<LogRow["kind"], string>> = {
  stop: "GREEN",
  shot: "CYAN",
  variety: "BLUE",
  promise: "ORANGE",
  question: "YELLOW",
  check: "RED",
  name: "MAGENTA",
};

/** Parts of a second that times are counted in, so that every millisecond is whole. */
const RATE = 1000;

/**
 * The same as OpenTimelineIO's JSON (serialized schema: Timeline.1, Stack.1, Track.1, Clip.2, Marker.2, MissingReference.1,
 * TimeRange.1, RationalTime.1): one track, a clip for each stop, the marks on the clip they fall in. The film itself is a
 * missing reference; an editing program asks for it once.
 */
export function openTimeline(wrap: Wrap, title: (bed: string | undefined) => string): object {
  const marks = marksOf(wrap, title).filter(({ kind }) => kind !== "stop");
  const stops = wrap.stops.length > 0 ? wrap.stops : [{ bed: undefined, at: 0, until: wrap.length }];
  return {
    OTIO_SCHEMA: "Timeline.1",
    metadata: { plotreel: { episode: wrap.episode } },
    name: wrap.title,
    global_start_time: null,
    tracks: {
      OTIO_SCHEMA: "Stack.1",
      metadata: {},
      name: "tracks",
      source_range: null,
      effects: [],
      markers: [],
      enabled: true,
      children: [
        {
          OTIO_SCHEMA: "Track.1",
          metadata: {},
          name: "Film",
          source_range: null,
          effects: [],
          markers: [],
          enabled: true,
          kind: "Video",
          children: stops.map((stop, index) => clip(stop, index, stops.length, marks, wrap, title)),
        },
      ],
    },
  };
}

function clip(
  { bed, at, until }: { readonly bed?: string | undefined; readonly at: number; readonly until: number },
  index: number,
  count: number,
  marks: readonly Mark[],
  wrap: Wrap,
  title: (bed: string | undefined) => string,
): object {
  const begins = index === 0 ? 0 : at;
  const ends = index === count - 1 ? Math.max(until, wrap.length) : until;
  return {
    OTIO_SCHEMA: "Clip.2",
    metadata: {},
    name: title(bed),
    source_range: range(begins, ends),
    effects: [],
    markers: marks
      .filter((mark) => mark.at >= begins && (mark.at < ends || index === count - 1))
      .map((mark) => ({
        OTIO_SCHEMA: "Marker.2",
        metadata: { plotreel: { kind: mark.kind, time: sayTime(mark.at * 1000) } },
        name: mark.what,
        color: colours[mark.kind],
        comment: mark.note,
        marked_range: range(mark.at, mark.until),
      })),
    enabled: true,
    media_references: {
      DEFAULT_MEDIA: {
        OTIO_SCHEMA: "MissingReference.1",
        metadata: {},
        name: wrap.title,
        available_range: range(0, wrap.length),
        available_image_bounds: null,
      },
    },
    active_media_reference_key: "DEFAULT_MEDIA",
  };
}

function range(from: number, to: number): object {
  const time = (seconds: number) => ({ OTIO_SCHEMA: "RationalTime.1", rate: RATE, value: Math.round(seconds * RATE) });
  return { OTIO_SCHEMA: "TimeRange.1", start_time: time(from), duration: time(Math.max(0, to - from)) };
}
