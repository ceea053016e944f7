/** Measuring a garden's photos and making comparison copies: right against what was drawn, once for each content, the same for part of them as for all. */
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import { framesToCompare } from "../../src/photos/comparison-frames.ts";
import {
  coverSeries,
  heightSeries,
  imageMetadataBlocks,
  type MeasuredGarden,
  measureGrowth,
  type PublishedPhoto,
  publishComparisons,
} from "../../src/photos/index.ts";
import { publicGarden } from "../../src/site/index.ts";
import {
  drawShot,
  pathOf,
  readPhotographedGarden,
  shots,
  today,
  width,
  writePhotographedGarden,
} from "./photographed-garden.ts";

let recordsDir: string;
let cacheDir: string;
let garden: Garden;
let measured: MeasuredGarden;
let copies: ReadonlyMap<string, PublishedPhoto>;

beforeAll(async () => {
  recordsDir = await writePhotographedGarden();
  cacheDir = await mkdtemp(path.join(tmpdir(), "plotreel-measured-"));
  garden = await readPhotographedGarden(recordsDir);
  measured = await measureGrowth(garden, { recordsDir, cacheDir: path.join(cacheDir, "growth") });
  garden = { ...garden, growth: measured.growth };
  copies = await publishComparisons(measured.viewpoints, {
    recordsDir,
    cacheDir: path.join(cacheDir, "comparisons"),
    today,
  });
});

afterAll(async () => {
  await rm(recordsDir, { recursive: true, force: true });
  await rm(cacheDir, { recursive: true, force: true });
});

const measureOf = (day: string) => measured.growth.photos.find((photo) => photo.day === day);

describe("measures", () => {
  it("find the cover that was drawn, with the outline carried along with the camera", () => {
    for (const shot of shots) {
      if (shot.elsewhere === true) continue;
      const found = measureOf(shot.day);
      expect(found?.coverOf).toBe("bed");
      expect(Math.abs((found?.cover ?? 9) - shot.cover), shot.day).toBeLessThan(0.02);
    }
  });

  it("tell the photo that shows something else from those that lie over one another", () => {
    expect(measured.growth.photos.map(({ day, aligned }) => [day, aligned])).toEqual(
      shots.map(({ day, elsewhere }) => [day, elsewhere !== true]),
    );
  });

  it("find a height by the stake, which is carried along with the camera", () => {
    const [height, ...more] = measureOf("2026-06-19")?.heights ?? [];
    expect(more).toEqual([]);
    expect(height?.variety).toBe("crown-prince");
    expect(Math.abs((height?.heightCm ?? 0) - 75)).toBeLessThan(1);
    expect(height?.uncertaintyCm).toBeGreaterThan(2);
    expect(height?.uncertaintyCm).toBeLessThan(6);
  });

  it("cut to what all of them show, and no more", () => {
    const [view] = measured.viewpoints;
    expect(view?.photos).toHaveLength(shots.length - 1);
    expect(view?.crop.width).toBeGreaterThan(0.9);
    expect(view?.crop.width).toBeLessThan(0.98);
  });

  it("say the same of a few photos as of all", async () => {
    const few = new Set(["2026-05-16", "2026-06-19"].map((day) => pathOf({ day, cover: 0 })));
    const alone = await measureGrowth(garden, { recordsDir, cacheDir: path.join(cacheDir, "few"), only: few });
    expect(alone.growth.photos).toEqual(measured.growth.photos.filter(({ photo }) => few.has(photo)));
  });

  it("are taken once for each content, wherever the file lies", async () => {
    const file = path.join(cacheDir, "growth", "measures.json");
    const before = await readFile(file, "utf8");
    const moved = await mkdtemp(path.join(tmpdir(), "plotreel-moved-"));
    await cp(recordsDir, moved, { recursive: true });
    const again = await measureGrowth(await readPhotographedGarden(moved), {
      recordsDir: moved,
      cacheDir: path.join(cacheDir, "growth"),
    });
    expect(again.growth).toEqual(measured.growth);
    expect(await readFile(file, "utf8")).toBe(before);
    await rm(moved, { recursive: true });
  });

  it("come back the same when the cache was deleted or spoilt", async () => {
    await writeFile(path.join(cacheDir, "growth", "measures.json"), "{ broken");
    const again = await measureGrowth(garden, { recordsDir, cacheDir: path.join(cacheDir, "growth") });
    expect(again.growth).toEqual(measured.growth);
  });

  it("pass by a photo that cannot be opened, and measure the others", async () => {
    const dir = await writePhotographedGarden(shots.slice(0, 3));
    await writeFile(
      path.join(dir, pathOf({ day: "2026-06-01", cover: 0 })),
      (await drawShot({ day: "", cover: 0 })).subarray(0, 2000),
    );
    const { growth } = await measureGrowth(await readPhotographedGarden(dir), {
      recordsDir: dir,
      cacheDir: path.join(dir, ".cache"),
    });
    expect(growth.photos.map(({ day, aligned, cover }) => [day, aligned, cover === undefined])).toEqual([
      ["2025-06-21", true, false],
      ["2026-04-18", true, false],
      ["2026-05-02", true, false],
      ["2026-06-01", false, true],
    ]);
    await rm(dir, { recursive: true });
  });
});

describe("series", () => {
  it("hold every cover as it was measured, with a gap where nobody looked", () => {
    const [series, ...others] = coverSeries(garden);
    expect(others).toEqual([]);
    expect(series?.stretches.map((stretch) => stretch.map(({ day }) => day))).toEqual([
      ["2025-06-21"],
      shots.slice(1).map(({ day }) => day),
    ]);
  });

  it("hold heights from notes and photos by planting, each with its origin", () => {
    const [series] = heightSeries(garden);
    expect(series).toMatchObject({ what: "height", bed: "long-bed", planting: "long-bed/crown-prince/2026-05-01" });
    expect(series?.stretches.flat().map(({ day, value, origin }) => [day, value, origin])).toEqual([
      ["2026-05-16", 20, "note"],
      ["2026-05-30", 45, "note"],
      ["2026-06-13", 110, "note"],
      ["2026-06-19", expect.closeTo(75, 0), "photo"],
    ]);
  });

  it("let nothing of a private photo into the public garden", () => {
    const open = publicGarden(garden);
    expect(open.growth?.photos.map(({ day }) => day)).not.toContain("2026-05-23");
    expect(open.growth?.photos).toHaveLength(shots.length - 1);
    expect(JSON.stringify(coverSeries(open))).not.toContain("20260523");
  });
});

describe("comparison copies", () => {
  const jpegOf = (day: string) =>
    copies.get(pathOf({ day, cover: 0 }))?.files.findLast(({ format }) => format === "webp");

  it("are made of the photos that lie over one another and of no other", () => {
    expect([...copies.keys()].sort()).toEqual(
      shots
        .filter(({ elsewhere }) => elsewhere !== true)
        .map(pathOf)
        .sort(),
    );
  });

  it("are never wider than what the photo shows, and all of one shape", () => {
    const crop = measured.viewpoints[0]?.crop.width ?? 0;
    const shapes = new Set([...copies.values()].map(({ width: wide, height: high }) => (wide / high).toFixed(2)));
    expect(shapes).toEqual(new Set(["1.33"]));
    for (const { width: wide } of copies.values()) {
      expect(wide).toBeLessThanOrEqual(Math.ceil(width * crop * 1.002));
      expect(wide).toBeGreaterThan(700);
    }
  });

  it("lie over one another: what is no plant differs by a third of what it did", async () => {
    const days = ["2026-04-18", "2026-05-16"];
    // Turned by nearly a degree and 9 pixels off.
    const before = await difference(days.map((day) => path.join(recordsDir, pathOf({ day, cover: 0 }))));
    const after = await difference(days.map((day) => jpegOf(day)?.cachePath ?? ""));
    expect(after).toBeLessThan(before / 3);
  });

  /** Mean difference in grey levels along the upper edge, which no plant covers. */
  async function difference(files: readonly string[]): Promise<number> {
    const [a, b] = await Promise.all(
      files.map((file) =>
        sharp(file).extract({ left: 20, top: 10, width: 600, height: 150 }).greyscale().blur(1).raw().toBuffer(),
      ),
    );
    const apart = a?.reduce((sum, value, at) => sum + Math.abs(value - (b?.[at] ?? 0)), 0) ?? Number.NaN;
    return apart / (a?.length ?? 0);
  }

  it("carry no metadata, and names that tell nothing", async () => {
    for (const { files } of copies.values())
      for (const { cachePath, name } of files) {
        expect(imageMetadataBlocks(await readFile(cachePath))).toEqual([]);
        expect(name).toMatch(/^[0-9a-f]{32}-\d+\.(?:jpg|webp)$/u);
      }
  });

  it("are taken from the cache the second time, and are the same bytes when made anew", async () => {
    const again = await publishComparisons(measured.viewpoints, {
      recordsDir,
      cacheDir: path.join(cacheDir, "comparisons"),
      today,
    });
    expect(again).toEqual(copies);
    const anew = await publishComparisons(measured.viewpoints, {
      recordsDir,
      cacheDir: path.join(cacheDir, "anew"),
      today,
    });
    for (const [photo, { files }] of anew)
      for (const [at, { name, cachePath }] of files.entries()) {
        const known = copies.get(photo)?.files[at];
        expect(name).toBe(known?.name);
        expect((await readFile(cachePath)).equals(await readFile(known?.cachePath ?? ""))).toBe(true);
      }
  });
});

describe("photos worth a comparison", () => {
  const frames = (days: readonly string[]) => days.map((day) => ({ photo: { day } }));
  const kept = (days: readonly string[]) => framesToCompare(frames(days), "2026-07-18").map(({ photo }) => photo.day);

  it("are the last of each week of the year behind us", () => {
    // 13 to 19 July 2026 is one week, from Monday to Sunday.
    expect(kept(["2026-07-11", "2026-07-13", "2026-07-15", "2026-07-17"])).toEqual(["2026-07-11", "2026-07-17"]);
  });

  it("are the last of each month before that, but every week around the same day of the year", () => {
    expect(kept(["2024-03-02", "2024-03-20", "2024-07-10", "2024-07-16", "2024-07-23", "2024-08-30"])).toEqual([
      "2024-03-20",
      "2024-07-10",
      "2024-07-16",
      "2024-07-23",
      "2024-08-30",
    ]);
  });

  it("are not of days to come", () => {
    expect(kept(["2026-07-17", "2026-08-01"])).toEqual(["2026-07-17"]);
  });
});
