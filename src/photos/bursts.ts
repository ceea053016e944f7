/**
 * Bursts and near-duplicates: photos taken in one go that show nearly the same. One of them stands for all on a page;
 * the others stay available.
 */
import sharp from "sharp";
import type { Burst, Photo } from "../model.ts";
import type { PublishedPhoto } from "./copy-cache.ts";
import { differenceHash, hashDistance } from "./perceptual-hash.ts";
import { type GreyImage, greyOf } from "./raw-image.ts";
import { clippedShare, varianceOfLaplacian } from "./sharpness.ts";

/** What is measured of one frame. */
export interface Frame {
  /** 64-bit difference hash. */
  readonly hash: bigint;
  /** Variance of the Laplacian of the narrowest published copy, 480 pixels wide: only comparable at one scale. */
  readonly sharpness: number;
  /** Share of pixels that are as good as black or white, 0 to 1. */
  readonly clipped: number;
}

/** How far two frames taken this many seconds apart or less may differ, in bits of their hashes. Common practice. */
const likeness: readonly { readonly seconds: number; readonly bits: number }[] = [
  // Burst mode: the hand moves, the subject in the wind too.
  { seconds: 3, bits: 14 },
  // "One more, to be sure."
  { seconds: 60, bits: 10 },
];

/** Pixels a side that the hash needs. A strip of 4000 x 8 is below it. */
const leastHashed = 9;

/** Frames whose clipped share is within this of the best one count as exposed just as well. */
const equallyExposed = 0.02;

/** Bursts of two photos or more, in order of time. Only photos with a time of day and with copies are looked at. */
export async function findBursts(
  photos: readonly Photo[],
  copies: ReadonlyMap<string, PublishedPhoto>,
): Promise<readonly Burst[]> {
  const frames = new Map<string, Frame>();
  for (const { path } of neighbours(photos)) {
    const file = copies.get(path)?.files.find(({ format }) => format === "jpeg");
    if (file && file.width >= leastHashed && file.height >= leastHashed)
      frames.set(path, frameOf(await greyCopy(file.cachePath)));
  }
  return burstsAmong(photos, frames);
}

function frameOf(image: GreyImage): Frame {
  const { black, white } = clippedShare(image);
  return { hash: differenceHash(image), sharpness: varianceOfLaplacian(image), clipped: black + white };
}

/** Groups each spot's photos along time: each frame belongs to the burst of the frame before it when they are alike. */
export function burstsAmong(photos: readonly Photo[], frames: ReadonlyMap<string, Frame>): readonly Burst[] {
  const groups: Photo[][] = [];
  for (const spot of bySpot(photos)) {
    let group: Photo[] = [];
    for (const photo of spot) {
      const last = group.at(-1);
      if (last && alike(last, photo, frames)) group.push(photo);
      else {
        group = [photo];
        groups.push(group);
      }
    }
  }
  return groups
    .filter((group) => group.length > 1)
    .sort((a, b) => secondsOf(a[0]) - secondsOf(b[0]))
    .map((group) => ({ best: bestOf(group, frames), photos: group.map(({ path }) => path) }));
}

function alike(a: Photo, b: Photo, frames: ReadonlyMap<string, Frame>): boolean {
  const [one, other] = [frames.get(a.path), frames.get(b.path)];
  if (!one || !other) return false;
  const seconds = secondsOf(b) - secondsOf(a);
  const bits = hashDistance(one.hash, other.hash);
  return likeness.some((limit) => seconds <= limit.seconds && bits <= limit.bits);
}

function bestOf(group: readonly Photo[], frames: ReadonlyMap<string, Frame>): string {
  const measured = group.map(({ path }) => ({ path, ...(frames.get(path) as Frame) }));
  const leastClipped = Math.min(...measured.map(({ clipped }) => clipped));
  const wellExposed = measured.filter(({ clipped }) => clipped <= leastClipped + equallyExposed);
  return wellExposed.reduce((best, frame) => (frame.sharpness > best.sharpness ? frame : best)).path;
}

/** Photos that may have a partner: only these are opened. */
function neighbours(photos: readonly Photo[]): Photo[] {
  const farthest = Math.max(...likeness.map(({ seconds }) => seconds));
  return bySpot(photos).flatMap((spot) =>
    spot.filter((photo, index) =>
      [spot[index - 1], spot[index + 1]].some(
        (other) => other && Math.abs(secondsOf(other) - secondsOf(photo)) <= farthest,
      ),
    ),
  );
}

/** Photos with a time of day, each spot's in order of time. */
function bySpot(photos: readonly Photo[]): Photo[][] {
  const timed = photos.filter(({ instant, isClip }) => instant !== undefined && isClip !== true);
  const spots = Map.groupBy(timed, ({ bed, viewpoint, site }) => JSON.stringify([bed, viewpoint, site]));
  return [...spots.values()].map((spot) =>
    spot.sort((a, b) => secondsOf(a) - secondsOf(b) || (a.path < b.path ? -1 : 1)),
  );
}

function secondsOf(photo: Photo | undefined): number {
  return Date.parse(photo?.instant ?? "") / 1000;
}

async function greyCopy(file: string): Promise<GreyImage> {
  const { data, info } = await sharp(file).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return greyOf({ width: info.width, height: info.height, data });
}
