/** Goals, pins and prices as garden.md has them. */
import { describe, expect, it } from "vitest";
import { gardenOf } from "../tour/garden-of.ts";

async function read(lines: readonly string[]) {
  const garden = await gardenOf({ "garden.md": ["---", "name: Test", ...lines, "---", ""].join("\n") }, "2026-07-18");
  return { settings: garden.settings, problems: garden.problems };
}

describe("goals", () => {
  it("are an amount of something", async () => {
    const { settings, problems } = await read([
      "goals:",
      "  - 28 quarts of tomato sauce",
      "  - 10 kg of leeks",
      "  - about 40 heads of lettuce",
      "  - 60 leeks",
      "  - 5 lb onions",
      "  - 2.5 litres of raspberries",
    ]);
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(settings.goals).toEqual([
      { text: "28 quarts of tomato sauce", what: "tomato sauce", jars: { count: 28, size: "quart" } },
      { text: "10 kg of leeks", what: "leeks", grams: 10_000 },
      { text: "about 40 heads of lettuce", what: "lettuce", pieces: { count: 40, unit: "head" } },
      { text: "60 leeks", what: "leeks", pieces: { count: 60 } },
      { text: "5 lb onions", what: "onions", grams: 2267.96185 },
      { text: "2.5 litres of raspberries", what: "raspberries", litres: 2.5 },
    ]);
  });

  it.each([
    ["plenty of leeks", 'goals, entry 1: "plenty of leeks" does not begin with an amount above none.'],
    ["0 kg of leeks", 'goals, entry 1: "0 kg of leeks" does not begin with an amount above none.'],
    ["10 kg", 'goals, entry 1: "10 kg" does not say of what.'],
  ])("%s is told by its line", async (written, what) => {
    const { settings, problems } = await read(["goals:", `  - ${written}`]);
    expect(problems).toMatchObject([{ rule: "record/wrong-value", file: "garden.md", line: 4, what }]);
    expect(settings.goals ?? []).toEqual([]);
  });
});

describe("pins and prices", () => {
  it("are read as written", async () => {
    const { settings, problems } = await read([
      "pins: [tomatoes in Tomato Pots, leeks in the Long Bed]",
      "prices:",
      "  tomato: 4.20 a kg",
      "  lettuce: £0.50 a head",
      "  garlic: 9 EUR per lb",
    ]);
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([]);
    expect(settings.pins).toEqual([
      { text: "tomatoes in Tomato Pots", crop: "tomatoes", bed: "Tomato Pots" },
      { text: "leeks in the Long Bed", crop: "leeks", bed: "Long Bed" },
    ]);
    expect(settings.prices).toEqual([
      { of: "tomato", sign: "", signAfter: false, perGram: expect.closeTo(0.0042, 9) },
      { of: "lettuce", sign: "£", signAfter: false, perPiece: { amount: 0.5, unit: "head" } },
      { of: "garlic", sign: "EUR", signAfter: true, perGram: 9 / 453.59237 },
    ]);
  });

  it("say what is missing", async () => {
    const { problems } = await read(["pins: [tomatoes]", "prices: {tomato: dear, leek: 4 a furlong}"]);
    expect(problems.map(({ what }) => what)).toEqual([
      'pins, entry 1: "tomatoes" does not say what goes where.',
      'prices: tomato: "dear" is not a price for a weight or a piece.',
      'prices: leek: "4 a furlong" is not a price for a weight or a piece.',
    ]);
  });
});
