import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Garden, Problem } from "../../src/model.ts";
import { heightSeries, measureGrowth, openPhotoFolder, readPhotos } from "../../src/photos/index.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";

const demo = path.join(import.meta.dirname, "../../demo-content");
const asked = "photos/long-bed/gate/IMG_20260613_100521.jpg";

let cacheDir: string;
let garden: Garden;

beforeAll(async () => {
  cacheDir = await mkdtemp(path.join(tmpdir(), "plotreel-heights-"));
  const records = await readRecords(await openRecordsFolder(demo), { today: "2026-07-18" });
  const { photos } = await readPhotos(records, openPhotoFolder(demo));
  garden = growGarden(records, photos);
});

afterAll(() => rm(cacheDir, { recursive: true, force: true }));

describe("heights by the stake that a bed record describes", () => {
  test("the record's stake and the marked tops are read, in centimetres and by variety id", () => {
    const [gate] = garden.beds.get("long-bed")?.viewpoints ?? [];
    expect(gate?.stake).toEqual({ foot: [0.802, 0.79], top: [0.841, 0.29], lengthCm: 120 });
    expect(garden.photoSidecars.get(asked)?.plantTops?.map(({ variety }) => variety)).toEqual(["early-nantes"]);
  });

  test("a photo taken from a little beside measures the plant with its uncertainty, in one series with the notes", async () => {
    const { growth } = await measureGrowth(garden, { recordsDir: demo, cacheDir, only: new Set([asked]) });
    const [height] = growth.photos.flatMap(({ heights }) => heights);
    // Drawn about 27 cm tall that day.
    expect(height?.variety).toBe("early-nantes");
    expect(height?.heightCm).toBeGreaterThan(22);
    expect(height?.heightCm).toBeLessThan(32);
    // A low plant before a camera at chest height: about six centimetres, as drawn cameras show (npm run truth).
    expect(height?.uncertaintyCm).toBeGreaterThan(5);
    expect(height?.uncertaintyCm).toBeLessThan(7.5);
    const series = heightSeries({ ...garden, growth });
    const points = series.flatMap(({ stretches }) => stretches.flat());
    expect(points.filter(({ origin }) => origin === "photo").map(({ source }) => source)).toEqual([asked]);
    expect(points.some(({ origin }) => origin === "note")).toBe(true);
  }, 120_000);
});

describe("slips in such records", () => {
  const problemsOf = async (files: Record<string, string>): Promise<readonly Problem[]> => {
    const bytes = new Map(Object.entries(files).map(([name, text]) => [name, new TextEncoder().encode(text)]));
    const folder = {
      list: async () => [...bytes.keys()].sort(),
      read: async (file: string) => bytes.get(file) ?? new Uint8Array(),
    };
    return (await readRecords(folder, { today: "2026-07-18" })).problems;
  };
  const bed = (stake: string) => `---\ntitle: Long Bed\nviewpoints:\n  - name: gate\n    stake: ${stake}\n---\n`;

  test("a length without a unit, a point outside the frame: said with file and line", async () => {
    const problems = await problemsOf({
      "beds/long-bed.md": bed("{foot: [0.8, 1.4], top: [0.8, 0.3], length: 120}"),
    });
    const places = problems
      .filter(({ file }) => file === "beds/long-bed.md")
      .map(({ line, severity }) => `${severity} ${line}`);
    expect(places).toEqual(["error 5", "error 5"]);
  });

  test("a stake in feet is as good", async () => {
    const problems = await problemsOf({ "beds/long-bed.md": bed("{foot: [0.8, 0.9], top: [0.8, 0.3], length: 4 ft}") });
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
  });

  test("a variety nobody described is told, the photo's other words stay", async () => {
    const problems = await problemsOf({
      "photos/long-bed/gate/a.jpg": "",
      "photos/long-bed/gate/a.md": "---\nheights:\n  - {variety: Erly Nants, top: [0.5, 0.5]}\n---\n",
    });
    expect(problems.map(({ rule }) => rule)).toContain("link/unknown-variety");
  });
});
