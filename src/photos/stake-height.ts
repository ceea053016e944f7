/**
 * Plant height from a photo in which something of known height stands: a marked stake, by its foot, its top and its
 * length.
 */

import type { PhotoHeight, Stake } from "../model.ts";
import type { Point } from "./similarity.ts";

/** How well a person (or a program) marks a point. */
export const markingErrorPx = 3;

/**
 * Where the camera is: at chest height, and how much that varies; common practice, because no photo says so. A plant nearer
 * or farther than the stake by some share is lifted or lowered on it by that share of what it stands below the camera, so
 * the lowest plants are measured worst.
 */
const cameraCm = { height: 140, spread: 15 } as const;

/**
 * A camera that looks down on the stake shortens its lower half: a point at the share s of a stake of L centimetres seems
 * lower by about this times L² s (1 - s). Root of the mean square for pitches of 5 to 20° at two to four metres
 * (`npm run truth`, which holds all of this against drawn cameras).
 */
const bendPerCm = 0.00078;

/**
 * Height above the stake's foot of a point that stands beside the stake, all points in pixels of one frame. The point
 * is carried level (square to the stake) to it, and the picture is taken as evenly scaled along the stake.
 *
 * Uncertainty, one standard deviation, of independent errors: marking of foot, top and point by `markingErrorPx` each; the
 * plant's distance from the camera, which may differ from the stake's by the share `depthShare` (0.05: five centimetres
 * in a metre), seen from a camera that stands higher than it; and the pitch of the camera. Undefined when the stake is too
 * short in the photo, under 20 pixels, to measure by, or the point lies below its foot.
 */
export function heightByStake(stake: Stake, point: Point, depthShare = 0.05): PhotoHeight | undefined {
  const dx = stake.top[0] - stake.foot[0];
  const dy = stake.top[1] - stake.foot[1];
  const length = Math.hypot(dx, dy);
  if (length < 20) return undefined;
  const along = ((point[0] - stake.foot[0]) * dx + (point[1] - stake.foot[1]) * dy) / length;
  if (along < 0) return undefined;
  const share = along / length;
  const heightCm = share * stake.lengthCm;
  const cmPerPx = stake.lengthCm / length;
  // height = L * (p - f) / (t - f): slopes 1 for the point, share - 1 for the foot, -share for the top, in units of L /
  // length.
  const marking = markingErrorPx * cmPerPx * Math.hypot(1, share - 1, share);
  const depth = depthShare * Math.hypot(cameraCm.height - heightCm, cameraCm.spread);
  const pitch = bendPerCm * stake.lengthCm ** 2 * share * (1 - share);
  return { heightCm, uncertaintyCm: Math.hypot(marking, depth, pitch) };
}
