/** A season as a time-lapse: which photos, how long each stays, which day it tells, and whose photos have a part in it. */
import { chmod, mkdtemp, readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp, { type Sharp } from "sharp";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { addDays } from "../../src/calendar.ts";
import type { Garden, PhotoMeasure } from "../../src/model.ts";
import { eachDot } from "../../src/photos/day-letters.ts";
import { type PublishedPhoto, publishTimeLapses } from "../../src/photos/index.ts";
import { filmOfFrames } from "../../src/photos/lapse-film.ts";
import { lapseFrames, seasonOfLapse, staysOf } from "../../src/photos/lapse-frames.ts";
import { imageMetadataBlocks } from "../../src/photos/metadata-blocks.ts";

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(path.join(tmpdir(), "plotreel-lapse-"));
});

const week = (at: number) => addDays("2026-04-04", 7 * at);
const name = (at: number) => `photos/long-bed/gate/${week(at)}.jpg`;

/** A copy of one shade for each week, brighter as weeks go. */
async function copies(weeks: number): Promise<ReadonlyMap<string, PublishedPhoto>> {
  const made = Array.from({ length: weeks }, async (_, at) => {
    const cachePath = path.join(dir, `copy-${at}.webp`);
    const shade = 20 + 22 * at;
    await sharp({ create: { width: 320, height: 240, channels: 3, background: { r: shade, g: shade, b: shade } } })
      .webp({ lossless: true })
      .toFile(cachePath);
    const file = { width: 320, height: 240, format: "webp", name: `copy-${at}.webp`, cachePath } as const;
    return [name(at), { width: 320, height: 240, placeholder: "#000000", files: [file] }] as const;
  });
  return new Map(await Promise.all(made));
}

function garden(weeks: number): Garden {
  const photos = Array.from(
    { length: weeks },
    (_, at): PhotoMeasure => ({
      photo: name(at),
      bed: "long-bed",
      viewpoint: "gate",
      day: week(at),
      coverOf: "photo",
      aligned: true,
      heights: [],
    }),
  );
  return { growth: { photos }, settings: { seasonStarts: "01-01" } } as unknown as Garden;
}

const everything = (weeks: number) => new Set(Array.from({ length: weeks }, (_, at) => name(at)));
const options = () => ({ cacheDir: path.join(dir, "cache"), today: "2026-12-31", say: (day: string) => day });

describe("the pictures of a time-lapse", () => {
  it("are those of one season, eight at least", () => {
    const days = (count: number, from: string) =>
      Array.from({ length: count }, (_, at) => ({ day: addDays(from, 7 * at) }));
    expect(seasonOfLapse(days(7, "2026-04-04"), "01-01")).toEqual([]);
    expect(seasonOfLapse([...days(9, "2025-06-01"), ...days(8, "2026-04-04")], "01-01")).toEqual(days(8, "2026-04-04"));
  });

  it("stay for a week's time each, wait for missed weeks, and rest at the last", () => {
    expect(staysOf(["2026-04-04", "2026-04-11", "2026-04-25", "2026-08-01", "2026-08-03"])).toEqual([
      600, 1200, 1800, 600, 2500,
    ]);
  });

  it("tell their day below the photo, in letters of our own", async () => {
    const [copy] = [...(await copies(1)).values()];
    const file = copy?.files[0];
    const one = { photo: name(0), day: "2026-04-04", file: file?.cachePath ?? "", width: 320, height: 240 };
    const { data, width, height } = await lapseFrames([one], 640, () => "1 MAY");
    expect([width, height > 240]).toEqual([320, true]);
    const lit: string[] = [];
    for (let y = 240; y < height; y += 1)
      for (let x = 0; x < width; x += 1) if ((data[(y * width + x) * 3 + 2] ?? 0) > 200) lit.push(`${x} ${y}`);
    const dots: string[] = [];
    eachDot("1 may", (x, y) => dots.push(`${x} ${y}`));
    // Each dot is two pixels wide and high at this size.
    expect(lit.length).toBe(4 * dots.length);
  });
});

describe("time-lapses of a garden", () => {
  it("move through all photos in order, stand still at the last, and carry nothing else", async () => {
    const [lapse, ...more] = await publishTimeLapses(garden(9), await copies(9), {
      ...options(),
      circles: [everything(9)],
    });
    expect(more).toEqual([]);
    expect(lapse?.photos).toEqual([...everything(9)]);
    const bytes = await readFile(lapse?.moving.cachePath ?? "");
    const { pages, delay, width, pageHeight } = await sharp(bytes, { animated: true }).metadata();
    expect({ pages, delay }).toEqual({ pages: 9, delay: [...Array<number>(8).fill(600), 2500] });
    expect([width, pageHeight]).toEqual([lapse?.still.width, lapse?.still.height]);
    expect(imageMetadataBlocks(bytes)).toEqual([]);
    const middle = async (picture: Sharp) => {
      const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true });
      return data[(100 * info.width + 100) * info.channels] ?? 0;
    };
    // WebP keeps what is nearly as it was; neighbours are 22 apart.
    for (const at of [0, 4, 8])
      expect(Math.abs((await middle(sharp(bytes, { page: at }))) - (20 + 22 * at))).toBeLessThan(4);
    expect(Math.abs((await middle(sharp(lapse?.still.cachePath))) - 196)).toBeLessThan(4);
  });

  it("are made once more for viewers where a photo is not theirs, without it", async () => {
    const seen = new Set([...everything(10)].filter((photo) => photo !== name(3)));
    const lapses = await publishTimeLapses(garden(10), await copies(10), {
      ...options(),
      circles: [everything(10), seen],
    });
    expect(lapses.map(({ photos }) => photos.length)).toEqual([10, 9]);
    expect(lapses[1]?.photos).not.toContain(name(3));
    expect(lapses[1]?.moving.name).not.toBe(lapses[0]?.moving.name);
  });

  it("are the same bytes again, and are not made of too few", async () => {
    const photos = await copies(8);
    const twice = [];
    for (const cacheDir of ["one", "two"]) {
      const made = await publishTimeLapses(garden(8), photos, {
        ...options(),
        cacheDir: path.join(dir, cacheDir),
        circles: [everything(8)],
      });
      twice.push(await readFile(made[0]?.moving.cachePath ?? ""));
    }
    expect(twice[0]?.equals(twice[1] as Buffer)).toBe(true);
    expect(await publishTimeLapses(garden(7), photos, { ...options(), circles: [everything(8)] })).toEqual([]);
  });
});

describe("a film to cut with", () => {
  const before = process.env.PATH;
  afterEach(() => {
    process.env.PATH = before;
  });

  it("gets each photo as often as it stays, from the program that is on the machine", async () => {
    // A stand-in that keeps what it hears and what it was asked for: no such program has to be installed for tests.
    const program = path.join(dir, "ffmpeg");
    await writeFile(
      program,
      '#!/bin/sh\n[ "$1" = -version ] && exit 0\nfor out in "$@"; do :; done\ncat > "$out"\necho "$@" > "$(dirname "$0")/asked"\n',
    );
    await chmod(program, 0o755);
    process.env.PATH = `${dir}:${before}`;
    const frames = async () => ({ data: new Uint8Array([1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 2]), width: 2, height: 1 });
    const film = await filmOfFrames(path.join(dir, "ab", "film.mp4"), frames, [600, 2500]);
    const heard = await readFile(film ?? "");
    expect([heard.filter((byte) => byte === 1).length, heard.filter((byte) => byte === 2).length]).toEqual([36, 150]);
    expect(await readFile(path.join(dir, "asked"), "utf8")).toContain("-s 2x1 -r 10 -i - ");
  });
});
