/** What `check` says of shade nobody can reckon with, and of names that leave open whether a plant is poisonous. */
import { describe, expect, test } from "vitest";
import { tourProblems } from "../../src/tour/index.ts";
import { type Files, gardenFile, gardenOf } from "./garden-of.ts";

const told = async (files: Files) =>
  tourProblems(await gardenOf(files, "2026-06-19")).map(({ rule, file, what }) => [rule, file, what]);
const bed = (shade: string) => ({
  "beds/long-bed.md": `---\ntitle: Long Bed\nshade: ${JSON.stringify([shade])}\n---\n`,
});

describe("shade", () => {
  test.each([
    ["a bit gloomy", "it names no direction"],
    ["wall to the north and west, 3 m high", "it names several directions"],
    ["wall to the east, very high", "it says no height"],
    [
      "wall to the east, 3 m high, 2 paces away",
      "one of its numbers says no unit that is known, or not what it measures",
    ],
  ])("%s", async (shade, why) => {
    expect(await told(bed(shade))).toEqual([
      ["bed/shade-unread", "beds/long-bed.md", `The shade "${shade}" of Long Bed is not reckoned with: ${why}.`],
    ]);
  });

  test.each(["wall to the east, 180 cm high, 1 m away", "fence SSW, 6 feet 6 inches high", "tunnel skin", "none"])(
    "%s is read",
    async (shade) => {
      expect(await told(bed(shade))).toEqual([]);
    },
  );
});

describe("names of two plants", () => {
  const variety = (front: string): Files => ({ "varieties/it.md": `---\n${front}\n---\n` });
  test("are asked about where no botanical name settles it", async () => {
    expect(await told(variety("title: Bishop's weed"))).toEqual([
      [
        "variety/two-plants",
        "varieties/it.md",
        '"Bishop\'s weed" may be ammi (Ammi), whose sap burns skin in sun, or ground elder (Aegopodium).',
      ],
    ]);
    expect(await told(variety("title: Bishop's weed\nbotanical: Ammi majus"))).toEqual([]);
  });

  test("sweet peas that may be peas to eat", async () => {
    const wish = { "garden.md": gardenFile.replace("---\n", "---\ngoals: [4 quarts of sweet peas]\n") };
    expect((await told(wish)).map(([, file]) => file)).toEqual(["garden.md"]);
    const vases = { "garden.md": gardenFile.replace("---\n", "---\ngoals: [300 stems of sweet peas]\n") };
    expect(await told(vases)).toEqual([]);
    expect((await told(variety("title: Sweet peas\ncrop: sugar snap"))).map(([rule]) => rule)).toEqual([
      "variety/two-plants",
    ]);
    const picked = { "notes/2026-06-01.md": "- picked 2 kg sweet peas\n" };
    expect((await told(picked)).map(([, file]) => file)).toEqual(["notes/2026-06-01.md"]);
    expect(await told({ "notes/2026-06-01.md": "- picked 20 sweet peas\n- picked 2 kg peas\n" })).toEqual([]);
  });
});
