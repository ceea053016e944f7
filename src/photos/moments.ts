/**
 * One moment, one record: a HEIC and its JPEG, what a program made of one of them, a motion photo's clip, a copy of the same
 * bytes. A moment has one day, one place, one privacy and one best picture; the strictest word of any part holds for all.
 */
import type { DateBasis, Photo } from "../model.ts";
import { isCopyName, isEditedName, momentName } from "../records/index.ts";

/** One photo file before it is known what it belongs to. */
export interface PhotoPart {
  readonly photo: Photo;
  /** Files of the same sum have the same bytes. */
  readonly sum: string;
  /** Heights are marked in this very picture. */
  readonly isMarked: boolean;
  /** Its own file says "private: false". */
  readonly openly: boolean;
}

const basisOrder: readonly DateBasis[] = [
  "exif offset",
  "gps time",
  "exif in garden zone",
  "other metadata",
  "beside",
  "file name",
  "sidecar",
  "file time",
  "unknown",
];
const byCamera: ReadonlySet<DateBasis> = new Set(basisOrder.slice(0, 4));

/** A camera writes the files of one moment within this many seconds of each other. */
const oneMoment = 2;
/** Frames of a burst are this far apart at most: common practice, the same as in bursts.ts. */
const oneBurst = 3;

/** Moments in order of their best picture. `clips`: paths of films, which join the photo of their name. */
export function foldedMoments(parts: readonly PhotoPart[], clips: readonly string[]): readonly Photo[] {
  const named = [...Map.groupBy(parts, ({ photo }) => momentName(photo.path)).values()].flatMap(ofOneName);
  const moments = joinedCopies(named);
  const openly = new Set(parts.flatMap((part) => (part.openly ? [part.photo.path] : [])));
  const clipsOf = Map.groupBy(clips, (clip) => momentName(clip));
  const photos = moments.map((moment) => oneOf(moment, clipsOf)).sort((a, b) => (a.path < b.path ? -1 : 1));
  return withBurstsKeptBack(withTwinsKeptBack(photos, parts), openly);
}

/** Names come round again every ten thousand pictures: what the camera's clock tells apart is not one moment. */
function ofOneName(parts: readonly PhotoPart[]): readonly PhotoPart[][] {
  const moments: PhotoPart[][] = [];
  for (const part of parts) {
    const moment = moments.find((others) => others.every((other) => mayBeOne(other, part)));
    if (moment) moment.push(part);
    else moments.push([part]);
  }
  return moments;
}

function mayBeOne(one: PhotoPart, other: PhotoPart): boolean {
  const apart = secondsApart(one.photo, other.photo);
  if (apart !== undefined) return apart <= oneMoment;
  // "IMG_1 (2).jpg" is a copy, or another picture that came under a name which was taken: only a clock can tell.
  return isCopyName(one.photo.path) === isCopyName(other.photo.path);
}

/** By the camera's wall clock, which an edited copy keeps even where it lost the offset. */
function secondsApart(one: Photo, other: Photo): number | undefined {
  if (!byCamera.has(one.dateBasis) || !byCamera.has(other.dateBasis)) return undefined;
  return Math.abs(wallSeconds(one) - wallSeconds(other));
}

function wallSeconds({ day, time }: Photo): number {
  return Date.parse(`${day}T${time}Z`) / 1000;
}

/** Joins moments that hold the same bytes, unless they are filed at two places or under two days. */
function joinedCopies(moments: readonly (readonly PhotoPart[])[]): readonly (readonly PhotoPart[])[] {
  const joined: (readonly PhotoPart[])[] = [];
  const bySum = new Map<string, number>();
  for (const moment of moments) {
    const at = moment.flatMap(({ sum }) => bySum.get(sum) ?? []).find((index) => agree(joined[index] ?? [], moment));
    const index = at ?? joined.length;
    joined[index] = [...(joined[index] ?? []), ...moment];
    for (const { sum } of moment) if (!bySum.has(sum)) bySum.set(sum, index);
  }
  return joined;
}

function agree(one: readonly PhotoPart[], other: readonly PhotoPart[]): boolean {
  const same = <Value>(of: (photo: Photo) => Value | undefined) =>
    new Set([...one, ...other].flatMap(({ photo }) => of(photo) ?? [])).size <= 1;
  return (
    same(({ bed }) => bed) &&
    same(({ viewpoint }) => viewpoint) &&
    same(({ day, dateBasis }) => (dateBasis === "file time" ? undefined : day))
  );
}

function oneOf(parts: readonly PhotoPart[], clipsOf: ReadonlyMap<string, readonly string[]>): Photo {
  const [best, ...others] = [...parts].sort(betterFirst).map(({ photo }) => photo) as [Photo, ...Photo[]];
  const clips = [...new Set(parts.map(({ photo }) => momentName(photo.path)))].flatMap(
    (name) => clipsOf.get(name) ?? [],
  );
  if (others.length === 0 && clips.length === 0) return best;
  const all = [best, ...others];
  const first = <Key extends keyof Photo>(key: Key) => all.find((photo) => photo[key] !== undefined)?.[key];
  const dated = all.reduce((one, other) =>
    basisOrder.indexOf(other.dateBasis) < basisOrder.indexOf(one.dateBasis) ? other : one,
  );
  const bed = first("bed");
  return {
    ...best,
    also: [...others.map(({ path }) => path), ...clips].sort(),
    day: dated.day,
    time: dated.time,
    instant: dated.instant,
    dateBasis: dated.dateBasis,
    bed,
    viewpoint: all.find((photo) => photo.bed === bed && photo.viewpoint !== undefined)?.viewpoint,
    site: bed === undefined ? first("site") : undefined,
    varieties: [...new Set(all.flatMap(({ varieties }) => varieties))],
    caption: first("caption"),
    credit: first("credit"),
    private: all.some((photo) => photo.private),
  };
}

/** Kinds in which a picture is opened everywhere come before those that need a decoder. */
const kinds = ["jpg", "jpeg", "webp", "png", "avif", "heic", "heif"];

/** What a person marked, then what they filed at a spot, then what they worked on. */
function betterFirst(one: PhotoPart, other: PhotoPart): number {
  const rank = ({ photo, isMarked }: PhotoPart) => [
    isMarked ? 0 : 1,
    photo.viewpoint !== undefined ? 0 : photo.bed !== undefined ? 1 : 2,
    isEditedName(photo.path) ? 0 : 1,
    kinds.indexOf(photo.path.toLowerCase().slice(photo.path.lastIndexOf(".") + 1)),
    photo.path.length,
  ];
  const [a, b] = [rank(one), rank(other)];
  const at = a.findIndex((value, index) => value !== b[index]);
  return at >= 0 ? (a[at] as number) - (b[at] as number) : one.photo.path < other.photo.path ? -1 : 1;
}

/** The same bytes at another place or under another day: not one moment, but what is private of one is private of both. */
function withTwinsKeptBack(photos: readonly Photo[], parts: readonly PhotoPart[]): readonly Photo[] {
  const sums = new Map(parts.map(({ photo, sum }) => [photo.path, sum]));
  const sumsOf = ({ path, also = [] }: Photo) => [path, ...also].flatMap((file) => sums.get(file) ?? []);
  const secret = new Set(photos.filter((photo) => photo.private).flatMap(sumsOf));
  return photos.map((photo) =>
    !photo.private && sumsOf(photo).some((sum) => secret.has(sum)) ? secretly(photo) : photo,
  );
}

/** What was taken in one go with a private photo shows the same: it stays private until its own file says otherwise. */
function withBurstsKeptBack(photos: readonly Photo[], openly: ReadonlySet<string>): readonly Photo[] {
  if (!photos.some((photo) => photo.private)) return photos;
  const timed = photos
    .filter(({ dateBasis, time }) => time !== undefined && (byCamera.has(dateBasis) || dateBasis === "file name"))
    .sort((a, b) => wallSeconds(a) - wallSeconds(b));
  const secret = new Set<Photo>();
  for (const order of [timed, timed.toReversed()]) {
    let last: Photo | undefined;
    for (const photo of order) {
      if (photo.private) last = photo;
      else if (last && !openly.has(photo.path) && Math.abs(wallSeconds(photo) - wallSeconds(last)) <= oneBurst) {
        secret.add(photo);
        last = photo;
      }
    }
  }
  return photos.map((photo) => (secret.has(photo) ? secretly(photo) : photo));
}

function secretly(photo: Photo): Photo {
  return { ...photo, private: true };
}
