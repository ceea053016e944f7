/** Which cards of a brief are new since the last look: by what they say, not by where they stand. */
import { expect, it } from "vitest";
import { lastLooks } from "../../src/site/last-look.ts";
import { makeCards } from "../../src/tour/index.ts";
import { gardenOf } from "../tour/garden-of.ts";

const today = "2026-07-16";
const files = {
  "garden.md": "---\nname: Test Garden\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
  "episodes/july/index.md": "---\ntitle: The July walk\ndate: 2026-07-18\nstatus: planned\n---\n",
  "notes/2026-05-24.md": "- planted 6 Sungold tomatoes in Long Bed\n- sowed 40 peas in Pea Row\n",
};

async function cardsOf(more: Readonly<Record<string, string>> = {}) {
  const garden = await gardenOf({ ...files, ...more }, today);
  return makeCards(garden, { episode: "july", today }).cards;
}

it("marks the one card that a saved line changed, until the next change", async () => {
  const looks = lastLooks();
  const first = await cardsOf();
  expect(first.map(({ bed }) => bed).toSorted()).toEqual(["long-bed", "pea-row"]);
  expect([...looks("july", first)]).toEqual([]);
  expect([...looks("july", first)]).toEqual([]);
  const lost = { "notes/2026-07-15.md": "- lost 2 Sungold tomatoes in Long Bed to slugs\n" };
  const second = await cardsOf(lost);
  expect([...looks("july", second)]).toEqual(["long-bed"]);
  // Looked at again, and by somebody else, it is still new.
  expect([...looks("july", await cardsOf(lost))]).toEqual(["long-bed"]);
  const third = await cardsOf({ ...lost, "notes/2026-07-16.md": "- picked 900 g peas from Pea Row\n" });
  expect([...looks("july", third)]).toEqual(["pea-row"]);
  // Each brief is looked at by itself.
  expect([...looks("august", third)]).toEqual([]);
});

it("takes a card for the same that only stands elsewhere or begins later", async () => {
  const looks = lastLooks();
  const cards = await cardsOf();
  looks("july", cards);
  const moved = cards.map((card) => ({ ...card, id: `S${card.number + 1}`, number: card.number + 1, begins: 500 }));
  expect([...looks("july", moved)]).toEqual([]);
});
