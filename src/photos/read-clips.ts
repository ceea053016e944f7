/** Films that belong to no photo: each a record of its own with day, place and privacy, like a photo. */
import type { Photo, PhotoSidecar, Position, Problem, Records } from "../model.ts";
import { momentName } from "../records/index.ts";
import { dateInName } from "./file-name-date.ts";
import { type FilmTimes, filmTimes } from "./film-times.ts";
import { photoMoment } from "./photo-date.ts";
import type { PhotoFolder } from "./photo-folder.ts";
import { clipClockProblem, photoProblem } from "./photo-problems.ts";

export interface ReadClip {
  readonly clip?: Pick<Photo, "path" | "day" | "time" | "instant" | "dateBasis"> | undefined;
  readonly position?: Position | undefined;
  readonly problems: readonly Problem[];
  /** The camera whose clock has to be asked about, and what it says. */
  readonly asks?: { readonly camera: string; readonly path: string; readonly utc: string; readonly local: string };
}

/** How a camera is called that does not say its name. */
const namelessCamera = "a camera without a name";

/** Paths of the clips that no photo's moment has. */
export function ownClips({ clipFiles, photoFiles }: Pick<Records, "clipFiles" | "photoFiles">): readonly string[] {
  const moments = new Set(photoFiles.map((photo) => momentName(photo)));
  return clipFiles.filter((clip) => !moments.has(momentName(clip)));
}

export async function readClip(
  path: string,
  sidecar: PhotoSidecar | undefined,
  { settings: { timeZone, clipClocks = {} } }: Pick<Records, "settings">,
  folder: PhotoFolder,
): Promise<ReadClip> {
  let film: FilmTimes;
  try {
    film = await filmTimes((from, length) => partOf(path, from, length, folder));
  } catch {
    return { problems: [photoProblem("photo/unreadable", path)] };
  }
  const camera = film.camera ?? namelessCamera;
  const clock = Object.entries(clipClocks).find(([name]) => name.toLowerCase() === camera.toLowerCase())?.[1];
  const at = (isLocal: boolean) =>
    photoMoment({ film: { ...film, isLocal }, path, sidecarDay: sidecar?.day, timeZone });
  let moment = at(clock === "local");
  if (moment.dateBasis === "unknown") {
    const modified = await folder.modified?.(path).catch(() => undefined);
    moment = photoMoment({ path, modified, timeZone });
  }
  const [utc, local] = [at(false), at(true)];
  const isOpen = clock === undefined && utc.day !== local.day && dateInName(path) === undefined;
  return {
    clip: { path, ...moment },
    position: film.position,
    problems: [],
    ...(isOpen && { asks: { camera, path, utc: said(utc), local: said(local) } }),
  };
}

function said({ day, time }: { readonly day?: string | undefined; readonly time?: string | undefined }): string {
  return `${day} ${time}`;
}

async function partOf(path: string, from: number, length: number, folder: PhotoFolder): Promise<Uint8Array> {
  if (folder.readAt) return folder.readAt(path, from, length);
  return (await folder.read(path)).subarray(from, from + length);
}

/** One question for each camera, at its first clip. */
export function clipQuestions(read: readonly ReadClip[]): readonly Problem[] {
  const asked = new Map(
    read
      .flatMap(({ asks }) => (asks ? [asks] : []))
      .toReversed()
      .map((one) => [one.camera, one]),
  );
  return [...asked.values()].map(clipClockProblem);
}
