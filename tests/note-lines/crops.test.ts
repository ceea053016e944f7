/**
 * The crop table. Families of vegetables: WVU Extension, "Crop rotation in the garden" (2025), and the UC Master
 * Gardener Handbook, as check-values section 5 gives them.
 */
import { expect, test } from "vitest";
import { crops, normaliseName, pieceOf } from "../../src/records/index.ts";

const byId = new Map(crops.map((crop) => [crop.id, crop]));

const families: Readonly<Record<string, readonly string[]>> = {
  Solanaceae: ["tomato", "pepper", "aubergine", "potato", "tomatillo"],
  Brassicaceae: [
    ...["cabbage", "broccoli", "cauliflower", "brussels-sprout", "kale", "collard", "kohlrabi", "radish", "turnip"],
    ...["swede", "mustard", "rocket"],
  ],
  Cucurbitaceae: ["cucumber", "melon", "squash", "pumpkin", "gourd"],
  Fabaceae: ["pea", "bean", "french-bean", "runner-bean", "broad-bean"],
  Amaryllidaceae: ["onion", "garlic", "leek", "chive"],
  Amaranthaceae: ["beetroot", "chard", "spinach"],
  Apiaceae: ["carrot", "parsnip", "celery", "parsley", "dill"],
  Asteraceae: ["lettuce", "endive", "sunflower"],
  Poaceae: ["sweetcorn"],
  Convolvulaceae: ["sweet-potato"],
  Malvaceae: ["okra"],
  Polygonaceae: ["rhubarb"],
};

test("families are the published ones", () => {
  const expected = Object.entries(families).flatMap(([family, ids]) => ids.map((id) => [id, family]));
  expect(expected.length).toBe(46);
  expect(expected.map(([id]) => [id, byId.get(id ?? "")?.family])).toEqual(expected);
});

test("there are crops of every use, and enough of them", () => {
  const uses = Object.groupBy(crops, ({ use }) => use);
  expect(crops.length).toBeGreaterThan(150);
  expect(uses.vegetable?.length).toBeGreaterThan(60);
  expect(uses.flower?.length).toBeGreaterThan(50);
  expect(uses.fruit?.length).toBeGreaterThan(15);
  expect(uses.herb?.length).toBeGreaterThan(15);
  expect(uses.cover?.length).toBeGreaterThan(10);
});

test("ids and names are no two crops' own", () => {
  expect(byId.size).toBe(crops.length);
  const owners = new Map<string, string[]>();
  for (const crop of crops) {
    for (const name of new Set([crop.name, crop.plural, ...crop.alsoCalled].map(normaliseName))) {
      owners.set(name, [...(owners.get(name) ?? []), crop.id]);
    }
  }
  expect([...owners].filter(([, ids]) => ids.length > 1)).toEqual([]);
});

test("what stands for years does, and what is grown for one does not", () => {
  const perennial = [
    "asparagus",
    "rhubarb",
    "strawberry",
    "apple",
    "rosemary",
    "chive",
    "dahlia",
    "peony",
    "globe-artichoke",
  ];
  const annual = ["tomato", "leek", "pea", "basil", "zinnia", "sweet-pea", "phacelia", "parsley", "garlic"];
  expect(perennial.filter((id) => byId.get(id)?.perennial !== true)).toEqual([]);
  expect(annual.filter((id) => byId.get(id)?.perennial !== false)).toEqual([]);
});

test.each([
  ["tomato", "fruit"],
  ["squash", "fruit"],
  ["lettuce", "head"],
  ["beetroot", "root"],
  ["garlic", "bulb"],
  ["sweetcorn", "ear"],
  ["runner-bean", "pod"],
  ["rhubarb", "stem"],
  ["dahlia", "stem"],
  ["sweet-pea", "stem"],
  ["leek", "piece"],
])("a bare number of %s counts in %s", (id, unit) => {
  expect(pieceOf(byId.get(id))).toBe(unit);
});

test("a crop nobody knows is counted in pieces", () => {
  expect(pieceOf(undefined)).toBe("piece");
});
