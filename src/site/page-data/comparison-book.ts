/** Photos that lie over one another, by spot: what pairs, sliders and strips are taken from. */

import { daysBetween, yearOf } from "../../calendar.ts";
import { fullStop, localeOf } from "../../language/index.ts";
import type { Day, Garden } from "../../model.ts";
import { type PublishedPhoto, toldCover } from "../../photos/index.ts";
import { siteWords } from "../words/index.ts";
import { sayGreen } from "./growth-words.ts";
import type { Links } from "./links.ts";
import { type PictureBook, pictureBook, type ShownPhoto } from "./pictures.ts";
import type { Comparison, PicturePair, SpotPicture } from "./shapes.ts";

/** A photo in its spot's common frame. */
export interface Frame {
  readonly photo: ShownPhoto;
  /** 0 to 1. */
  readonly cover?: number | undefined;
}

export interface Spot {
  readonly bed: string;
  readonly viewpoint: string;
  /** What cover is a share of. */
  readonly coverOf: "bed" | "photo";
  /** Two or more, oldest first. */
  readonly frames: readonly Frame[];
}

export interface ComparisonBook {
  readonly spots: readonly Spot[];
  readonly byBed: ReadonlyMap<string, readonly Spot[]>;
  /** Draws a photo's comparison copy. */
  readonly pictures: PictureBook;
}

/** `copies` are the comparison copies by photo path; only photos the garden shows are taken. */
export function comparisonBook(
  garden: Garden,
  copies: ReadonlyMap<string, PublishedPhoto>,
  links: Links,
): ComparisonBook {
  // One photo of each week has a copy, and need not be the one that stands for its burst.
  const pictures = pictureBook({ ...garden, growth: undefined }, copies, links);
  const measures = new Map((garden.growth?.photos ?? []).map((measure) => [measure.photo, measure]));
  const groups = Map.groupBy(
    pictures.all.flatMap((photo) => {
      const measure = measures.get(photo.path);
      return measure?.aligned === true ? [{ photo, measure }] : [];
    }),
    ({ measure }) => JSON.stringify([measure.bed, measure.viewpoint]),
  );
  const spots = [...groups.values()].flatMap((group): Spot[] => {
    const [newest] = group;
    if (newest === undefined || group.length < 2) return [];
    const { bed, viewpoint, coverOf } = newest.measure;
    const frames = group.map(({ photo, measure }) => ({ photo, cover: measure.cover })).toReversed();
    return [{ bed, viewpoint, coverOf, frames }];
  });
  const order = ({ bed, viewpoint }: Spot) => JSON.stringify([bed, viewpoint]);
  spots.sort((a, b) => (order(a) < order(b) ? -1 : 1));
  return { spots, byBed: Map.groupBy(spots, ({ bed }) => bed), pictures };
}

/** Days that must lie between two photos before they are worth comparing. */
const APART = 10;

/** The photos that show best how far a spot has come: its newest, and the first of that season, else the last one before. */
export function farthest({ frames }: Pick<Spot, "frames">): { before: Frame; after: Frame } | undefined {
  const after = frames.at(-1);
  if (after === undefined) return undefined;
  const earlier = frames.filter(({ photo }) => daysBetween(photo.day, after.photo.day) >= APART);
  const before = earlier.find(({ photo }) => yearOf(photo.day) === yearOf(after.photo.day)) ?? earlier.at(-1);
  return before && { before, after };
}

/** The frame nearest to a day, none further from it than `slack` days. */
export function frameNear(frames: readonly Frame[], day: Day, slack: number): Frame | undefined {
  const away = (frame: Frame) => Math.abs(daysBetween(frame.photo.day, day));
  return frames
    .filter((frame) => away(frame) <= slack)
    .reduce<Frame | undefined>((best, frame) => (best && away(best) < away(frame) ? best : frame), undefined);
}

export function pairOf(
  garden: Garden,
  { pictures }: ComparisonBook,
  links: Links,
  spot: Spot,
  { before, after }: { readonly before: Frame; readonly after: Frame },
): PicturePair {
  const { settings } = garden;
  const { compared } = siteWords.sentences;
  const green = sayGreen(settings, before.cover, after.cover, spot.coverOf);
  const apart = compared.apart(daysBetween(before.photo.day, after.photo.day));
  return {
    bed: { href: links.bed(spot.bed), text: garden.beds.get(spot.bed)?.title ?? spot.bed },
    before: pictures.picture(before.photo),
    after: pictures.picture(after.photo),
    between: green === "" ? apart : `${apart} ${fullStop(green)}`,
    method: compared.method,
  };
}

/** Of the spots photographed last, the pair in which the bed changed most. */
export function newestPair(
  garden: Garden,
  book: ComparisonBook,
  links: Links,
): { readonly pair: PicturePair; readonly bed: string } | undefined {
  const pairs = book.spots.flatMap((spot) => {
    const pair = farthest(spot);
    if (pair === undefined) return [];
    const change = Math.abs((pair.after.cover ?? 0) - (pair.before.cover ?? 0));
    return [{ spot, pair, week: Math.floor(Date.parse(pair.after.photo.day) / WEEK_MS), change }];
  });
  const best = pairs.toSorted((a, b) => b.week - a.week || b.change - a.change)[0];
  return best && { pair: pairOf(garden, book, links, best.spot, best.pair), bed: best.spot.bed };
}

const WEEK_MS = 7 * 86_400_000;

/** The slider of a spot; undefined when no two of its photos lie far enough apart. */
export function comparisonOf(
  garden: Garden,
  book: ComparisonBook,
  links: Links,
  spot: Spot,
  chosen = farthest(spot),
): Comparison | undefined {
  if (chosen === undefined) return undefined;
  const { share } = localeOf(garden.settings);
  const frames = spot.frames.map(
    ({ photo, cover }): SpotPicture => ({
      iso: photo.day,
      picture: book.pictures.picture(photo),
      cover: cover === undefined ? undefined : share(cover),
    }),
  );
  return {
    id: `from-${spot.viewpoint}`.replace(/[^\w-]+/gu, "-"),
    spot: saySpot(spot.viewpoint),
    frames,
    before: spot.frames.indexOf(chosen.before),
    after: spot.frames.indexOf(chosen.after),
    pair: pairOf(garden, book, links, spot, chosen),
    coverWords: fullStop(sayGreen(garden.settings, "{from}", "{to}", spot.coverOf)),
    coverTold: Math.round(toldCover * 100),
  };
}

/** "From the gate". */
export function saySpot(viewpoint: string): string {
  return siteWords.sentences.compared.spot(viewpoint.replaceAll("-", " "));
}
