/**
 * The recap of unlike gardens as its cards tell it: what a presenter would tell of the year, written down by hand from the notes
 * before the cards were read; and what no card may tell.
 */
import path from "node:path";
import { describe, expect, it } from "vitest";
import { noWeather } from "../../src/almanac/index.ts";
import { cardLimits, countWords } from "../../src/films/index.ts";
import { seasonBeginning } from "../../src/garden/index.ts";
import type { Garden } from "../../src/model.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { makeRecapCards, type RecapCards, recapCardsMarkdown, type ThreadCard } from "../../src/season/index.ts";
import { publicGarden } from "../../src/site/index.ts";
import { growGarden } from "../../src/timeline/index.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

async function walk(name: string, today: string): Promise<Garden> {
  const folder = await openRecordsFolder(path.resolve("tests/walks", name, "records"));
  return growGarden(await readRecords(folder, { today }), []);
}

function told(garden: Garden, year: number, today: string, more: { forViewers?: boolean; target?: number } = {}) {
  const season = seasonBeginning(year, garden.settings.seasonStarts);
  return makeRecapCards(garden, noWeather, { season, today, ...more });
}

/** A card as it is read aloud. */
function read({ opening, before, now, figure, why, aloud, next }: ThreadCard): readonly string[] {
  return [opening, before, ...now, figure, why, ...aloud, next].flatMap((one) => (one === undefined ? [] : [one.text]));
}

function card({ cards }: RecapCards, title: string): readonly string[] {
  const found = cards.find((one) => one.title === title);
  return found === undefined ? [] : read(found);
}

function withinLimits({ cards }: RecapCards): void {
  expect(cards.length).toBeLessThanOrEqual(10);
  for (const one of cards) {
    expect(one.words, one.title).toBeLessThanOrEqual(cardLimits.spoken);
    expect(countWords(one.opening.text), one.opening.text).toBeLessThanOrEqual(cardLimits.opening);
    expect(one.opening.text).not.toMatch(/\d/);
    for (const phrase of one.now) expect(countWords(phrase.text), phrase.text).toBeLessThanOrEqual(cardLimits.now);
    for (const [phrase, most] of [
      [one.before, cardLimits.before],
      [one.figure, cardLimits.figure],
      [one.why, cardLimits.why],
      [one.next, cardLimits.next],
    ] as const)
      expect(countWords(phrase?.text ?? ""), phrase?.text).toBeLessThanOrEqual(most);
    for (const phrase of [one.opening, ...one.now, ...one.aloud]) {
      expect(phrase.sources.length, phrase.text).toBeGreaterThan(0);
      expect(phrase.private, phrase.text).toBe(false);
    }
  }
}

describe("a kitchen garden whose plans of the fall were kept", () => {
  const made = (async () => told(await walk("midwest-canning", "2026-11-30"), 2026, "2026-11-30"))();

  it("begins with the wire: what the raccoons did, what was planned, what was done, what came of it", async () => {
    expect(card(await made, "Sweet corn")).toEqual([
      "The plan was: “wire round the corn before it tassels, not after.”",
      "Raccoons took the corn in two nights",
      "Raccoon wire, July 25",
      "Picked 48 ears, the first 4 rows",
      "Coon tracks all along the outside of the wire",
    ]);
  });

  it("tells of the drip line what the notes say, and that it was free; that it helped nobody says", async () => {
    expect(card(await made, "Tomatoes")).toEqual([
      "In October I wrote: “steady water on the tomatoes.”",
      "Blossom end rot on the Amish Paste",
      "Drip line, May 16",
      "Not one with a black bottom",
      // 24 lb and 31 lb of Amish Paste, 2 pints of Sungold.
      "55 lb and 2 pints picked",
      "A drip irrigation company gave me the drip line free.",
    ]);
  });

  it("gives no gherkin as new that may be last year’s: the note of then names none", async () => {
    const { cards } = await made;
    expect(cards.filter(({ kind }) => kind === "new").map(({ title }) => title)).toEqual(["Rattlesnake"]);
  });

  it("holds the garlic against last year by number: 55 bulbs, 48 then", async () => {
    expect(card(await made, "Garlic")).toContain("55 bulbs, a little over 2025 by then");
  });

  it("says on its cover how many lines are still questions, and tells no total over them", async () => {
    const { cover, cards } = await made;
    expect(cover.settle.at(-1)?.text).toMatch(/^34 lines are still a question to you, eleven perhaps of pickings/);
    expect(cards.map(({ kind }) => kind)).not.toContain("year");
    withinLimits(await made);
  });
});

describe("a southern garden, its summer over New Year", () => {
  const garden = walk("burrabie-block", "2026-01-10");

  it("tells the year of 2025/26 as its three changes", async () => {
    const made = told(await garden, 2025, "2026-01-10");
    expect(card(made, "Tomatoes")).toEqual([
      "In March I wrote: “tomatoes in September next time, before the heat not after.”",
      "Every flower on the Grosse Lisse has dropped",
      "Each under a cut-off milk bottle",
      "Bottles held",
      "Black Krim planted on 21 September",
      "A fortnight before I've ever had a tomato",
    ]);
    // Both sides of it: without the buckets the cloth would prove nothing.
    expect(card(made, "Capsicums")).toEqual([
      "The plan was: “shade over the capsicums.”",
      "Threw out 14 capsicums",
      "Shade cloth, 13 December",
      "Under the cloth not a mark",
      "1.2 kg picked",
      "Bucket Marconis: every fruit facing west is burnt",
    ]);
    expect(card(made, "Corn")).toContain("Gaps again but only at the tip");
    withinLimits(made);
  });

  it("adds up no tomatoes while six lines of pickings are questions: 12.1 kg would be less than half", async () => {
    const made = told(await garden, 2025, "2026-01-10");
    expect(made.cards.flatMap(read).join(" ")).not.toMatch(/12(?:\.\d)? kg/);
    expect(made.cards.some(({ kind }) => kind === "year")).toBe(false);
  });

  it("tells of 2024/25 what went wrong, and what was meant to come instead", async () => {
    const made = told(await garden, 2024, "2026-01-10");
    expect(made.cards.map(({ title, next }) => [title, next?.text])).toEqual([
      ["Tomatoes", "Tomatoes in September next time, before the heat not after"],
      ["Capsicums", "Shade over the capsicums"],
    ]);
  });

  it("keeps Shirl’s roses and what is hers out of every card and its dossier’s further lines", async () => {
    for (const year of [2024, 2025]) {
      const { cover, cards } = told(await garden, year, "2026-01-10");
      expect(JSON.stringify({ cover, cards })).not.toMatch(/shirl|colander|appointment/i);
    }
  });
});

const allotment: Files = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/onion-bed.md": "---\ntitle: Onion Bed\n---\n",
  "varieties/harbinger.md": "---\ntitle: Harbinger\ncrop: tomato\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
  "varieties/sturon.md": "---\ntitle: Sturon\ncrop: onion\n---\n",
  "varieties/uchiki-kuri.md":
    "---\ntitle: Uchiki Kuri\ncrop: squash\nsay it as: oo-CHEE-kee koo-ree\n---\nSmall and orange.\n",
  "notes/2024-05-18.md": "- planted 10 Harbinger in Long Bed\n- planted 40 Sturon in Onion Bed\n",
  "notes/2024-09-14.md":
    "- picked 5 kg Harbinger from Long Bed\n- cleared Harbinger from Long Bed\n- picked 6 kg Sturon from Onion Bed\n- cleared Sturon from Onion Bed\n",
  "notes/2025-05-17.md":
    "- planted 10 Harbinger in Long Bed\n- planted 20 Musselburgh in Onion Bed\n- planted 40 Sturon in Onion Bed\n- planted 2 Uchiki Kuri in Long Bed\n",
  "notes/2025-07-12.md":
    "- lost 12 Musselburgh to leek moth, in one week\n- promised: show the leeks again in August\n",
  "notes/2025-09-13.md":
    "- picked 12 kg Harbinger from Long Bed\n- cleared Harbinger from Long Bed\n- picked 7 kg Sturon from Onion Bed\n- cleared Sturon from Onion Bed\n- picked 3 kg Uchiki Kuri from Long Bed\n  - not a slug hole in any\n",
  "notes/2025-10-11.md": "- plan: mesh over the leeks from the first day\n",
};

describe("an allotment with a good summer and a moth", () => {
  const made = (async () => told(await gardenOf(allotment, "2026-01-15"), 2025, "2026-01-15"))();

  it("tells the whole season in one figure beside the one before", async () => {
    // 12 + 7 + 3 kg against 5 + 6: twice as much.
    expect(card(await made, "The whole season")).toEqual([
      "A far heavier year than the one before.",
      "Half of it tomatoes",
      "22 kg, double 2024",
    ]);
  });

  it("tells the surprise by the plant", async () => {
    // 12 kg and 5 kg from ten plants each.
    expect(card(await made, "Harbinger")).toEqual([
      "The Harbinger tomatoes gave far more than the year before.",
      "12 kg picked",
      "1.2 kg a plant, more than double 2024",
    ]);
  });

  it("tells what failed, with what will be done about it", async () => {
    expect(card(await made, "Musselburgh")).toEqual([
      "Leek moth took most of the Musselburgh leeks.",
      "Twelve of 20 lost",
      "In one week",
      "Mesh over the leeks from the first day",
    ]);
    const { cover, cards } = await made;
    expect(cover.settle).toEqual([]);
    expect(cards.some(({ kind }) => kind === "next")).toBe(false);
  });

  it("tells the new one, its name and what was noted of it", async () => {
    const { cards } = await made;
    const found = cards.find(({ kind }) => kind === "new");
    expect(found === undefined ? [] : read(found)).toEqual([
      "New to this garden: the Uchiki Kuri squash.",
      "3 kg picked",
      "Not a slug hole in any",
      "Uchiki Kuri: Small and orange",
    ]);
    expect(found?.names.map(({ say }) => say)).toEqual(["oo-CHEE-kee koo-ree"]);
  });

  it("tells what is owed once, and not again a year later", async () => {
    const debts = (set: RecapCards) => set.cards.filter(({ kind }) => kind === "debt").flatMap(read);
    expect(debts(await made)).toEqual(["One thing I promised you, and still owe.", "Show the leeks"]);
    const later = { ...allotment, "notes/2026-09-12.md": "- picked 4 kg Harbinger from Long Bed\n" };
    expect(debts(told(await gardenOf(later, "2027-01-15"), 2026, "2027-01-15"))).toEqual([]);
  });

  it("puts the most worth first, and what comes next last", async () => {
    const more = { ...allotment, "notes/2025-11-01.md": "- plan: move the rhubarb to the corner\n" };
    const { cards, cover } = told(await gardenOf(more, "2026-01-15"), 2025, "2026-01-15");
    expect(cards.map(({ kind }) => kind)).toEqual(["year", "surprise", "failed", "debt", "new", "crop", "next"]);
    expect(cover.year?.text).toBe(
      "22 kg, double 2024; far more from the Harbinger tomatoes; and most of the Musselburgh leeks lost to leek moth.",
    );
    expect(cover.rows.map(({ begins, seconds }) => begins + seconds).at(-2)).toBe(cover.rows.at(-1)?.begins);
  });

  it("leaves the least worth out of a short film, and says so", async () => {
    const garden = await gardenOf(allotment, "2026-01-15");
    const { cards, cover } = told(garden, 2025, "2026-01-15", { target: 50 });
    expect(cards.reduce((sum, { seconds }) => sum + seconds, 0)).toBeLessThanOrEqual(50);
    expect(cards[0]?.kind).toBe("year");
    expect(cover.fallsOut.map(({ text }) => text)).toContain("Uchiki Kuri squash for the first time");
  });

  it("says nothing of a sum that a question could change", async () => {
    const open = {
      ...allotment,
      "notes/2025-09-20.md": "- Sturon, 2 kg perhaps, the rest went\n",
    };
    const garden = await gardenOf(open, "2026-01-15");
    expect(garden.readings.some(({ as, readings }) => as === "question" && readings.length > 0)).toBe(true);
    for (const [of, forViewers] of [
      [garden, false],
      [publicGarden(garden), true],
    ] as const) {
      const { cards } = told(of, 2025, "2026-01-15", { forViewers });
      // 7 kg of onions were read; the 2 kg in question would make them nine.
      expect(cards.map(({ kind }) => kind)).not.toContain("year");
      expect(cards.flatMap(read).join(" ")).not.toContain("7 kg");
    }
  });

  it("tells viewers neither plans nor what is private", async () => {
    const hidden = {
      ...allotment,
      "notes/2025-08-02.md":
        "---\nprivate: true\n---\n- lost 5 Sturon to the neighbour's goat\n- picked 30 kg Sturon from Onion Bed\n",
    };
    const garden = publicGarden(await gardenOf(hidden, "2026-01-15"));
    const set = told(garden, 2025, "2026-01-15", { forViewers: true });
    const text = recapCardsMarkdown({ ...set, dossier: set.dossier }, garden.settings);
    expect(text).not.toMatch(/goat|mesh over/i);
    expect(card(set, "The whole season")).toContain("22 kg, double 2024");
  });
});

describe("a year with little on record", () => {
  it("gets few cards, and none from nothing", async () => {
    const bare = await gardenOf({ "notes/2026-05-16.md": "- planted 6 leeks\n" }, "2026-12-01");
    const { cover, cards } = told(bare, 2026, "2026-12-01");
    expect(cards).toEqual([]);
    expect(cover.year).toBeUndefined();
  });

  it("calls nothing new in the first season of the notes", async () => {
    const first = await gardenOf(
      {
        "notes/2026-05-16.md": "- planted 6 Musselburgh leeks\n",
        "notes/2026-09-12.md": "- picked 2 kg Musselburgh\n",
      },
      "2026-12-01",
    );
    expect(told(first, 2026, "2026-12-01").cards.map(({ kind }) => kind)).not.toContain("new");
  });
});
