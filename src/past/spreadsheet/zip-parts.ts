/**
 * The parts of a spreadsheet's file, which is a zip archive (APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12 and 4.3.16). What an archive
 * says of its own sizes may be a lie, so no part is unpacked beyond what is left of a limit, and whatever reads on gets an archive
 * that was written here.
 */
import { crc32, inflateRawSync } from "node:zlib";

export type Parts = ReadonlyMap<string, Uint8Array>;

export type WhyNot = "damaged" | "locked" | "too large";

const endOfDirectory = 0x06054b50;
const directoryEntry = 0x02014b50;
const localEntry = 0x04034b50;
/** The last record may have words of a person behind it, of this many bytes at most. */
const longestWords = 65_535;
const mostParts = 5_000;

/** The parts whose names are wanted, of at most `limit` bytes together when they are unpacked. */
export function partsOf(bytes: Uint8Array, isWanted: (name: string) => boolean, limit: number): Parts | WhyNot {
  try {
    return unpacked(bytes, isWanted, limit);
  } catch (error) {
    // Beyond the end of the file, or no deflated data.
    if ((error as NodeJS.ErrnoException).code === "ERR_BUFFER_TOO_LARGE") return "too large";
    if (error instanceof RangeError || (error as NodeJS.ErrnoException).code?.startsWith("Z_") === true)
      return "damaged";
    throw error;
  }
}

function unpacked(bytes: Uint8Array, isWanted: (name: string) => boolean, limit: number): Parts | WhyNot {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endRecord(view);
  if (end === undefined) return "damaged";
  const count = view.getUint16(end + 10, true);
  if (count > mostParts) return "too large";
  const parts = new Map<string, Uint8Array>();
  let at = view.getUint32(end + 16, true);
  let left = limit;
  for (let entry = 0; entry < count; entry += 1) {
    if (view.getUint32(at, true) !== directoryEntry) return "damaged";
    const [flags, method] = [view.getUint16(at + 8, true), view.getUint16(at + 10, true)];
    const [size, header] = [view.getUint32(at + 20, true), view.getUint32(at + 42, true)];
    const nameEnd = at + 46 + view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + 46, nameEnd));
    at = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (!isWanted(name) || parts.has(name)) continue;
    if ((flags & 1) !== 0) return "locked";
    if (view.getUint32(header, true) !== localEntry || (method !== 0 && method !== 8)) return "damaged";
    const from = header + 30 + view.getUint16(header + 26, true) + view.getUint16(header + 28, true);
    const packed = bytes.subarray(from, from + size);
    if (packed.length !== size) return "damaged";
    if (left <= 0 || (method === 0 && size > left)) return "too large";
    const part = method === 0 ? packed : inflateRawSync(packed, { maxOutputLength: left });
    left -= part.length;
    parts.set(name, part);
  }
  return parts;
}

function endRecord(view: DataView): number | undefined {
  const last = view.byteLength - 22;
  for (let at = last; at >= Math.max(0, last - longestWords); at -= 1)
    if (view.getUint32(at, true) === endOfDirectory) return at;
  return undefined;
}

/** An archive of these parts, none of them packed. */
export function storedZip(parts: Parts): Uint8Array {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  for (const [name, part] of parts) {
    const written = new TextEncoder().encode(name);
    const sizes = [crc32(part), part.length, part.length];
    const header = record(30, [localEntry, 20, 0x800, 0, 0, 0, ...sizes, written.length, 0], "4222224442");
    directory.push(
      record(
        46,
        [directoryEntry, 20, 20, 0x800, 0, 0, 0, ...sizes, written.length, 0, 0, 0, 0, 0, at],
        "42222224442222244",
      ),
      written,
    );
    pieces.push(header, written, part);
    at += header.length + written.length + part.length;
  }
  const length = directory.reduce((sum, piece) => sum + piece.length, 0);
  const end = record(22, [endOfDirectory, 0, 0, parts.size, parts.size, length, at, 0], "42222442");
  return Buffer.concat([...pieces, ...directory, end]);
}

/** Numbers of two and four bytes, one behind the other. */
function record(length: number, numbers: readonly number[], widths: string): Uint8Array {
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const [index, number] of numbers.entries()) {
    if (widths[index] === "4") view.setUint32(at, number, true);
    else view.setUint16(at, number, true);
    at += Number(widths[index]);
  }
  return bytes;
}
