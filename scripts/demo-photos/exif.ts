/** The EXIF block of a phone's JPEG, written by hand: big-endian TIFF in an APP1 segment (CIPA DC-008). */

export interface PhoneFacts {
  /** Wall clock as EXIF writes it, "2026:05:16 18:15:03". */
  readonly taken: string;
  /** "+01:00". */
  readonly offset?: string | undefined;
  readonly subSeconds?: string | undefined;
  readonly orientation: number;
  readonly position?: { readonly latitude: number; readonly longitude: number; readonly altitude: number } | undefined;
  /** UTC, "2026:05:16" and "17:15:03"; only written together with a position. */
  readonly gpsDay?: string | undefined;
  readonly gpsTime?: string | undefined;
}

type Value = { tag: number; type: number; count: number; bytes: Uint8Array };

const ascii = (tag: number, text: string): Value => ({
  tag,
  type: 2,
  count: text.length + 1,
  bytes: new TextEncoder().encode(`${text}\0`),
});
const short = (tag: number, n: number): Value => ({ tag, type: 3, count: 1, bytes: new Uint8Array([n >> 8, n & 255]) });
const long = (tag: number, n: number): Value => ({ tag, type: 4, count: 1, bytes: word(n) });
const byte = (tag: number, n: number): Value => ({ tag, type: 1, count: 1, bytes: new Uint8Array([n]) });
const undefinedBytes = (tag: number, text: string): Value => ({
  tag,
  type: 7,
  count: text.length,
  bytes: new TextEncoder().encode(text),
});
const rationals = (tag: number, parts: readonly (readonly [number, number])[]): Value => ({
  tag,
  type: 5,
  count: parts.length,
  bytes: joined(parts.flatMap(([a, b]) => [word(a), word(b)])),
});

function word(n: number): Uint8Array {
  return new Uint8Array([(n >>> 24) & 255, (n >>> 16) & 255, (n >>> 8) & 255, n & 255]);
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const out = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    out.set(part, at);
    at += part.length;
  }
  return out;
}

/** A directory whose values stand right behind it; `at` is its offset in the TIFF block. */
function directory(values: readonly Value[], at: number): Uint8Array {
  const sorted = [...values].sort((a, b) => a.tag - b.tag);
  const entries: Uint8Array[] = [new Uint8Array([sorted.length >> 8, sorted.length & 255])];
  const heap: Uint8Array[] = [];
  let next = at + 2 + sorted.length * 12 + 4;
  for (const value of sorted) {
    const head = new Uint8Array([value.tag >> 8, value.tag & 255, value.type >> 8, value.type & 255]);
    let slot = new Uint8Array(4);
    if (value.bytes.length <= 4) slot.set(value.bytes);
    else {
      slot = new Uint8Array(word(next));
      const even = value.bytes.length % 2 === 0 ? value.bytes : joined([value.bytes, new Uint8Array(1)]);
      heap.push(even);
      next += even.length;
    }
    entries.push(head, word(value.count), slot);
  }
  return joined([...entries, word(0), ...heap]);
}

const degrees = (value: number): (readonly [number, number])[] => {
  const whole = Math.floor(Math.abs(value));
  const minutes = (Math.abs(value) - whole) * 60;
  return [
    [whole, 1],
    [Math.floor(minutes), 1],
    [Math.round((minutes - Math.floor(minutes)) * 6000), 100],
  ];
};

/** "Exif\0\0" and the TIFF block behind it: what sits in the APP1 segment. */
export function exifBlock(facts: PhoneFacts): Uint8Array {
  const exif: Value[] = [
    undefinedBytes(0x9000, "0232"),
    ascii(0x9003, facts.taken),
    ascii(0x9004, facts.taken),
    rationals(0x829d, [[18, 10]]),
    rationals(0x920a, [[540, 100]]),
    short(0xa405, 26),
  ];
  if (facts.offset) exif.push(ascii(0x9010, facts.offset), ascii(0x9011, facts.offset));
  if (facts.subSeconds) exif.push(ascii(0x9291, facts.subSeconds));
  const gps: Value[] = [];
  if (facts.position) {
    const { latitude, longitude, altitude } = facts.position;
    gps.push(
      { tag: 0, type: 1, count: 4, bytes: new Uint8Array([2, 3, 0, 0]) },
      ascii(1, latitude < 0 ? "S" : "N"),
      rationals(2, degrees(latitude)),
      ascii(3, longitude < 0 ? "W" : "E"),
      rationals(4, degrees(longitude)),
      byte(5, 0),
      rationals(6, [[Math.round(altitude * 10), 10]]),
    );
    if (facts.gpsDay && facts.gpsTime) {
      const [h, m, s] = facts.gpsTime.split(":").map(Number) as [number, number, number];
      gps.push(
        rationals(7, [
          [h, 1],
          [m, 1],
          [s, 1],
        ]),
        ascii(0x1d, facts.gpsDay),
      );
    }
  }
  const main = (exifAt: number, gpsAt: number): Value[] => [
    short(0x0112, facts.orientation),
    rationals(0x011a, [[72, 1]]),
    rationals(0x011b, [[72, 1]]),
    short(0x0128, 2),
    ascii(0x0132, facts.taken),
    long(0x8769, exifAt),
    ...(gps.length > 0 ? [long(0x8825, gpsAt)] : []),
  ];
  const mainLength = directory(main(0, 0), 8).length;
  const exifAt = 8 + mainLength;
  const exifBytes = directory(exif, exifAt);
  const gpsAt = exifAt + exifBytes.length;
  const tiff = [word(0x4d4d002a), word(8), directory(main(exifAt, gpsAt), 8), exifBytes];
  if (gps.length > 0) tiff.push(directory(gps, gpsAt));
  return joined([new TextEncoder().encode("Exif\0\0"), ...tiff]);
}

/** Puts the block right behind the start of a JPEG, where phones put it. */
export function withExif(jpeg: Uint8Array, facts: PhoneFacts): Uint8Array {
  const block = exifBlock(facts);
  const size = block.length + 2;
  return joined([jpeg.subarray(0, 2), new Uint8Array([0xff, 0xe1, size >> 8, size & 255]), block, jpeg.subarray(2)]);
}
