import { mkdir, mkdtemp, readdir, readFile, rm, stat, truncate, utimes, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Photo } from "../../src/model.ts";
import { creditXmp, imageMetadataBlocks, onlyCredit, publishPhotos } from "../../src/photos/index.ts";
import { PhotoPixels } from "../../src/photos/photo-pixels.ts";
import { drawn, tag, tiff, withExif, withSegment } from "./drawn.ts";

let dir: string;

beforeEach(async () => {
  dir = await mkdtemp(path.join(tmpdir(), "plotreel-copies-"));
  await mkdir(path.join(dir, "records/photos"), { recursive: true });
});

afterEach(() => rm(dir, { recursive: true, force: true }));

const photo = (name: string): Photo => ({
  path: `photos/${name}`,
  dateBasis: "unknown",
  varieties: [],
  private: false,
});

async function put(name: string, bytes: Uint8Array): Promise<Photo> {
  await writeFile(path.join(dir, "records/photos", name), bytes);
  return photo(name);
}

const publish = (photos: readonly Photo[], more: Partial<Parameters<typeof publishPhotos>[1]> = {}) =>
  publishPhotos(photos, { recordsDir: path.join(dir, "records"), cacheDir: path.join(dir, "cache"), ...more });

/** The mean colour of a part of a copy, as [red, green, blue]. */
async function colourAt(file: string, left: number, top: number): Promise<number[]> {
  const { data } = await sharp(file)
    .extract({ left, top, width: 2, height: 2 })
    .resize(1, 1)
    .raw()
    .toBuffer({ resolveWithObject: true });
  return [...data.subarray(0, 3)];
}

async function copiesOf(name: string, bytes: Uint8Array) {
  const { copies, problems } = await publish([await put(name, bytes)]);
  expect(problems).toEqual([]);
  const found = copies.get(`photos/${name}`);
  if (!found) throw new Error("no copies");
  return found;
}

/** A JPEG whose frame header (SOF0, ISO/IEC 10918-1 B.2.2) says another size. */
function claiming(bytes: Buffer, width: number, height: number): Buffer {
  const changed = Buffer.from(bytes);
  const frame = changed.indexOf(Buffer.from([0xff, 0xc0]));
  changed.writeUInt16BE(height, frame + 5);
  changed.writeUInt16BE(width, frame + 7);
  return changed;
}

const allFiles = async () =>
  (await readdir(path.join(dir, "cache"), { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map(({ name }) => name);

describe("what a copy is", () => {
  test("WebP at every page width and one small JPEG, sizes told, names without the photo's own", async () => {
    const { files, ...rest } = await copiesOf("Aunt Jo's garden.jpg", await drawn(2000, 1500).jpeg().toBuffer());
    expect(rest).toEqual({ width: 1600, height: 1200, placeholder: expect.stringMatching(/^#[0-9a-f]{6}$/) });
    expect(files.map(({ width, height, format }) => [width, height, format])).toEqual([
      [480, 360, "webp"],
      [480, 360, "jpeg"],
      [750, 563, "webp"],
      [1200, 900, "webp"],
      [1600, 1200, "webp"],
    ]);
    for (const { width, height, format, name, cachePath } of files) {
      expect(name).toMatch(/^[0-9a-f]{32}-\d+\.(webp|jpg)$/);
      expect(path.basename(cachePath)).toBe(name);
      const is = await sharp(cachePath).metadata();
      expect([is.width, is.height, is.format, is.space]).toEqual([width, height, format, "srgb"]);
    }
  });

  test("a panorama gets the height of a picture half as high as wide, as far as it and WebP go", async () => {
    const sizes = async (width: number, height: number) =>
      (await copiesOf("wide.jpg", await drawn(width, height).jpeg().toBuffer())).files.map((file) => [
        file.width,
        file.height,
        file.format,
      ]);
    // Eight to one: four times as wide as two to one.
    expect(await sizes(4000, 500)).toEqual([
      [1920, 240, "webp"],
      [1920, 240, "jpeg"],
      [3000, 375, "webp"],
      [4000, 500, "webp"],
    ]);
    expect((await sizes(20_000, 300)).at(-1)).toEqual([16_383, 246, "webp"]);
    expect((await sizes(2900, 1000)).at(-1)).toEqual([1600, 552, "webp"]);
  });

  test("never wider than the photo itself", async () => {
    const { files } = await copiesOf("small.jpg", await drawn(700, 300).jpeg().toBuffer());
    expect(files.map(({ width }) => width)).toEqual([480, 480, 700]);
    const tiny = await copiesOf("tiny.png", await drawn(1, 1).png().toBuffer());
    expect(tiny.files.map(({ width, height }) => [width, height])).toEqual([
      [1, 1],
      [1, 1],
    ]);
  });

  // Where the drawn dark corner must be once the photo stands upright (EXIF 2.32, Orientation 1 to 8).
  test.each([
    [1, "top left"],
    [2, "top right"],
    [3, "bottom right"],
    [4, "bottom left"],
    [5, "top left"],
    [6, "top right"],
    [7, "bottom right"],
    [8, "bottom left"],
  ])("orientation %i is applied", async (orientation, corner) => {
    const bytes = withExif(await drawn(640, 480).jpeg().toBuffer(), tiff({ ifd0: { [tag.orientation]: orientation } }));
    const { width, height, files } = await copiesOf("turned.jpg", bytes);
    expect([width, height]).toEqual(orientation < 5 ? [640, 480] : [480, 640]);
    const [vertical, horizontal] = corner.split(" ");
    const last = files.at(-1);
    const [red] = await colourAt(
      last?.cachePath ?? "",
      horizontal === "left" ? 10 : width - 12,
      vertical === "top" ? 10 : height - 12,
    );
    expect(red).toBeLessThan(60);
  });

  test("colours go through the embedded profile to sRGB", async () => {
    // A Display P3 green of (90, 138, 60) stands outside what the same numbers mean in sRGB.
    const bytes = await drawn(64, 64, "#5a8a3c").withIccProfile("p3").jpeg({ quality: 100 }).toBuffer();
    expect((await sharp(bytes).metadata()).hasProfile).toBe(true);
    const { files } = await copiesOf("p3.jpg", bytes);
    const [red, green, blue] = await colourAt(files[1]?.cachePath ?? "", 40, 40);
    expect(Math.abs((red ?? 0) - 90) + Math.abs((green ?? 0) - 138) + Math.abs((blue ?? 0) - 60)).toBeLessThan(12);
    expect((await sharp(files[1]?.cachePath).metadata()).hasProfile).toBe(false);
  });

  test.each([
    ["CMYK", () => drawn(64, 48).toColourspace("cmyk").jpeg().toBuffer()],
    ["16 bits", () => drawn(64, 48).toColourspace("rgb16").png().toBuffer()],
    ["grey", () => drawn(64, 48).toColourspace("b-w").jpeg().toBuffer()],
    [
      "transparent",
      () =>
        sharp({ create: { width: 64, height: 48, channels: 4, background: "#5a8a3c80" } })
          .png()
          .toBuffer(),
    ],
    ["palette", () => drawn(64, 48).png({ palette: true, colours: 8 }).toBuffer()],
    ["AVIF", () => drawn(64, 48).avif().toBuffer()],
    ["WebP", () => drawn(64, 48).webp().toBuffer()],
  ])("%s", async (_, bytes) => {
    const { files } = await copiesOf("odd.bin", await bytes());
    for (const { cachePath } of files) {
      const is = await sharp(cachePath).metadata();
      expect([is.channels, is.depth, is.space]).toEqual([3, "uchar", "srgb"]);
    }
  });

  test("of an animation the first frame", async () => {
    const frames = await Promise.all(
      ["#ff0000", "#00ff00"].map((colour) =>
        sharp({ create: { width: 40, height: 30, channels: 3, background: colour } })
          .png()
          .toBuffer(),
      ),
    );
    const { width, height, files } = await copiesOf(
      "moving.webp",
      await sharp(frames, { join: { animated: true } })
        .webp({ lossless: true })
        .toBuffer(),
    );
    expect([width, height]).toEqual([40, 30]);
    expect((await colourAt(files[1]?.cachePath ?? "", 20, 15))[0]).toBeGreaterThan(200);
  });

  test("no metadata of any kind is left", async () => {
    let bytes: Buffer = await drawn(640, 480)
      .withXmp("<x:xmpmeta xmlns:x='adobe:ns:meta/'>private</x:xmpmeta>")
      .jpeg()
      .toBuffer();
    bytes = withExif(
      bytes,
      tiff({
        gps: {
          [tag.latitudeRef]: "N",
          [tag.latitude]: [
            [54, 1],
            [18, 1],
            [0, 1],
          ],
        },
      }),
    );
    bytes = withSegment(bytes, 0xed, Buffer.from("Photoshop 3.0\x008BIM\x04\x04\x00\x00\x00\x00\x00\x00", "latin1"));
    bytes = withSegment(bytes, 0xfe, Buffer.from("taken at home"));
    expect(new Set(imageMetadataBlocks(bytes).map(({ kind }) => kind))).toEqual(
      new Set(["EXIF", "GPS", "XMP", "IPTC", "comment"]),
    );
    const { files } = await copiesOf("full.jpg", bytes);
    for (const { cachePath } of files) expect(imageMetadataBlocks(await readFile(cachePath))).toEqual([]);
  });
});

test("AVIF is made when it is asked for, and comes first", async () => {
  const { copies } = await publish([await put("a.jpg", await drawn(500, 300).jpeg().toBuffer())], {
    formats: ["avif", "webp", "jpeg"],
    widths: [480],
  });
  const { files } = copies.get("photos/a.jpg") ?? { files: [] };
  expect(files.map(({ format }) => format)).toEqual(["avif", "webp", "jpeg"]);
  expect((await sharp(files[0]?.cachePath).metadata()).format).toBe("heif");
});

test.each(["Jo Bloggs", "© Zoë Ångström & <friends>, 2026"])(
  "the credit %s is written into the copies when asked, and nothing else",
  async (credit) => {
    const one = {
      ...(await put(
        "a.jpg",
        withExif(await drawn(500, 300).jpeg().toBuffer(), tiff({ ifd0: { [tag.modified]: "2026:05:16 10:00:00" } })),
      )),
      credit,
    };
    const formats = ["avif", "webp", "jpeg"] as const;
    const { copies } = await publish([one], { creditInFiles: true, formats });
    for (const { cachePath } of copies.get("photos/a.jpg")?.files ?? [])
      expect(onlyCredit(await readFile(cachePath), ["somebody else", credit])).toBe(credit);
    const plain = (await publish([one], { formats })).copies.get("photos/a.jpg")?.files ?? [];
    for (const { cachePath } of plain) expect(imageMetadataBlocks(await readFile(cachePath))).toEqual([]);
  },
);

test("a credit with anything beside it is not only a credit", async () => {
  const credited = await drawn(50, 30).withXmp(creditXmp("Jo Bloggs")).jpeg().toBuffer();
  expect(onlyCredit(credited, ["Jo Bloggs"])).toBe("Jo Bloggs");
  expect(onlyCredit(credited, ["Jo"])).toBeUndefined();
  expect(onlyCredit(withSegment(credited, 0xfe, Buffer.from("hello")), ["Jo Bloggs"])).toBeUndefined();
  expect(
    onlyCredit(withExif(credited, tiff({ ifd0: { [tag.modified]: "2026:05:16 10:00:00" } })), ["Jo Bloggs"]),
  ).toBeUndefined();
  const more = creditXmp("Jo Bloggs").replace("photoshop:Credit", 'photoshop:City="Gullstone" photoshop:Credit');
  expect(onlyCredit(await drawn(50, 30).withXmp(more).jpeg().toBuffer(), ["Jo Bloggs"])).toBeUndefined();
});

describe("the cache", () => {
  const source = () => drawn(1000, 750).jpeg().toBuffer();

  test("a second run makes nothing again, another name for the same photo neither", async () => {
    const photos = [await put("a.jpg", await source())];
    const first = await publish(photos);
    const before = await allFiles();
    await put("b.jpg", await source());
    const second = await publish([...photos, photo("b.jpg")]);
    expect(second.copies.get("photos/a.jpg")).toEqual(first.copies.get("photos/a.jpg"));
    expect(second.copies.get("photos/b.jpg")?.files).toEqual(first.copies.get("photos/a.jpg")?.files);
    expect((await allFiles()).sort()).toEqual(before.sort());
  });

  test("other content under the same name, size and time is seen", async () => {
    const one = await drawn(100, 80, "#ff0000").png({ compressionLevel: 0 }).toBuffer();
    const other = await drawn(100, 80, "#00ff00").png({ compressionLevel: 0 }).toBuffer();
    expect(one.length).toBe(other.length);
    const photos = [await put("a.png", one)];
    const then = new Date(2026, 4, 16);
    await utimes(path.join(dir, "records/photos/a.png"), then, then);
    const first = await publish(photos);
    await put("a.png", other);
    await utimes(path.join(dir, "records/photos/a.png"), then, then);
    const second = await publish(photos);
    expect(second.copies.get("photos/a.png")?.files[0]?.name).not.toBe(
      first.copies.get("photos/a.png")?.files[0]?.name,
    );
  });

  test("missing, short and manifest-less copies are made again", async () => {
    const photos = [await put("a.jpg", await source())];
    const first = await publish(photos);
    const files = first.copies.get("photos/a.jpg")?.files ?? [];
    const bytes = await Promise.all(files.map(({ cachePath }) => readFile(cachePath)));
    await rm(files[0]?.cachePath ?? "");
    await publish(photos);
    await truncate(files[1]?.cachePath ?? "", 10);
    await publish(photos);
    for (const name of await allFiles())
      if (name.endsWith(".json"))
        await rm(path.join(dir, "cache", name === "sources.json" ? name : `${name.slice(0, 2)}/${name}`));
    await publish(photos);
    expect(await Promise.all(files.map(({ cachePath }) => readFile(cachePath)))).toEqual(bytes);
  });

  test("a run that is broken off keeps what is done", async () => {
    const photos = await Promise.all(
      ["a", "b", "c"].map(async (name, index) =>
        put(
          `${name}.jpg`,
          await drawn(300 + index, 200)
            .jpeg()
            .toBuffer(),
        ),
      ),
    );
    const brokenOff = publish(photos, {
      concurrency: 1,
      onProgress: (done) => {
        if (done === 2) throw new Error("stopped");
      },
    });
    await expect(brokenOff).rejects.toThrow("stopped");
    const kept = (await allFiles()).filter((name) => name.endsWith(".webp"));
    expect(kept.length).toBeGreaterThanOrEqual(2);
    const written = new Map(
      await Promise.all(
        kept.map(
          async (name) => [name, (await stat(path.join(dir, "cache", name.slice(0, 2), name))).mtimeMs] as const,
        ),
      ),
    );
    const { copies } = await publish(photos);
    expect(copies.size).toBe(3);
    const untouched = [];
    for (const [name, time] of written)
      if ((await stat(path.join(dir, "cache", name.slice(0, 2), name))).mtimeMs === time) untouched.push(name);
    // Of the third photo a copy may have been on its way when the run broke off, and is made anew.
    expect(untouched.length).toBeGreaterThanOrEqual(2);
  });

  test("widths are part of the key", async () => {
    const photos = [await put("a.jpg", await source())];
    const names = async (widths: number[]) =>
      (await publish(photos, { widths })).copies.get("photos/a.jpg")?.files.map(({ name }) => name.split("-")[0]);
    expect((await names([480]))?.[0]).not.toBe((await names([480, 960]))?.[0]);
  });

  test("progress counts every photo, and the answer keeps the photos' order", async () => {
    const photos = await Promise.all(
      ["c", "a", "b"].map(async (name, index) =>
        put(
          `${name}.jpg`,
          await drawn(50 + index, 40)
            .jpeg()
            .toBuffer(),
        ),
      ),
    );
    const seen: [number, number][] = [];
    const { copies } = await publish(photos, { onProgress: (done, total) => seen.push([done, total]) });
    expect(seen).toEqual([
      [1, 3],
      [2, 3],
      [3, 3],
    ]);
    expect([...copies.keys()]).toEqual(["photos/c.jpg", "photos/a.jpg", "photos/b.jpg"]);
  });
});

describe("photos that cannot be opened are reported, and the others go on", () => {
  test("cut off, damaged, gone, too large, no picture", async () => {
    const good = await drawn(800, 600).jpeg().toBuffer();
    const photos = [
      await put("cut-off.jpg", good.subarray(0, good.length >> 1)),
      await put("text.jpg", Buffer.from("no picture")),
      await put("empty.jpg", Buffer.alloc(0)),
      photo("gone.jpg"),
      // The limit must bite before anything is decoded.
      await put("huge.jpg", claiming(good, 20_000, 20_000)),
      await put("good.jpg", good),
    ];
    const { copies, problems } = await publish(photos);
    expect([...copies.keys()]).toEqual(["photos/good.jpg"]);
    const said = new Map(problems.map(({ file, rule, what }) => [file.slice(7), `${rule}: ${what}`]));
    expect(said.get("cut-off.jpg")).toBe(
      "photo/damaged: This photo cannot be opened (it ends too early), so no page shows it; its day still counts.",
    );
    expect(said.get("text.jpg")).toBe(
      "photo/damaged: This photo cannot be opened (it is of a kind that is not known), so no page shows it; its day still counts.",
    );
    expect(said.get("empty.jpg")).toContain("photo/damaged");
    expect(said.get("gone.jpg")).toContain("photo/unreadable");
    expect(said.get("huge.jpg")).toBe(
      "photo/too-large: This photo has more than 250 million pixels, the most that are opened, so no page shows it.",
    );
  });

  test("a wrong ending does no harm", async () => {
    const { files } = await copiesOf("really-a-png.jpg", await drawn(64, 48).png().toBuffer());
    expect(files).toHaveLength(2);
  });

  test.each(["two words.jpg", "-rf.jpg", "été.jpg", "🌱🥕.jpg", "a..b.jpg", "#1?.jpg", "100%.jpg", "it's.jpg"])(
    "name %s",
    async (name) => {
      expect((await copiesOf(name, await drawn(64, 48).jpeg().toBuffer())).files).toHaveLength(2);
    },
  );
});

test("a photo that a person turned is turned in its copies and where it is measured, and making it anew when the word changes", async () => {
  // Red to the left, blue to the right.
  const halves = await sharp(
    Buffer.concat(
      Array.from({ length: 60 }, () =>
        Buffer.from([...Array(40).fill([220, 20, 20]), ...Array(40).fill([20, 20, 220])].flat()),
      ),
    ),
    { raw: { width: 80, height: 60, channels: 3 } },
  )
    .jpeg({ quality: 95 })
    .toBuffer();
  const plain = await put("halves.jpg", halves);
  const top = async (turn?: 90 | 180 | 270) => {
    const { copies } = await publish([{ ...plain, turn }]);
    const { width, height, files } = copies.get(plain.path) ?? { width: 0, height: 0, files: [] };
    const [red = 0, , blue = 0] = await colourAt(files.at(-1)?.cachePath ?? "", 4, 4);
    return [width, height, red > blue ? "red" : "blue"];
  };
  expect(await top()).toEqual([80, 60, "red"]);
  expect(await top(180)).toEqual([80, 60, "blue"]);
  expect(await top(90)).toEqual([60, 80, "red"]);
  expect(await top(270)).toEqual([60, 80, "blue"]);

  const pixels = await PhotoPixels.open(path.join(dir, "records"), path.join(dir, "cache"), [{ ...plain, turn: 90 }]);
  const measured = await pixels.rgb(plain.path, 60);
  expect([await pixels.shape(plain.path), measured.width, measured.height]).toEqual([
    { width: 60, height: 80 },
    60,
    80,
  ]);
  expect((measured.data[0] ?? 0) > (measured.data[2] ?? 0)).toBe(true);
  await pixels.close({ keepHashes: false });
});

test("copies of photos that are gone leave the cache after a month, and not before", async () => {
  const kept = await put("kept.jpg", await drawn(500, 300).jpeg().toBuffer());
  const gone = await put("gone.jpg", await drawn(520, 300).jpeg().toBuffer());
  const filesOf = (published: Awaited<ReturnType<typeof publish>>, one: Photo) =>
    published.copies.get(one.path)?.files.map(({ cachePath }) => cachePath) ?? [];
  const first = await publish([kept, gone], { all: true });
  const copies = filesOf(first, gone);
  const there = () =>
    Promise.all(
      copies.map((file) =>
        stat(file).then(
          () => true,
          () => false,
        ),
      ),
    );

  await publish([kept], { all: true });
  expect(await there()).toEqual(copies.map(() => true));

  const past = new Date(Date.now() - 31 * 86_400_000);
  const inCache = (await readdir(path.join(dir, "cache"), { recursive: true, withFileTypes: true })).filter((one) =>
    one.isFile(),
  );
  for (const { parentPath, name } of inCache) await utimes(path.join(parentPath, name), past, past);
  // A run over some of the photos knows nothing of the others.
  await publish([kept]);
  expect(await there()).toEqual(copies.map(() => true));
  await publish([kept], { all: true });
  expect(await there()).toEqual(copies.map(() => false));
  const again = filesOf(await publish([kept], { all: true }), kept);
  expect(again).toEqual(filesOf(first, kept));
  await Promise.all(again.map((file) => stat(file)));
});
