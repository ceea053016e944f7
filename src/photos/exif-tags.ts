/** The few EXIF tags Plotreel asks a photo for, read by exifr from the head of the file. */
import { hash } from "node:crypto";
import exifr from "exifr";
import { type ImageKind, imageKind } from "./image-kind.ts";
import { imageParts } from "./metadata-blocks.ts";
import { otherDate } from "./other-dates.ts";
import type { PhotoFolder } from "./photo-folder.ts";
import type { PhotoPosition } from "./site-around.ts";
import { honestTiff } from "./tiff-entries.ts";

/** Raw values as the camera wrote them: nothing here is checked yet. */
export interface PhotoTags {
  readonly original?: unknown;
  readonly originalSubSec?: unknown;
  readonly originalOffset?: unknown;
  readonly digitized?: unknown;
  readonly digitizedSubSec?: unknown;
  readonly digitizedOffset?: unknown;
  /** When the file was changed, or made where the camera writes nothing else. */
  readonly modified?: unknown;
  /** What XMP, IPTC or a PNG's text says where EXIF says nothing. */
  readonly elsewhere?: string | undefined;
  /** UTC. */
  readonly gpsDay?: unknown;
  /** UTC: hours, minutes, seconds. */
  readonly gpsTime?: unknown;
  /** Degrees; undefined when the photo tells no place. Never leaves this room. */
  readonly position?: PhotoPosition | undefined;
}

export interface PhotoHead {
  /** Undefined when the bytes are no picture Plotreel knows. */
  readonly kind: ImageKind | undefined;
  /** Bytes that were there to read, at most `headLength` unless more were needed. */
  readonly length: number;
  readonly tags?: PhotoTags | undefined;
  /** Stands for the first bytes: a copy under another name has the same. Whoever compares whole files reads those that are alike. */
  readonly sum: string;
}

/** Holds the EXIF of nearly every JPEG; the rest are read whole. */
const headLength = 65_536;

/** Two photos of one camera differ here, in their time; what does not is read whole before it counts as a copy. */
const summed = 8192;

/** Tags by the names exifr gives them; "CreateDate" is DateTimeDigitized. */
const wanted = [
  "DateTimeOriginal",
  "SubSecTimeOriginal",
  "OffsetTimeOriginal",
  "CreateDate",
  "SubSecTimeDigitized",
  "OffsetTimeDigitized",
  "ModifyDate",
  "GPSDateStamp",
  "GPSTimeStamp",
  "GPSLatitudeRef",
  "GPSLatitude",
  "GPSLongitudeRef",
  "GPSLongitude",
  "GPSHPositioningError",
] as const;

type RawTags = { readonly [Tag in (typeof wanted)[number]]?: unknown };

// Raw values: revived dates would be read in the machine's own time zone.
const options = {
  reviveValues: false,
  translateValues: false,
  pick: [...wanted],
};

/** Reads a photo's head, and the whole file only when its metadata lies further in. */
export async function readPhotoHead(folder: PhotoFolder, path: string): Promise<PhotoHead> {
  if (!folder.readHead) {
    return photoHead(await folder.read(path));
  }
  const head = await folder.readHead(path, headLength);
  const exif = exifOf(head);
  if (exif !== "further in" || head.length < headLength) return headOf(head, exif);
  return photoHead(await folder.read(path));
}

/** The same for a photo that is in memory already. */
export function photoHead(bytes: Uint8Array): Promise<PhotoHead> {
  return headOf(bytes, exifOf(bytes));
}

async function headOf(bytes: Uint8Array, exif: Uint8Array | "none" | "further in"): Promise<PhotoHead> {
  const kind = imageKind(bytes);
  const own = exif instanceof Uint8Array ? await tagsOf(exif) : undefined;
  const elsewhere = kind === undefined || isDated(own) ? undefined : otherDate(bytes, kind);
  const tags = elsewhere === undefined ? own : { ...own, elsewhere };
  return { kind, length: bytes.length, tags, sum: hash("sha256", bytes.subarray(0, summed), "base64url") };
}

function isDated(tags: PhotoTags | undefined): boolean {
  return /[1-9]/.test(`${tags?.original ?? ""}${tags?.digitized ?? ""}`);
}

/** The TIFF block of a picture's EXIF, "none", or "further in" when the bytes end before it does. */
function exifOf(bytes: Uint8Array): Uint8Array | "none" | "further in" {
  const kind = imageKind(bytes);
  if (kind === undefined) return "none";
  for (const part of imageParts(bytes, kind)) {
    if (part.kind === "EXIF") return part.end > bytes.length ? "further in" : bytes.subarray(part.start, part.end);
    // EXIF of a JPEG stands before its picture; the other kinds may have it behind.
    if (part.kind === "picture" && kind === "jpeg") return "none";
  }
  return "further in";
}

async function tagsOf(exif: Uint8Array): Promise<PhotoTags | undefined> {
  try {
    const found = (await exifr.parse(honestTiff(exif), options)) as RawTags | undefined;
    if (!found) return undefined;
    return {
      original: found.DateTimeOriginal,
      originalSubSec: found.SubSecTimeOriginal,
      originalOffset: found.OffsetTimeOriginal,
      digitized: found.CreateDate,
      digitizedSubSec: found.SubSecTimeDigitized,
      digitizedOffset: found.OffsetTimeDigitized,
      modified: found.ModifyDate,
      gpsDay: found.GPSDateStamp,
      gpsTime: found.GPSTimeStamp,
      position: position(found),
    };
  } catch {
    // Damaged EXIF is as good as none: the file name or a sidecar may still tell the day.
    return undefined;
  }
}

/** Degrees from degrees, minutes and seconds; undefined when a denominator was zero or the place is not on Earth. */
function position(found: RawTags): PhotoTags["position"] {
  const latitude = degrees(found.GPSLatitude, found.GPSLatitudeRef, "S", 90);
  const longitude = degrees(found.GPSLongitude, found.GPSLongitudeRef, "W", 180);
  if (latitude === undefined || longitude === undefined) return undefined;
  // A receiver without a fix writes zeros.
  if (latitude === 0 && longitude === 0) return undefined;
  const error = found.GPSHPositioningError;
  return { latitude, longitude, errorMetres: typeof error === "number" && error >= 0 ? error : undefined };
}

function degrees(written: unknown, ref: unknown, negative: string, limit: number): number | undefined {
  if (!Array.isArray(written) || written.length !== 3 || typeof ref !== "string") return undefined;
  const [whole, minutes, seconds] = written as [unknown, unknown, unknown];
  const value = Number(whole) + Number(minutes) / 60 + Number(seconds) / 3600;
  if (!(value >= 0 && value <= limit)) return undefined;
  return ref.trim().toUpperCase() === negative ? -value : value;
}
