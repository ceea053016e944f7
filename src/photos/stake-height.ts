/**
 * Plant height from a photo in which something of known height stands: a marked stake, by its foot, its top and its
 * length.
 */

import type { PhotoHeight, Stake } from "../model.ts";
import type { Point } from "./similarity.ts";

/** How well a person (or a program) marks a point. */
export const markingErrorPx = 3;

/**
 * Height above the stake's foot of a point that stands beside the stake, all points in pixels of one frame. The point
 * is carried level (square to the stake) to it, and the picture is taken as evenly scaled along the stake: for a camera
 * held about level that is true to a few per cent.
 *
 * Uncertainty, by propagation of independent errors: marking of foot, top and point by `markingErrorPx` each, and the
 * plant's distance from the camera, which may differ from the stake's by the share `depthShare` (0.05: five centimetres
 * in a metre). Undefined when the stake is too short in the photo, under 20 pixels, to measure by, or the point lies
 * below its foot.
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
  return { heightCm, uncertaintyCm: Math.hypot(marking, heightCm * depthShare) };
}
