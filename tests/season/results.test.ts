import { describe, expect, it } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import { seasonOf } from "../../src/garden/index.ts";
import { compareHarvest } from "../../src/season/comparisons.ts";
import { seasonBook } from "../../src/season/index.ts";
import { seasonResults } from "../../src/season/results.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const files: Files = {
  "garden.md": "---\nname: Test\nlanguage: en-GB\nprices: {leek: £3 a kg, lettuce: £0.50 a head}\n---\n",
  "sites/hill.md": "---\ntitle: Hill\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nsite: hill\nsize: 8 x 1.2 m\n---\n",
  "beds/pots.md": "---\ntitle: Pots\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\ndays to maturity: 150 from planting\n---\n",
  "varieties/cos.md": "---\ntitle: Lobjoits Green Cos\ncrop: lettuce\n---\n",
  "varieties/harbinger.md": "---\ntitle: Harbinger\ncrop: tomato\n---\n",
  "varieties/saint-pierre.md": "---\ntitle: Saint-Pierre\ncrop: tomato\n---\n",
  "notes/2025-06-01.md":
    "- planted 20 bought Musselburgh in Long Bed, 15 cm apart\n- planted 4 bought Harbinger and 2 bought Saint-Pierre in Pots\n",
  "notes/2025-06-20.md": "- lost 2 Musselburgh to leek moth\n- gave away 4 Musselburgh from Long Bed\n",
  "notes/2025-11-01.md":
    "- dug 2 kg Musselburgh from Long Bed\n- picked 1 kg tomatoes from Pots\n- picked Harbinger from Pots\n",
  "notes/2026-02-01.md": "- dug 1 kg Musselburgh from Long Bed\n- cleared Musselburgh from Long Bed\n",
  "notes/2026-05-01.md": "- planted 6 bought Lobjoits Green Cos in Long Bed\n",
  "notes/2026-06-01.md": "- picked 4 heads Lobjoits Green Cos from Long Bed\n",
};

async function results(year: string, on: string) {
  const book = seasonBook(await gardenOf(files, on), noWeather, on);
  const season = seasonOf(`${year}-06-01`, "01-01");
  return { book, season, results: seasonResults(book, season, on) };
}

describe("results of a season", () => {
  it("are added up by the day of picking, and kept apart by measure", async () => {
    const { results: now } = await results("2026", "2026-07-01");
    expect(now.total).toMatchObject({ grams: 1000, times: 2 });
    expect(now.total.counts).toEqual({ head: 4 });
    expect(now.varieties.map(({ title, sum, share }) => [title, sum.grams, share])).toEqual([
      ["Musselburgh, leek", 1000, 1],
      ["Lobjoits Green Cos, lettuce", 0, undefined],
    ]);
  });

  it("count each plant's whole picking for the season it began in", async () => {
    const { results: before } = await results("2025", "2026-07-01");
    // 20 planted, 4 given away: 16 plants gave 2 kg in 2025 and 1 kg in 2026.
    expect(before.varieties[0]).toMatchObject({
      id: "musselburgh",
      sum: { grams: 2000 },
      perPlant: { plants: 16, grams: 187.5 },
      gramsPerRowMetre: 3000 / (16 * 0.15),
      firstAfter: { days: 153, counted: "planting", promised: 150 },
    });
  });

  it("count no plants of another season, where a variety is grown again", async () => {
    const garden = await gardenOf(
      {
        "garden.md": "---\nname: Test\nlanguage: en-GB\n---\n",
        "beds/pots.md": "---\ntitle: Pots\n---\n",
        "varieties/harbinger.md": "---\ntitle: Harbinger\ncrop: tomato\n---\n",
        "notes/2025-05-20.md": "- planted 10 bought Harbinger in Pots\n",
        "notes/2025-08-20.md": "- picked 20 kg Harbinger from Pots\n- cleared Harbinger from Pots\n",
        "notes/2026-05-20.md": "- planted 4 bought Harbinger in Pots\n",
        "notes/2026-08-20.md": "- picked 2 kg Harbinger from Pots\n- cleared Harbinger from Pots\n",
      },
      "2026-12-01",
    );
    const book = seasonBook(garden, noWeather, "2026-12-01");
    const perPlant = (year: string) => {
      const { varieties, crops } = seasonResults(book, seasonOf(`${year}-06-01`, "01-01"), "2026-12-01");
      return [varieties[0]?.perPlant, crops[0]?.perPlant];
    };
    expect(perPlant("2025")).toEqual([
      { plants: 10, grams: 2000 },
      { plants: 10, grams: 2000 },
    ]);
    expect(perPlant("2026")).toEqual([
      { plants: 4, grams: 500 },
      { plants: 4, grams: 500 },
    ]);
  });

  it("count what says no amount, and what cannot be credited, as pickings and nothing else", async () => {
    const { results: before } = await results("2025", "2025-12-31");
    expect(before).toMatchObject({ withoutAmount: 1, unassigned: 1, total: { grams: 3000, times: 3 } });
    const crop = before.crops.find(({ id }) => id === "tomato");
    expect(crop).toMatchObject({ withoutAmount: 1, sum: { grams: 1000, times: 2 } });
    expect(before.varieties.find(({ id }) => id === "harbinger")?.perPlant).toBeUndefined();
  });

  it("give beds by the square metre, and sites", async () => {
    const { results: before } = await results("2025", "2025-12-31");
    expect(before.beds[0]).toMatchObject({ id: "long-bed", gramsPerSquareMetre: 2000 / 9.6 });
    expect(before.beds[1]?.gramsPerSquareMetre).toBeUndefined();
    expect(before.sites.map(({ title, sum }) => [title, sum.grams])).toEqual([["Hill", 2000]]);
  });

  it("have a value only at the person's own prices", async () => {
    const { results: now } = await results("2026", "2026-07-01");
    expect(now.varieties.map(({ value }) => value)).toEqual([
      { sign: "£", signAfter: false, amount: 3 },
      { sign: "£", signAfter: false, amount: 2 },
    ]);
    const { results: before } = await results("2025", "2025-12-31");
    expect(before.varieties.find(({ id }) => id === "harbinger")?.value).toBeUndefined();
  });

  it("are held against earlier seasons up to the same day", async () => {
    const { book, season } = await results("2026", "2026-07-01");
    expect(compareHarvest(book, season, "2026-07-01")).toMatchObject({ now: { grams: 1000 }, lastYear: undefined });
    const whole = compareHarvest(book, season, "2026-12-31");
    expect(whole).toMatchObject({ lastYear: { grams: 3000 }, meanGrams: { grams: 3000, seasons: 1 } });
  });
});
