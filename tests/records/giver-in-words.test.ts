/** Whose gift it is by the words behind "from": kin and neighbours are no sellers (common practice). */
import { expect, it } from "vitest";
import { giverInWords } from "../../src/records/giver-in-words.ts";

it.each([
  ["a sucker from my sister's", "a person"],
  ["Wilma next door", "a person"],
  ["Gran", "a person"],
  ["a friend at the allotments", "a person"],
  ["my brother's nursery", undefined],
  ["Grandma's Garden", undefined],
  ["Uncle Bob's Compost", undefined],
  ["Skerry Netting", undefined],
  ["a man at the show", undefined],
  ["Matey Tools", undefined],
] as const)("%s: %s", (from, giver) => {
  expect(giverInWords("gifted", from)).toBe(giver);
});

it("says nothing of what was bought", () => {
  expect(giverInWords("bought", "my sister")).toBeUndefined();
  expect(giverInWords(undefined, "my sister")).toBeUndefined();
});
