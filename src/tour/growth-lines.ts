/** The two photos that show side by side what a bed did since viewers last saw it, and how far it came between them. */

import { daysBetween } from "../calendar.ts";
import { dayOnly, say, sayPlural, sayShare } from "../language/index.ts";
import type { Bed, Day, Garden, Photo } from "../model.ts";
import { type BedOnTheDay, voiceOf } from "./bed-on-the-day.ts";
import type { BriefRequest, Fact, Since } from "./brief.ts";
import type { SideBySide } from "./camera.ts";
import { publishedTours, sinceFor } from "./since.ts";
import { type PhotosByBed, photosByBed } from "./spot.ts";

/** A photo stands for a day when it was taken within this many days of it. */
const sameDays = 10;

interface Seen {
  readonly bed: Bed;
  readonly since: Since;
  readonly day: Day;
}

/**
 * From the bed's main viewpoint: the last photo up to the day viewers saw it, and the newest since. Undefined when one of
 * them is missing, or they were measured and do not lie over one another.
 */
export function sideBySide(garden: Garden, { bed, since, day }: Seen, photos: PhotosByBed): SideBySide | undefined {
  const viewpoint = bed.viewpoints[0]?.name;
  if (since.episode === undefined || viewpoint === undefined) return undefined;
  const own = (photos.get(bed.id) ?? []).filter((photo) => photo.viewpoint === viewpoint && !photo.private);
  const near = (photo: Photo, other: Day) => photo.day !== undefined && daysBetween(photo.day, other) <= sameDays;
  const before = own.findLast((photo) => (photo.day ?? "9999") <= since.day && near(photo, since.day));
  const after = own.findLast(
    (photo) => (photo.day ?? "") > since.day && (photo.day ?? "9999") <= day && near(photo, day),
  );
  if (before?.day === undefined || after?.day === undefined) return undefined;
  const pair = {
    viewpoint,
    before: { path: before.path, day: before.day },
    after: { path: after.path, day: after.day },
  };
  const measure = (path: string) => garden.growth?.photos.find(({ photo }) => photo === path);
  const [then, now] = [measure(before.path), measure(after.path)];
  if (then === undefined || now === undefined) return pair;
  if (!then.aligned || !now.aligned) return undefined;
  return then.cover === undefined || now.cover === undefined
    ? pair
    : { ...pair, cover: { from: then.cover, to: now.cover } };
}

/** Cover has changed when it went up or down by this share of the bed; less is light and wind. */
const coverChanged = 0.1;

/** Undefined when nothing was measured, or what was measured is no change worth telling. */
export function coverChange(pair: SideBySide): { readonly from: number; readonly to: number } | undefined {
  return pair.cover !== undefined && Math.abs(pair.cover.to - pair.cover.from) >= coverChanged ? pair.cover : undefined;
}

/**
 * The two photos by their days, and how the cover went between them. `shown`: a thing to show sets them side by side already;
 * it tells the cover, or when that hardly changed the days. Undefined when nothing is left to say.
 */
export function sideBySideFact(here: BedOnTheDay, pair: SideBySide, shown: boolean): Fact | undefined {
  const { before, after, viewpoint } = pair;
  const cover = coverChange(pair);
  if (shown && cover === undefined) return undefined;
  const voice = voiceOf(here);
  const photos = `Side by side: the photos of ${dayOnly(before.day, voice)} and ${dayOnly(after.day, voice)} from the ${viewpoint}.`;
  const days = sayPlural(daysBetween(before.day, after.day), "day", "days");
  const grown =
    shown || cover === undefined ? "" : ` Cover went from ${sayShare(cover.from)} to ${sayShare(cover.to)} in ${days}.`;
  const grounds = [before, after].map(({ path }) => ({ place: { file: path, line: 1, column: 1 } }));
  return { ...say(`${photos}${grown}`, grounds), kind: "growth", plantings: [] };
}

/** Paths of the photos that a brief holds against one another: to be measured before it is made. */
export function photosCompared(garden: Garden, { episode: id, day: asked, today }: BriefRequest): ReadonlySet<string> {
  const episode = id === undefined ? undefined : garden.episodes.get(id);
  const day = episode?.day ?? asked ?? today;
  const tours = publishedTours(garden, day, episode?.id);
  const photos = photosByBed(garden.photos);
  return new Set(
    [...garden.beds.values()].flatMap((bed) => {
      const pair = sideBySide(garden, { bed, since: sinceFor(garden, bed, day, tours), day }, photos);
      return pair === undefined ? [] : [pair.before.path, pair.after.path];
    }),
  );
}
