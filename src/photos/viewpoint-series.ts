/**
 * One viewpoint's photos laid over one another. Nothing is measured before it is asked for, and everything only once,
 * so that one pair costs a pair's work and gives the same answer as the whole series.
 */
import type { Photo } from "../model.ts";
import { alignmentWidth } from "./align.ts";
import type { MeasureCache } from "./measure-cache.ts";
import type { MeasureThreads } from "./measure-threads.ts";
import { type PhotoPixels, type Shape, UnopenedPhoto } from "./photo-pixels.ts";
import type { GreyImage } from "./raw-image.ts";
import { type Alignment, atWidth, chained, unmoved } from "./similarity.ts";

/** A photo with its day and place in a series. */
export interface SeriesPhoto extends Photo {
  readonly day: string;
  readonly bed: string;
  readonly viewpoint: string;
}

export interface MeasuringTools {
  readonly pixels: PhotoPixels;
  readonly cache: MeasureCache;
  readonly threads: MeasureThreads;
}

/** Raise it when photos are laid over one another in another way. */
const alignVersion = 2;

/** Photos after a candidate that must agree with it before it serves as reference: one of so many. */
const askedAhead = 3;

/** Aligned neighbours through which a photo is tried that shows too little of what the reference shows. */
const askedNear = 2;

export class ViewpointSeries {
  /** In order of time. */
  readonly photos: readonly SeriesPhoto[];
  readonly #tools: MeasuringTools;
  readonly #direct: Map<number, Promise<Alignment | undefined>> = new Map();
  readonly #greys: Map<string, Promise<GreyImage>> = new Map();
  #reference: Promise<number | undefined> | undefined;

  constructor(photos: readonly SeriesPhoto[], tools: MeasuringTools) {
    this.photos = photos;
    this.#tools = tools;
  }

  /**
   * Number of the photo the others are held against: the earliest, which stays the earliest as the series grows, among
   * those of the shape most have; one that agrees with none of the next few is passed by. Undefined when no two photos
   * agree.
   */
  reference(): Promise<number | undefined> {
    this.#reference ??= this.#findReference();
    return this.#reference;
  }

  /**
   * How a photo lies against the reference, in pixels of `alignmentWidth` or the photo's own width; undefined: not
   * aligned.
   */
  async alignment(index: number): Promise<Alignment | undefined> {
    const reference = await this.reference();
    if (reference === undefined) return undefined;
    const direct = await this.#againstReference(index, reference);
    if (direct) return direct;
    // Weeks apart too little may agree: the nearest photos that do lie over the reference lead the way.
    let asked = 0;
    for (const near of this.#nearest(index)) {
      if (near === reference) continue;
      const way = await this.#againstReference(near, reference);
      if (!way) continue;
      const step = await this.#aligned(near, index);
      if (step) return chained(way, atWidth(step, way.width));
      asked += 1;
      if (asked === askedNear) return undefined;
    }
    return undefined;
  }

  async #findReference(): Promise<number | undefined> {
    const shapes = await Promise.all(this.photos.map(({ path }) => this.#tools.pixels.shape(path)));
    const usual = mostCommon(shapes.flatMap((shape) => shape ?? []).map(proportions));
    const candidates = shapes.flatMap((shape, index) => (shape && proportions(shape) === usual ? [index] : []));
    for (const [at, candidate] of candidates.entries()) {
      for (const next of candidates.slice(at + 1, at + 1 + askedAhead)) {
        if (await this.#aligned(candidate, next)) return candidate;
      }
    }
    return undefined;
  }

  #againstReference(index: number, reference: number): Promise<Alignment | undefined> {
    const known = this.#direct.get(index);
    if (known) return known;
    const found = this.#aligned(reference, index);
    this.#direct.set(index, found);
    return found;
  }

  /** Other photos of the series, the nearest in order first. */
  #nearest(index: number): readonly number[] {
    const others = this.photos.map((_, other) => other).filter((other) => other !== index);
    return others.sort((a, b) => Math.abs(a - index) - Math.abs(b - index) || a - b);
  }

  async #aligned(from: number, to: number): Promise<Alignment | undefined> {
    const { pixels, cache, threads } = this.#tools;
    const [reference, photo] = [this.photos[from], this.photos[to]];
    if (!reference || !photo) return undefined;
    const [shape, other] = await Promise.all([pixels.shape(reference.path), pixels.shape(photo.path)]);
    if (!shape || !other) return undefined;
    const width = Math.min(alignmentWidth, shape.width, other.width);
    if (from === to) return unmoved(width, Math.round((width * shape.height) / shape.width));
    const [left, right] = await Promise.all([pixels.hash(reference.path), pixels.hash(photo.path)]);
    return cache
      .of(`align ${alignVersion} ${width} ${left.slice(0, 32)} ${right.slice(0, 32)}`, async () => {
        const name = `${width} ${left}`;
        const [held, seen] = await Promise.all([
          this.#kept(name, reference.path, width),
          pixels.grey(photo.path, width),
        ]);
        const found = await threads.run("align", { name, reference: held, photo: seen });
        return found && rounded(found);
      })
      .catch(unopened);
  }

  /** References are asked for again and again; only the newest two stay in memory. */
  #kept(name: string, path: string, width: number): Promise<GreyImage> {
    const known = this.#greys.get(name) ?? this.#tools.pixels.grey(path, width);
    this.#greys.delete(name);
    this.#greys.set(name, known);
    const [oldest] = this.#greys.keys();
    if (this.#greys.size > 2 && oldest !== undefined) this.#greys.delete(oldest);
    return known;
  }
}

/** What cannot be opened is not measured, this time; a fault of ours goes on. */
export function unopened(error: unknown): undefined {
  if (error instanceof UnopenedPhoto) return undefined;
  throw error;
}

/** Height by width to the hundredth: phones turn a little, and crop by a row or two. */
const proportions = ({ width, height }: Shape): number => Math.round((height / width) * 100);

/** The value met most often; of several the one met first. */
function mostCommon(values: readonly number[]): number | undefined {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].reduce<readonly [number | undefined, number]>(
    (best, [value, count]) => (count > best[1] ? [value, count] : best),
    [undefined, 0],
  )[0];
}

/** A thousandth of a pixel is far below what is measured, and short to write down. */
function rounded(alignment: Alignment): Alignment {
  const to = (value: number, places: number) => Math.round(value * 10 ** places) / 10 ** places;
  return {
    width: alignment.width,
    height: alignment.height,
    shiftX: to(alignment.shiftX, 3),
    shiftY: to(alignment.shiftY, 3),
    scale: to(alignment.scale, 6),
    rotationDeg: to(alignment.rotationDeg, 5),
  };
}
