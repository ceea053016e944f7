/**
 * When a photo was taken, from everything that may tell, in this order of trust: the camera's own clock, whose offset comes
 * from the photo, from GPS time or from the garden's zone; GPS time where the camera tells nothing; XMP, IPTC and a PNG's
 * texts; XMP beside it; a date in the file's name or day folder; the sidecar; the time of the last change inside the photo; a
 * takeout's JSON; and as a marked last resort the time of the file. Tags: EXIF (CIPA DC-008), 0x0132, 0x9003 to 0x9012, 0x9291,
 * GPS IFD 7 and 0x1D.
 */
import { Temporal } from "temporal-polyfill";
import { dayOf } from "../calendar.ts";
import type { DateBasis, Day } from "../model.ts";
import type { DatesBeside } from "./dates-beside.ts";
import type { PhotoTags } from "./exif-tags.ts";
import { dateInName } from "./file-name-date.ts";
import type { FilmTimes } from "./film-times.ts";

export interface PhotoMoment {
  /** Local calendar day. */
  readonly day?: Day | undefined;
  /** Local wall clock "18:05:09". */
  readonly time?: string | undefined;
  /** ISO 8601 instant, UTC, with milliseconds when the camera gave them. */
  readonly instant?: string | undefined;
  readonly dateBasis: DateBasis;
  /** GPS time as local day and clock, where it and the camera cannot both be right. */
  readonly gpsSays?: string | undefined;
}

export interface PhotoWitnesses {
  readonly tags?: PhotoTags | undefined;
  /** Path or name of the file. */
  readonly path: string;
  readonly sidecarDay?: Day | undefined;
  readonly beside?: DatesBeside | undefined;
  /** Of a clip; `isLocal` when its camera writes its own clock into the header. */
  readonly film?: (FilmTimes & { readonly isLocal?: boolean | undefined }) | undefined;
  /** Milliseconds since 1970 UTC. */
  readonly modified?: number | undefined;
  /** IANA zone of the garden. */
  readonly timeZone: string;
}

/** A wall clock without a zone. */
interface WallClock {
  readonly day: Day;
  readonly time: string;
  readonly milliseconds: number;
}

const minute = 60_000;

export function photoMoment(witnesses: PhotoWitnesses): PhotoMoment {
  return (
    (witnesses.tags && fromTags(witnesses.tags, witnesses.timeZone)) ??
    fromWritten(witnesses.film?.written, witnesses.timeZone, "exif offset") ??
    fromWritten(witnesses.tags?.elsewhere, witnesses.timeZone, "other metadata") ??
    fromWritten(witnesses.beside?.xmp, witnesses.timeZone, "beside") ??
    fromName(witnesses.path, witnesses.timeZone) ??
    fromHeader(witnesses.film, witnesses.timeZone) ??
    (witnesses.sidecarDay === undefined ? undefined : { day: witnesses.sidecarDay, dateBasis: "sidecar" }) ??
    fromChange(witnesses.tags, witnesses.timeZone) ??
    fromTakeout(witnesses.beside?.takeout, witnesses.timeZone) ??
    (witnesses.modified === undefined ? undefined : atInstant(witnesses.modified, witnesses.timeZone, "file time")) ?? {
      dateBasis: "unknown",
    }
  );
}

function fromTags(tags: PhotoTags, timeZone: string): PhotoMoment | undefined {
  const original = wallClock(tags.original, tags.originalSubSec);
  const wall = original ?? wallClock(tags.digitized, tags.digitizedSubSec);
  const offset = offsetMinutes(original ? tags.originalOffset : tags.digitizedOffset);
  if (wall && offset !== undefined) return atOffset(wall, offset, "exif offset");
  const gps = gpsInstant(tags);
  if (!wall) return gps === undefined ? undefined : atInstant(gps, timeZone, "gps time");
  const inGarden = inZone(wall, timeZone, "exif in garden zone");
  if (gps === undefined) return inGarden;
  const atGps = atInstant(gps, timeZone, "gps time");
  const gpsSays = `${atGps.day} ${atGps.time}`;
  if (isUnset(wall, gps)) return atGps;
  const inferred = inferredOffset(wall, gps, tags.position);
  if (inferred !== undefined) return atOffset(wall, inferred, "gps time");
  const apart = Math.abs(Date.parse(inGarden.instant ?? "") - gps);
  return apart <= oldestFix ? inGarden : { ...inGarden, gpsSays };
}

/** A clock that lost its battery begins at a first of January, long before GPS says it is. */
function isUnset(wall: WallClock, gps: number): boolean {
  return wall.day.endsWith("-01-01") && gps - utcMs(wall) > 366 * 24 * 60 * minute;
}

/** Some cameras write no other date, but a program that changed the photo wrote its own here: no more sure than the file's time. */
function fromChange(tags: PhotoTags | undefined, timeZone: string): PhotoMoment | undefined {
  const wall = wallClock(tags?.modified);
  return wall && inZone(wall, timeZone, "file time");
}

/** ISO 8601 as XMP writes it: a day, perhaps with a time, perhaps with its offset. */
function fromWritten(written: string | undefined, timeZone: string, dateBasis: DateBasis): PhotoMoment | undefined {
  const parts = /^(\d{4})[-:](\d\d)[-:](\d\d)(?:[T ](\d\d:\d\d)(:\d\d)?(?:\.(\d+))?)? ?(Z|[+-]\d\d:?\d\d)?$/.exec(
    (written ?? "").trim(),
  );
  if (!parts) return undefined;
  const [, year, month, dayOfMonth, minutes, seconds, subSec, zone] = parts;
  const day = dayOf(Number(year), Number(month), Number(dayOfMonth));
  if (day === undefined || !plausibleYear(Number(year))) return undefined;
  if (minutes === undefined) return { day, dateBasis };
  const wall = wallClock(`${day} ${minutes}${seconds ?? ":00"}`, subSec);
  const offset = offsetMinutes(zone);
  if (!wall) return undefined;
  return offset === undefined ? inZone(wall, timeZone, dateBasis) : atOffset(wall, offset, dateBasis);
}

/** A movie header's clock, as UTC or as the camera's own. */
function fromHeader(film: PhotoWitnesses["film"], timeZone: string): PhotoMoment | undefined {
  if (film?.header === undefined || !plausibleYear(new Date(film.header).getUTCFullYear())) return undefined;
  if (film.isLocal !== true) return atInstant(film.header, timeZone, "other metadata");
  const wall = wallClock(isoInstant(film.header));
  return wall && inZone(wall, timeZone, "other metadata");
}

function fromTakeout(taken: number | undefined, timeZone: string): PhotoMoment | undefined {
  const isPlausible = taken !== undefined && plausibleYear(new Date(taken).getUTCFullYear());
  return isPlausible ? atInstant(taken, timeZone, "beside") : undefined;
}

function fromName(path: string, timeZone: string): PhotoMoment | undefined {
  const found = dateInName(path);
  if (!found) return undefined;
  if (found.time === undefined) return { day: found.day, dateBasis: "file name" };
  const wall: WallClock = { day: found.day, time: found.time, milliseconds: 0 };
  return found.utc ? atInstant(utcMs(wall), timeZone, "file name") : inZone(wall, timeZone, "file name");
}

/** "2024:07:04 18:05:09" as a wall clock; undefined for zeros, blanks and times no calendar or clock has. */
function wallClock(written: unknown, subSec?: unknown): WallClock | undefined {
  if (typeof written !== "string") return undefined;
  // Some cameras and editors write dashes, slashes or an ISO "T"; digits and order are always these.
  const parts = /^\s*(\d{4})[:\-/.](\d\d)[:\-/.](\d\d)[ T](\d\d):(\d\d):(\d\d)/.exec(written);
  if (!parts) return undefined;
  const [year, month, dayOfMonth, hour, min, sec] = parts.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const day = dayOf(year, month, dayOfMonth);
  if (day === undefined || !plausibleYear(year) || hour > 23 || min > 59 || sec > 60) return undefined;
  // A leap second has no place in ISO clocks of most tools; it counts as the second before.
  const time = `${parts[4]}:${parts[5]}:${sec === 60 ? "59" : parts[6]}`;
  return { day, time, milliseconds: subSecMilliseconds(subSec) };
}

/** SubSecTime holds the digits after the point: "5" is half a second, "05" a twentieth. */
function subSecMilliseconds(written: unknown): number {
  const digits = /^\s*(\d+)/.exec(
    typeof written === "number" ? String(written) : typeof written === "string" ? written : "",
  );
  return digits?.[1] === undefined ? 0 : Number(digits[1].slice(0, 3).padEnd(3, "0"));
}

/** "+05:30" in minutes; undefined for blanks and for offsets no clock on Earth shows. */
function offsetMinutes(written: unknown): number | undefined {
  if (typeof written !== "string") return undefined;
  const trimmed = written.trim();
  if (trimmed === "Z") return 0;
  const parts = /^([+-])(\d\d):?(\d\d)/.exec(trimmed);
  if (!parts) return undefined;
  const [hours, minutes] = [Number(parts[2]), Number(parts[3])];
  const offset = (hours * 60 + minutes) * (parts[1] === "-" ? -1 : 1);
  return minutes < 60 && possibleOffset(offset) ? offset : undefined;
}

/** GPS date and time are UTC; a time without its date tells nothing. */
function gpsInstant(tags: PhotoTags): number | undefined {
  if (typeof tags.gpsDay !== "string" || !Array.isArray(tags.gpsTime) || tags.gpsTime.length !== 3) return undefined;
  const [hour, min, sec] = tags.gpsTime.map((part: unknown) => (typeof part === "number" ? part : Number.NaN)) as [
    number,
    number,
    number,
  ];
  const parts = /^\s*(\d{4})[:\-/.](\d\d)[:\-/.](\d\d)[\s\0]*$/.exec(tags.gpsDay);
  if (!parts || !(hour >= 0 && hour < 24 && min >= 0 && min < 60 && sec >= 0 && sec < 61)) return undefined;
  const day = dayOf(Number(parts[1]), Number(parts[2]), Number(parts[3]));
  if (day === undefined || !plausibleYear(Number(parts[1]))) return undefined;
  return Date.parse(day) + Math.round((hour * 3600 + min * 60 + sec) * 1000);
}

/** A fix may be so much older than the picture and still say the same: a phone in a shed. */
const oldestFix = 60 * minute;
/** Older than this, a fix cannot tell the offset: what is left over would be taken for a part of it. */
const freshFix = 2 * minute;
/** Hours by which clocks on land differ from the sun at most, summer time included: IANA's zones. */
const farthestFromSun = 3.5;

/**
 * Clocks differ from UTC by whole quarters of an hour: the difference, rounded to 15 minutes, is the offset. Undefined when
 * too much is left over, or no clock shows it where the photo was taken: then the fix is an old one and tells nothing.
 */
function inferredOffset(wall: WallClock, gps: number, position: PhotoTags["position"]): number | undefined {
  const apart = utcMs(wall) - gps;
  const offset = Math.round(apart / (15 * minute)) * 15;
  const fromSun = position === undefined ? 0 : offset / 60 - position.longitude / 15;
  // Across the date line a day lies between two clocks that show the same hour.
  const isFar = Math.min(Math.abs(fromSun), 24 - Math.abs(fromSun)) > farthestFromSun;
  return possibleOffset(offset) && !isFar && Math.abs(apart - offset * minute) <= freshFix ? offset : undefined;
}

/** Offsets in use go from -12:00 to +14:00. */
function possibleOffset(offset: number): boolean {
  return offset >= -12 * 60 && offset <= 14 * 60;
}

/** Before 1990 there were no such cameras: a clock that was never set says 1970 or 1980. */
function plausibleYear(year: number): boolean {
  return year >= 1990 && year <= 2199;
}

/** The wall clock's milliseconds if it stood in UTC. */
function utcMs(wall: WallClock): number {
  return Date.parse(`${wall.day}T${wall.time}Z`) + wall.milliseconds;
}

function atOffset(wall: WallClock, offset: number, dateBasis: DateBasis): PhotoMoment {
  return { day: wall.day, time: wall.time, instant: isoInstant(utcMs(wall) - offset * minute), dateBasis };
}

/**
 * A wall clock in an IANA zone. A time that the spring change skips is read with the offset before the change, and one
 * that the autumn change repeats is taken the first time: RFC 5545's rule, Temporal's "compatible". Day and time stay as
 * the camera showed them.
 */
function inZone(wall: WallClock, timeZone: string, dateBasis: DateBasis): PhotoMoment {
  const { epochMilliseconds } = Temporal.PlainDateTime.from(`${wall.day}T${wall.time}`).toZonedDateTime(timeZone, {
    disambiguation: "compatible",
  });
  return { day: wall.day, time: wall.time, instant: isoInstant(epochMilliseconds + wall.milliseconds), dateBasis };
}

function atInstant(instant: number, timeZone: string, dateBasis: DateBasis): PhotoMoment {
  const local = Temporal.Instant.fromEpochMilliseconds(Math.round(instant)).toZonedDateTimeISO(timeZone);
  return {
    day: local.toPlainDate().toString(),
    time: local.toPlainTime().toString({ fractionalSecondDigits: 0 }),
    instant: isoInstant(Math.round(instant)),
    dateBasis,
  };
}

function isoInstant(ms: number): string {
  return new Date(ms).toISOString();
}
