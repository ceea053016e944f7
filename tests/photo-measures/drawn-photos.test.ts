import { readdirSync, statSync } from "node:fs";
import path from "node:path";
import exifr from "exifr";
import { describe, expect, test } from "vitest";
import { photosFolder, whatPhonesWrote } from "./demo-truth.ts";

const plans = whatPhonesWrote();

describe("the demo's drawn photos", () => {
  test("of the spots are those of the truth file, together under 11 MiB", () => {
    // What varieties look like close up has a list of its own (scripts/demo-photos/closeups).
    const files = readdirSync(photosFolder, { recursive: true, encoding: "utf8" }).filter(
      (file) => file.endsWith(".jpg") && !file.startsWith("varieties/"),
    );
    expect(files.sort()).toEqual(plans.map(({ file }) => file).sort());
    const bytes = files.reduce((sum, file) => sum + statSync(path.join(photosFolder, file)).size, 0);
    expect(bytes).toBeLessThan(11 * 1024 * 1024);
  });

  test("their EXIF reads back as planned: time, offset, sub-seconds, orientation, position", async () => {
    const kinds = { offset: 0, noOffset: 0, subSeconds: 0, position: 0, turned: 0 };
    for (const { file, facts } of plans) {
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
});
