/**
 * Makes an EXIF block safe to hand to a reader that believes every length: one entry that claims four thousand million
 * numbers would cost seconds and gigabytes. TIFF 6.0, section 2: a directory is a count, entries of twelve bytes (tag,
 * type, number of values, the values or where they stand), and a link to the next directory.
 */

/** Bytes of one value by TIFF type: BYTE, ASCII, SHORT, LONG, RATIONAL and their signed kin, FLOAT, DOUBLE, IFD. */
const sizes: readonly number[] = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4];

const exifDirectory = 0x8769;
const gpsDirectory = 0x8825;

/** The block itself when all its entries fit inside it, else a copy in which those that do not say nothing. */
export function honestTiff(block: Uint8Array): Uint8Array {
  if (block.length < 8) return block;
  const view = new DataView(block.buffer, block.byteOffset, block.byteLength);
  const little = block[0] === 0x49;
  const lies: number[] = [];
  const seen = new Set<number>();
  const waiting = [view.getUint32(4, little)];
  for (let directory = waiting.pop(); directory !== undefined; directory = waiting.pop()) {
    if (seen.has(directory) || directory + 2 > block.length) continue;
    seen.add(directory);
    const end = Math.min(block.length - 12, directory + 2 + (view.getUint16(directory, little) - 1) * 12);
    for (let entry = directory + 2; entry <= end; entry += 12) {
      const tag = view.getUint16(entry, little);
      const bytes = (sizes[view.getUint16(entry + 2, little)] ?? 0) * view.getUint32(entry + 4, little);
      const value = view.getUint32(entry + 8, little);
      if (bytes > 4 && value + bytes > block.length) lies.push(entry);
      else if (tag === exifDirectory || tag === gpsDirectory) waiting.push(value);
    }
  }
  if (lies.length === 0) return block;
  const copy = Uint8Array.from(block);
  // Tag, type and number of values: an entry of tag 0 with one byte in place.
  for (const entry of lies) copy.set(little ? [0, 0, 1, 0, 1, 0, 0, 0] : [0, 0, 0, 1, 0, 0, 0, 1], entry);
  return copy;
}
