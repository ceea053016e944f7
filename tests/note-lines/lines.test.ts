/** Every line of lines.ts says what stands beside it, loses no word, and is written out and read again. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { printEvent, readNoteLine } from "../../src/records/index.ts";
import { factsOf, gardenNames, noteDay, place, told } from "./a-garden.ts";
import { type Case, growing, losing, picking, planting, sowing, story, telling, working } from "./lines.ts";
import { coming, reasonsAndPrices, staying } from "./newer-lines.ts";

const cases: readonly Case[] = [
  ...sowing,
  ...planting,
  ...growing,
  ...picking,
  ...losing,
  ...working,
  ...telling,
  ...story,
  ...coming,
  ...staying,
  ...reasonsAndPrices,
];

test("there are enough lines, the hard kinds among them", () => {
  expect(cases.length).toBeGreaterThan(600);
  const lines = cases.map(({ line }) => line).join("\n");
  for (const hard of [
    "½",
    "1 1/2 lb",
    "5'4\"",
    "1,4 kg",
    "about 10",
    "8-10",
    "last Tuesday",
    "é",
    "to the corner of",
  ]) {
    expect(lines).toContain(hard);
  }
  const kinds = new Set(cases.flatMap(({ says }) => (says === "story" ? [] : says.map(({ kind }) => kind))));
  expect(kinds.size).toBe(31);
});

test.each(cases)("$line", ({ line, beds = [], says }) => {
  expect(told(line, { beds })).toEqual(says);
});

describe("written out and read again", () => {
  const facts = cases.filter(({ says }) => says !== "story");
  test.each(facts)("$line", ({ line, beds = [] }) => {
    const names = gardenNames();
    const note = { id: "2026-05-20", day: noteDay, private: false };
    const events = readNoteLine({ text: line, more: [], place }, { note, beds, names })?.events ?? [];
    for (const event of events) {
      const text = printEvent(event, names);
      // Beds of the note are written into the line, and the day is the note's.
      const again = readNoteLine({ text, more: [], place }, { note: { ...note, day: event.day }, beds: [], names });
      expect([text, again?.events.map(factsOf)]).toEqual([text, [factsOf({ ...event, more: [] })]]);
    }
  });
});

test("words nobody knows are kept, wherever they are put at the end of a clause", () => {
  const facts = cases.filter(({ says }) => says !== "story");
  const nonsense = fc.array(fc.constantFrom("zorbled", "quim", "blenty", "frax"), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(fc.constantFrom(...facts), nonsense, ({ line, beds = [] }, words) => {
      const said = told(`${line}, ${words.join(" ")}`, { beds });
      expect(said).not.toBe("story");
      // Of several clauses, each with its plant, the last keeps what is said behind it.
      const events = said === "story" ? [] : line.includes(";") ? said.slice(-1) : said;
      for (const event of events) expect(JSON.stringify(event)).toContain(words.join(" "));
    }),
    { numRuns: 500 },
  );
});
