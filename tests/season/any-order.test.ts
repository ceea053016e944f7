/** No figure depends on the order in which files are listed, notes of a day are named, or goals are asked. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import { seasonOf } from "../../src/garden/index.ts";
import { readRecords } from "../../src/records/index.ts";
import { makeRecapCards, seasonBook } from "../../src/season/index.ts";
import { needs } from "../../src/season/needs.ts";
import { growGarden } from "../../src/timeline/index.ts";
import type { Files } from "../tour/garden-of.ts";

const today = "2025-12-31";
const goals = [
  "10 kg of courgettes",
  "28 quarts of tomato sauce",
  "14 pints of applesauce",
  "9 pints of sweet peas",
  "5 kg of leeks",
  "4 kg of okra",
];

function garden(asked: readonly string[]): Files {
  return {
    "garden.md": `---\nname: Test\nlanguage: en-GB\ntime zone: Europe/London\ngoals: [${asked.join(", ")}]\n---\n`,
    "beds/a.md": "---\ntitle: Bed A\nsize: 4 x 1 m\n---\n",
    "beds/b.md": "---\ntitle: Bed B\nsize: 2 x 1 m\n---\n",
    "varieties/alpha.md": "---\ntitle: Alpha\ncrop: courgette\ndays to maturity: 50 from planting\n---\n",
    "varieties/beta.md": "---\ntitle: Beta\ncrop: leek\n---\n",
    "varieties/gamma.md": "---\ntitle: Gamma\ncrop: tomato\ndays to maturity: 70 from planting\n---\n",
    "trials/rows.md":
      "---\ntitle: Alpha under cloth\nquestion: Does cloth help?\narms: [{name: cloth, variety: alpha, bed: a}, {name: bare, variety: alpha, bed: b}]\nmeasure: kilograms a plant\nstatus: running\n---\n",
    "notes/2024-05-20-a.md": "- planted 4 bought Alpha in Bed A\n",
    "notes/2024-05-20-b.md": "- planted 6 bought Alpha in Bed B\n- planted 5 bought Gamma in Bed A\n",
    "notes/2024-07-15-a.md": "- picked 3.3 kg Alpha from Bed A\n",
    "notes/2024-07-15-b.md": "- picked 4.1 kg Alpha from Bed B\n",
    "notes/2024-08-10.md": "- picked 6 kg Gamma from Bed A\n",
    "notes/2024-10-01.md": "- cleared Alpha from Bed A\n- cleared Alpha from Bed B\n- cleared Gamma from Bed A\n",
    "notes/2025-05-20-a.md": "- planted 8 bought Alpha in Bed A\n- planted 20 bought Beta in Bed B\n",
    "notes/2025-05-20-b.md": "- planted 3 bought Alpha in Bed B\n",
    "notes/2025-06-10.md": "- lost 8 Alpha in Bed A to slugs\n",
    "notes/2025-07-20-a.md": "- picked 5.2 kg Alpha from Bed B\n",
    "notes/2025-07-20-b.md": "- picked 0.7 kg Alpha from Bed B\n",
    "notes/2025-11-20.md": "- dug 2 kg Beta from Bed B\n- cleared Alpha from Bed B\n",
  };
}

async function listedAsGiven(files: Files, order: readonly string[]) {
  const folder = {
    list: async () => [...order],
    read: async (file: string) => new TextEncoder().encode(files[file] ?? ""),
  };
  return growGarden(await readRecords(folder, { today }), []);
}

const recapOf = (of: Awaited<ReturnType<typeof listedAsGiven>>) =>
  JSON.stringify(makeRecapCards(of, noWeather, { season: seasonOf(today, of.settings.seasonStarts), today }));

test("a recap is the same in whatever order its files are listed", async () => {
  const files = garden(goals);
  const names = Object.keys(files);
  const expected = recapOf(await listedAsGiven(files, names));
  await fc.assert(
    fc.asyncProperty(fc.shuffledSubarray(names, { minLength: names.length }), async (order) => {
      expect(recapOf(await listedAsGiven(files, order))).toBe(expected);
    }),
    { numRuns: 20 },
  );
});

test("a need is the same whatever else is asked, and in whatever order", async () => {
  const needsOf = async (asked: readonly string[]) => {
    const files = garden(asked);
    return needs(seasonBook(await listedAsGiven(files, Object.keys(files)), noWeather, today));
  };
  const alone = new Map(
    await Promise.all(goals.map(async (goal) => [goal, (await needsOf([goal]))[0]?.sentence.text] as const)),
  );
  expect(alone.get("10 kg of courgettes")).toContain("a plant that 21 plants gave here in two seasons.");
  await fc.assert(
    fc.asyncProperty(fc.shuffledSubarray(goals, { minLength: 1 }), async (asked) => {
      const found = await needsOf(asked);
      expect(found.map(({ sentence }) => sentence.text)).toEqual(asked.map((goal) => alone.get(goal)));
    }),
    { numRuns: 20 },
  );
});
