/**
 * Boxes of MP4 and QuickTime files (ISO/IEC 14496-12, 4.2): the movie box wherever it lies, before the pictures or behind
 * them, and the boxes inside one. The pictures themselves are never read.
 */
import { text } from "./image-kind.ts";

export type ReadAt = (from: number, length: number) => Promise<Uint8Array>;

/** Boxes at the top of a file, and bytes of the one that tells: more is no film of a phone or a camera. */
const mostBoxes = 10_000;
const mostHeader = 32_000_000;

/** What the movie box holds; undefined where there is none. */
export async function movieBox(readAt: ReadAt): Promise<Uint8Array | undefined> {
  let at = 0;
  for (let box = 0; box < mostBoxes; box++) {
    const head = await readAt(at, 16);
    if (head.length < 8) return undefined;
    const view = new DataView(head.buffer, head.byteOffset, head.byteLength);
    const isLong = view.getUint32(0) === 1 && head.length >= 16;
    const size = isLong ? Number(view.getBigUint64(8)) : view.getUint32(0);
    const start = isLong ? 16 : 8;
    if (text(head, 4, 4) === "moov") {
      const rest = size === 0 ? mostHeader : Math.min(size - start, mostHeader);
      return rest > 0 ? readAt(at + start, rest) : undefined;
    }
    // A box that goes to the end of the file, or one that lies.
    if (size < start) return undefined;
    at += size;
  }
  return undefined;
}

export interface Box {
  readonly type: string;
  readonly content: Uint8Array;
}

export function* boxesIn(bytes: Uint8Array): Generator<Box> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 0; at + 8 <= bytes.length; ) {
    const isLong = view.getUint32(at) === 1 && at + 16 <= bytes.length;
    const size = isLong ? Number(view.getBigUint64(at + 8)) : view.getUint32(at);
    const start = isLong ? 16 : 8;
    if (size < start) return;
    yield { type: text(bytes, at + 4, 4), content: bytes.subarray(at + start, Math.min(at + size, bytes.length)) };
    at += size;
  }
}

/** Bytes of the first box along a way of types: ["mdia", "mdhd"]. */
export function boxAt(bytes: Uint8Array, way: readonly string[]): Uint8Array | undefined {
  let inside: Uint8Array | undefined = bytes;
  for (const type of way) {
    if (inside === undefined) return undefined;
    inside = [...boxesIn(inside)].find((box) => box.type === type)?.content;
  }
  return inside;
}
