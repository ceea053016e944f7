/**
 * Laying a viewpoint's photos over one another: shift, scale and rotation against a reference frame, or "not aligned".
 *
 * Corners of the reference are looked for in the photo by normalised correlation, first in a small copy over a wide
 * range, then in larger ones near where the last round put them. Plants grow and shadows wander, so most corners of a
 * bed are lost between two weeks; what is found is therefore only trusted where many corners agree on one movement
 * (random sample consensus: Fischler and Bolles, Communications of the ACM 24(6):381-395, 1981). Boards, walls, paths
 * and posts are what agrees.
 */

import { corners, findPatch } from "./point-matching.ts";
import type { GreyImage } from "./raw-image.ts";
import { shrunk } from "./raw-image.ts";
import type { Alignment, Match, Point } from "./similarity.ts";
import { atWidth, fitAlignment, toPhoto, unmoved } from "./similarity.ts";

/** One round of looking: at which width, how far around, and how many pixels off a corner may be to agree. */
interface Round {
  readonly width: number;
  readonly cells: number;
  readonly half: number;
  readonly reach: number;
  readonly tolerance: number;
  /** Compares how strongly brightness changes instead of brightness: other light, same edges. */
  readonly edges: boolean;
}

const wide = { half: 6, reach: 18, tolerance: 1.5 } as const;
const wider = { half: 8, reach: 26, tolerance: 1.8 } as const;
const close = { half: 8, reach: 5, tolerance: 1.5 } as const;
const closest = { half: 10, reach: 4, tolerance: 1.5 } as const;

/** Ways to look, cheapest first: the next is tried when one comes to nothing. */
const ways: readonly (readonly Round[])[] = [
  [
    { width: 160, cells: 22, ...wide, edges: false },
    { width: 400, cells: 24, ...close, edges: false },
    { width: 1000, cells: 26, ...closest, edges: false },
  ],
  [
    { width: 250, cells: 26, ...wider, edges: true },
    { width: 500, cells: 30, ...close, edges: true },
    { width: 1000, cells: 30, ...closest, edges: true },
  ],
];

/** Width in pixels at which photos should be loaded to be aligned; results are in pixels of this width. */
export const alignmentWidth = 1000;

/** Patches less alike than this are different things: of brightness, and of edges. */
const alike = 0.55;
const alikeEdges = 0.42;

/** Corners that must agree before a movement is believed, and how much of the frame they must span. */
const leastAgreeing = 14;
const leastSpan = 0.3;

/** Of the corners found in the last round, the share that must agree: by then they were looked for in the right places. */
const leastShare = 0.4;

export interface Agreement extends Alignment {
  /** Corners that agree on this movement, and corners found at all. */
  readonly agreeing: number;
  readonly found: number;
}

/**
 * Gives a function that says how a photo lies against this reference, in pixels of the reference's width. It answers
 * undefined, "not aligned", when the frames differ in shape, too few points agree, or what they agree on is no small
 * movement of a camera (more than 15 degrees or a fifth in scale). Pictures should be `alignmentWidth` wide.
 */
export function alignerTo(reference: GreyImage): (photo: GreyImage) => Agreement | undefined {
  const ready = new Map<Round, Ready>();
  const readyFor = (round: Round): Ready => {
    const known = ready.get(round) ?? prepared(reference, round);
    ready.set(round, known);
    return known;
  };
  const looked = (photo: GreyImage, round: Round, guess: Alignment): Agreement | undefined => {
    const { picture, places } = readyFor(round);
    const { width, height } = picture;
    const other = reduced(photo, width, height, round.edges);
    const here = atWidth(guess, width);
    const matches = places.flatMap((from): Match[] => {
      const found = findPatch(picture, from, other, toPhoto(here, from), round.half, round.reach);
      return found && found.likeness >= (round.edges ? alikeEdges : alike) ? [{ from, to: found.at }] : [];
    });
    return agreed(matches, width, height, round.tolerance);
  };
  return (photo) => {
    if (Math.abs(reference.height / reference.width - photo.height / photo.width) > 0.01) return undefined;
    for (const [beginning, ...refinements] of ways) {
      let result = beginning && looked(photo, beginning, unmoved(reference.width, reference.height));
      for (const round of refinements) result = result && looked(photo, round, result);
      if (result && result.agreeing >= leastShare * result.found)
        return { ...result, ...atWidth(result, reference.width) };
    }
    return undefined;
  };
}

/** The reference at a round's size, and the corners to look for. */
interface Ready {
  readonly picture: GreyImage;
  readonly places: readonly Point[];
}

function prepared(reference: GreyImage, round: Round): Ready {
  const width = Math.min(round.width, reference.width);
  const small = shrunk(reference, width, Math.round((reference.height * width) / reference.width));
  const places = corners(small, round.cells, round.half + 1);
  return { picture: round.edges ? edgesOf(small) : small, places };
}

function reduced(photo: GreyImage, width: number, height: number, edges: boolean): GreyImage {
  const small = shrunk(photo, Math.min(width, photo.width), Math.min(height, photo.height));
  return edges ? edgesOf(small) : small;
}

/** How strongly brightness changes at each pixel, as a root, so that sunlit edges do not outweigh shaded ones. */
function edgesOf({ width, height, data }: GreyImage): GreyImage {
  const edges = new Uint8Array(width * height);
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const at = y * width + x;
      const across = (data[at + 1] as number) - (data[at - 1] as number);
      const down = (data[at + width] as number) - (data[at - width] as number);
      edges[at] = Math.min(255, 12 * Math.sqrt(Math.hypot(across, down)));
    }
  return { width, height, data: edges };
}

/** The movement most matches agree on, fitted to them all; undefined when too few do. */
function agreed(matches: readonly Match[], width: number, height: number, tolerance: number): Agreement | undefined {
  const fits = (movement: Alignment): Match[] =>
    matches.filter(({ from, to }) => {
      const [x, y] = toPhoto(movement, from);
      return Math.hypot(x - to[0], y - to[1]) <= tolerance;
    });
  let best: Match[] = [];
  // A fixed sequence of pairs, so that the same photos always give the same result. It ends when a better movement
  // would have been met by now with all but certainty: each pair is good with the square of the share that agrees.
  let tries = 3000;
  let seed = 1;
  const next = (): number => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return seed / 4294967296;
  };
  for (let k = 0; k < tries && matches.length > 1; k++) {
    const first = matches[Math.floor(next() * matches.length)] as Match;
    const second = matches[Math.floor(next() * matches.length)] as Match;
    if (Math.hypot(first.from[0] - second.from[0], first.from[1] - second.from[1]) < width / 8) continue;
    const movement = fitAlignment([first, second], width, height);
    if (!movement || !believable(movement)) continue;
    const agreeing = fits(movement);
    if (agreeing.length <= best.length) continue;
    best = agreeing;
    const share = best.length / matches.length;
    tries = Math.min(tries, 60 + Math.log(1e-6) / Math.log(1 - Math.min(0.99, share ** 2)));
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
