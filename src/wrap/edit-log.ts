/** The wrap as an editor's log: stops, names, promises and disagreements in order of time, as marks and as rows. */
import type { FrameRate } from "../model.ts";
import { writeTime } from "./caption-times.ts";
import { sayRate } from "./clips/clip-rows.ts";
import { framesIn, labelOfFrame } from "./hand-over/timecode.ts";
import { shortName } from "./hand-over/timeline.ts";
import { bestTake } from "./takes.ts";
import type { Wrap } from "./wrap.ts";

export interface LogRow {
  /** "00:01:05.000" */
  readonly begin: string;
  readonly end: string;
  readonly kind: "stop" | "shot" | "variety" | "promise" | "question" | "check" | "name";
  readonly what: string;
  readonly note: string;
  /** At most 40 letters of it. */
  readonly name: string;
  /** By the film's own rate; empty where that is not known. */
  readonly timecode: string;
  readonly rate: string;
}

/** Times in seconds. */
export interface Mark {
  readonly at: number;
  readonly until: number;
  readonly kind: LogRow["kind"];
  readonly what: string;
  readonly note: string;
}

/** How long a mark of a moment is shown, seconds. */
const GLANCE = 2;

export function marksOf(wrap: Wrap, title: (bed: string | undefined) => string): readonly Mark[] {
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

export function editLog(
  wrap: Wrap,
  title: (bed: string | undefined) => string,
  rate: FrameRate | undefined,
): readonly LogRow[] {
  return marksOf(wrap, title).map(({ at, until, kind, what, note }) => ({
    begin: writeTime(at * 1000, "vtt"),
    end: writeTime(until * 1000, "vtt"),
    kind,
    what,
    note,
    name: shortName(what),
    timecode: rate === undefined ? "" : labelOfFrame(framesIn(at * 1000, rate), rate),
    rate: rate === undefined ? "" : sayRate(rate),
  }));
}
