/** Small pictures, EXIF blocks and records for the photo tests. */
import sharp, { type Sharp } from "sharp";
import type { Bed, GardenSettings, Note, PhotoSidecar, Records, Site } from "../../src/model.ts";

// ------------------------------------------------------------------------------------------------------------ pictures

/** A flat picture with one darker corner, so that turning it shows. */
export function drawn(width: number, height: number, colour = "#5a8a3c"): Sharp {
  const corner = {
    create: { width: Math.max(1, width >> 2), height: Math.max(1, height >> 2), channels: 3, background: "#201008" },
  } as const;
  return sharp({ create: { width, height, channels: 3, background: colour } }).composite([
    { input: corner, left: 0, top: 0 },
  ]);
}

export function jpeg(width = 64, height = 48): Promise<Buffer> {
  return drawn(width, height).jpeg().toBuffer();
}

/** A JPEG with an EXIF block right behind its first marker. */
export function withExif(picture: Uint8Array, tiffBlock: Uint8Array): Buffer {
  return withSegment(picture, 0xe1, Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiffBlock]));
}

export function withSegment(picture: Uint8Array, marker: number, content: Uint8Array): Buffer {
  const head = Buffer.from([0xff, marker, (content.length + 2) >> 8, (content.length + 2) & 0xff]);
  return Buffer.concat([picture.subarray(0, 2), head, content, picture.subarray(2)]);
}

// ---------------------------------------------------------------------------------------------------------------- EXIF

/** Text, one number (a SHORT), or a list of fractions (RATIONALs). */
type TagValue = string | number | readonly (readonly [number, number])[];
type Tags = Readonly<Record<number, TagValue>>;

export const tag = {
  orientation: 0x0112,
  modified: 0x0132,
  original: 0x9003,
  digitized: 0x9004,
  offset: 0x9010,
  offsetOriginal: 0x9011,
  offsetDigitized: 0x9012,
  subSecOriginal: 0x9291,
  latitudeRef: 1,
  latitude: 2,
  longitudeRef: 3,
  longitude: 4,
  gpsTime: 7,
  gpsDay: 0x1d,
  gpsError: 0x1f,
} as const;

/** A TIFF block (little-endian) with a first directory, an EXIF directory and a GPS directory. */
export function tiff({ ifd0 = {}, exif, gps }: { ifd0?: Tags; exif?: Tags; gps?: Tags }): Buffer {
  const order = [["ifd0", ifd0] as const, ["exif", exif] as const, ["gps", gps] as const].filter(
    ([, tags]) => tags !== undefined,
  );
  const pointers: Record<string, number> = { exif: 0x8769, gps: 0x8825 };
  const entriesOf = (name: string, tags: Tags | undefined) =>
    Object.keys(tags ?? {}).length + (name === "ifd0" ? order.length - 1 : 0);
  let offset = 8;
  const starts: Record<string, number> = {};
  for (const [name, tags] of order) {
    starts[name] = offset;
    offset += 2 + entriesOf(name, tags) * 12 + 4;
  }
  const data: Buffer[] = [];
  let dataAt = offset;
  const directories = order.map(([name, tags]) => {
    const entries: Buffer[] = [];
    const all = new Map<number, Buffer>();
    for (const [key, value] of Object.entries(tags ?? {})) {
      const { type, count, bytes } = encode(value);
      const entry = Buffer.alloc(12);
      entry.writeUInt16LE(Number(key), 0);
      entry.writeUInt16LE(type, 2);
      entry.writeUInt32LE(count, 4);
      if (bytes.length <= 4) bytes.copy(entry, 8);
      else {
        entry.writeUInt32LE(dataAt, 8);
        data.push(bytes);
        dataAt += bytes.length;
      }
      all.set(Number(key), entry);
    }
    if (name === "ifd0") {
      for (const [other] of order.slice(1)) {
        const entry = Buffer.alloc(12);
        entry.writeUInt16LE(pointers[other] as number, 0);
        entry.writeUInt16LE(4, 2);
        entry.writeUInt32LE(1, 4);
        entry.writeUInt32LE(starts[other] as number, 8);
        all.set(pointers[other] as number, entry);
      }
    }
    for (const key of [...all.keys()].sort((a, b) => a - b)) entries.push(all.get(key) as Buffer);
    const count = Buffer.alloc(2);
    count.writeUInt16LE(entries.length);
    return Buffer.concat([count, ...entries, Buffer.alloc(4)]);
  });
  const head = Buffer.from([0x49, 0x49, 0x2a, 0, 8, 0, 0, 0]);
  return Buffer.concat([head, ...directories, ...data]);
}

function encode(value: TagValue): { type: number; count: number; bytes: Buffer } {
  if (typeof value === "string") {
    const bytes = Buffer.from(`${value}\0`, "latin1");
    return { type: 2, count: bytes.length, bytes };
  }
  if (typeof value === "number") {
    const bytes = Buffer.alloc(2);
    bytes.writeUInt16LE(value);
    return { type: 3, count: 1, bytes };
  }
  const bytes = Buffer.alloc(8 * value.length);
  value.forEach(([numerator, denominator], index) => {
    bytes.writeUInt32LE(numerator, index * 8);
    bytes.writeUInt32LE(denominator, index * 8 + 4);
  });
  return { type: 5, count: value.length, bytes };
}

// ------------------------------------------------------------------------------------------------------------- records

export const settings: GardenSettings = {
  name: "Two Beds",
  southern: false,
  timeZone: "Europe/London",
  units: "metric",
  language: "en-GB",
  seasonStarts: "01-01",
  narrationRate: 130,
  photoGapDays: 14,
  kit: [],
  weights: {},
  base: "/",
  body: "",
};

export function bed(id: string, more: Partial<Bed> = {}): Bed {
  return {
    id,
    title: id.replaceAll("-", " "),
    private: false,
    body: "",
    described: true,
    alsoCalled: [],
    shade: [],
    built: [],
    filled: [],
    viewpoints: [],
    ...more,
  };
}

export function site(id: string, more: Partial<Site> = {}): Site {
  return { id, title: id, private: false, body: "", described: true, gates: [], mustPass: [], ...more };
}

export function note(id: string, more: Partial<Note> = {}): Note {
  return {
    id,
    day: id.slice(0, 10),
    beds: [],
    private: false,
    story: [],
    photos: [],
    place: { file: `notes/${id}.md`, line: 1, column: 1 },
    ...more,
  };
}

export function sidecar(photo: string, more: Partial<PhotoSidecar> = {}): PhotoSidecar {
  return { photo, varieties: [], private: false, ...more };
}

export function records(
  photoFiles: readonly string[],
  more: {
    beds?: readonly Bed[];
    sites?: readonly Site[];
    notes?: readonly Note[];
    sidecars?: readonly PhotoSidecar[];
  } & Partial<Omit<Records, "beds" | "sites" | "notes">> = {},
): Records {
  const { beds = [], sites = [], notes = [], sidecars = [], ...rest } = more;
  return {
    settings,
    sites: new Map(sites.map((one) => [one.id, one])),
    beds: new Map(beds.map((one) => [one.id, one])),
    varieties: new Map(),
    crops: new Map(),
    gear: new Map(),
    trials: new Map(),
    episodes: new Map(),
    notes,
    events: [],
    readings: [],
    words: [],
    photoFiles,
    clipFiles: [],
    asideFiles: [],
    sounds: [],
    photoSidecars: new Map(sidecars.map((one) => [one.photo, one])),
    weatherFiles: [],
    problems: [],
    ...rest,
  };
}

/** Photo files held in memory. */
export function photosInMemory(
  files: Readonly<Record<string, Uint8Array>>,
  modified?: Readonly<Record<string, number>>,
) {
  const bytesOf = (path: string) => {
    const bytes = files[path];
    if (!bytes) throw Object.assign(new Error(`no such file: ${path}`), { code: "ENOENT" });
    return bytes;
  };
  return {
    read: async (path: string) => bytesOf(path),
    readHead: async (path: string, length: number) => bytesOf(path).subarray(0, length),
    modified: async (path: string) => modified?.[path],
  };
}
