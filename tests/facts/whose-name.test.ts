/** Whose the name of a source is, where nothing says how a thing was obtained: one answer for the site and for platforms. */
import { expect, it } from "vitest";
import { whoseName } from "../../src/facts/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { recordsOf } from "../records/records-of.ts";

const files = {
  "garden.md": "---\nunits: metric\nmay be named: [Isa]\n---\n",
  "varieties/bought.md": "---\ntitle: Boltardy\ncrop: beetroot\nsource: { name: Marsh Seeds, obtained: bought }\n---\n",
};

it.each([
  ["Marsh Seeds", "seller"],
  ["marsh seeds", "seller"],
  ["Isa at the kirk", "may be named"],
  ["Wilf two plots up", "somebody"],
  ["Uncle Ray", "somebody"],
  ["Harrow Lane", "unknown"],
])("%s: %s", async (name, whose) => {
  expect(whoseName(name, growGarden(await recordsOf(files, "2026-06-21"), []))).toBe(whose);
});
