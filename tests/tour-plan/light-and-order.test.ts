/** Light is the bed's own: neither the order of files, of stops nor of questions changes a figure. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Garden } from "../../src/model.ts";
import { readRecords } from "../../src/records/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { tourLight } from "../../src/tour/plan/tour-light.ts";
import { type Files, gardenFile, gardenOf } from "../tour/garden-of.ts";

const day = "2026-06-20";
const greenwich = gardenFile.replace("---\n", "---\nplace: {latitude: 51.4779, longitude: 0}\n");

const shade = fc.record({
  side: fc.constantFrom("east", "south"),
  high: fc.constantFrom(2, 3),
  away: fc.constantFrom(1, 2),
});
/** Few values of each, so that beds are often alike but for one. */
const bedFile = fc
  .record({
    size: fc.option(fc.constantFrom("1 x 1 m", "20 x 1 m", "8 x 1.2 m")),
    facing: fc.option(fc.constantFrom("south", "west")),
    looking: fc.constantFrom("north", "east"),
    site: fc.constantFrom("near", "far"),
    shade: fc.array(shade, { maxLength: 1 }),
  })
  .map(({ size, facing, looking, site, shade: around }) =>
    [
      "---",
      `site: ${site}`,
      ...(size === null ? [] : [`size: ${size}`]),
      ...(facing === null ? [] : [`facing: ${facing}`]),
      `viewpoints: [{name: gate, looking: ${looking}}]`,
      `shade: ${JSON.stringify(around.map(({ side, high, away }) => `wall to the ${side}, ${high} m high, ${away} m away`))}`,
      "---",
      "",
    ].join("\n"),
  );
const beds = fc.array(bedFile, { minLength: 2, maxLength: 5 });

// 0.01 degrees apart, under one roof of sky for a table of coarse places.
const sites: Files = {
  "sites/near.md": "---\ntitle: Near\nposition: {latitude: 51.4779, longitude: 0}\n---\n",
  "sites/far.md": "---\ntitle: Far\nposition: {latitude: 51.4861, longitude: 0.009}\n---\n",
};
const filesOf = (written: readonly string[], order: readonly number[]): Files => ({
  ...Object.fromEntries(order.map((at) => [`beds/bed-${at}.md`, written[at] ?? ""])),
  ...sites,
  "garden.md": greenwich,
  "notes/2026-05-01.md": written.map((_, at) => `- sowed 20 radish in Bed ${at}\n`).join(""),
});

/** As a system would list them that sorts nothing. */
async function listedAsGiven(files: Files): Promise<Garden> {
  const folder = {
    list: async () => Object.keys(files),
    read: async (file: string) => new TextEncoder().encode(files[file] ?? ""),
  };
  return growGarden(await readRecords(folder, { today: day }), []);
}

describe("the same light", () => {
  test("whatever was asked before, and in whatever order the files are read", async () => {
    const cases = beds.chain((written) =>
      fc.record({
        written: fc.constant(written),
        files: fc.shuffledSubarray([...written.keys()], { minLength: written.length }),
        questions: fc.shuffledSubarray([...written.keys()], { minLength: written.length }),
      }),
    );
    await fc.assert(
      fc.asyncProperty(cases, async ({ written, files, questions }) => {
        const alone = await listedAsGiven(filesOf(written, [...written.keys()]));
        const shuffled = await listedAsGiven(filesOf(written, files));
        const light = tourLight(shuffled, day, undefined, false);
        for (const at of questions) {
          const asked = shuffled.beds.get(`bed-${at}`);
          const same = alone.beds.get(`bed-${at}`);
          if (asked === undefined || same === undefined) throw new Error("a bed is missing");
          expect(light.spansOf(asked)).toEqual(tourLight(alone, day, undefined, false).spansOf(same));
        }
      }),
      { numRuns: 60 },
    );
  });

  test("in the whole brief, in whatever order the files are read", async () => {
    await fc.assert(
      fc.asyncProperty(
        beds.chain((written) =>
          fc.tuple(fc.constant(written), fc.shuffledSubarray([...written.keys()], { minLength: written.length })),
        ),
        async ([written, order]) => {
          const brief = async (files: Files) =>
            JSON.stringify(makeBrief(await listedAsGiven(files), { day, today: day }));
          expect(await brief(filesOf(written, order))).toBe(await brief(filesOf(written, [...written.keys()])));
        },
      ),
      { numRuns: 15 },
    );
  });
});

test("a wall 1 m from a small bed's edge shades it long after the middle of a long one is lit", async () => {
  const bed = (size: string) =>
    `---\nfacing: south\nsize: ${size}\nshade: ["wall to the east, 3 m high, 1 m away"]\nviewpoints: [{name: gate, looking: north}]\n---\n`;
  const garden = await gardenOf(
    { "garden.md": greenwich, "beds/small.md": bed("1 x 1 m"), "beds/large.md": bed("20 x 1 m") },
    day,
  );
  const shadeEnds = (order: readonly string[]) => {
    const light = tourLight(garden, day, undefined, false);
    return Object.fromEntries(
      order.map((id) => {
        const found = garden.beds.get(id);
        return [id, found && light.spansOf(found)?.find((span) => span.light === "shade")?.until];
      }),
    );
  };
  // 3 m high, 1.5 m and 11 m from the middle: plane geometry against the sun of that day in Greenwich.
  expect(shadeEnds(["small", "large"])).toEqual(shadeEnds(["large", "small"]));
  expect(shadeEnds(["small"]).small).toBeGreaterThan(11 * 60);
  expect(shadeEnds(["large"]).large).toBeLessThan(7 * 60);
});

test("nothing is said of a tour's light by less than half of its stops", async () => {
  const lit = "---\nviewpoints: [{name: gate, looking: west}]\n---\n";
  const of = async (known: number, all: number) => {
    const names = Array.from({ length: all }, (_, at) => at);
    const garden = await gardenOf(
      {
        "garden.md": greenwich,
        ...Object.fromEntries(names.map((at) => [`beds/bed-${at}.md`, at < known ? lit : "---\n---\n"])),
        "notes/2026-05-01.md": names.map((at) => `- sowed 20 radish in Bed ${at}\n`).join(""),
      },
      day,
    );
    return makeBrief(garden, { day, today: day, start: "09:00" }).plan;
  };
  expect(await of(1, 3)).toMatchObject({ light: undefined, startScores: [] });
  expect((await of(2, 4)).light).toMatch(/^light good/);
  const one = await of(1, 14);
  expect(one.light).toBeUndefined();
  expect(one.startBy).toBe("person");
});
