/**
 * Where the metadata of a picture stands in its bytes: EXIF, XMP, IPTC, comments, and whatever else is not the picture.
 * One walk serves both sides of it: reading a photo's date, and proving that a published copy has nothing to read.
 *
 * Sources: JPEG segments, ISO/IEC 10918-1 annex B with CIPA DC-008 (EXIF) and the XMP specification part 3; PNG chunks,
 * W3C PNG third edition; RIFF chunks of WebP, RFC 9649; GIF89a. The ISO base media kinds stand in media-boxes.ts.
 */
import { type ImageKind, imageKind, startsWith, text } from "./image-kind.ts";
import { mediaBlocks } from "./media-boxes.ts";
import { gpsDirectory, tiffEntries } from "./tiff-entries.ts";

export interface MetadataBlock {
  readonly kind: "EXIF" | "GPS" | "XMP" | "IPTC" | "comment" | "other data" | "data after the picture";
  /** First byte of the block's content; for EXIF the first of its TIFF header. */
  readonly start: number;
  /** The byte after its last; beyond the end of the bytes when they are cut off or the length lies. */
  readonly end: number;
}

/** A block, or the place where the coded picture begins. */
export type ImagePart = MetadataBlock | { readonly kind: "picture"; readonly start: number; readonly end: number };

/**
 * Every metadata block in the bytes of a JPEG, PNG, WebP, AVIF, HEIC, GIF or TIFF; none for bytes of another kind. An
 * EXIF block with a GPS directory is followed by a "GPS" block of the same place.
 */
export function imageMetadataBlocks(bytes: Uint8Array): readonly MetadataBlock[] {
  const kind = imageKind(bytes);
  if (kind === undefined) return [];
  const blocks: MetadataBlock[] = [];
  for (const part of imageParts(bytes, kind)) {
    if (part.kind === "picture") continue;
    blocks.push(part);
    if (part.kind === "EXIF" && hasGps(bytes.subarray(part.start, part.end))) {
      blocks.push({ kind: "GPS", start: part.start, end: part.end });
    }
  }
  return blocks.length > 0 ? blocks : strayBlocks(bytes);
}

/** The parts of a picture in file order, as far as the bytes go. */
export function imageParts(bytes: Uint8Array, kind: ImageKind): Iterable<ImagePart> {
  return walkers[kind](bytes);
}

const walkers: Record<ImageKind, (bytes: Uint8Array) => Iterable<ImagePart>> = {
  jpeg: jpegParts,
  png: pngParts,
  webp: webpParts,
  gif: gifParts,
  avif: mediaBlocks,
  heic: mediaBlocks,
  // A TIFF file is one EXIF block: its picture hangs in the same directories.
  tiff: function* (bytes) {
    yield { kind: "EXIF", start: 0, end: bytes.length };
  },
};

// --------------------------------------------------------------------------------------------------------------- JPEG

const exifHead = "Exif\0\0";
const xmpHeads = ["http://ns.adobe.com/xap/1.0/\0", "http://ns.adobe.com/xmp/extension/\0"];
const iptcHead = "Photoshop 3.0\0";

function* jpegParts(bytes: Uint8Array): Generator<ImagePart> {
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff) {
      yield unexplained(bytes, at);
      return;
    }
    const marker = bytes[at + 1] as number;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === 0xd9) break;
    // Markers without a length: TEM and the restart markers.
    if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7)) {
      at += 2;
      continue;
    }
    const length = u16(bytes, at + 2);
    if (length < 2) {
      yield unexplained(bytes, at);
      return;
    }
    const [start, end] = [at + 4, at + 2 + length];
    const block = jpegSegment(bytes, marker, start, end);
    if (block) yield block;
    at = end;
    if (marker === 0xda) {
      yield { kind: "picture", start, end };
      at = afterScan(bytes, end);
    }
  }
  if (bytes[at] === 0xff && bytes[at + 1] === 0xd9 && at + 2 < bytes.length && !allZero(bytes, at + 2)) {
    yield { kind: "data after the picture", start: at + 2, end: bytes.length };
  }
}

function jpegSegment(bytes: Uint8Array, marker: number, start: number, end: number): MetadataBlock | undefined {
  if (marker === 0xfe) return { kind: "comment", start, end };
  if (marker < 0xe0 || marker > 0xef) return undefined;
  if (marker === 0xe1 && startsWith(bytes, start, exifHead)) return { kind: "EXIF", start: start + 6, end };
  if (marker === 0xe1 && xmpHeads.some((head) => startsWith(bytes, start, head))) return { kind: "XMP", start, end };
  if (marker === 0xed && startsWith(bytes, start, iptcHead)) return { kind: "IPTC", start, end };
  // How to draw the picture, and nothing about who took it where: JFIF's density, colour profile, Adobe's colour transform.
  if (marker === 0xe0 && startsWith(bytes, start, "JFIF\0")) return undefined;
  if (marker === 0xe2 && startsWith(bytes, start, "ICC_PROFILE\0")) return undefined;
  if (marker === 0xee && startsWith(bytes, start, "Adobe")) return undefined;
  return { kind: "other data", start, end };
}

/** The first marker after coded data that is neither a stuffed byte nor a restart. */
function afterScan(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1];
    if (next === undefined) break;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}

// ---------------------------------------------------------------------------------------------------------------- PNG

/** Chunks that hold words or times; the rest draw the picture. */
const pngKinds: Readonly<Record<string, MetadataBlock["kind"]>> = {
  eXIf: "EXIF",
  tEXt: "comment",
  zTXt: "comment",
  iTXt: "comment",
  tIME: "other data",
};
const pngDrawing = new Set(
  "IHDR PLTE IDAT tRNS cHRM gAMA iCCP sBIT sRGB cICP mDCV cLLI bKGD hIST pHYs sPLT acTL fcTL fdAT".split(" "),
);

function* pngParts(bytes: Uint8Array): Generator<ImagePart> {
  let at = 8;
  while (at + 12 <= bytes.length) {
    const type = text(bytes, at + 4, 4);
    const [start, end] = [at + 8, at + 8 + u32(bytes, at)];
    at = end + 4;
    if (type === "IEND") {
      if (at < bytes.length) yield { kind: "data after the picture", start: at, end: bytes.length };
      return;
    }
    if (type === "IDAT") yield { kind: "picture", start, end };
    if (pngDrawing.has(type)) continue;
    const xmp = startsWith(bytes, start, "XML:com.adobe.xmp\0") || startsWith(bytes, start, "Raw profile type xmp\0");
    yield { kind: xmp ? "XMP" : (pngKinds[type] ?? "other data"), start, end };
  }
}

// --------------------------------------------------------------------------------------------------------------- WebP

const webpDrawing = new Set(["VP8 ", "VP8L", "VP8X", "ALPH", "ANIM", "ANMF", "ICCP"]);

function* webpParts(bytes: Uint8Array): Generator<ImagePart> {
  const riffEnd = 8 + u32le(bytes, 4);
  let at = 12;
  while (at + 8 <= Math.min(bytes.length, riffEnd)) {
    const type = text(bytes, at, 4);
    const size = u32le(bytes, at + 4);
    const [start, end] = [at + 8, at + 8 + size];
    at = end + (size % 2);
    if (type === "EXIF") {
      // Some writers keep JPEG's prefix before the TIFF header.
      yield { kind: "EXIF", start: startsWith(bytes, start, exifHead) ? start + 6 : start, end };
    } else if (type === "XMP ") {
      yield { kind: "XMP", start, end };
    } else if (webpDrawing.has(type)) {
      if (type !== "VP8X" && type !== "ICCP") yield { kind: "picture", start, end };
    } else {
      yield { kind: "other data", start, end };
    }
  }
  if (bytes.length > riffEnd + 1) yield { kind: "data after the picture", start: riffEnd, end: bytes.length };
}

// ---------------------------------------------------------------------------------------------------------------- GIF

function* gifParts(bytes: Uint8Array): Generator<ImagePart> {
  const table = (flags: number) => (flags & 0x80 ? 3 * 2 ** ((flags & 7) + 1) : 0);
  let at = 13 + table(bytes[10] ?? 0);
  while (at < bytes.length) {
    const introducer = bytes[at];
    if (introducer === 0x3b) {
      if (at + 1 < bytes.length) yield { kind: "data after the picture", start: at + 1, end: bytes.length };
      return;
    }
    if (introducer === 0x2c) {
      const start = at + 11 + table(bytes[at + 9] ?? 0);
      const end = afterSubBlocks(bytes, start);
      yield { kind: "picture", start, end };
      at = end;
    } else if (introducer === 0x21) {
      const label = bytes[at + 1];
      const end = afterSubBlocks(bytes, at + 2);
      if (label === 0xfe) yield { kind: "comment", start: at + 2, end };
      if (label === 0x01) yield { kind: "other data", start: at + 2, end };
      if (label === 0xff && !startsWith(bytes, at + 3, "NETSCAPE2.0")) {
        yield { kind: startsWith(bytes, at + 3, "XMP DataXMP") ? "XMP" : "other data", start: at + 2, end };
      }
      at = end;
    } else {
      yield unexplained(bytes, at);
      return;
    }
  }
}

function afterSubBlocks(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at < bytes.length && bytes[at] !== 0) at += (bytes[at] as number) + 1;
  return at + 1;
}

// -------------------------------------------------------------------------------------------------------------- shared

/** Where a walk loses its way, the rest could hold anything. */
function unexplained(bytes: Uint8Array, start: number): MetadataBlock {
  return { kind: "other data", start, end: bytes.length };
}

/** Signatures of metadata that stand where no walk of a well-made file looks. Six bytes do not meet by chance. */
function strayBlocks(bytes: Uint8Array): MetadataBlock[] {
  const buffer = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const signatures: [string, MetadataBlock["kind"]][] = [
    ["Exif\0\0II*\0", "EXIF"],
    ["Exif\0\0MM\0*", "EXIF"],
    ["http://ns.adobe.com/xap/1.0/", "XMP"],
    ["<x:xmpmeta", "XMP"],
    [`${iptcHead}8BIM`, "IPTC"],
  ];
  return signatures.flatMap(([signature, kind]) => {
    const start = buffer.indexOf(signature, 0, "latin1");
    return start < 0 ? [] : [{ kind, start, end: bytes.length }];
  });
}

function hasGps(tiff: Uint8Array): boolean {
  for (const { tag } of tiffEntries(tiff)) if (tag === gpsDirectory) return true;
  return false;
}

function allZero(bytes: Uint8Array, from: number): boolean {
  for (let at = from; at < bytes.length; at++) if (bytes[at] !== 0) return false;
  return true;
}

function u16(bytes: Uint8Array, at: number): number {
  return ((bytes[at] as number) << 8) | (bytes[at + 1] as number);
}

function u32(bytes: Uint8Array, at: number): number {
  return (u16(bytes, at) * 0x10000 + u16(bytes, at + 2)) >>> 0;
}

function u32le(bytes: Uint8Array, at: number): number {
  return (
    ((bytes[at] as number) |
      ((bytes[at + 1] as number) << 8) |
      ((bytes[at + 2] as number) << 16) |
      ((bytes[at + 3] as number) << 24)) >>>
    0
  );
}
