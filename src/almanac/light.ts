/** How a bed is lit for the camera, minute by minute of a day, and in a film-maker's words. */
import { Temporal } from "temporal-polyfill";
import type { Bed, Day, Position } from "../model.ts";
import { isLeafless, isRoof, type Obstacle, readObstacle, takesSun, turn } from "./obstacles.ts";
import { type SunPosition, sunAtMilliseconds } from "./sun.ts";

/**
 * Light on the bed as the camera sees it: the sun before, beside or behind the camera's back, high above whichever way it
 * looks, shade of what stands around, soft under a tunnel's skin or a glass roof, even under cloud, "dark" when the sun is
 * down.
 */
export type Light = "front" | "side" | "back" | "high" | "shade" | "soft" | "even" | "dark";

/**
 * What a minute of each light is worth to the picture, 0 to 1. The order is that of guidance for photographing plants (Oregon
 * State University Extension: cloud, or shade, rather than a sun overhead) and of the US Navy's course (NAVEDTRA 14209: lit from
 * the front rather than from behind); the figures are common practice: colours need the sun behind the camera or beside it, soft
 * light flatters everything, shade is usable but dull beside sunlit ground, a high sun puts hard shadows under leaves, noses and
 * hats, the sun against the camera washes out.
 */
export const lightWorth: Readonly<Record<Light, number>> = {
  front: 1,
  side: 1,
  soft: 1,
  even: 1,
  shade: 0.5,
  high: 0.5,
  back: 0.25,
  dark: 0,
};

/** Between these altitudes the sun counts as low where the person sets no bounds of their own; no standard has them. */
export const usualLowSun = { from: -4, to: 6 } as const;

/** A stretch of the day with one kind of light; minutes of the local clock, past midnight above 1440, `until` not included. */
export interface LightSpan {
  readonly light: Light;
  readonly from: number;
  readonly until: number;
  /** What takes the sun, when in shade. */
  readonly shadedBy?: string | undefined;
}

/** Sun within this turn of straight behind (or before) the camera is front (or back) light: thirds of the half circle, common practice. */
const SECTOR = 60;

/**
 * From this altitude on, degrees, the sun is no longer before or behind anybody: it comes from above. Common practice, and
 * ours the figure: portrait handbooks put the main light some 30 to 45° above the eyes so that the nose casts no shadow over
 * the lips, garden photographers keep away from a summer noon, and neither draws a line in degrees. At 60° a shadow is 0.58
 * of what throws it.
 */
export const highSun = 60;

export interface LightQuestion {
  readonly day: Day;
  readonly timeZone: string;
  readonly place: Position;
  /** Cloud takes the sun's direction: the light is even from every side. */
  readonly overcast?: boolean | undefined;
}

/** All of a bed that its light is told from; what keeps spans for later keeps them by the whole of it. */
export type LitBed = Pick<Bed, "size" | "facing" | "shade"> & {
  readonly viewpoints: readonly Pick<Bed["viewpoints"][number], "looking">[];
};

/** Direction the camera looks when it films the bed, degrees from north: its first viewpoint's, else towards the side it faces away from. */
function cameraLooks(bed: LitBed): number | undefined {
  const looking = bed.viewpoints.find((viewpoint) => viewpoint.looking !== undefined)?.looking;
  if (looking !== undefined) return looking;
  return bed.facing === undefined ? undefined : (bed.facing + 180) % 360;
}

export function lightOf(sun: SunPosition, looks: number): "front" | "side" | "back" | "high" | "dark" {
  if (sun.altitude <= 0) return "dark";
  if (sun.altitude >= highSun) return "high";
  const fromAhead = Math.abs(turn(sun.azimuth, looks));
  if (fromAhead <= SECTOR) return "back";
  return fromAhead >= 180 - SECTOR ? "front" : "side";
}

/** The sun for each minute of the local clock from midnight on; one table serves every bed of a site. */
export function sunByMinute({ day, timeZone, place }: LightQuestion, minutes = 1440): readonly SunPosition[] {
  const midnight = Temporal.PlainDate.from(day).toZonedDateTime({ timeZone });
  // Minutes are counted on the clock: on a day of 23 or 25 hours the table still has 1,440 rows, the clock's change falls in the night.
  const offsetAtNoon = midnight.add({ hours: 12 }).offsetNanoseconds - midnight.offsetNanoseconds;
  const start = midnight.epochMilliseconds - offsetAtNoon / 1e6;
  return Array.from({ length: minutes }, (_, minute) => sunAtMilliseconds(start + minute * 60_000, place));
}

/**
 * Spans of the whole day for one bed; undefined when neither its viewpoint nor its facing is known, unless cloud makes
 * that all one.
 */
export function lightSpans(
  bed: LitBed,
  suns: readonly SunPosition[],
  question: LightQuestion,
): readonly LightSpan[] | undefined {
  const overcast = question.overcast === true;
  const looks = cameraLooks(bed) ?? (overcast ? 0 : undefined);
  if (looks === undefined) return undefined;
  const roof = bed.shade.some(isRoof);
  const leafless = isLeafless(Number(question.day.slice(5, 7)), question.place.latitude);
  const obstacles = bed.shade
    .map(readObstacle)
    .filter((obstacle) => obstacle !== undefined)
    .map((obstacle) => ({ ...obstacle, awayM: obstacle.awayM + toTheMiddle(bed, obstacle.direction) }));
  const spans: LightSpan[] = [];
  suns.forEach((sun, minute) => {
    const found = overcast ? underCloud(sun) : at(sun, looks, obstacles, leafless, roof);
    const last = spans.at(-1);
    if (last !== undefined && last.light === found.light && last.shadedBy === found.shadedBy) {
      spans[spans.length - 1] = { ...last, until: minute + 1 };
    } else spans.push({ ...found, from: minute, until: minute + 1 });
  });
  return spans;
}

/**
 * Metres from a bed's edge to its middle towards a direction: records say how far an obstacle is from the edge, and a long
 * bed lies in the sun while its end is in shade. The long side is taken to face where the bed faces.
 */
function toTheMiddle({ size, facing }: LitBed, direction: number): number {
  if (size === undefined) return 0;
  const [long, short] = [Math.max(size.length, size.width) / 2, Math.min(size.length, size.width) / 2];
  if (facing === undefined) return short;
  const along = Math.abs(Math.sin((turn(direction, facing) * Math.PI) / 180));
  return along > Math.SQRT1_2 ? long : short;
}

export function spanAt(spans: readonly LightSpan[], minute: number): LightSpan | undefined {
  return spans.find((span) => span.from <= minute && minute < span.until);
}

/** "sun behind you until 10:40", "in the wall's shade before 11:15", for a stop at that minute of the day. */
export function sayLight(spans: readonly LightSpan[], minute: number): string {
  const index = spans.findIndex((span) => span.from <= minute && minute < span.until);
  const span = spans[index];
  if (span === undefined) return "";
  const next = spans[index + 1];
  const end = next === undefined || next.light === "dark" ? "" : clock(span.until);
  const before = spans[index - 1];
  switch (span.light) {
    case "shade":
      return `in the ${possessive(span.shadedBy ?? "wall")} shade${end === "" ? " for the rest of the day" : ` before ${end}`}`;
    case "dark":
      return next === undefined || next.light !== "dark"
        ? next === undefined
          ? "the sun is down"
          : `the sun is not up before ${clock(span.until)}`
        : "the sun is down";
    case "even":
      return "even light under cloud";
    case "soft":
      return `soft light${end === "" ? "" : ` until ${end}`}`;
    default: {
      const since =
        before?.light === "shade" && minute - span.from <= 90
          ? `, ${before.shadedBy ?? "wall"} shade gone since ${clock(span.from)}`
          : "";
      return `${SUN_WORDS[span.light]}${end === "" ? "" : ` until ${end}`}${since}`;
    }
  }
}

const SUN_WORDS = {
  front: "sun behind you",
  side: "sun from the side",
  back: "against the light",
  high: "hard light from above",
} as const;

/** "9:05" of minutes since midnight; "0:20" of the next day's. */
export function clock(minute: number): string {
  return `${Math.floor(minute / 60) % 24}:${String(minute % 60).padStart(2, "0")}`;
}

function at(
  sun: SunPosition,
  looks: number,
  obstacles: readonly Obstacle[],
  leafless: boolean,
  roof: boolean,
): Pick<LightSpan, "light" | "shadedBy"> {
  const light = lightOf(sun, looks);
  if (light === "dark") return { light };
  const shadedBy = obstacles.find((obstacle) => takesSun(obstacle, sun, leafless))?.what;
  if (shadedBy !== undefined) return { light: "shade", shadedBy };
  return { light: roof ? "soft" : light };
}

function underCloud(sun: SunPosition): Pick<LightSpan, "light" | "shadedBy"> {
  return { light: sun.altitude > 0 ? "even" : "dark" };
}

function possessive(what: string): string {
  return what.endsWith("s") ? `${what}'` : `${what}'s`;
}
