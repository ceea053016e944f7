/** What draws the demo photos, against the photos that lie there. */
import { existsSync, readFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import path from "node:path";
import { globSync } from "tinyglobby";
import { describe, expect, test } from "vitest";
import { drawCloseUp } from "./closeups/draw-close-up.ts";
import { closeUps } from "./closeups/list.ts";
import { drawPhoto } from "./draw.ts";
import { withExif } from "./exif.ts";
import { photoPlans } from "./schedule.ts";
import { fine } from "./shade.ts";

const PHOTOS = path.join(import.meta.dirname, "../../demo-content/photos");
const plans = photoPlans();

describe("the renderer", () => {
  test("draws what the truth file tells of, and the phone writes what it says", async () => {
    const truth = JSON.parse(await readFile(path.join(PHOTOS, "truth.json"), "utf8")) as {
      readonly photos: Readonly<Record<string, { readonly wrote: unknown }>>;
    };
    const planned = plans.map((plan) => [plan.path, JSON.parse(JSON.stringify(plan.facts))]);
    expect(Object.entries(truth.photos).map(([file, { wrote }]) => [file, wrote])).toEqual(planned);
  });

  test("drawing one again gives the same bytes", { timeout: 120_000 }, async () => {
    const plan = plans.find(({ path: file }) => file.startsWith("tunnel-north"));
    if (!plan) throw new Error("The plan has no photo of the tunnel.");
    const { jpeg } = await drawPhoto(plan, fine);
    expect(Buffer.compare(Buffer.from(jpeg), await readFile(path.join(PHOTOS, plan.path)))).toBe(0);
  });

  test("every close-up lies there with its words, and no other does", () => {
    const lying = globSync("varieties/*/*", { cwd: PHOTOS }).sort();
    const planned = closeUps.flatMap(({ path: file }) => [file, file.replace(/\.jpg$/, ".md")]).sort();
    expect(lying).toEqual(planned);
    for (const { path: file, sidecar } of closeUps)
      expect(readFileSync(path.join(PHOTOS, file.replace(/\.jpg$/, ".md")), "utf8")).toBe(sidecar);
  });

  test("a close-up is of a variety and a bed that the demo has, and was taken before the demo's today", () => {
    for (const { path: file, day, sidecar } of closeUps) {
      const bed = /^bed: (.+)$/m.exec(sidecar)?.[1] ?? "";
      expect(existsSync(path.join(PHOTOS, "../varieties", `${file.split("/")[1]}.md`)), file).toBe(true);
      expect(existsSync(path.join(PHOTOS, "../beds", `${bed}.md`)), file).toBe(true);
      expect(day <= "2026-07-18", file).toBe(true);
    }
  });

  test("forty varieties and more are shown close up, five of them in more than one way", () => {
    const times = new Map<string, number>();
    for (const { path: file } of closeUps) {
      const variety = file.split("/")[1] ?? "";
      times.set(variety, (times.get(variety) ?? 0) + 1);
    }
    expect(times.size).toBeGreaterThanOrEqual(40);
    expect([...times.values()].filter((count) => count > 1).length).toBeGreaterThanOrEqual(5);
  });

  test("drawing a close-up again gives the same bytes", { timeout: 120_000 }, async () => {
    const plan = closeUps.find(({ path: file }) => file.startsWith("varieties/queen-of-night/"));
    if (!plan) throw new Error("The list has no tulip.");
    expect(Buffer.compare(Buffer.from(await drawCloseUp(plan)), await readFile(path.join(PHOTOS, plan.path)))).toBe(0);
  });

  test("an EXIF block is put behind the start of a JPEG and changes nothing else", () => {
    const jpeg = Uint8Array.of(0xff, 0xd8, 0xff, 0xdb, 0, 3, 1, 0xff, 0xd9);
    const marked = withExif(jpeg, { taken: "2026:05:16 18:15:03", orientation: 6 });
    expect([...marked.subarray(0, 4)]).toEqual([0xff, 0xd8, 0xff, 0xe1]);
    const length = ((marked[4] as number) << 8) | (marked[5] as number);
    expect([...marked.subarray(4 + length)]).toEqual([...jpeg.subarray(2)]);
  });

  test("is leaned on by nothing outside its folder", () => {
    const outside = globSync(["src/**/*.ts", "scripts/**/*.ts", "tests/**/*.ts"], {
      ignore: ["scripts/demo-photos/**"],
    });
    expect(outside.filter((file) => /from "[^"]*demo-photos\//u.test(readFileSync(file, "utf8")))).toEqual([]);
  });
});
