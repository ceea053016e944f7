/** A person's own lines, as tours and recaps quote them: which can be said, and what they name. */
import { describe, expect, it } from "vitest";
import { finderOf, isQuotable, ownLinesOf } from "../../src/garden/index.ts";
import { plainWords } from "../../src/language/index.ts";
import { makeRecapCards } from "../../src/season/index.ts";
import { makeCards } from "../../src/tour/index.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const day = "2026-07-18";
const files: Files = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/pea-frame.md": "---\ntitle: Pea Frame\n---\n",
  "varieties/chioggia.md": "---\ntitle: Chioggia\ncrop: beetroot\n---\n",
  "varieties/marina.md": "---\ntitle: Marina di Chioggia\ncrop: squash\n---\n",
  "varieties/matucana.md": "---\ntitle: Matucana\ncrop: sweet pea\n---\n",
  "notes/2026-05-02.md": "- sowed Chioggia in Long Bed\n",
};

describe("what words name", () => {
  it("is the longest name at each place, one of many as well as many", async () => {
    const find = finderOf(await gardenOf(files, day));
    const named = (text: string) => {
      const plain = plainWords(text);
      return [find.beds(plain), find.varieties(plain), find.crops(plain)];
    };
    expect(named("lost 1 Marina di Chioggia to rot")).toEqual([[], ["marina"], []]);
    expect(named("Chioggia and the Marina di Chioggia")).toEqual([[], ["chioggia", "marina"], []]);
    expect(named("the sweet peas flop")).toEqual([[], [], ["sweet-pea"]]);
    expect(named("every beetroots and a squash in the pea frame")).toEqual([["pea-frame"], [], ["beetroot", "squash"]]);
  });
});

describe("lines that can be said", () => {
  it("have no price, link, box or table in them, and are no page of a diary", () => {
    expect(isQuotable("The beetroot by the gate is the sweet one")).toBe(true);
    for (const text of [
      "£3 for the lot",
      "it cost $2",
      "4 € each",
      "see https://garden.example",
      "[ ] weed",
      "a | b",
      "",
    ])
      expect(isQuotable(text), text).toBe(false);
    expect(isQuotable("a".repeat(160))).toBe(true);
    expect(isQuotable("a".repeat(161))).toBe(false);
    expect(isQuotable("12, 14 – 3")).toBe(false);
  });

  it("are told by neither cards nor recap when they say what was paid", async () => {
    const paid = "The beetroot in Long Bed cost me £7 and a morning";
    const free = "The beetroot in Long Bed cost me a morning and my temper";
    const garden = await gardenOf({ ...files, "notes/2026-07-11.md": `${paid}.\n\n${free}.\n` }, day);
    expect(ownLinesOf(garden).map(({ text }) => text)).toEqual([free]);
    const season = { year: 2026, label: "2026", from: "2026-01-01", to: "2026-12-31" };
    const told = [makeCards(garden, { day, today: day }), makeRecapCards(garden, undefined, { season, today: day })];
    for (const cards of told) expect(JSON.stringify(cards.cards)).not.toContain("£7");
  });
});
