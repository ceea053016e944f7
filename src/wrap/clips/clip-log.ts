/** For each film file the stop, shot and take it holds, and which take is the best: what an editor asks first. */
import { sayPlural } from "../../language/index.ts";
import type { ClipFacts, Filming, TakeMark } from "../../model.ts";
import { type AlignedCamera, type AlignedClip, alignClips, readOtherwise } from "./align-clips.ts";
import { type TickedTake, takesTicked } from "./takes-ticked.ts";

export interface LoggedClip extends AlignedClip {
  readonly camera: string;
  /** Bed id; undefined when nothing was ticked near it. */
  readonly bed?: string | undefined;
  readonly shot?: string | undefined;
  /** From 1, as the phone counted. */
  readonly take?: number | undefined;
  readonly mark?: TakeMark | undefined;
  /** The good take to use: the last one of its shot by its camera. */
  readonly isBest: boolean;
  /** Shots ticked while it ran: a walk in one piece. Milliseconds into the clip. */
  readonly within: readonly { readonly bed: string; readonly shot: string; readonly at: number }[];
  readonly isSure: boolean;
  /** What is said in it, where captions of its own lie beside it. */
  readonly said?: string | undefined;
  /** When that begins and ends, milliseconds into the clip. */
  readonly spoken?: { readonly from: number; readonly to: number } | undefined;
}

/** What captions of a single clip say. */
export interface ClipSpeech {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

export interface ClipLog {
  /** Cameras one after the other, each in order of time. */
  readonly clips: readonly LoggedClip[];
  /** How each camera's dates were read, as sentences. */
  readonly told: readonly string[];
  /** One for each camera that can be read in two ways. */
  readonly questions: readonly ClipQuestion[];
}

export interface ClipQuestion {
  readonly camera: string;
  readonly file: string;
  readonly bed: string;
  readonly shot: string;
}

export interface ClipLogRequest {
  readonly clips: readonly ClipFacts[];
  readonly filming: Filming | undefined;
  readonly timeZone: string;
  /** `clip clocks` of garden.md. */
  readonly clipClocks?: Readonly<Record<string, "UTC" | "local">> | undefined;
  /** Cameras of which the person says that the other reading holds. */
  readonly otherwise?: ReadonlySet<string> | undefined;
  /** By file. */
  readonly said?: ReadonlyMap<string, ClipSpeech> | undefined;
}

/** Milliseconds by which a clip may end after its tick. */
const SLACK = 5000;

export function clipLog({ clips, filming, timeZone, clipClocks, otherwise, said }: ClipLogRequest): ClipLog {
  const ticks = filming === undefined ? [] : takesTicked(filming);
  const cameras = alignClips(clips, ticks, timeZone, clipClocks).map((camera) =>
    otherwise?.has(camera.camera) === true ? readOtherwise(camera, timeZone) : camera,
  );
  return {
    clips: cameras.flatMap((camera) =>
      logged(camera, ticks).map((clip) => {
        const speech = said?.get(clip.file);
        return speech === undefined ? clip : { ...clip, said: speech.text, spoken: speech };
      }),
    ),
    told: cameras.map((camera) => told(camera, ticks.length)),
    questions: cameras.flatMap(({ camera, other }) =>
      other === undefined ? [] : [{ camera, file: other.file, bed: other.tick.bed, shot: other.tick.shot }],
    ),
  };
}

interface Logged {
  bed?: string;
  shot?: string;
  take?: number;
  mark?: TakeMark | undefined;
  within: { bed: string; shot: string; at: number }[];
}

function logged(
  { camera, clips, matched, isSure }: AlignedCamera,
  ticks: readonly TickedTake[],
): readonly LoggedClip[] {
  const found = clips.map((): Logged => ({ within: [] }));
  const fits = matched > 0;
  let before = Number.NEGATIVE_INFINITY;
  for (const { bed, shot, at, takes, mark } of fits ? ticks : []) {
    const since = clips.flatMap(({ ends }, index) =>
      ends !== undefined && ends > before + SLACK && ends <= at + SLACK ? [index] : [],
    );
    // The last clips before a tick are its takes; what was filmed earlier since the last tick is of no shot that is known.
    since.slice(-takes).forEach((index, place, its) => {
      const take = takes - its.length + place + 1;
      Object.assign(found[index] as Logged, { bed, shot, take, mark: take === takes ? mark : undefined });
    });
    clips.forEach(({ begins, ends }, index) => {
      if (begins !== undefined && ends !== undefined && begins < at && ends > at + SLACK)
        found[index]?.within.push({ bed, shot, at: at - begins });
    });
    before = at;
  }
  const best = new Map<string, number>();
  found.forEach(({ shot, mark }, index) => {
    if (shot !== undefined && mark === "good") best.set(shot, index);
  });
  return clips.map((clip, index) => {
    const one = found[index] as Logged;
    return { ...clip, ...one, camera, isSure, isBest: one.shot !== undefined && best.get(one.shot) === index };
  });
}

const clocks = {
  "its own words": "say their zone themselves",
  UTC: "are in UTC",
  local: "are by the camera’s own clock",
  name: "are those of the file names",
} as const;

function told({ camera, clips, read, matched, isSure }: AlignedCamera, ticks: number): string {
  const files = sayPlural(clips.length, "file", "files");
  if (read === undefined) return `${camera}, ${files}: no file says when it was filmed.`;
  const moved = read.shift === 0 ? "" : `, ${sayShift(read.shift)}`;
  const how = `its dates ${clocks[read.clock]}${moved}, and tell when a clip ${read.side === "start" ? "begins" : "ends"}`;
  if (ticks === 0) return `${camera}, ${files}: nothing was ticked while filming, so no file has a shot; ${how}.`;
  if (matched === 0) return `${camera}, ${files}: no reading of its dates fits what was ticked, so no file has a shot.`;
  const fit = `${matched} of ${ticks} ticks stand right after a file`;
  return `${camera}, ${files}: ${how}; ${fit}.${isSure ? "" : " Another reading fits nearly as well."}`;
}

/** "put 1 h 0 min 3 s later" */
function sayShift(ms: number): string {
  const seconds = Math.round(Math.abs(ms) / 1000);
  const days = Math.floor(seconds / 86_400);
  const parts = [
    ...(days > 0 ? [sayPlural(days, "day", "days")] : []),
    ...(seconds >= 3600 ? [`${Math.floor(seconds / 3600) % 24} h`] : []),
    `${Math.floor(seconds / 60) % 60} min ${seconds % 60} s`,
  ];
  return `put ${parts.join(" ")} ${ms > 0 ? "later" : "earlier"}`;
}
