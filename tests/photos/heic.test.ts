import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import sharp from "sharp";
import { afterEach, beforeEach, expect, test } from "vitest";
import { imageMetadataBlocks, publishPhotos, readPhotos } from "../../src/photos/index.ts";
import { bed, photosInMemory, records } from "./drawn.ts";

/** Drawn here and encoded with Debian's heif-enc: 128 by 96 pixels, green, with a dark corner at the top left. */
const fixtures = fileURLToPath(new URL("../fixtures/photos/", import.meta.url));

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(path.join(tmpdir(), "plotreel-heic-"));
});
afterEach(() => rm(dir, { recursive: true, force: true }));

const publish = (...names: string[]) =>
  publishPhotos(
    names.map((name) => ({ path: name, dateBasis: "unknown", varieties: [], private: false })),
    { recordsDir: dir, cacheDir: path.join(dir, "cache") },
  );

async function darkCorner(file: string, width: number, height: number): Promise<string> {
  const { data } = await sharp(file).greyscale().raw().toBuffer({ resolveWithObject: true });
  const at = (x: number, y: number) => data[y * width + x] ?? 255;
  const corners = {
    "top left": at(8, 8),
    "top right": at(width - 8, 8),
    "bottom left": at(8, height - 8),
    "bottom right": at(width - 8, height - 8),
  };
  return Object.entries(corners).sort(([, a], [, b]) => a - b)[0]?.[0] ?? "";
}

test("its day and its place on Earth are found like any other photo's", async () => {
  const file = "photos/long-bed/gate/IMG_1.heic";
  const bytes = await readFile(path.join(fixtures, "upright.heic"));
  expect(imageMetadataBlocks(bytes).map(({ kind }) => kind)).toEqual(["EXIF", "GPS"]);
  const { photos, problems } = await readPhotos(
    records([file], { beds: [bed("long-bed")] }),
    photosInMemory({ [file]: bytes }),
  );
  expect(problems).toEqual([]);
  expect(photos[0]).toMatchObject({ instant: "2026-05-16T17:05:09.000Z", dateBasis: "exif offset", bed: "long-bed" });
});

test("one whose container does not turn it, though its EXIF would, is turned by a person's word", async () => {
  const name = "turned-by-exif-only.heic";
  await cp(path.join(fixtures, name), path.join(dir, name));
  const { copies } = await publishPhotos(
    [{ path: name, dateBasis: "unknown", varieties: [], private: false, turn: 90 }],
    { recordsDir: dir, cacheDir: path.join(dir, "cache") },
  );
  const published = copies.get(name);
  expect([published?.width, published?.height]).toEqual([96, 128]);
  expect(await darkCorner(published?.files.at(-1)?.cachePath ?? "", 96, 128)).toBe("top right");
});

test.each([
  ["upright.heic", 128, 96, "top left"],
  // The container turns it, and EXIF says so again: one turn.
  ["turned.heic", 96, 128, "top right"],
  ["turned-by-exif-only.heic", 128, 96, "top left"],
])("%s comes out upright, small and bare", async (name, width, height, corner) => {
  await cp(path.join(fixtures, name), path.join(dir, name));
  const { copies, problems } = await publish(name);
  expect(problems).toEqual([]);
  const published = copies.get(name);
  expect([published?.width, published?.height]).toEqual([width, height]);
  for (const { cachePath } of published?.files ?? []) {
    expect(imageMetadataBlocks(await readFile(cachePath))).toEqual([]);
    expect(await darkCorner(cachePath, width, height)).toBe(corner);
  }
});

test("a wide-gamut phone picture is taken to sRGB", async () => {
  // Encoded from (90, 138, 60) in sRGB taken to Display P3.
  await cp(path.join(fixtures, "p3.heic"), path.join(dir, "p3.heic"));
  const { copies } = await publish("p3.heic");
  const { data } = await sharp(copies.get("p3.heic")?.files[1]?.cachePath)
    .extract({ left: 60, top: 60, width: 4, height: 4 })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const [red = 0, green = 0, blue = 0] = data;
  expect(Math.abs(red - 90) + Math.abs(green - 138) + Math.abs(blue - 60)).toBeLessThan(15);
});

test("damaged ones are reported, and the next is decoded", async () => {
  const good = await readFile(path.join(fixtures, "upright.heic"));
  await writeFile(path.join(dir, "cut.heic"), good.subarray(0, 400));
  const noise = Buffer.from(good);
  noise.fill(0x5a, 450);
  await writeFile(path.join(dir, "noise.heic"), noise);
  await writeFile(path.join(dir, "good.heic"), good);
  const { copies, problems } = await publish("cut.heic", "noise.heic", "good.heic");
  expect([...copies.keys()]).toContain("good.heic");
  expect(problems.map(({ file, rule }) => [file, rule])).toContainEqual(["cut.heic", "photo/damaged"]);
});
