/**
 * What stands around a bed and takes its sun, read from the words of a bed record:
 * "wall to the east, 3 m high, 2 m away" or "apple trees to the south-west, 5 m high, 8 m away, 6 m wide".
 */

import { compassOf, lengthsIn } from "./shade-words.ts";
import type { SunPosition } from "./sun.ts";

export interface Obstacle {
  /** As said: "wall", "apple trees". */
  readonly what: string;
  /** Degrees from north, from the bed to the nearest point of the obstacle. */
  readonly direction: number;
  readonly heightM: number;
  readonly awayM: number;
  /** Length across the direction; unlimited for a wall, hedge or house that does not say. */
  readonly widthM: number;
  /** Loses its leaves, so that it shades only part of the year. */
  readonly deciduous: boolean;
}

/** Crown of a single garden tree where the record does not say: common practice. */
const TREE_WIDTH_M = 5;

/** What a line of shade is taken for; what is unread is told, never guessed into shade. */
export type ShadeReading =
  | { readonly as: "obstacle"; readonly obstacle: Obstacle }
  /** Lets light through and takes its edges: "tunnel skin", "glass roof". */
  | { readonly as: "roof" }
  /** "none", "full sun". */
  | { readonly as: "nothing" }
  | { readonly as: "unread"; readonly why: "no direction" | "two directions" | "no height" | "a number" };

const roofs = /\b(?:tunnel|polytunnel|skin|glass|polycarbonate|perspex|fleece)\b/i;
const open = /^\s*(?:(?:none|nothing|no shade|full sun|open|no|-)\s*)?(?:\.\s*)?$/i;

export function readShade(text: string): ShadeReading {
  if (open.test(text)) return { as: "nothing" };
  const { directions, rest } = compassOf(text);
  if (directions.length === 0) return roofs.test(text) ? { as: "roof" } : { as: "unread", why: "no direction" };
  if (directions.length > 1) return { as: "unread", why: "two directions" };
  const { high, away, wide, left } = lengthsIn(rest);
  if (high === undefined) return roofs.test(text) ? { as: "roof" } : { as: "unread", why: "no height" };
  const what = thing(left);
  // "3 birches" is a count; any other number that nobody could read may be a distance.
  if (/\d/.test(left.replace(/^\s*\d+ (?=\p{L})/u, ""))) return { as: "unread", why: "a number" };
  const tree = /\b(trees?|apple|pear|plum|ash|oak|birch|sycamore|willow|hazel|elder|cherry)\b/i.test(text);
  return {
    as: "obstacle",
    obstacle: {
      what,
      direction: directions[0] ?? 0,
      heightM: high,
      awayM: away ?? 0,
      widthM: wide ?? (tree ? TREE_WIDTH_M : Number.POSITIVE_INFINITY),
      deciduous: tree && !/\b(evergreen|conifer|holly|pine|spruce|leyland)\b/i.test(text),
    },
  };
}

/** Undefined when the line names no obstacle, or one that nobody can reckon with. */
export function readObstacle(text: string): Obstacle | undefined {
  const read = readShade(text);
  return read.as === "obstacle" ? read.obstacle : undefined;
}

export function isRoof(text: string): boolean {
  return readShade(text).as === "roof";
}

/** "fence" of "fence to the side, ,": what stands there, as said before direction and lengths. */
function thing(left: string): string {
  const [first = ""] = left.split(/[,;:(]/);
  const words = first
    .replace(/\b(?:to|on|in|at|towards|along)\s+(?:(?:the|our)\s*)?(?:side\s*)?$/i, "")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/(?<!\s)\s*\b(?:is|of|the|side)$/i, "");
  return words === "" ? "what stands there" : words;
}

/**
 * Whether the obstacle stands between the bed and the sun. An obstacle is an upright plane at right angles to its
 * direction: the way to it grows with the sun's slant, and a narrow one is passed at the side.
 */
export function takesSun(obstacle: Obstacle, sun: SunPosition, leafless: boolean): boolean {
  if (obstacle.deciduous && leafless) return false;
  const slant = toRadians(turn(sun.azimuth, obstacle.direction));
  if (Math.cos(slant) <= 0.05) return false;
  const sideways = Math.abs(obstacle.awayM * Math.tan(slant));
  if (sideways > obstacle.widthM / 2 && obstacle.awayM > 0) return false;
  const reach = Math.max(obstacle.awayM, 0.1) / Math.cos(slant);
  return Math.tan(toRadians(sun.altitude)) < obstacle.heightM / reach;
}

/** Months in which deciduous trees of the temperate north stand bare (common practice); half a year apart in the south. */
export function isLeafless(month: number, latitude: number): boolean {
  const northern = latitude >= 0 ? month : ((month + 5) % 12) + 1;
  return northern >= 11 || northern <= 4;
}

/** Signed smallest turn from one direction to another, degrees, -180 to 180. */
export function turn(to: number, from: number): number {
  return ((((to - from + 180) % 360) + 360) % 360) - 180;
}

function toRadians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
