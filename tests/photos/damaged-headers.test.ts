import { expect, test } from "vitest";
import { fuzzPhotoDates } from "../../scripts/bench/fuzz-photo-dates.ts";
import { readPhotoHead } from "../../src/photos/exif-tags.ts";
import { jpeg, photosInMemory, tag, tiff, withExif } from "./drawn.ts";

test("two thousand mutated headers give a day or none; the bench runs twenty thousand", async () => {
  const { cases, withDay } = await fuzzPhotoDates(2000);
  expect(cases).toBe(2000);
  expect(withDay).toBeGreaterThan(200);
});

const head = async (block: Uint8Array) => readPhotoHead(photosInMemory({ a: withExif(await jpeg(), block) }), "a");
const exif = { [tag.original]: "2026:05:16 10:00:00" };

test("a directory that points to itself ends", async () => {
  const block = tiff({ exif });
  // The EXIF pointer of the first directory, and its link to a next directory, both lead back to the first.
  const pointer = block.indexOf(Buffer.from([0x69, 0x87]));
  block.writeUInt32LE(8, pointer + 8);
  expect((await head(block)).kind).toBe("jpeg");
  const next = tiff({ exif });
  next.writeUInt32LE(8, 8 + 2 + 12);
  expect((await head(next)).kind).toBe("jpeg");
});

test("lengths that lie end", async () => {
  for (const claim of [0xffffffff, 0x7fffffff, 0x10000, 21]) {
    const block = tiff({ exif });
    const entry = block.indexOf(Buffer.from([0x03, 0x90]));
    block.writeUInt32LE(claim, entry + 4);
    expect((await head(block)).kind).toBe("jpeg");
  }
});

test("an entry that claims millions of numbers costs nothing and spoils no other", async () => {
  const block = tiff({
    exif,
    gps: {
      [tag.latitudeRef]: "N",
      [tag.latitude]: [
        [54, 1],
        [18, 1],
        [0, 1],
      ],
    },
  });
  const gps = block.readUInt32LE(block.indexOf(Buffer.from([0x25, 0x88])) + 8);
  block.writeUInt32LE(0x00db0003, gps + 2 + 12 + 4);
  const began = performance.now();
  expect((await head(block)).tags?.original).toBe("2026:05:16 10:00:00");
  expect(performance.now() - began).toBeLessThan(500);
});
