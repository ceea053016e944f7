/**
 * Metadata items of AVIF and HEIC: the boxes of the ISO base media file format (ISO/IEC 14496-12) that name items
 * ("iinf"), say where they lie ("iloc") and hold them. EXIF lies in an item of type "Exif" behind a four-byte offset to
 * its TIFF header (ISO/IEC 23008-12 annex A), XMP in a "mime" item.
 */
import { text } from "./image-kind.ts";
import type { ImagePart } from "./metadata-blocks.ts";

interface Box {
  readonly type: string;
  readonly start: number;
  readonly end: number;
}

interface Item {
  readonly id: number;
  readonly type: string;
}

/** Boxes at the top of the file that draw or wrap the picture. */
const drawing = new Set(["ftyp", "meta", "mdat", "idat", "free", "skip", "moov", "moof", "mfra"]);

export function* mediaBlocks(bytes: Uint8Array): Generator<ImagePart> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (const box of boxes(view, 0, bytes.length)) {
    if (box.type === "meta") yield* metaItems(view, box);
    else if (box.type === "mdat") yield { kind: "picture", start: box.start, end: box.end };
    else if (box.type === "moov") {
      // A sequence keeps words and places of its own in user data.
      for (const inner of boxes(view, box.start, box.end)) {
        if (inner.type === "udta" || inner.type === "meta")
          yield { kind: "other data", start: inner.start, end: inner.end };
      }
    } else if (!drawing.has(box.type)) yield { kind: "other data", start: box.start, end: box.end };
  }
}

function* metaItems(view: DataView, meta: Box): Generator<ImagePart> {
  // A full box: version and flags stand before its children.
  const children = [...boxes(view, meta.start + 4, meta.end)];
  const info = children.find(({ type }) => type === "iinf");
  const places = children.find(({ type }) => type === "iloc");
  const idat = children.find(({ type }) => type === "idat")?.start ?? 0;
  if (!info) return;
  const where = places ? itemPlaces(view, places, idat) : new Map<number, { start: number; end: number }>();
  for (const item of items(view, info)) {
    const found = where.get(item.id) ?? { start: view.byteLength, end: view.byteLength };
    if (item.type === "Exif") {
      const skip = found.start + 4 <= view.byteLength ? 4 + view.getUint32(found.start) : 4;
      yield { kind: "EXIF", start: found.start + skip, end: found.end };
    } else if (item.type === "mime") {
      yield { kind: "XMP", start: found.start, end: found.end };
    } else if (item.type === "uri ") {
      yield { kind: "other data", start: found.start, end: found.end };
    }
  }
}

function* boxes(view: DataView, from: number, to: number): Generator<Box> {
  let at = from;
  const limit = Math.min(to, view.byteLength);
  while (at + 8 <= limit) {
    let size = view.getUint32(at);
    let head = 8;
    if (size === 1 && at + 16 <= limit) {
      size = Number(view.getBigUint64(at + 8));
      head = 16;
    } else if (size === 0) {
      size = to - at;
    }
    if (size < head) return;
    const type = text(new Uint8Array(view.buffer, view.byteOffset, view.byteLength), at + 4, 4);
    yield { type, start: at + head, end: at + size };
    at += size;
  }
}

function* items(view: DataView, info: Box): Generator<Item> {
  const version = byteAt(view, info.start);
  const first = info.start + 4 + (version === 0 ? 2 : 4);
  const bytes = new Uint8Array(view.buffer, view.byteOffset, view.byteLength);
  for (const entry of boxes(view, first, info.end)) {
    if (entry.type !== "infe" || entry.start + 12 > view.byteLength) continue;
    const long = byteAt(view, entry.start) >= 3;
    const id = long ? view.getUint32(entry.start + 4) : view.getUint16(entry.start + 4);
    // Id, then two bytes of protection index, then the type.
    yield { id, type: text(bytes, entry.start + (long ? 10 : 8), 4) };
  }
}

/** First and last byte of each item; of an item in several extents the span over all. */
function itemPlaces(view: DataView, box: Box, idat: number): Map<number, { start: number; end: number }> {
  const found = new Map<number, { start: number; end: number }>();
  const reader = new FieldReader(view, box.start, Math.min(box.end, view.byteLength));
  const version = reader.take(1);
  reader.take(3);
  const sizes = reader.take(2);
  const [offsetSize, lengthSize, baseSize, indexSize] = [
    (sizes >> 12) & 15,
    (sizes >> 8) & 15,
    (sizes >> 4) & 15,
    version > 0 ? sizes & 15 : 0,
  ];
  const count = reader.take(version < 2 ? 2 : 4);
  for (let i = 0; i < count && !reader.ended; i++) {
    const id = reader.take(version < 2 ? 2 : 4);
    const inIdat = version > 0 && (reader.take(2) & 15) === 1;
    reader.take(2);
    const base = reader.take(baseSize) + (inIdat ? idat : 0);
    const extents = reader.take(2);
    for (let extent = 0; extent < extents && !reader.ended; extent++) {
      reader.take(indexSize);
      const start = base + reader.take(offsetSize);
      const end = start + reader.take(lengthSize);
      const span = found.get(id);
      found.set(id, span ? { start: Math.min(span.start, start), end: Math.max(span.end, end) } : { start, end });
    }
  }
  return found;
}

/** Takes big-endian numbers one after another; past the end it gives zeros and says so. */
class FieldReader {
  readonly #view: DataView;
  readonly #end: number;
  #at: number;
  ended = false;

  constructor(view: DataView, start: number, end: number) {
    this.#view = view;
    this.#at = start;
    this.#end = end;
  }

  take(size: number): number {
    if (this.#at + size > this.#end) {
      this.ended = true;
      return 0;
    }
    let value = 0;
    for (let i = 0; i < size; i++) value = value * 256 + this.#view.getUint8(this.#at + i);
    this.#at += size;
    return value;
  }
}

function byteAt(view: DataView, at: number): number {
  return at < view.byteLength ? view.getUint8(at) : 0;
}
