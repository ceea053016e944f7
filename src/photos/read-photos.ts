/** From photo files to Photos: each dated, placed and described, in order of path; and what is wrong with them. */
import { hash } from "node:crypto";
import pLimit from "p-limit";
import type { Bed, Photo, PhotoSidecar, Position, Problem, Records } from "../model.ts";
import { besideName, momentName, nearestSpellings, normaliseName } from "../records/index.ts";
import { datesBeside } from "./dates-beside.ts";
import { type PhotoHead, readPhotoHead } from "./exif-tags.ts";
import { foldedMoments, type PhotoPart } from "./moments.ts";
import { photoMoment } from "./photo-date.ts";
import type { PhotoFolder } from "./photo-folder.ts";
import {
  clockProblems,
  endingProblem,
  photoProblem,
  undatedProblems,
  unknownVarietyProblems,
  unknownViewpointProblems,
  unplacedProblems,
} from "./photo-problems.ts";
import { type LinkedBeds, linkedBeds, placePhoto } from "./place-photo.ts";
import { clipQuestions, ownClips, type ReadClip, readClip } from "./read-clips.ts";
import { siteAround } from "./site-around.ts";
import { VarietyNames } from "./varieties-shown.ts";
import { voicesWaiting, waitingVoices } from "./voice-notes.ts";

/** Enough to keep the disk busy; more only queues. */
const readsAtOnce = 8;

export interface ReadPhotos {
  readonly photos: readonly Photo[];
  /** Each place once, rounded to a thousandth of a degree; for those who see to it that nobody is told. */
  readonly takenAt: readonly Position[];
  readonly problems: Problem[];
}

export async function readPhotos(records: Records, folder: PhotoFolder): Promise<ReadPhotos> {
  const sidecars = new Map([...records.photoSidecars.values()].map((sidecar) => [sidecar.photo, sidecar]));
  const asides = Map.groupBy(records.asideFiles, (file) => momentName(besideName(file)));
  const links = linkedBeds(records);
  const names = new VarietyNames(records);
  const limit = pLimit(readsAtOnce);
  const read = await limit.map(records.photoFiles, (path) =>
    readPhoto(path, sidecars.get(path), records, links, folder, asides.get(momentName(path)) ?? [], names),
  );
  const parts = await withWholeSums(
    read.flatMap(({ part }) => part ?? []),
    folder,
  );
  const clips = await limit.map(ownClips(records), (path) => readClip(path, sidecars.get(path), records, folder));
  const photos = [
    ...foldedMoments(parts, records.clipFiles),
    ...clips.flatMap(({ clip }) => (clip ? [recordOfClip(clip, sidecars.get(clip.path), records, links, names)] : [])),
  ].sort((a, b) => (a.path < b.path ? -1 : 1));
  const problems = [
    ...[...read, ...clips].flatMap(({ problems }) => problems),
    ...clipQuestions(clips),
    ...clockProblems(read.flatMap(({ part, gpsSays }) => (part && gpsSays ? [{ photo: part.photo, gpsSays }] : []))),
    ...undatedProblems(photos),
    ...voicesWaiting(await waitingVoices(records, folder), records.settings.language),
    ...unknownVarietyProblems(photos, names),
    ...unplacedProblems(
      photos.filter(({ path, varieties }) => varieties.length === 0 && names.folder(path) === undefined),
      records.beds,
    ),
    ...unknownViewpointProblems(photos, records.beds),
  ];
  const places = [...read, ...clips].flatMap(({ position }) => position ?? []).map(rounded);
  const takenAt = [...new Map(places.map((place) => [JSON.stringify(place), place])).values()];
  return { photos, takenAt, problems };
}

function rounded({ latitude, longitude }: Position): Position {
  return { latitude: Number(latitude.toFixed(3)), longitude: Number(longitude.toFixed(3)) };
}

/** Files that begin alike are read whole, so that only copies of the same bytes have the same sum. */
async function withWholeSums(parts: readonly PhotoPart[], folder: PhotoFolder): Promise<readonly PhotoPart[]> {
  const alike = [...Map.groupBy(parts, ({ sum }) => sum).values()].filter((group) => group.length > 1).flat();
  const whole = new Map<PhotoPart, string>();
  // One at a time: a copy is rare, and a raw-sized one large.
  for (const part of alike) {
    const bytes = await folder.read(part.photo.path).catch(() => undefined);
    if (bytes) whole.set(part, hash("sha256", bytes, "base64url"));
  }
  return parts.map((part) => ({ ...part, sum: whole.get(part) ?? part.sum }));
}

interface ReadPhoto {
  readonly part?: PhotoPart | undefined;
  readonly position?: Position | undefined;
  readonly gpsSays?: string | undefined;
  readonly problems: readonly Problem[];
}

async function readPhoto(
  path: string,
  sidecar: PhotoSidecar | undefined,
  records: Records,
  links: LinkedBeds,
  folder: PhotoFolder,
  asides: readonly string[],
  names: VarietyNames,
): Promise<ReadPhoto> {
  let head: PhotoHead;
  try {
    head = await readPhotoHead(folder, path);
  } catch {
    return { problems: [photoProblem("photo/unreadable", path)] };
  }
  if (head.length === 0) return { problems: [photoProblem("photo/empty", path)] };
  if (head.kind === undefined) return { problems: [photoProblem("photo/not-a-picture", path)] };
  const { timeZone } = records.settings;
  // Opened only where there are any, and then once for each photo: takeouts lay one beside every photo.
  const beside = asides.length === 0 ? undefined : await datesBeside(path, asides, (file) => folder.read(file));
  let moment = photoMoment({ tags: head.tags, path, sidecarDay: sidecar?.day, beside, timeZone });
  if (moment.dateBasis === "unknown") {
    // Asked for only now: a call to the disk for every photo would cost more than reading the dates.
    const modified = await folder.modified?.(path).catch(() => undefined);
    moment = photoMoment({ path, modified, timeZone });
  }
  const { gpsSays, ...dated } = moment;
  const { bed, viewpoint } = placePhoto(path, sidecar, records.beds, links);
  const site =
    bed === undefined && head.tags?.position ? siteAround(head.tags.position, records.sites.values()) : undefined;
  // Nobody knows what a folder is called after that no variety is called: it may be a private one.
  const folderOfVariety = names.folder(path);
  const photo: Photo = {
    path,
    ...dated,
    bed,
    viewpoint,
    site,
    varieties:
      sidecar !== undefined && sidecar.varieties.length > 0 ? sidecar.varieties : names.shown(path, sidecar?.caption),
    caption: sidecar?.caption,
    credit: sidecar?.credit,
    ...(sidecar?.turn !== undefined && { turn: sidecar.turn }),
    private:
      sidecar?.private === true ||
      isKeptBack(bed, site, records) ||
      (folderOfVariety !== undefined && names.called(folderOfVariety) === undefined) ||
      (bed === undefined && isLikePrivate(path, records)),
  };
  const problems: Problem[] = [];
  const ending = endingProblem(path, head.kind);
  if (ending) problems.push(ending);
  if (sidecar?.day !== undefined && moment.day !== undefined && sidecar.day !== moment.day) {
    problems.push(photoProblem("photo/day-disagrees", path, { sidecar: sidecar.day, photo: moment.day }));
  }
  const isMarked = sidecar?.plantTops !== undefined && sidecar.plantTops.length > 0;
  const part = { photo, sum: head.sum, isMarked, openly: sidecar?.openly === true };
  return { part, position: head.tags?.position, gpsSays, problems };
}

/** Nobody has looked at what its still shows: it stays private until a file beside it says "private: false". */
function recordOfClip(
  clip: NonNullable<ReadClip["clip"]>,
  sidecar: PhotoSidecar | undefined,
  records: Records,
  links: LinkedBeds,
  names: VarietyNames,
): Photo {
  const { bed } = placePhoto(clip.path, sidecar, records.beds, links);
  const said = sidecar?.varieties ?? [];
  return {
    ...clip,
    // Never one of a spot's photos: those are laid over one another.
    bed,
    varieties: said.length > 0 ? said : names.shown(clip.path, sidecar?.caption),
    caption: sidecar?.caption,
    credit: sidecar?.credit,
    isClip: true,
    private: sidecar?.openly !== true || sidecar.private || isKeptBack(bed, undefined, records),
  };
}

/** Whether a folder it lies in is called nearly like a private bed. */
function isLikePrivate(path: string, { beds, sites }: Records): boolean {
  const secret = [...beds.values()].filter((bed) => bed.private || sites.get(bed.site ?? "")?.private === true);
  if (secret.length === 0) return false;
  const names = new Map(
    [...beds.values()].flatMap((bed) =>
      [bed.id, bed.title, ...bed.alsoCalled].map((name) => [normaliseName(name), bed]),
    ),
  );
  return path
    .split("/")
    .slice(1, -1)
    .some((folder) =>
      nearestSpellings(normaliseName(folder), names.keys()).some((near) => secret.includes(names.get(near) as Bed)),
    );
}

/** What lies in a private bed or site is private with it. */
function isKeptBack(bed: string | undefined, site: string | undefined, { beds, sites }: Records): boolean {
  const ground = bed === undefined ? undefined : beds.get(bed);
  const around = sites.get(ground?.site ?? site ?? "");
  return ground?.private === true || around?.private === true;
}
