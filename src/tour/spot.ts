/** Where the camera stands at a stop, and the photo to match. */
import { daysBetween } from "../calendar.ts";
import { dayOnly } from "../language/index.ts";
import type { Photo, Viewpoint } from "../model.ts";
import { type BedOnTheDay, voiceOf } from "./bed-on-the-day.ts";
import type { Spot } from "./camera.ts";

const compass = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

/** Photos by bed id, oldest first; made once per brief. */
export type PhotosByBed = ReadonlyMap<string, readonly Photo[]>;

export function photosByBed(photos: readonly Photo[]): PhotosByBed {
  const groups = new Map<string, Photo[]>();
  for (const photo of photos) {
    if (photo.bed === undefined || photo.day === undefined) continue;
    const group = groups.get(photo.bed);
    if (group === undefined) groups.set(photo.bed, [photo]);
    else group.push(photo);
  }
  for (const group of groups.values())
    group.sort((a, b) =>
      (a.day ?? "") < (b.day ?? "") ? -1 : (a.day ?? "") > (b.day ?? "") ? 1 : a.path < b.path ? -1 : 1,
    );
  return groups;
}

export function spotOf(here: BedOnTheDay, photos: PhotosByBed): Spot {
  const viewpoint = here.bed.viewpoints[0];
  const photo = photoToMatch(here, viewpoint, photos.get(here.bed.id) ?? []);
  const spot = viewpoint?.spot;
  const looking = viewpoint?.looking;
  const direction = looking === undefined ? undefined : compass[Math.round(looking / 45) % 8];
  const place = spot ?? (viewpoint === undefined ? undefined : `from the ${viewpoint.name}`);
  const stand = [place, direction === undefined ? undefined : `looking ${direction}`]
    .filter((part) => part !== undefined)
    .join(", ");
  const match = photo === undefined ? undefined : `match the photo of ${dayOnly(photo.day, voiceOf(here))}`;
  return {
    viewpoint: viewpoint?.name,
    spot,
    looking,
    photo,
    text: [stand, match].filter((part) => part !== undefined && part !== "").join("; "),
  };
}

/**
 * The photo nearest to the day viewers last saw the bed, from the same viewpoint if there is one: side by side, the two
 * show what the tour tells. Of a bed viewers never saw, the last one.
 */
function photoToMatch(
  here: BedOnTheDay,
  viewpoint: Viewpoint | undefined,
  photos: readonly Photo[],
): { readonly path: string; readonly day: string } | undefined {
  const usable = photos.flatMap(({ path, day, viewpoint: from }) =>
    day !== undefined && day < here.day && (viewpoint === undefined || from === viewpoint.name) ? [{ path, day }] : [],
  );
  if (here.since.episode === undefined) return usable.at(-1);
  const away = (day: string) => Math.abs(daysBetween(day, here.since.day));
  return usable.reduce<{ path: string; day: string } | undefined>(
    (best, one) => (best === undefined || away(one.day) <= away(best.day) ? one : best),
    undefined,
  );
}
