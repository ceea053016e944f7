/** What did best and worst: a plant is held against a plant, and a first year against no year before it. */
import { describe, expect, it } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import { seasonBook } from "../../src/season/index.ts";
import { standings } from "../../src/season/standings.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

async function standingsOf(files: Files, on: string) {
  const book = seasonBook(await gardenOf({ "beds/a.md": "---\ntitle: Bed A\n---\n", ...files }, on), noWeather, on);
  const season = book.seasons.at(-1);
  if (season === undefined) throw new Error("no season");
  return { book, found: standings(book, season, season.from, on), season };
}

const variety = (title: string, crop: string) => `---\ntitle: ${title}\ncrop: ${crop}\n---\n`;

describe("a first year", () => {
  it("is held against handbooks' range, and never against a year before", async () => {
    const { found } = await standingsOf(
      {
        "varieties/v1.md": variety("Alpha", "tomato"),
        "varieties/v2.md": variety("Beta", "tomato"),
        "varieties/v3.md": variety("Gamma", "courgette"),
        "notes/2026-05-25.md":
          "- planted 10 bought Alpha in Bed A\n- planted 10 bought Beta in Bed A\n- planted 2 bought Gamma in Bed A\n",
        "notes/2026-08-01.md":
          "- picked 2 kg Alpha from Bed A\n- picked 80 kg Beta from Bed A\n- picked 6 kg Gamma from Bed A\n",
        "notes/2026-09-01.md": "- cleared Alpha from Bed A\n- cleared Beta from Bed A\n- cleared Gamma from Bed A\n",
      },
      "2026-12-31",
    );
    expect(found.worst.map(({ variety: id, why }) => [id, why])).toEqual([
      ["v1", "each plant gave less than handbooks tell"],
    ]);
    // 8 kg a plant is above 15 lb; 3 kg a courgette is within the range.
    expect(found.best.map(({ variety: id, why }) => [id, why])).toEqual([
      ["v2", "each plant gave more than handbooks tell"],
      ["v3", "it did well in its first year"],
    ]);
  });
});

describe("a year after another", () => {
  const files = (planted: number, kg: number): Files => ({
    "varieties/v1.md": variety("Alpha", "tomato"),
    "notes/2025-05-25.md": "- planted 1 bought Alpha in Bed A\n",
    "notes/2025-08-01.md": "- picked 5 kg Alpha from Bed A\n- cleared Alpha from Bed A\n",
    "notes/2026-05-25.md": `- planted ${planted} bought Alpha in Bed A\n`,
    "notes/2026-08-01.md": `- picked ${kg} kg Alpha from Bed A\n`,
  });

  it("thirty plants with 9 kg did not do best after one with five", async () => {
    const { found } = await standingsOf(files(30, 9), "2026-08-20");
    expect(found.best).toEqual([]);
    expect(found.worst.map(({ text, why }) => [text, why])).toEqual([
      [
        "The Alpha tomatoes gave 9 kg in one picking from 30 plants, against 5 kg from one plant by the same day last year.",
        "each plant gave less than before",
      ],
    ]);
  });

  it("one plant with 9 kg did", async () => {
    const { found } = await standingsOf(files(1, 9), "2026-08-20");
    expect(found.best.map(({ text, why }) => [text, why])).toEqual([
      [
        "The Alpha tomatoes gave 9 kg in one picking, against 5 kg by the same day last year.",
        "each plant gave more than before",
      ],
    ]);
  });
});
