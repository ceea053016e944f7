/**
 * Measures a garden's photos: which ones of a viewpoint lie over one another, and how much of the bed is green in each.
 * Done once for each photo and then remembered by its content.
 */
import { availableParallelism } from "node:os";
import pLimit from "p-limit";
import type { Garden, GardenGrowth, Photo, PhotoMeasure } from "../model.ts";
import { coverWidth } from "./canopy-cover.ts";
import { MeasureCache } from "./measure-cache.ts";
import { MeasureThreads } from "./measure-threads.ts";
import { PhotoPixels } from "./photo-pixels.ts";
import type { Outline } from "./raw-image.ts";
import { type AlignedPhoto, type SharedView, sharedView } from "./shared-view.ts";
import { type Alignment, toPhoto } from "./similarity.ts";
import { heightByStake } from "./stake-height.ts";
import { type MeasuringTools, type SeriesPhoto, unopened, ViewpointSeries } from "./viewpoint-series.ts";

export interface MeasureOptions {
  /** Absolute. */
  readonly recordsDir: string;
  /** Absolute; made when it is not there. */
  readonly cacheDir: string;
  /** Paths of the photos to measure; all when left out. What is found of a photo does not depend on it. */
  readonly only?: ReadonlySet<string> | undefined;
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

/** A viewpoint's photos that can be shown over one another, and the part of the frame that all of them show. */
export interface AlignedViewpoint extends SharedView {
  readonly bed: string;
  readonly viewpoint: string;
  readonly reference: SeriesPhoto;
}

export interface MeasuredGarden {
  readonly growth: GardenGrowth;
  /** Those with two photos or more that lie over one another. */
  readonly viewpoints: readonly AlignedViewpoint[];
}

/** Raise it when cover is measured in another way. */
const coverVersion = 5;

export async function measureGrowth(garden: Garden, options: MeasureOptions): Promise<MeasuredGarden> {
  const { recordsDir, cacheDir, only, onProgress } = options;
  const cache = await MeasureCache.open(cacheDir);
  const pixels = await PhotoPixels.open(recordsDir, cacheDir, garden.photos);
  const tools: MeasuringTools = { pixels, cache, threads: new MeasureThreads() };
  const all = viewpointsOf(garden.photos).map((photos) => new ViewpointSeries(photos, tools));
  const wanted = all.flatMap((series) =>
    series.photos.flatMap((photo, index) =>
      only === undefined || only.has(photo.path) ? [{ series, photo, index }] : [],
    ),
  );
  let done = 0;
  const limit = pLimit(availableParallelism() + 1);
  try {
    const measured = await limit.map(wanted, async ({ series, photo, index }) => {
      const alignment = await series.alignment(index);
      const cover = await coverOf(photo, alignment, garden, tools);
      const heights = heightsIn(photo, alignment, garden);
      done += 1;
      onProgress?.(done, wanted.length);
      return { series, photo, alignment, cover, heights };
    });
    const viewpoints: AlignedViewpoint[] = [];
    const shown = new Set<string>();
    for (const [series, own] of Map.groupBy(measured, (one) => one.series)) {
      const reference = series.photos[(await series.reference()) ?? -1];
      const aligned = own.flatMap(({ photo, alignment }): AlignedPhoto[] => (alignment ? [{ photo, alignment }] : []));
      const view = reference && sharedView(aligned);
      if (!view || !reference) continue;
      for (const { photo } of view.photos) shown.add(photo.path);
      viewpoints.push({ bed: reference.bed, viewpoint: reference.viewpoint, reference, ...view });
    }
    const photos = measured.map(
      ({ photo, cover, heights }): PhotoMeasure => ({
        photo: photo.path,
        bed: photo.bed,
        viewpoint: photo.viewpoint,
        day: photo.day,
        ...cover,
        aligned: shown.has(photo.path),
        heights,
      }),
    );
    return { growth: { photos }, viewpoints };
  } finally {
    await tools.threads.close();
    await cache.save();
    await pixels.close({ keepHashes: only === undefined });
  }
}

/** Dated photos of each viewpoint in order of time; viewpoints in order of bed and name. */
function viewpointsOf(photos: readonly Photo[]): readonly (readonly SeriesPhoto[])[] {
  const placed = photos.flatMap((photo): SeriesPhoto[] => {
    const { day, bed, viewpoint } = photo;
    return day === undefined || bed === undefined || viewpoint === undefined ? [] : [{ ...photo, day, bed, viewpoint }];
  });
  const groups = Map.groupBy(placed, ({ bed, viewpoint }) => `${bed}\n${viewpoint}`);
  const order = (one: SeriesPhoto) => `${one.day} ${one.time ?? ""} ${one.path}`;
  return [...groups]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, group]) => group.sort((a, b) => (order(a) < order(b) ? -1 : 1)));
}

/** Cover of the bed's outline, which is carried along with the camera; of the whole photo when no outline is known. */
async function coverOf(
  photo: SeriesPhoto,
  alignment: Alignment | undefined,
  garden: Garden,
  { pixels, cache, threads }: MeasuringTools,
): Promise<Pick<PhotoMeasure, "cover" | "covered" | "cannotTell" | "coverOf">> {
  const drawn = garden.beds.get(photo.bed)?.viewpoints.find(({ name }) => name === photo.viewpoint)?.outline;
  const outline = drawn && alignment ? carried(drawn, alignment) : drawn;
  const key = async () => `cover ${coverVersion} ${(await pixels.hash(photo.path)).slice(0, 32)} ${outline ?? "frame"}`;
  try {
    const found = await cache.of(await key(), async () =>
      threads.run("cover", { photo: await pixels.rgb(photo.path, coverWidth), outline }),
    );
    return { ...found, coverOf: drawn ? "bed" : "photo" };
  } catch (error) {
    return { cover: unopened(error), coverOf: "photo" };
  }
}

/**
 * Heights of plants whose tops are marked in the photo's sidecar, by the viewpoint's stake, carried to where this photo
 * shows it.
 */
function heightsIn(photo: SeriesPhoto, alignment: Alignment | undefined, garden: Garden): PhotoMeasure["heights"] {
  const stake = garden.beds.get(photo.bed)?.viewpoints.find(({ name }) => name === photo.viewpoint)?.stake;
  const marked = garden.photoSidecars.get(photo.path)?.plantTops ?? [];
  if (!stake || !alignment) return [];
  const pixel = ([x, y]: readonly [number, number]) => [x * alignment.width, y * alignment.height] as const;
  const foot = toPhoto(alignment, pixel(stake.foot));
  const top = toPhoto(alignment, pixel(stake.top));
  return marked.flatMap(({ variety, top: plantTop }) => {
    const height = heightByStake({ foot, top, lengthCm: stake.lengthCm }, pixel(plantTop));
    return height ? [{ variety, ...height }] : [];
  });
}

/** An outline of the reference frame as the photo shows it, to the ten-thousandth of the frame. */
function carried(outline: Outline, alignment: Alignment): Outline {
  const { width, height } = alignment;
  const short = (fraction: number) => Math.round(fraction * 10_000) / 10_000;
  return outline.map(([x, y]) => {
    const [px, py] = toPhoto(alignment, [x * width, y * height]);
    return [short(px / width), short(py / height)] as const;
  });
}
