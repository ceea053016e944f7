/**
 * What stands around a bed and takes its sun, read from the words of a bed record:
 * "wall to the east, 3 m high, 2 m away" or "apple trees to the south-west, 5 m high, 8 m away, 6 m wide".
 */
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

const COMPASS = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];
const METRES_PER: Readonly<Record<string, number>> = {
  m: 1,
  metre: 1,
  metres: 1,
  ft: 0.3048,
  foot: 0.3048,
  feet: 0.3048,
};
/** Crown of a single garden tree where the record does not say: common practice. */
const TREE_WIDTH_M = 5;

/** Undefined when the words give no direction or no height. */
export function readObstacle(text: string): Obstacle | undefined {
  const words = text
    .toLowerCase()
    .replace(/\bhalf a\b/g, "0.5")
    .replace(/\b(?:a|one) (?=m\b|metre|foot)/g, "1 ");
  const direction = /\b(north|south|east|west)(?:[ -]?(east|west))?\b/.exec(words);
  const heightM = measure(words, "(?:high|tall)");
  if (direction === null || heightM === undefined) return undefined;
  const compass = direction[2] === undefined ? direction[1] : `${direction[1]}-${direction[2]}`;
  const what =
    text
      .slice(0, direction.index)
      .replace(/\s+(to|on|in|at)\s+(the\s+)?$/i, "")
      .trim() || "what stands there";
  const tree = /\b(trees?|apple|pear|plum|ash|oak|birch|sycamore|willow|hazel|elder|cherry)\b/.test(words);
  return {
    what,
    direction: COMPASS.indexOf(compass ?? "") * 45,
    heightM,
    awayM: measure(words, "(?:away|off|from the bed)") ?? 0,
    widthM: measure(words, "(?:wide|long|across)") ?? (tree ? TREE_WIDTH_M : Number.POSITIVE_INFINITY),
    deciduous: tree && !/\b(evergreen|conifer|holly|pine|spruce|leyland)\b/.test(words),
  };
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

function measure(words: string, role: string): number | undefined {
  const found = new RegExp(`(\\d+(?:[.,]\\d+)?)\\s*(m|metres?|ft|foot|feet)\\s+${role}`).exec(words);
  const [, number, unit] = found ?? [];
  if (number === undefined || unit === undefined) return undefined;
  return Number(number.replace(",", ".")) * (METRES_PER[unit] ?? 1);
}

function toRadians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
