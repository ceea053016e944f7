import { readdirSync, statSync } from "node:fs";
import { readFile } from "node:fs/promises";
import path from "node:path";
import exifr from "exifr";
import { describe, expect, test } from "vitest";
import { drawPhoto } from "../../scripts/demo-photos/draw.ts";
import { withExif } from "../../scripts/demo-photos/exif.ts";
import { photoPlans } from "../../scripts/demo-photos/schedule.ts";
import { fine } from "../../scripts/demo-photos/shade.ts";
import { photosFolder } from "./demo-truth.ts";

const plans = photoPlans();

describe("the demo's drawn photos", () => {
  test("are the planned ones, together under 11 MiB", () => {
    const files = readdirSync(photosFolder, { recursive: true, encoding: "utf8" }).filter((file) =>
      file.endsWith(".jpg"),
    );
    expect(files.sort()).toEqual(plans.map((plan) => plan.path).sort());
    const bytes = files.reduce((sum, file) => sum + statSync(path.join(photosFolder, file)).size, 0);
    expect(bytes).toBeLessThan(11 * 1024 * 1024);
  });

  test("drawing one again gives the same bytes", { timeout: 120_000 }, async () => {
    const plan = plans.find(({ path: file }) => file.startsWith("tunnel-north"));
    if (!plan) throw new Error("The plan has no photo of the tunnel.");
    const { jpeg } = await drawPhoto(plan, fine);
    expect(Buffer.compare(Buffer.from(jpeg), await readFile(path.join(photosFolder, plan.path)))).toBe(0);
  });

  test("their EXIF reads back as planned: time, offset, sub-seconds, orientation, position", async () => {
    const kinds = { offset: 0, noOffset: 0, subSeconds: 0, position: 0, turned: 0 };
    for (const { path: file, facts } of plans) {
      const read = await exifr.parse(path.join(photosFolder, file), {
        reviveValues: false,
        translateValues: false,
        tiff: true,
        exif: true,
        gps: true,
      });
      expect(read.DateTimeOriginal, file).toBe(facts.taken);
      expect(read.OffsetTimeOriginal, file).toBe(facts.offset);
      expect(read.SubSecTimeOriginal, file).toBe(facts.subSeconds);
      expect(read.Orientation, file).toBe(facts.orientation);
      if (facts.position) {
        expect(read.latitude).toBeCloseTo(facts.position.latitude, 4);
        expect(read.longitude).toBeCloseTo(facts.position.longitude, 4);
      } else expect(read.latitude, file).toBeUndefined();
      kinds[facts.offset ? "offset" : "noOffset"]++;
      if (facts.subSeconds) kinds.subSeconds++;
      if (facts.position) kinds.position++;
      if (facts.orientation !== 1) kinds.turned++;
    }
    for (const [kind, count] of Object.entries(kinds)) expect(count, kind).toBeGreaterThanOrEqual(5);
  });

  test("an EXIF block is put behind the start of a JPEG and changes nothing else", () => {
    const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xdb, 0, 3, 1, 0xff, 0xd9);
    const marked = withExif(jpeg, { taken: "2026:05:16 18:15:03", orientation: 6 });
    expect([...marked.subarray(0, 4)]).toEqual([0xff, 0xd8, 0xff, 0xe1]);
    const length = ((marked[4] as number) << 8) | (marked[5] as number);
    expect([...marked.subarray(4 + length)]).toEqual([...jpeg.subarray(2)]);
  });
});
