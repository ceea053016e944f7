/** Which time-lapses a garden may show, and their files: one of which a single photo is kept back is not shown at all. */
import type { Garden } from "../model.ts";
import type { TimeLapse } from "../photos/index.ts";

export function lapsesOf({ photos }: Pick<Garden, "photos">, all: readonly TimeLapse[]): readonly TimeLapse[] {
  const shown = new Set(photos.map(({ path }) => path));
  return all.filter((lapse) => lapse.photos.every((photo) => shown.has(photo)));
}

/** By name below "photos". */
export function lapsePictures(lapses: readonly TimeLapse[]): ReadonlyMap<string, string> {
  return new Map(
    lapses.flatMap(({ moving, still }) => [moving, still].map(({ name, cachePath }) => [name, cachePath])),
  );
}

/** Films to cut with, by path below the private pages: of each spot the one with most photos in it. */
export function lapseFilms(lapses: readonly TimeLapse[]): ReadonlyMap<string, string> {
  const fullest = lapses.toSorted((a, b) => a.photos.length - b.photos.length);
  return new Map(
    fullest.flatMap((lapse) => (lapse.film === undefined ? [] : [[filmPath(lapse), lapse.film] as const])),
  );
}

export function filmPath({ bed, viewpoint }: Pick<TimeLapse, "bed" | "viewpoint">): string {
  return `time-lapses/${bed}-${viewpoint}.mp4`;
}
