/** What plain words name in a garden with more beds than anybody's line can hold. */
import { expect, test } from "vitest";
import { finderOf } from "../../src/garden/index.ts";
import { plainWords } from "../../src/language/index.ts";
import { gardenOf } from "../tour/garden-of.ts";

const files = {
  "garden.md": "---\nname: Test\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\nalso called: [the strip]\n---\n",
  "beds/long-bed-two.md": "---\ntitle: Long Bed Two\n---\n",
  "beds/cafe-border.md": "---\ntitle: Café Border\n---\n",
  "beds/pots.md": "---\ntitle: Pots\n---\n",
};

test.each([
  ["weeded Pots, then the strip", ["long-bed", "pots"]],
  ["watered LONG BED TWO", ["long-bed", "long-bed-two"]],
  ["the cafe-border and the pots", ["cafe-border", "pots"]],
  ["a long look at the bed, and potsherds in it", []],
  ["", []],
])("beds named in %j, by any name and as whole words, in the order of the records", async (text, beds) => {
  const found = finderOf(await gardenOf(files, "2026-07-01")).beds(plainWords(text));
  expect([...found].sort()).toEqual([...beds].sort());
  expect(found).toEqual([...(await gardenOf(files, "2026-07-01")).beds.keys()].filter((id) => beds.includes(id)));
});
