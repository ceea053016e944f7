/** Rotation, soil, what is needed, the seed order and the draft for next year. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import { seasonBook, seasonProblems, seedListCsv } from "../../src/season/index.ts";
import { needs } from "../../src/season/needs.ts";
import { planDraft } from "../../src/season/plan-draft.ts";
import { assignBeds, type Place, type Wish } from "../../src/season/plan-solver.ts";
import { diseaseAdvice, rotation } from "../../src/season/rotation.ts";
import { type SeedRow, seedList, seedListSaid } from "../../src/season/seed-list.ts";
import { soilOf } from "../../src/season/soil.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

async function book(files: Files, today = "2024-12-31") {
  return seasonBook(await gardenOf(files, today), noWeather, today);
}

/** One crop in one bed in one year, planted in May and cleared in September. */
function grown(...rows: readonly (readonly [crop: string, year: number, more?: string])[]): Files {
  return {
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    ...Object.fromEntries(
      rows.map(([crop]) => [
        `varieties/my-${crop.replaceAll(" ", "-")}.md`,
        `---\ntitle: My ${crop}\ncrop: ${crop}\n---\n`,
      ]),
    ),
    ...Object.fromEntries(
      rows.flatMap(([crop, year, more = ""], index) => [
        [`notes/${year}-05-01-${index}.md`, `- planted 4 bought My ${crop} in Long Bed\n`],
        [
          `notes/${year}-09-01-${index}.md`,
          `- picked 1 kg My ${crop} from Long Bed\n${more}- cleared My ${crop} from Long Bed\n`,
        ],
      ]),
    ),
  };
}

describe("rotation", () => {
  // Cases with an interval of three seasons, worked from the rule "years since last = this season less that one".
  it.each([
    [["tomato", 2022], ["pepper", 2024], true],
    [["tomato", 2021], ["potato", 2024], false],
    [["tomato", 2023], ["sweet potato", 2024], false],
    [["onion", 2023], ["leek", 2024], true],
    [["beetroot", 2023], ["spinach", 2024], true],
    [["lettuce", 2022], ["endive", 2024], false],
  ] as const)("%s and then %s", async (before, now, isConflict) => {
    const { conflicts } = rotation(await book(grown(before, now)), 2024);
    expect(conflicts).toHaveLength(isConflict ? 1 : 0);
  });

  it("says why, and since when", async () => {
    const { conflicts, notYet } = rotation(await book(grown(["onion", 2023], ["leek", 2024])), 2024);
    expect(conflicts[0]?.sentence.text).toBe(
      "The long bed had leeks the season after its last of the onion family. Leave three seasons between them, or white rot stays in the soil.",
    );
    expect(conflicts[0]?.sentence.sources.map(({ file }) => file)).toEqual([
      "notes/2024-05-01-1.md",
      "notes/2023-05-01-0.md",
    ]);
    expect(notYet.get("long-bed")).toMatchObject([{ family: "Amaryllidaceae", last: 2024, from: 2027 }]);
  });

  it("waits longer after clubroot, and says what to do", async () => {
    const files = grown(["cabbage", 2020, "- trouble: clubroot on My cabbage in Long Bed\n"], ["radish", 2024]);
    const seen = await book(files);
    const { conflicts, notYet } = rotation(seen, 2024);
    expect(conflicts[0]?.sentence.text).toContain("With clubroot seen there leave seven seasons between them");
    expect(notYet.get("long-bed")?.[0]).toMatchObject({ from: 2027, disease: "clubroot" });
    expect(diseaseAdvice(seen, 2020)[0]?.text).toMatch(
      /^Clubroot was seen in the long bed\. Keep the whole cabbage family off/,
    );
  });

  it("is not sold as a cure for what comes through the air", async () => {
    const files = grown(["squash", 2024, "- trouble: powdery mildew on My squash in Long Bed\n"]);
    const { conflicts, noCure } = rotation(await book(files), 2024);
    expect(conflicts).toEqual([]);
    expect(noCure.map(({ text }) => text)).toEqual([
      "Powdery mildew comes through the air, so another bed is no cure for it.",
    ]);
  });

  it("lets pots alone that are filled afresh each spring", async () => {
    const files = {
      ...grown(["tomato", 2023], ["tomato", 2024]),
      "beds/long-bed.md":
        "---\ntitle: Tomato Pots\nalso called: [Long Bed]\nfilled:\n  - {what: new compost, on: 2024-04-20}\n---\n",
    };
    expect(rotation(await book(files), 2024).conflicts).toEqual([]);
  });
});

describe("soil", () => {
  it("is told by its tests, and blueberries among vegetables are flagged", async () => {
    const files: Files = {
      "beds/tubs.md": "---\ntitle: Tubs\n---\n",
      "varieties/bluecrop.md": "---\ntitle: Bluecrop\ncrop: blueberry\nperennial: true\n---\n",
      "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\n---\n",
      "notes/2024-03-01.md": "- planted 2 bought Bluecrop in Tubs\n- sowed Boltardy in Tubs\n- soil test Tubs pH 6.4\n",
    };
    const [soil] = soilOf(await book(files, "2024-06-01"), 2024);
    expect(soil?.mean).toBeCloseTo(6.4, 9);
    expect(soil?.sentences.map(({ text }) => text)).toEqual([
      "The tubs tested at pH 6.4 on 1 March; too limy for blueberries.",
      "Blueberries stand together with beetroot in the tubs, and no soil suits both: look that each has its own.",
    ]);
  });
});

describe("needs", () => {
  const withGoals = (...goals: readonly string[]): Files => ({
    "garden.md": `---\nname: Test\nlanguage: en-GB\ngoals: [${goals.join(", ")}]\n---\n`,
    "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
    "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
    "notes/2023-05-01.md": "- planted 20 bought Musselburgh in Long Bed\n",
    "notes/2023-11-01.md": "- dug 4 kg Musselburgh from Long Bed\n- cleared Musselburgh from Long Bed\n",
    "notes/2024-05-01.md": "- planted 10 bought Musselburgh in Long Bed\n",
    "notes/2024-11-01.md": "- dug 3 kg Musselburgh from Long Bed\n- cleared Musselburgh from Long Bed\n",
  });

  it("are the goal over the garden's own yield, with good and poor years", async () => {
    const [need] = needs(await book(withGoals("10 kg of leeks")));
    // 7 kg from 30 plants is 233 g: 43 plants; 300 g in the better year: 34; 200 g in the poorer: 50 (computed).
    expect(need).toMatchObject({ basis: "own", plants: { usual: 43, good: 34, poor: 50 }, cautions: [] });
    expect(need?.sentence.text).toBe(
      "10 kg of leeks: about 43 leek plants, 34 in a good year and 50 in a poor one, at the 233 g a plant that 30 plants gave here in two seasons.",
    );
  });

  it("count plantings that failed", async () => {
    const files: Files = {
      "garden.md": "---\nname: Test\nlanguage: en-GB\ngoals: [10 kg of courgettes]\n---\n",
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "varieties/alpha.md": "---\ntitle: Alpha\ncrop: courgette\n---\n",
      "notes/2022-05-25.md": "- planted 10 bought Alpha in Long Bed\n",
      "notes/2022-08-01.md": "- picked 30 kg Alpha from Long Bed\n- cleared Alpha from Long Bed\n",
      "notes/2023-05-25.md": "- planted 10 bought Alpha in Long Bed\n",
      "notes/2023-06-20.md": "- lost 10 Alpha to slugs\n- cleared Alpha from Long Bed\n",
      "notes/2024-05-25.md": "- planted 10 bought Alpha in Long Bed\n",
      "notes/2024-08-01.md": "- picked 32 kg Alpha from Long Bed\n- cleared Alpha from Long Bed\n",
    };
    const [need] = needs(await book(files));
    // 62 kg over thirty plants is 2.07 kg: five plants for 10 kg.
    expect(need?.plants).toEqual({ usual: 5, good: 4, poor: undefined });
    expect(need?.sentence.text).toBe(
      "10 kg of courgettes: about five courgette plants, four in a good year, and none would have done it in the one season in which all were lost, at the 2.07 kg a plant that 30 plants gave here in three seasons.",
    );
    expect(need?.sentence.sources.map(({ file }) => file)).toContain("notes/2023-06-20.md");
  });

  it("leave out a planting that is still picked", async () => {
    const files = withGoals("10 kg of leeks");
    const [need] = needs(
      await book({
        ...files,
        "notes/2024-11-01.md": "- dug 300 g Musselburgh from Long Bed\n",
      }),
    );
    expect(need?.sentence.text).toContain("at the 200 g a plant that 20 plants gave here in one season.");
  });

  it("are a range of handbooks, said to be that, for a crop never grown", async () => {
    const [okra, tomatoes] = needs(await book(withGoals("5 kg of okra", "28 quarts of tomato sauce")));
    expect(okra?.basis).toBe("handbook");
    // 100 lb from 100 ft at 12 and at 18 inches: 1 and 1.5 lb a plant.
    expect(okra?.sentence.text).toBe(
      "5 kg of okra: between eight and twelve okra plants, at the 454 g to 680 g a plant of handbooks, from memory, because okra never grew here; one season of your own will tell more.",
    );
    expect(tomatoes?.plants).toEqual({ usual: 30, good: 10, poor: 94 });
    expect(tomatoes?.sentence.text).toMatch(
      /so between ten and 94 tomato plants, at the 680 g to 6\.8 kg a plant of handbooks/,
    );
  });

  it("of jars always carry their cautions, and reckon by the guide's table", async () => {
    const [need] = needs(await book(withGoals("28 quarts of tomato sauce")));
    // USDA table: 35 lb fill seven quarts of thin sauce, so 28 quarts take 140 lb, 63.5 kg, four loads.
    expect((need?.grams ?? 0) / 453.59237).toBeCloseTo(140, 6);
    expect(need?.sentence.text).toContain("about 63.5 kg of tomatoes, for a thin sauce, four canner loads");
    expect(need?.cautions.join(" ")).toMatch(/tested recipe.*need acid.*look up your own/);
    const [beans] = needs(await book(withGoals("9 pints of green beans")));
    expect(beans?.cautions.join(" ")).toContain("pressure canner");
  });

  it.each([
    "9 pints of okra",
    "20 quarts of cranberry sauce",
    "12 pints of cornichons",
    "12 pints of chilli sauce",
    "10 pints of pineapple",
    "9 pints of tomato soup",
    "7 quarts of baked beans",
    "2 quarts of sweet peas",
    "12 jars of leeks",
  ])("of %s ask, and give no figure", async (goal) => {
    const [need] = needs(await book(withGoals(goal)));
    expect([need?.basis, need?.plants, need?.grams, need?.product]).toEqual(["none", undefined, undefined, undefined]);
    expect(need?.sentence.text).toMatch(/which product is that\?|are no food; some are poisonous|say quarts or pints/);
    expect(need?.sentence.text).not.toMatch(/\d (?:kg|g|lb)\b/);
    expect(need?.cautions.join(" ")).toContain("pressure canner");
  });

  it("of a product that nobody tested are asked about by check", async () => {
    const { garden } = await book(
      withGoals(
        "9 pints of tomato soup",
        "9 pints of Musselburgh tomatoes",
        "3 pints of peas",
        "14 pints of applesauce",
        "14 pints of kimchi",
        "12 jars of leeks",
        "10 kg of leek soup",
        "3 kg of moonfruit",
      ),
    );
    expect(seasonProblems(garden).map(({ what }) => what)).toEqual([
      'The goal "9 pints of tomato soup" is of a product that the canning guide\'s table here does not name, so no amount is reckoned.',
      'The goal "14 pints of kimchi" is of a product that the canning guide\'s table here does not name, so no amount is reckoned.',
      'The goal "12 jars of leeks" does not say how much goes into one, so no amount is reckoned.',
      'The goal "10 kg of leek soup" is of something made of leeks, and how much of them that takes is not known, so no amount is reckoned.',
      'The goal "3 kg of moonfruit" names no crop or variety there is.',
    ]);
  });

  it("say of a figure that was never read in its table that it is from memory", async () => {
    const [sauce, tomatoes, okra] = needs(
      await book(withGoals("28 quarts of tomato sauce", "21 quarts of tomatoes", "5 kg of okra")),
    );
    expect(sauce?.sentence.text).toContain("four canner loads, by the guide's table from memory, so between");
    // 21 lb for seven quarts of whole tomatoes were seen in the guide; the yields of plants were not.
    expect(tomatoes?.sentence.text).toContain("about 28.6 kg of tomatoes, three canner loads, so between");
    for (const need of [sauce, tomatoes, okra])
      expect(need?.sentence.text).toContain("a plant of handbooks, from memory, because");
  });

  it("of apple sauce are of apples, however it is written", async () => {
    for (const goal of ["20 quarts of apple sauce", "20 quarts of applesauce"]) {
      const [need] = needs(await book(withGoals(goal)));
      expect(need).toMatchObject({ crop: { id: "apple" }, product: "apple sauce" });
      expect(need?.sentence.text).toContain("of apples");
      expect(need?.sentence.text).not.toContain("tomato");
    }
  });

  it("of what is made of a crop are not of the crop", async () => {
    const [soup, leeks] = needs(await book(withGoals("10 kg of leek soup", "10 kg of leeks for the winter")));
    expect([soup?.plants, leeks?.plants?.usual]).toEqual([undefined, 43]);
    expect(soup?.sentence.text).toBe(
      "10 kg of leek soup: how much fresh produce that takes is not known here; name the leeks themselves.",
    );
  });

  it("of something nobody knows are said to be that", async () => {
    const [need] = needs(await book(withGoals("3 kg of moonfruit")));
    expect([need?.basis, need?.plants]).toEqual(["none", undefined]);
  });
});

describe("the seed order", () => {
  it("goes by source, knows own seed, and is a safe spreadsheet", async () => {
    const files: Files = {
      "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
      "varieties/early-nantes.md":
        "---\ntitle: Early Nantes\ncrop: carrot\nsource: {name: Drift Lane Seeds, obtained: bought, year: 2018}\n---\n",
      "varieties/alderman.md":
        "---\ntitle: Alderman\ncrop: pea\nsource: {name: own saved seed, obtained: saved}\n---\n",
      "varieties/musselburgh.md":
        "---\ntitle: Musselburgh\ncrop: leek\nsource: {name: Drift Lane Seeds, obtained: bought, year: 2024}\n---\n",
      "notes/2024-05-01.md":
        "- sowed a row of Early Nantes in Long Bed\n- sowed a row of Alderman in Long Bed\n- sowed 20 Musselburgh in Long Bed\n",
      "notes/2024-08-01.md": "- saved seed: Alderman, 90 g\n",
    };
    const rows = seedList(await book(files), 2024);
    expect(rows.map(({ title, how, saved, remark }) => [title, how, saved, remark])).toEqual([
      ["Early Nantes, carrot", "buy", "", "The packet is old"],
      ["Musselburgh, leek", "buy", "", "Its seed keeps for a year or two only"],
      ["Alderman, pea", "own seed", "90 g saved on 1 August", ""],
    ]);
    const csv = seedListCsv(rows.map((row) => ({ ...row, remark: row.how === "buy" ? "=1+1" : row.remark })));
    expect(csv.split("\r\n")[0]).toBe("\uFEFFsource,variety,crop,how,own seed,obtained,year,remark,link");
    expect(csv).toContain("'=1+1");
  });
});

describe("the draft", () => {
  const bed = (title: string) => `---\ntitle: ${title}\n---\n`;

  it.each([
    ["of unknown size", bed("Old Bed")],
    ["of known size", "---\ntitle: Old Bed\nsize: 4 x 1.2 m\n---\n"],
  ])("puts nothing on asparagus that has its bed %s to itself", async (_, oldBed) => {
    const files: Files = {
      "beds/old-bed.md": oldBed,
      "beds/the-new-bed.md": bed("The New Bed"),
      "beds/mixed-bed.md": bed("Mixed Bed"),
      "notes/2022-05-01.md": "- sowed radishes in Old Bed\n- cleared radishes from Old Bed\n",
      "notes/2023-05-01.md": "- cut 400 g asparagus from Old Bed\n- planted 3 rhubarb in Mixed Bed\n",
      "notes/2024-05-01.md": "- cut 400 g asparagus from Old Bed\n- planted 15 potatoes in The New Bed\n",
      "notes/2024-05-20.md": "- planted 6 bought courgettes in Mixed Bed\n- planted 6 bought tomatoes in The New Bed\n",
      "notes/2024-09-20.md":
        "- cleared potatoes from The New Bed\n- cleared courgettes from Mixed Bed\n- cleared tomatoes from The New Bed\n",
    };
    const known = await book(files);
    const { rows } = planDraft(known, 2024, rotation(known, 2024), []);
    expect(rows.map(({ bed: id }) => id)).not.toContain("old-bed");
    expect(rows.flatMap(({ crops }) => crops.map(({ crop }) => crop)).sort()).toEqual([
      "courgette",
      "potato",
      "tomato",
    ]);
  });
});

describe("the solver of the draft", () => {
  const wish = (index: number, area: number): Wish => ({
    crop: `c${index}`,
    area,
    sun: false,
    cover: false,
    from: "b0",
  });
  const place = (index: number, area: number): Place => ({
    bed: `b${index}`,
    area,
    shady: false,
    cover: false,
    onlyPerennials: false,
    pots: false,
  });

  it("finds what trying everything finds", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 5 }),
        fc.array(fc.integer({ min: 0, max: 8 }), { minLength: 1, maxLength: 3 }),
        fc.infiniteStream(fc.integer({ min: 0, max: 9 })),
        (areas, rooms, stream) => {
          const wishes = areas.map((area, index) => wish(index, area));
          const places = rooms.map((area, index) => place(index, area));
          const costs = wishes.map(() => places.map(() => stream.next().value as number));
          const costOf = (one: Wish, where: Place) => costs[wishes.indexOf(one)]?.[places.indexOf(where)] ?? 0;
          const found = assignBeds(wishes, places, costOf, 10);
          expect(found.exact).toBe(true);
          expect(found.cost).toBeCloseTo(cheapest(areas, rooms, costs), 6);
        },
      ),
    );
  });

  it("holds to pins and leaves out what no bed can take", () => {
    const costOf = (one: Wish, where: Place) =>
      one.crop === "c0" ? (where.bed === "b1" ? 0 : Number.POSITIVE_INFINITY) : Number.POSITIVE_INFINITY;
    expect(assignBeds([wish(0, 1), wish(1, 1)], [place(0, 4), place(1, 4)], costOf, 10).placeOf).toEqual([
      1,
      undefined,
    ]);
    expect(assignBeds([], [], costOf, 10)).toMatchObject({ placeOf: [], cost: 0 });
  });
});

/** Every assignment, by brute force. */
function cheapest(areas: readonly number[], rooms: readonly number[], costs: readonly (readonly number[])[]): number {
  const over = (room: number, taken: number) =>
    taken <= room ? 0 : room <= 0 ? 10 * (1 + taken) : (10 * (taken - room)) / room;
  let best = Number.POSITIVE_INFINITY;
  const total = rooms.length ** areas.length;
  for (let code = 0; code < total; code += 1) {
    const taken = rooms.map(() => 0);
    let cost = 0;
    let rest = code;
    for (const [index, area] of areas.entries()) {
      const where = rest % rooms.length;
      rest = Math.floor(rest / rooms.length);
      taken[where] = (taken[where] ?? 0) + area;
      cost += costs[index]?.[where] ?? 0;
    }
    best = Math.min(best, cost + rooms.reduce((sum, room, index) => sum + over(room, taken[index] ?? 0), 0));
  }
  return best;
}

describe("what is to buy, in a sentence", () => {
  const row = (source: string): SeedRow => ({
    variety: source,
    title: source,
    crop: "leek",
    source,
    link: "",
    obtained: "bought",
    year: "",
    how: "buy",
    saved: "",
    remark: "",
  });

  it("names the four sources that most comes from", () => {
    const rows = ["Ash", "Birch", "Birch", "Cedar", "Cedar", "Cedar", "Damson", "Elder"].map(row);
    expect(seedListSaid(rows.slice(0, 7))).toBe(
      "To buy again: three varieties from Cedar, two varieties from Birch, one variety from Ash and one variety from Damson.",
    );
    expect(seedListSaid(rows)).toBe(seedListSaid(rows.slice(0, 7)));
  });
});
