/**
 * When clips were made by the garden's clock. A camera's date may be UTC or its own clock, may be set wrong, and marks the
 * beginning of a clip on some cameras and the end on others. All of it is found once for each camera by what fits the ticks
 * best: a tick is set just after its take has ended. No clock is believed without that.
 */
import { Temporal } from "temporal-polyfill";
import type { ClipFacts } from "../../model.ts";
import type { TickedTake } from "./takes-ticked.ts";

/** How a camera's date is read. */
export interface ClipClock {
  /** "its own words" carry their zone; "name" is the time in the file's name. */
  readonly clock: "its own words" | "UTC" | "local" | "name";
  /** What its date marks. */
  readonly side: "start" | "end";
  /** Milliseconds to add to it. */
  readonly shift: number;
}

export interface AlignedClip extends ClipFacts {
  /** Milliseconds of the garden's wall clock as if it were UTC; undefined when nothing tells. */
  readonly begins?: number | undefined;
  readonly ends?: number | undefined;
}

export interface AlignedCamera {
  readonly camera: string;
  /** In order of time, then of names. */
  readonly clips: readonly AlignedClip[];
  /** Undefined when no clip has a date. */
  readonly read?: ClipClock | undefined;
  /** Ticks that stand right after one of its clips. */
  readonly matched: number;
  /** No other reading puts other clips to the ticks and fits nearly as well. */
  readonly isSure: boolean;
  /** The other reading, where it is not sure, and a tick by which a person can tell them apart. */
  readonly other?: { readonly read: ClipClock; readonly tick: TickedTake; readonly file: string } | undefined;
}

/** Milliseconds: how long before its clip's end a tick may stand, and how long after. */
const EARLY = 5000;
const LATE = 120_000;
/** A moved clock must fit better than an unmoved one by so much a tick; one that is off by whole half hours by less. */
const MOVED = 0.2;
const MOVED_BY_HOURS = 0.08;
const HALF_HOUR = 1_800_000;
/** Of a tick's worth: less between two readings is no difference, and less than this altogether is no fit. */
const CLOSE = 0.1;
const FITS = 0.4;
/** Fewer ticks could be met by chance. */
const ENOUGH_TO_MOVE = 3;
/** Pairs of clip and tick from which moves are tried. */
const MOST_PAIRS = 4000;

/** `settled`: what the person says of a camera, by its name in small letters. */
export function alignClips(
  clips: readonly ClipFacts[],
  ticks: readonly TickedTake[],
  timeZone: string,
  settled: Readonly<Record<string, "UTC" | "local">> = {},
): readonly AlignedCamera[] {
  const byCamera = Map.groupBy(clips, cameraOf);
  return [...byCamera]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([camera, its]) => {
      const said = Object.entries(settled).find(([name]) => name.toLowerCase() === camera.toLowerCase())?.[1];
      return alignCamera(camera, its, ticks, timeZone, said);
    });
}

/** The same clips, read the other way. */
export function readOtherwise({ camera, clips, other }: AlignedCamera, timeZone: string): AlignedCamera {
  if (other === undefined) return { camera, clips, matched: 0, isSure: true };
  const moved = placed(clips, other.read, timeZone);
  return { camera, clips: moved, read: other.read, matched: clips.length, isSure: true };
}

/** Cameras that do not say their name are told apart by how they name their files. */
function cameraOf({ camera, file }: ClipFacts): string {
  if (camera !== undefined) return camera;
  const name = file.split("/").at(-1) ?? file;
  return `a camera without a name (${/^\p{L}*/u.exec(name)?.[0] || name.slice(0, 3)}…)`;
}

interface Candidate {
  readonly read: ClipClock;
  readonly score: number;
  /** For each tick the clip it stands after, by index, or -1. */
  readonly after: readonly number[];
}

function alignCamera(
  camera: string,
  clips: readonly ClipFacts[],
  ticks: readonly TickedTake[],
  timeZone: string,
  said: "UTC" | "local" | undefined,
): AlignedCamera {
  const clocks = clocksOf(clips, said);
  const [first] = clocks;
  if (first === undefined) return { camera, clips: inOrder(clips), matched: 0, isSure: ticks.length === 0 };
  const sides = ["start", "end"] as const;
  const unmoved = clocks.flatMap((clock) => sides.map((side): ClipClock => ({ clock, side, shift: 0 })));
  if (ticks.length === 0) {
    const read = unmoved[0] as ClipClock;
    return { camera, clips: placed(clips, read, timeZone), read, matched: 0, isSure: clocks.length === 1 };
  }
  // A clock that is moved fits any one tick.
  const mayMove = Math.min(clips.length, ticks.length) > 1;
  const moved = clocks
    .slice(0, mayMove ? 1 : 0)
    .flatMap((clock) => sides.flatMap((side) => moves(clips, ticks, clock, side, timeZone)));
  const tried = [...unmoved, ...moved].map((read) => tryReading(read, clips, ticks, timeZone));
  const [best, ...rest] = tried.sort((a, b) => b.score - a.score) as [Candidate, ...Candidate[]];
  const most = Math.min(clips.length, ticks.length);
  const matched = new Set(best.after.filter((clip) => clip >= 0)).size;
  if (best.score < FITS * most) {
    const read = unmoved[0] as ClipClock;
    return { camera, clips: placed(clips, read, timeZone), read, matched: 0, isSure: false };
  }
  const differs = ({ after }: Candidate) => after.findIndex((clip, tick) => clip !== best.after[tick]);
  const rival = rest.find((one) => best.score - one.score < CLOSE * most && differs(one) >= 0);
  const tick = rival === undefined ? -1 : differs(rival);
  const file = clips[best.after[tick] ?? -1] ?? clips[rival?.after[tick] ?? -1];
  return {
    camera,
    clips: placed(clips, best.read, timeZone),
    read: best.read,
    matched,
    isSure: rival === undefined && (best.read.shift === 0 || matched >= ENOUGH_TO_MOVE),
    other:
      rival === undefined || file === undefined
        ? undefined
        : { read: rival.read, tick: ticks[tick] as TickedTake, file: file.file },
  };
}

/** The clocks that may be meant, the likeliest first. */
function clocksOf(clips: readonly ClipFacts[], said: "UTC" | "local" | undefined): readonly ClipClock["clock"][] {
  if (clips.every(({ written }) => written !== undefined)) return ["its own words"];
  if (clips.some(({ header }) => header !== undefined)) return said === undefined ? ["UTC", "local"] : [said];
  return clips.some(({ named }) => named?.time !== undefined) ? ["name"] : [];
}

/** What a clip's date says by the garden's wall clock, before any shift. */
function wallOf(clip: ClipFacts, clock: ClipClock["clock"], timeZone: string): number | undefined {
  const { written, header, named } = clip;
  if (clock === "name")
    return named?.time === undefined
      ? undefined
      : wall(Date.parse(`${named.day}T${named.time}Z`), named.utc ? timeZone : undefined);
  const instant = written === undefined ? undefined : Date.parse(written.replace(/([+-]\d\d)(\d\d)$/, "$1:$2"));
  if (instant !== undefined && !Number.isNaN(instant)) return wall(instant, timeZone);
  return header === undefined ? undefined : wall(header, clock === "UTC" ? timeZone : undefined);
}

function wall(ms: number, timeZone: string | undefined): number {
  if (timeZone === undefined) return ms;
  const there = Temporal.Instant.fromEpochMilliseconds(Math.round(ms)).toZonedDateTimeISO(timeZone);
  return ms + there.offsetNanoseconds / 1e6;
}

function placed(
  clips: readonly ClipFacts[],
  { clock, side, shift }: ClipClock,
  timeZone: string,
): readonly AlignedClip[] {
  return inOrder(
    clips.map((clip): AlignedClip => {
      const says = wallOf(clip, clock, timeZone);
      if (says === undefined) return clip;
      const begins = says + shift - (side === "end" ? (clip.length ?? 0) : 0);
      return { ...clip, begins, ends: begins + (clip.length ?? 0) };
    }),
  );
}

function inOrder(clips: readonly AlignedClip[]): readonly AlignedClip[] {
  return [...clips].sort(
    (a, b) =>
      (a.begins ?? Number.POSITIVE_INFINITY) - (b.begins ?? Number.POSITIVE_INFINITY) || (a.file < b.file ? -1 : 1),
  );
}

function endOf(clip: ClipFacts, read: ClipClock, timeZone: string): number | undefined {
  const says = wallOf(clip, read.clock, timeZone);
  return says === undefined ? undefined : says + read.shift + (read.side === "start" ? (clip.length ?? 0) : 0);
}

/** Moves that put some clip's end right before some tick. */
function moves(
  clips: readonly ClipFacts[],
  ticks: readonly TickedTake[],
  clock: ClipClock["clock"],
  side: ClipClock["side"],
  timeZone: string,
): readonly ClipClock[] {
  const unmoved: ClipClock = { clock, side, shift: 0 };
  const ends = clips.flatMap((clip) => endOf(clip, unmoved, timeZone) ?? []);
  const step = Math.max(1, Math.ceil((ends.length * ticks.length) / MOST_PAIRS));
  const shifts = new Set<number>();
  let pair = 0;
  for (const { at } of ticks) {
    for (const end of ends) {
      pair += 1;
      if (pair % step === 0) shifts.add(Math.round((at - end - EARLY) / 1000) * 1000);
    }
  }
  return [...shifts].filter((shift) => Math.abs(shift) > LATE).map((shift) => ({ ...unmoved, shift }));
}

function tryReading(
  read: ClipClock,
  clips: readonly ClipFacts[],
  ticks: readonly TickedTake[],
  timeZone: string,
): Candidate {
  const ends = clips
    .flatMap((clip, index) => {
      const end = endOf(clip, read, timeZone);
      return end === undefined ? [] : [{ end, index }];
    })
    .sort((a, b) => a.end - b.end);
  const used = new Set<number>();
  let next = 0;
  let score = 0;
  const after = ticks.map(({ at }) => {
    while (next < ends.length && (ends[next] as { end: number }).end <= at + EARLY) next += 1;
    const last = ends[next - 1];
    const late = last === undefined ? Number.POSITIVE_INFINITY : Math.max(0, at - last.end);
    if (last === undefined || late > LATE) return -1;
    score += used.has(last.index) ? 0.2 : 1 - late / (2 * LATE);
    used.add(last.index);
    return last.index;
  });
  const isByHours = Math.abs(read.shift - Math.round(read.shift / HALF_HOUR) * HALF_HOUR) <= LATE;
  const cost = read.shift === 0 ? 0 : isByHours ? MOVED_BY_HOURS : MOVED;
  return { read, after, score: score - cost * Math.min(clips.length, ticks.length) };
}
