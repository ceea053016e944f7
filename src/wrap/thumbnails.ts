/** A photo for each stop to make a thumbnail from: of that bed, taken near the filming day, wide before close. */

import { daysBetween } from "../calendar.ts";
import { sayAge } from "../language/index.ts";
import type { Garden, Photo } from "../model.ts";
import { moment } from "./moments.ts";
import type { Stretch } from "./stops-heard.ts";
import type { Thumbnail } from "./wrap.ts";

/** Days from the filming day within which a photo shows the bed as it was. */
const NEAR = 10;
const OTHERS = 4;

export function thumbnailsOf(garden: Garden, day: string, stretches: readonly Stretch[]): readonly Thumbnail[] {
  const seen = new Set<string>();
  return stretches.flatMap(({ bed, at }) => {
    if (bed === undefined || seen.has(bed)) return [];
    seen.add(bed);
    const photos = garden.photos
      .filter(
        (photo) =>
          photo.bed === bed &&
          !photo.private &&
          photo.day !== undefined &&
          Math.abs(daysBetween(photo.day, day)) <= NEAR,
      )
      .sort((a, b) => worth(b, day) - worth(a, day) || (a.path < b.path ? -1 : 1));
    const [best, ...others] = photos;
    return [
      {
        bed,
        at: moment(at).at,
        photo: best?.path,
        day: best?.day,
        others: others.slice(0, OTHERS).map(({ path }) => path),
        why: best === undefined ? `No photo of this bed within ${sayAge(NEAR)} of the filming day.` : why(best, day),
      },
    ];
  });
}

/** The filming day itself first, then what shows a plant by name or has words, then the fixed viewpoint. */
function worth(photo: Photo, day: string): number {
  const apart = Math.abs(daysBetween(photo.day ?? day, day));
  return (
    (apart === 0 ? 6 : 0) -
    apart * 0.5 +
    (photo.varieties.length > 0 ? 2 : 0) +
    (photo.caption !== undefined ? 1 : 0) +
    (photo.viewpoint !== undefined ? 1 : 0)
  );
}

function why({ day: taken, viewpoint }: Photo, day: string): string {
  const apart = daysBetween(day, taken ?? day);
  const when =
    apart === 0
      ? "taken on the filming day"
      : `taken ${sayAge(Math.abs(apart))} ${apart < 0 ? "before" : "after"} filming`;
  return viewpoint === undefined ? `${when}.` : `${when}, from the ${viewpoint}.`;
}
