/**
 * Mutated photo headers against the date reader: whatever the bytes say, it must end soon, never throw, and give either a
 * day that exists or none. Seeds are whole small photos of every kind, so that mutations reach deep into real structures.
 */
import { readFile } from "node:fs/promises";
import path from "node:path";
import fc from "fast-check";
import sharp from "sharp";
import { isDay } from "../../src/calendar.ts";
import { photoHead } from "../../src/photos/exif-tags.ts";
import { imageMetadataBlocks } from "../../src/photos/index.ts";
import { photoMoment } from "../../src/photos/photo-date.ts";

const fixtures = path.join(import.meta.dirname, "../../tests/fixtures/photos");

/** A header that takes longer has found a loop. */
const patienceMs = 1000;

export interface FuzzFigures {
  readonly cases: number;
  /** Cases in which a day was still found: the mutations must not all be so coarse that nothing is read. */
  readonly withDay: number;
  readonly slowestMs: number;
}

export async function fuzzPhotoDates(cases: number, seed = 20_260_718): Promise<FuzzFigures> {
  const seeds = await seedPhotos();
  let withDay = 0;
  let slowestMs = 0;
  const property = fc.asyncProperty(mutated(seeds), async (bytes) => {
    const began = performance.now();
    imageMetadataBlocks(bytes);
    const { tags } = await photoHead(bytes);
    const moment = photoMoment({ tags, path: "photos/a.jpg", timeZone: "Europe/London" });
    const took = performance.now() - began;
    slowestMs = Math.max(slowestMs, took);
    if (took > patienceMs) throw new Error(`took ${took.toFixed(0)} ms`);
    if (moment.day !== undefined) withDay += 1;
    if (moment.day === undefined ? moment.dateBasis !== "unknown" : !isDay(moment.day))
      throw new Error(JSON.stringify(moment));
    if (moment.instant !== undefined && Number.isNaN(Date.parse(moment.instant))) throw new Error(moment.instant);
    const position = tags?.position;
    if (position && !(Math.abs(position.latitude) <= 90 && Math.abs(position.longitude) <= 180))
      throw new Error("a place off the Earth");
  });
  await fc.assert(property, { numRuns: cases, seed });
  return { cases, withDay, slowestMs };
}

async function seedPhotos(): Promise<Buffer[]> {
  const picture = sharp({ create: { width: 24, height: 16, channels: 3, background: "#5a8a3c" } }).withExif({
    IFD0: { Orientation: "6", Make: "Maker", Model: "Model" },
    IFD2: {
      DateTimeOriginal: "2026:05:16 18:05:09",
      OffsetTimeOriginal: "+01:00",
      SubSecTimeOriginal: "123",
      CreateDate: "2026:05:16 18:05:09",
    },
    IFD3: {
      GPSLatitudeRef: "N",
      GPSLatitude: "54/1 18/1 4570/100",
      GPSLongitudeRef: "W",
      GPSLongitude: "5/1 36/1 1220/100",
      GPSTimeStamp: "17/1 5/1 7/1",
      GPSDateStamp: "2026:05:16",
    },
  });
  const drawn = await Promise.all(
    (["jpeg", "png", "webp", "avif"] as const).map((format) => picture.clone()[format]().toBuffer()),
  );
  return [
    ...drawn,
    await readFile(path.join(fixtures, "upright.heic")),
    await readFile(path.join(fixtures, "turned.heic")),
  ];
}

/** Bytes changed, lengths and pointers set to telling numbers, runs doubled or cut out, the end cut off. */
function mutated(seeds: readonly Buffer[]): fc.Arbitrary<Buffer> {
  const place = fc.nat(4095);
  const change = fc.oneof(
    fc.record({ kind: fc.constant("byte" as const), at: place, value: fc.nat(255) }),
    fc.record({
      kind: fc.constant("number" as const),
      at: place,
      value: fc.constantFrom(0, 1, 8, 0x7fff, 0x8000, 0xffff, 0x7fffffff, 0x80000000, 0xfffffff0, 0xffffffff),
      size: fc.constantFrom(2, 4),
      little: fc.boolean(),
    }),
    // A pointer back into the directories is how a loop begins.
    fc.record({
      kind: fc.constant("number" as const),
      at: place,
      value: fc.nat(200),
      size: fc.constant(4),
      little: fc.boolean(),
    }),
    fc.record({
      kind: fc.constant("digit" as const),
      at: place,
      value: fc.constantFrom(...Buffer.from("0123456789:+-Z \0")),
    }),
    fc.record({ kind: fc.constant("cut" as const), at: place, length: fc.nat(40) }),
    fc.record({ kind: fc.constant("double" as const), at: place, length: fc.nat(200) }),
    fc.record({ kind: fc.constant("end" as const), at: place }),
  );
  return fc
    .tuple(fc.constantFrom(...seeds), fc.array(change, { minLength: 1, maxLength: 8 }))
    .map(([seed, changes]) => {
      let bytes = Buffer.from(seed);
      for (const step of changes) {
        if (bytes.length < 8) break;
        const at = step.at % bytes.length;
        if (step.kind === "byte") bytes[at] = step.value;
        else if (step.kind === "digit") bytes[nextDigit(bytes, at)] = step.value;
        else if (step.kind === "number")
          writeNumber(bytes, Math.min(at, bytes.length - 4), step.value, step.size, step.little);
        else if (step.kind === "cut") bytes = Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + step.length)]);
        else if (step.kind === "double")
          bytes = Buffer.concat([bytes.subarray(0, at), bytes.subarray(at, at + step.length), bytes.subarray(at)]);
        else bytes = bytes.subarray(0, at);
      }
      return bytes;
    });
}

/** Dates and offsets are the only runs of digits in these seeds. */
function nextDigit(bytes: Buffer, from: number): number {
  for (let at = from; at < bytes.length; at++) if ((bytes[at] ?? 0) >= 0x30 && (bytes[at] ?? 0) <= 0x3a) return at;
  return from;
}

function writeNumber(bytes: Buffer, at: number, value: number, size: number, little: boolean): void {
  if (size === 2) little ? bytes.writeUInt16LE(value & 0xffff, at) : bytes.writeUInt16BE(value & 0xffff, at);
  else if (little) bytes.writeUInt32LE(value, at);
  else bytes.writeUInt32BE(value, at);
}
