/** Words for people and their gardens, given names, and short forms of crops that are ordinary words. */
import { expect, test } from "vitest";
import { crops } from "../../src/records/crops.ts";
import * as people from "../../src/records/reading/tables/people.ts";
import { keyOf, rowsOf } from "../../src/records/reading/tables/rows.ts";
import { slangRows, slangTable } from "../../src/records/reading/tables/slang.ts";

const cropKeys = new Set(crops.flatMap((crop) => [crop.name, crop.plural, ...crop.alsoCalled].map(keyOf)));

test.each([
  ["people", people.personRows, people.personWords()],
  ["given names", people.givenNameRows, people.givenNames()],
  ["names of plants", people.plantNameRows, people.plantGivenNames()],
])("%s: no word stands twice or is empty", (_, rows, set) => {
  const keys = rows.trim().split(/, |\n/).map(keyOf);
  expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  expect(set.has("")).toBe(false);
  expect(set.size).toBe(keys.length);
});

test("people are known by what they are to one, and by name", () => {
  const words = "neighbour,neighbor,mum,mom,nan,gran,sister,the lad,husband,kids,the old boy,grandad,mother-in-law";
  expect(words.split(",").filter((word) => !people.personWords().has(keyOf(word)))).toEqual([]);
  const names = "Dave,Sue,Fiona,Wanjiku,Priya,Sipho,Siobhan,Carlos,Hamish,Aisha";
  expect(names.split(",").filter((name) => !people.givenNames().has(keyOf(name)))).toEqual([]);
  expect(people.givenNames().size).toBeGreaterThan(300);
});

test("a given name is a plant's, or it is none", () => {
  const plants = people.plantGivenNames();
  const names =
    "Rose,Lily,Daisy,Basil,Sage,Ivy,Iris,Violet,Heather,Holly,Hazel,Olive,Poppy,Jasmine,Rosemary,Fern,Willow,Clementine,Pepper,Ginger,Saffron,Bryony";
  expect(names.split(",").filter((name) => !plants.has(keyOf(name)))).toEqual([]);
  expect([...people.givenNames()].filter((key) => plants.has(key))).toEqual([]);
});

/** "toms" are tomatoes and "Tom" is a person, Alexanders a plant: the reader has to tell them apart by their letters. */
test("of the given names only Alexander and Tom have a crop’s key", () => {
  expect([...people.givenNames()].filter((key) => cropKeys.has(key))).toEqual(["alexander", "tom"]);
});

test("short forms stand for crops there are, once each, and are no crop's own name", () => {
  const ids = new Set(crops.map(({ id }) => id));
  const keys = rowsOf(slangRows).flatMap(([, words]) => words.map(keyOf));
  expect(rowsOf(slangRows).filter(([crop, words]) => !ids.has(crop) || words.length === 0)).toEqual([]);
  expect(keys.filter((key, at) => keys.indexOf(key) !== at || cropKeys.has(key))).toEqual([]);
  expect(slangTable().size).toBe(keys.length);
});

test.each([
  ["runners", "runner-bean"],
  ["broads", "broad-bean"],
  ["blues", "blueberry"],
  ["mums", "chrysanthemum"],
  ["glads", "gladiolus"],
  ["pumps", "pumpkin"],
  ["maters", "tomato"],
  ["caps", "pepper"],
  ["nasties", "nasturtium"],
  ["dahls", "dahlia"],
  ["limes", "lime-tree"],
])("%s may be %s", (word, crop) => {
  expect(slangTable().get(keyOf(word))).toEqual({ crop, weak: true });
});

/** "Onion sets", "raspberry canes", "the vine": parts of many plants, which made facts of plants that nobody meant. */
test.each(["sets", "canes", "berries", "vine", "winters"])("%s are no crop", (word) => {
  expect(slangTable().has(keyOf(word))).toBe(false);
});
