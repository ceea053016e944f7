/** The ordinary words: none of them is anything the other tables know. */
import { readFile } from "node:fs/promises";
import { expect, test } from "vitest";
import { ordinaryWordsFile } from "../../scripts/ordinary-words.ts";
import { crops } from "../../src/records/crops.ts";
import { lowerForm } from "../../src/records/line-words.ts";
import { ordinaryWords } from "../../src/records/reading/tables/ordinary-words.ts";
import { pestTable } from "../../src/records/reading/tables/pests.ts";
import { keyOf } from "../../src/records/reading/tables/rows.ts";

const words = ordinaryWords();

test("the file is what its script makes of the tables of today", async () => {
  const file = new URL("../../src/records/reading/tables/ordinary-words.ts", import.meta.url);
  expect(await readFile(file, "utf8")).toBe(ordinaryWordsFile());
});

test("words of every day are there", () => {
  const everyDay =
    "the and with because yesterday afternoon weather really another house school church wonderful terrible remember beautiful dont whilst";
  expect(everyDay.split(" ").filter((word) => !words.has(word))).toEqual([]);
  expect(words.size).toBeGreaterThan(2800);
});

test("no crop, trouble, thing, person or verb of the trade is", () => {
  const known =
    "tomato beans rose lily mint slugs frost blight net fleece straw manure pots tray mum neighbour dave sowed planted picked watered lime box broom";
  expect(known.split(" ").filter((word) => words.has(word))).toEqual([]);
  const cropKeys = new Set(crops.flatMap((crop) => [crop.name, crop.plural, ...crop.alsoCalled].map(keyOf)));
  expect([...words].filter((word) => cropKeys.has(keyOf(word)) || pestTable().has(keyOf(word)))).toEqual([]);
});

test("they are in the form words are compared by, once each", () => {
  expect([...words].filter((word) => lowerForm(word) !== word || !/^[a-z]+$/.test(word))).toEqual([]);
  expect([...words]).toEqual([...words].sort());
});
