/**
 * Where the sun is and when it rises, sets and is low: suncalc's figures, asked for by local calendar day.
 *
 * suncalc follows Meeus, Astronomical Algorithms, 2nd edition; sunrise and sunset are the sun's centre at -0.833°
 * (34' of refraction and 16' of radius), twilight bounds are geometric.
 */
import { addTime, getPosition, getTimes, type SunTimes } from "suncalc";
import { Temporal } from "temporal-polyfill";
import type { Day, Position } from "../model.ts";

/** The sun in the sky, degrees. Azimuth counts from north through east; altitude includes refraction. */
export interface SunPosition {
  readonly azimuth: number;
  readonly altitude: number;
}

/** ISO 8601 instants of one local day; undefined where the sun does not cross that height that day. */
export interface SunDay {
  readonly civilDawn?: Temporal.Instant | undefined;
  readonly sunrise?: Temporal.Instant | undefined;
  readonly noon: Temporal.Instant;
  readonly sunset?: Temporal.Instant | undefined;
  readonly civilDusk?: Temporal.Instant | undefined;
  /** Degrees at solar noon. */
  readonly noonAltitude: number;
  /** The sun stays up or stays down the whole day. */
  readonly polar?: "day" | "night" | undefined;
}

/** Low sun: no standard defines a "golden hour", so both bounds are the person's setting. Degrees of altitude. */
export interface LowSunBounds {
  readonly from: number;
  readonly to: number;
}

export interface LowSun {
  readonly morning?: { readonly begins: Temporal.Instant; readonly ends: Temporal.Instant } | undefined;
  readonly evening?: { readonly begins: Temporal.Instant; readonly ends: Temporal.Instant } | undefined;
}

export function sunAt(instant: Temporal.Instant, place: Position): SunPosition {
  return sunAtMilliseconds(instant.epochMilliseconds, place);
}

/** The same by milliseconds since 1970 UTC, for loops over many minutes. */
export function sunAtMilliseconds(epochMilliseconds: number, { latitude, longitude }: Position): SunPosition {
  const { azimuth, altitude } = getPosition(new Date(epochMilliseconds), latitude, longitude);
  return { azimuth, altitude };
}

export function sunDay(day: Day, timeZone: string, place: Position): SunDay {
  const times = timesOfLocalDay(day, timeZone, place);
  const noon = instantOf(times.solarNoon) as Temporal.Instant;
  return {
    civilDawn: instantOf(times.dawn),
    sunrise: instantOf(times.sunrise),
    noon,
    sunset: instantOf(times.sunset),
    civilDusk: instantOf(times.dusk),
    noonAltitude: sunAt(noon, place).altitude,
    polar: times.alwaysUp === true ? "day" : times.alwaysDown === true ? "night" : undefined,
  };
}

/** When the sun stands between the two altitudes, morning and evening; a side is undefined when either bound is not crossed. */
export function lowSun(day: Day, timeZone: string, place: Position, bounds: LowSunBounds): LowSun {
  const [lowRise, lowSet] = crossingNames(bounds.from);
  const [highRise, highSet] = crossingNames(bounds.to);
  const times = timesOfLocalDay(day, timeZone, place);
  const at = (name: string) => instantOf(times[name] as Date | null | undefined);
  const span = (begins: Temporal.Instant | undefined, ends: Temporal.Instant | undefined) =>
    begins === undefined || ends === undefined ? undefined : { begins, ends };
  return { morning: span(at(lowRise), at(highRise)), evening: span(at(highSet), at(lowSet)) };
}

/**
 * suncalc answers for the solar day around the instant given. Local noon falls on that day everywhere but where the
 * clock is far from the sun (UTC+13, UTC+14), so the solar noon found is held against the local day.
 */
function timesOfLocalDay(day: Day, timeZone: string, { latitude, longitude }: Position): SunTimes {
  const noon = Temporal.PlainDate.from(day).toZonedDateTime({ timeZone, plainTime: "12:00" });
  for (const hours of [0, -24, 24]) {
    const times = getTimes(new Date(noon.add({ hours }).epochMilliseconds), latitude, longitude);
    const found = instantOf(times.solarNoon)?.toZonedDateTimeISO(timeZone).toPlainDate().toString();
    if (found === day) return times;
  }
  return getTimes(new Date(noon.epochMilliseconds), latitude, longitude);
}

/** suncalc keeps its table of heights for the whole process, so each height is entered once under a name made of it. */
const entered = new Set<number>();

function crossingNames(altitude: number): readonly [string, string] {
  const names = [`rising through ${altitude}`, `setting through ${altitude}`] as const;
  if (!entered.has(altitude)) {
    addTime(altitude, ...names);
    entered.add(altitude);
  }
  return names;
}

function instantOf(date: Date | null | undefined): Temporal.Instant | undefined {
  return date === null || date === undefined || Number.isNaN(date.getTime())
    ? undefined
    : Temporal.Instant.fromEpochMilliseconds(date.getTime());
}
