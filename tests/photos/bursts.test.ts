import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp, { type Sharp } from "sharp";
import { describe, expect, test } from "vitest";
import type { Photo } from "../../src/model.ts";
import { burstsAmong, type Frame } from "../../src/photos/bursts.ts";
import { findBursts, publishPhotos } from "../../src/photos/index.ts";

const photo = (name: string, time: string, more: Partial<Photo> = {}): Photo => ({
  path: `photos/long-bed/${name}.jpg`,
  day: "2026-05-16",
  time,
  instant: `2026-05-16T${time}.000Z`,
  dateBasis: "exif offset",
  bed: "long-bed",
  varieties: [],
  private: false,
  ...more,
});
const frame = (hash: bigint, sharpness = 100, clipped = 0): Frame => ({ hash, sharpness, clipped });
const named = (paths: readonly string[]) => paths.map((name) => path.basename(name, ".jpg"));

/** `frames` by name of photo. */
function grouped(photos: readonly Photo[], frames: Record<string, Frame>) {
  const bursts = burstsAmong(
    photos,
    new Map(Object.entries(frames).map(([name, value]) => [`photos/long-bed/${name}.jpg`, value])),
  );
  return bursts.map(({ best, photos: all }) => [named([best])[0], named(all)]);
}

describe("what belongs together", () => {
  test("frames seconds apart that look alike, in order of time", () => {
    const photos = [photo("c", "10:00:02"), photo("a", "10:00:00"), photo("b", "10:00:01"), photo("d", "10:05:00")];
    expect(grouped(photos, { a: frame(0n), b: frame(0b111n), c: frame(0b1111110n), d: frame(0n) })).toEqual([
      ["a", ["a", "b", "c"]],
    ]);
  });

  test("another scene in the same second is another photo", () => {
    expect(
      grouped([photo("a", "10:00:00"), photo("b", "10:00:01")], { a: frame(0n), b: frame((1n << 34n) - 1n) }),
    ).toEqual([]);
  });

  test("the later, the more alike they must be", () => {
    const twelveBits = (1n << 12n) - 1n;
    expect(
      grouped([photo("a", "10:00:00"), photo("b", "10:00:03")], { a: frame(0n), b: frame(twelveBits) }),
    ).toHaveLength(1);
    expect(
      grouped([photo("a", "10:00:00"), photo("b", "10:00:30")], { a: frame(0n), b: frame(twelveBits) }),
    ).toHaveLength(0);
    expect(grouped([photo("a", "10:00:00"), photo("b", "10:00:30")], { a: frame(0n), b: frame(0b11n) })).toHaveLength(
      1,
    );
    expect(grouped([photo("a", "10:00:00"), photo("b", "10:01:30")], { a: frame(0n), b: frame(0n) })).toHaveLength(0);
  });

  test("never across spots, and never without a time of day", () => {
    const frames = { a: frame(0n), b: frame(0n) };
    expect(grouped([photo("a", "10:00:00"), photo("b", "10:00:01", { viewpoint: "gate" })], frames)).toEqual([]);
    expect(grouped([photo("a", "10:00:00"), photo("b", "10:00:01", { instant: undefined })], frames)).toEqual([]);
  });
});

describe("which stands for the burst", () => {
  const photos = [photo("a", "10:00:00"), photo("b", "10:00:01"), photo("c", "10:00:02")];

  test("the sharpest", () =>
    expect(grouped(photos, { a: frame(0n, 50), b: frame(0n, 90), c: frame(0n, 70) })[0]?.[0]).toBe("b"));

  test("but not one that is burnt out", () =>
    expect(grouped(photos, { a: frame(0n, 50), b: frame(0n, 90, 0.2), c: frame(0n, 70, 0.01) })[0]?.[0]).toBe("c"));

  test("the first when all are equal", () =>
    expect(grouped(photos, { a: frame(0n), b: frame(0n), c: frame(0n) })[0]?.[0]).toBe("a"));
});

test("on pictures: the sharp one of two stands for both, another scene stays alone", async () => {
  const dir = await mkdtemp(path.join(tmpdir(), "plotreel-bursts-"));
  try {
    // A field of leaf-like blots: enough detail that a blur shows.
    const scene = (seed: number) => {
      // Lehmer's generator (Park and Miller 1988).
      let state = seed;
      const next = () => {
        state = (state * 48_271) % 2_147_483_647;
        return state / 2_147_483_647;
      };
      const blots = Array.from(
        { length: 120 },
        () =>
          `<circle cx="${next() * 800}" cy="${next() * 600}" r="${10 + next() * 40}" fill="hsl(${80 + next() * 60} 50% ${20 + next() * 50}%)"/>`,
      );
      return sharp(
        Buffer.from(
          `<svg width="800" height="600"><rect width="800" height="600" fill="#654"/>${blots.join("")}</svg>`,
        ),
      ).flatten();
    };
    await mkdir(path.join(dir, "photos/long-bed"), { recursive: true });
    const write = async (name: string, picture: Sharp) =>
      writeFile(path.join(dir, `photos/long-bed/${name}.jpg`), await picture.jpeg().toBuffer());
    await write("blurred", scene(20_260_516).blur(3));
    await write("sharp", scene(20_260_516));
    await write("other", scene(4_711));
    const photos = [photo("blurred", "10:00:00"), photo("sharp", "10:00:02"), photo("other", "10:00:04")];
    const { copies } = await publishPhotos(photos, { recordsDir: dir, cacheDir: path.join(dir, "cache") });
    const bursts = await findBursts(photos, copies);
    expect(bursts.map(({ best, photos: all }) => [named([best])[0], named(all)])).toEqual([
      ["sharp", ["blurred", "sharp"]],
    ]);
  } finally {
    await rm(dir, { recursive: true, force: true });
  }
});

test("pictures too small to be told apart, a column of pixels or a strip, make no burst and stop nothing", async () => {
  const dir = await mkdtemp(path.join(tmpdir(), "plotreel-tiny-"));
  try {
    await mkdir(path.join(dir, "photos/long-bed"), { recursive: true });
    const sizes = [
      [1, 8],
      [8, 1],
      [8, 8],
      [4000, 8],
    ] as const;
    const photos: Photo[] = [];
    for (const [index, [width, height]] of sizes.entries()) {
      const picture = sharp({ create: { width, height, channels: 3, background: "#456" } }).jpeg();
      for (const twin of ["a", "b"]) {
        const name = `${width}x${height}-${twin}`;
        await writeFile(path.join(dir, `photos/long-bed/${name}.jpg`), await picture.clone().toBuffer());
        photos.push(photo(name, `10:0${index}:0${twin === "a" ? 1 : 2}`));
      }
    }
    const { copies, problems } = await publishPhotos(photos, { recordsDir: dir, cacheDir: path.join(dir, "cache") });
    expect(problems).toEqual([]);
    expect(copies.size).toBe(photos.length);
    expect(await findBursts(photos, copies)).toEqual([]);
  } finally {
    await rm(dir, { recursive: true, force: true });
  }
});
