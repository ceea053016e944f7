/**
 * Laying a viewpoint's photos over one another: shift, scale and rotation against a reference frame, or "not aligned".
 *
 * Corners of the reference are looked for in the photo by normalised correlation, first in a small copy over a wide range, then in larger
 * ones near where the last round put them. Plants grow and shadows wander, so most corners of a bed are lost between two
 * weeks; what is found is therefore only trusted where many corners agree on one movement (random sample consensus: Fischler and
 * Bolles, Communications of the ACM 24(6):381-395, 1981). Boards, walls, paths and posts are what agrees.
 */

import { corners, findPatch } from "./point-matching.ts";
import type { GreyImage } from "./raw-image.ts";
import { shrunk } from "./raw-image.ts";
import type { Alignment, Match } from "./similarity.ts";
import { atWidth, chained, fitAlignment, toPhoto, unmoved } from "./similarity.ts";

/** One round of looking: at which width, how far around, and how many pixels off a corner may be to agree. */
interface Round {
  readonly width: number;
  readonly cells: number;
  readonly half: number;
  readonly reach: number;
  readonly tolerance: number;
}

const rounds: readonly Round[] = [
  { width: 250, cells: 22, half: 8, reach: 26, tolerance: 1.6 },
  { width: 500, cells: 26, half: 9, reach: 5, tolerance: 1.5 },
  { width: 1000, cells: 28, half: 11, reach: 4, tolerance: 1.5 },
];

/** Width in pixels at which photos should be loaded to be aligned; results are in pixels of this width. */
export const alignmentWidth = 1000;

/** Patches less alike than this are different things. */
const alike = 0.55;

/** Corners that must agree before a movement is believed, and how much of the frame they must span. */
const leastAgreeing = 14;
const leastSpan = 0.3;

export interface Agreement extends Alignment {
  /** Corners that agree on this movement, and corners found at all. */
  readonly agreeing: number;
  readonly found: number;
}

/**
 * How the photo lies against the reference, in pixels of the reference's width. Undefined means "not aligned": the frames differ in shape, too few
 * points agree, or what they agree on is no small movement of a camera (more than 15 degrees or a fifth in scale).
 * Both pictures should be `alignmentWidth` wide.
 */
export function align(reference: GreyImage, photo: GreyImage): Agreement | undefined {
  if (Math.abs(reference.height / reference.width - photo.height / photo.width) > 0.01) return undefined;
  let guess: Alignment = unmoved(reference.width, reference.height);
  let result: Agreement | undefined;
  for (const round of rounds) {
    const width = Math.min(round.width, reference.width);
    const height = Math.round((reference.height * width) / reference.width);
    const small = shrunk(reference, width, height);
    const other = shrunk(photo, width, height);
    const here = atWidth(guess, width);
    const matches = corners(small, round.cells, round.half + 1).flatMap((from): Match[] => {
      const found = findPatch(small, from, other, toPhoto(here, from), round.half, round.reach);
      return found && found.likeness >= alike ? [{ from, to: found.at }] : [];
    });
    result = agreed(matches, width, height, round.tolerance);
    if (!result) return undefined;
    guess = atWidth(result, reference.width);
  }
  return result && { ...guess, agreeing: result.agreeing, found: result.found };
}

/** The movement most matches agree on, fitted to them all; undefined when too few do. */
function agreed(matches: readonly Match[], width: number, height: number, tolerance: number): Agreement | undefined {
  const fits = (movement: Alignment): Match[] =>
    matches.filter(({ from, to }) => {
      const [x, y] = toPhoto(movement, from);
      return Math.hypot(x - to[0], y - to[1]) <= tolerance;
    });
  let best: Match[] = [];
  // Every pair is tried while there are few, else a fixed sequence of them, so that the same photos always give the same result.
  const pairs = Math.min(3000, (matches.length * (matches.length - 1)) / 2);
  let seed = 1;
  const next = (): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed / 4294967296;
  };
  for (let k = 0; k < pairs; k++) {
    const first = matches[Math.floor(next() * matches.length)] as Match;
    const second = matches[Math.floor(next() * matches.length)] as Match;
    if (Math.hypot(first.from[0] - second.from[0], first.from[1] - second.from[1]) < width / 8) continue;
    const movement = fitAlignment([first, second], width, height);
    if (!movement || !believable(movement)) continue;
    const agreeing = fits(movement);
    if (agreeing.length > best.length) best = agreeing;
  }
  for (let k = 0; k < 4; k++) {
    const movement = fitAlignment(best, width, height);
    if (!movement) return undefined;
    best = fits(movement);
  }
  const movement = fitAlignment(best, width, height);
  if (!movement || !believable(movement) || best.length < leastAgreeing) return undefined;
  const span = (axis: 0 | 1): number =>
    Math.max(...best.map(({ from }) => from[axis])) - Math.min(...best.map(({ from }) => from[axis]));
  if (span(0) < leastSpan * width || span(1) < leastSpan * height) return undefined;
  return { ...movement, agreeing: best.length, found: matches.length };
}

const believable = (movement: Alignment): boolean =>
  Math.abs(movement.rotationDeg) <= 15 && movement.scale > 1 / 1.2 && movement.scale < 1.2;

/**
 * Aligns the photos of one viewpoint, given in order of time, to the one numbered `reference`. A photo that shows too little of what the reference
 * shows is tried against its nearest aligned neighbours in time, and the two movements are joined.
 */
export function alignSeries(photos: readonly GreyImage[], reference: number): (Alignment | undefined)[] {
  const first = photos[reference];
  if (!first) throw new RangeError(`There is no photo ${reference} in a series of ${photos.length}.`);
  const done: (Alignment | undefined)[] = photos.map((photo, i) =>
    i === reference ? unmoved(first.width, first.height) : align(first, photo),
  );
  photos.forEach((photo, i) => {
    if (done[i]) return;
    const neighbours = photos
      .map((_, k) => k)
      .filter((k) => k !== i && k !== reference && done[k])
      .sort((a, b) => Math.abs(a - i) - Math.abs(b - i))
      .slice(0, 2);
    for (const k of neighbours) {
      const step = align(photos[k] as GreyImage, photo);
      if (!step) continue;
      done[i] = chained(done[k] as Alignment, step);
      break;
    }
  });
  return done;
}
