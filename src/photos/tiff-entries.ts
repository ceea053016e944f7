/**
 * The entries of an EXIF block. TIFF 6.0, section 2: a directory is a count, entries of twelve bytes (tag, type, number of
 * values, the values or where they stand), and a link to the next directory. EXIF and GPS hang below the first directory.
 */

export interface TiffEntry {
  readonly tag: number;
  /** Where the entry itself stands in the block. */
  readonly at: number;
  /** Bytes of all its values; four thousand millions when it lies. */
  readonly bytes: number;
  /** First byte of its values. */
  readonly values: number;
}

const exifDirectory = 0x8769;
export const gpsDirectory = 0x8825;

/** Bytes of one value by TIFF type: BYTE, ASCII, SHORT, LONG, RATIONAL and their signed kin, FLOAT, DOUBLE, IFD. */
const sizes: readonly number[] = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4];

function isLittleEndian(block: Uint8Array): boolean {
  return block[0] === 0x49;
}

/** Entries of the first directory and of the EXIF and GPS directories below it; a directory is read once, so that loops end. */
export function* tiffEntries(block: Uint8Array): Generator<TiffEntry> {
  if (block.length < 8) return;
  const view = new DataView(block.buffer, block.byteOffset, block.byteLength);
  const little = isLittleEndian(block);
  const seen = new Set<number>();
  const waiting = [view.getUint32(4, little)];
  for (let directory = waiting.pop(); directory !== undefined; directory = waiting.pop()) {
    if (seen.has(directory) || directory + 2 > block.length) continue;
    seen.add(directory);
    const end = Math.min(block.length - 12, directory + 2 + (view.getUint16(directory, little) - 1) * 12);
    for (let at = directory + 2; at <= end; at += 12) {
      const tag = view.getUint16(at, little);
      const bytes = (sizes[view.getUint16(at + 2, little)] ?? 0) * view.getUint32(at + 4, little);
      const value = view.getUint32(at + 8, little);
      if (tag === exifDirectory || tag === gpsDirectory) waiting.push(value);
      yield { tag, at, bytes, values: bytes > 4 ? value : at + 8 };
    }
  }
}

/**
 * A block safe to hand to a reader that believes every length: one entry that claims millions of numbers costs it seconds
 * and gigabytes. The block itself when all entries fit inside it, else a copy in which those that do not say nothing.
 */
export function honestTiff(block: Uint8Array): Uint8Array {
  const lies = [...tiffEntries(block)].filter(({ bytes, values }) => values + bytes > block.length);
  if (lies.length === 0) return block;
  const copy = Uint8Array.from(block);
  // Tag, type and number of values: an entry of tag 0 with one byte in place.
  for (const { at } of lies) copy.set(isLittleEndian(block) ? [0, 0, 1, 0, 1, 0, 0, 0] : [0, 0, 0, 1, 0, 0, 0, 1], at);
  return copy;
}
