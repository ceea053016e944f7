/** The names that gardens of many countries give their crops. */
import { expect, test } from "vitest";
import { crops, normaliseName } from "../../src/records/index.ts";

const byName = new Map(
  crops.flatMap((crop) => [crop.name, crop.plural, ...crop.alsoCalled].map((name) => [normaliseName(name), crop])),
);
const idOf = (name: string) => byName.get(normaliseName(name))?.id;

test.each([
  ["spuds", "potato"],
  ["tatties", "potato"],
  ["taters", "potato"],
  ["toms", "tomato"],
  ["cukes", "cucumber"],
  ["caulis", "cauliflower"],
  ["courgs", "courgette"],
  ["zukes", "courgette"],
  ["zucs", "courgette"],
  ["rasps", "raspberry"],
  ["strawbs", "strawberry"],
  ["goosegogs", "gooseberry"],
  ["brocc", "broccoli"],
  ["psb", "sprouting-broccoli"],
  ["aubs", "aubergine"],
  ["favas", "broad-bean"],
  ["daffs", "daffodil"],
  ["sweetpeas", "sweet-pea"],
  ["silverbeet", "chard"],
  ["callaloo", "amaranth"],
  ["sukuma wiki", "collard"],
  ["kūmara", "sweet-potato"],
  ["methi", "fenugreek"],
  ["karela", "bitter-gourd"],
  ["bhindi", "okra"],
  ["dasheen", "taro"],
  ["amadumbe", "taro"],
  ["christophene", "chayote"],
  ["choko", "chayote"],
  ["gungo peas", "pigeon-pea"],
  ["mielies", "sweetcorn"],
  ["naartjies", "mandarin"],
  ["granadillas", "passion-fruit"],
  ["scotch bonnets", "chilli"],
  ["chillis", "chilli"],
  ["chiles", "chilli"],
  ["capsicums", "pepper"],
  ["cobnuts", "hazelnut"],
  ["little bluestem", "bluestem"],
  ["butterfly weed", "milkweed"],
  ["coneflowers", "echinacea"],
  ["patty pans", "summer-squash"],
])("%s are %s", (name, id) => {
  expect(idOf(name)).toBe(id);
});

test.each([
  ["hazelnut", "Betulaceae", true],
  ["olive", "Oleaceae", true],
  ["clematis", "Ranunculaceae", true],
  ["taro", "Araceae", true],
  ["cassava", "Euphorbiaceae", true],
  ["pigeon-pea", "Fabaceae", true],
  ["chayote", "Cucurbitaceae", true],
  ["celtuce", "Asteraceae", false],
  ["tatsoi", "Brassicaceae", false],
  ["bitter-gourd", "Cucurbitaceae", false],
  ["hop", "Cannabaceae", true],
  ["heuchera", "Saxifragaceae", true],
  ["lisianthus", "Gentianaceae", false],
  ["milkweed", "Apocynaceae", true],
])("%s is one of the %s, and whether it stands for years is known", (id, family, perennial) => {
  expect(crops.find((crop) => crop.id === id)).toMatchObject({ family, perennial });
});

/** Words of every day, and of people and places, that a line must be able to say without naming a crop. */
test("ordinary words are no crop's name", () => {
  const words =
    "lime orange box bay broom tea coffee date cotton hazel willow bamboo thrift pinks mums glads runners broads blues maters cos elder leak";
  expect(words.split(" ").filter((word) => idOf(word) !== undefined)).toEqual([]);
});

test("every crop has a family, and the table no empty name", () => {
  expect(crops.filter(({ family }) => !/^[A-Z][a-z]+aceae$/.test(family)).map(({ id }) => id)).toEqual([]);
  expect(
    crops.flatMap((crop) => [crop.name, crop.plural, ...crop.alsoCalled]).filter((n) => n.trim() !== n || n === ""),
  ).toEqual([]);
  expect(crops.filter(({ id }) => !/^[a-zé]+(-[a-z]+)*$/.test(id)).map(({ id }) => id)).toEqual([]);
});
