/**
 * Comparison copies: photos of a viewpoint laid into one frame, cut to what all of them show, with the light evened out, so
 * that what differs between two of them is what grew. The photo's own copies stay as they are.
 */
import { availableParallelism } from "node:os";
import pLimit from "p-limit";
import type { Day } from "../model.ts";
import { framesToCompare } from "./comparison-frames.ts";
import { CopyCache, copyKey, type PublishedPhoto } from "./copy-cache.ts";
import { recipeKey, usualFormats } from "./copy-recipe.ts";
import type { AlignedViewpoint } from "./growth-of-garden.ts";
import { makeCopies } from "./make-copies.ts";
import { MeasureCache } from "./measure-cache.ts";
import { MeasureThreads } from "./measure-threads.ts";
import { PhotoPixels } from "./photo-pixels.ts";
import type { RgbImage } from "./raw-image.ts";
import type { AlignedPhoto } from "./shared-view.ts";
import type { Alignment } from "./similarity.ts";
import { unopened } from "./viewpoint-series.ts";

export interface ComparisonOptions {
  /** Absolute. */
  readonly recordsDir: string;
  /** Absolute; made when it is not there. */
  readonly cacheDir: string;
  /** The day from which the pages look back. */
  readonly today: Day;
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

/** Raise it when comparison copies are made in another way. */
const comparisonVersion = 2;

/** Pixels: a phone's strip, a phone across, and as wide as a page shows one. */
const recipe = { widths: [480, 750, 1280], formats: usualFormats };

/** By photo path. All copies of a viewpoint have the same proportions; none is wider than what its photo shows of the crop. */
export async function publishComparisons(
  viewpoints: readonly AlignedViewpoint[],
  { recordsDir, cacheDir, today, onProgress }: ComparisonOptions,
): Promise<ReadonlyMap<string, PublishedPhoto>> {
  const pixels = await PhotoPixels.open(
    recordsDir,
    cacheDir,
    viewpoints.flatMap(({ reference, photos }) => [reference, ...photos.map(({ photo }) => photo)]),
  );
  const cache = new CopyCache(cacheDir);
  await cache.open();
  const asked = new Set<string>();
  const measures = await MeasureCache.open(cacheDir);
  const threads = new MeasureThreads();
  let done = 0;
  const limit = pLimit(availableParallelism());
  try {
    const wanted: { view: AlignedViewpoint; frame: AlignedPhoto; lit: AlignedPhoto; light: Light }[] = [];
    for (const view of viewpoints) {
      const lit = await wellLit(view.photos, pixels, measures);
      if (lit === undefined) continue;
      const light = lightOf(lit, view, pixels, threads);
      wanted.push(...framesToCompare(view.photos, today).map((frame) => ({ view, frame, lit, light })));
    }
    const made = await limit.map(wanted, async ({ view, frame, lit, light }) => {
      const copies = await copiesOf(frame, view, lit, light).catch(unopened);
      done += 1;
      onProgress?.(done, wanted.length);
      return copies && ([frame.photo.path, copies] as const);
    });
    await cache.sweep(asked);
    return new Map(made.filter((one) => one !== undefined));
  } finally {
    await threads.close();
    await measures.save();
    await pixels.close({ keepHashes: true });
  }

  async function copiesOf(
    { photo, alignment }: AlignedPhoto,
    { reference, crop }: AlignedViewpoint,
    lit: AlignedPhoto,
    light: Light,
  ): Promise<PublishedPhoto | undefined> {
    const shape = await pixels.shape(photo.path);
    if (!shape) return undefined;
    const frame = await pixels.shape(reference.path);
    if (!frame) return undefined;
    const [own, held] = await Promise.all([pixels.hash(photo.path), pixels.hash(lit.photo.path)]);
    const made = JSON.stringify([
      "comparison",
      comparisonVersion,
      alignment,
      crop,
      held,
      lit.alignment,
      recipeKey(recipe, undefined),
    ]);
    const key = copyKey(own, made);
    asked.add(key);
    const known = await cache.find(key);
    if (known) return known;
    const width = Math.min(Math.max(...recipe.widths), Math.floor(shape.width * crop.width * alignment.scale));
    const height = Math.round((width * frame.height) / frame.width);
    const straight = await threads.run("straighten", {
      photo: await pixels.rgb(photo.path, decodeWidth(width, crop.width, alignment)),
      alignment,
      crop,
      width,
      height,
      light: photo.path === lit.photo.path ? undefined : await light(width, height),
    });
    return cache.keep(key, await makeCopies(straight, recipe));
  }
}

/** Pixels across at which brightness is looked at. */
const glance = 64;

/**
 * The photo whose light the others get: the earliest that is no darker than half of them, so that a dull first day does
 * not dim the whole season, and a new photo seldom makes all copies anew.
 */
async function wellLit(
  photos: readonly AlignedPhoto[],
  pixels: PhotoPixels,
  measures: MeasureCache,
): Promise<AlignedPhoto | undefined> {
  const levels: { readonly one: AlignedPhoto; readonly level: number }[] = [];
  for (const one of photos) {
    const level = await measures
      .of(`level ${await pixels.hash(one.photo.path)}`, async () => {
        const { data } = await pixels.rgb(one.photo.path, glance);
        return data.reduce((sum, byte) => sum + byte, 0) / data.length;
      })
      .catch(unopened);
    if (level !== undefined) levels.push({ one, level });
  }
  const sorted = levels.map(({ level }) => level).sort((a, b) => a - b);
  const half = sorted[Math.floor(sorted.length / 2)] ?? 0;
  return levels.find(({ level }) => level >= half)?.one;
}

/** A picture of that size whose light the others are to have. */
type Light = (width: number, height: number) => Promise<RgbImage | undefined>;

/** That photo in the common frame: the others get its light. One width is kept, since nearly all ask for the same. */
function lightOf(
  { photo: lit, alignment }: AlignedPhoto,
  { crop }: AlignedViewpoint,
  pixels: PhotoPixels,
  threads: MeasureThreads,
): Light {
  let kept: { readonly width: number; readonly picture: Promise<RgbImage | undefined> } | undefined;
  return (width, height) => {
    if (kept?.width === width) return kept.picture;
    const picture = (async () => {
      const photo = await pixels.rgb(lit.path, decodeWidth(width, crop.width, alignment));
      return threads.run("straighten", { photo, alignment, crop, width, height, light: undefined });
    })().catch(unopened);
    kept = { width, picture };
    return picture;
  };
}

/** Opened as large as it is shown, so that laying it over neither blurs nor coarsens it. */
function decodeWidth(width: number, cropWidth: number, { scale }: Alignment): number {
  return Math.ceil(width / (cropWidth * scale));
}
