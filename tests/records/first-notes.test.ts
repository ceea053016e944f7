/** What people wrote in their first notes, and what is made of it or asked. */
import { describe, expect, test } from "vitest";
import { recordsOf } from "./records-of.ts";

const garden = { "garden.md": "---\nunits: metric\n---\n" };
const beds = {
  "beds/pickles.md": "---\ntitle: Pickles\n---\n",
  "beds/mr-whiskers.md": "---\ntitle: Mr. Whiskers\n---\n",
};
const read = (body: string, day = "2026-06-20") =>
  recordsOf({ ...garden, ...beds, [`notes/${day}.md`]: body }, "2026-12-01");

describe("a heading that may be a bed", () => {
  const asked = async (body: string) =>
    (await read(body)).problems.flatMap(({ rule, line, what }) =>
      rule === "note/heading-not-bed" ? [[line, what]] : [],
    );

  test.each(["Gravy", "Kitchen Side"])("%s is asked about where lines plant below it", async (title) => {
    expect(await asked(`## ${title}\n\n- planted 12 leeks\n`)).toEqual([
      [1, `Is "${title}" a bed? No file describes one of that name, so the lines below this heading have no bed.`],
    ]);
  });

  test("is asked about once for all its lines", async () => {
    expect(await asked("## Gravy\n\n- planted 12 leeks\n- planted 6 kale\n\n## Kitchen Side\n\nRain.\n")).toHaveLength(
      1,
    );
  });

  test.each([
    ["lines that name their bed", "## Gravy\n\n- planted 12 leeks in Pickles\n"],
    ["a note that names its bed", "---\nbed: Pickles\n---\n## Gravy\n\n- planted 12 leeks\n"],
    ["a bed above it", "## Pickles\n\n### Gravy\n\n- planted 12 leeks\n"],
    ["a bed", "## Pickles\n\n- planted 12 leeks\n"],
    ["a day", "## Saturday\n\n- planted 12 leeks\n"],
    ["work", "## Planting\n\n- 12 leeks\n"],
    ["story", "## Gravy\n\nRain all day.\n"],
    ["a sentence", "## What I did before the rain came\n\n- planted 12 leeks\n"],
  ])("is not, of %s", async (_, body) => {
    expect(await asked(body)).toEqual([]);
  });
});

describe("a bed with a point in its name", () => {
  test("is found whole", async () => {
    const { events } = await read("- planted 6 kale in Mr. Whiskers\n- picked 2 kg kale from Mr. Whiskers\n");
    expect(events.map(({ bed }) => bed)).toEqual(["mr-whiskers", "mr-whiskers"]);
  });

  test("and taken whole where no file describes it", async () => {
    const records = await read("- planted 6 kale in Mrs. Thorn\n");
    expect(records.beds.get("mrs-thorn")?.title).toBe("Mrs. Thorn");
  });
});

describe("how far round or across", () => {
  test.each([
    ["- measured onions 34 cm round\n", 34],
    ["- measured cabbages 40 cm across\n", 40],
  ])("is no height: %s", async (line, cm) => {
    const [event] = (await read(line)).events;
    expect([event?.kind, event?.girthCm, event?.heightCm]).toEqual(["measured", cm, undefined]);
  });

  test.each([
    ["biggest onion 34 cm round already", 34, "34 cm round"],
    ["biggest cabbage is 40 cm across today", 40, "40 cm across"],
  ])("nor in other words: %s", async (line, cm, words) => {
    const [reading] = (await read(`---\nbed: Pickles\n---\n- ${line}\n`)).readings;
    const all = [...(reading?.events ?? []), ...(reading?.readings ?? []).flatMap(({ events }) => events)];
    const [event] = all.filter(({ kind }) => kind === "measured");
    expect([event?.girthCm, event?.heightCm]).toEqual([cm, undefined]);
    for (const { line: plain } of reading?.readings ?? []) expect(plain).not.toContain("tall");
    if (reading?.as === "question") expect(reading.readings.map((one) => one.line).join()).toContain(words);
  });
});

describe("a promise", () => {
  const promise = async (line: string, day: string) => {
    const [event] = (await read(line, day)).events;
    return [event?.what, event?.due];
  };
  test("made in July is not due in July", async () => {
    expect(await promise("- promised in July: show the garlic\n", "2026-08-10")).toEqual([
      "show the garlic",
      undefined,
    ]);
    expect(await promise("- promised by July: show the garlic\n", "2026-06-20")).toEqual([
      "show the garlic",
      "2026-07-31",
    ]);
  });

  test("has its day beside its words", async () => {
    expect(await promise("- promised: show the garlic by Sunday\n", "2026-06-20")).toEqual([
      "show the garlic",
      "2026-06-21",
    ]);
    expect(await promise("- promised to show the leeks again in July\n", "2026-06-20")).toEqual([
      "show the leeks again in July",
      "2026-07-31",
    ]);
  });
});

describe('a line behind "="', () => {
  test("without its hyphen is said to settle nothing", async () => {
    const { problems } = await read(
      "Sowed lettuce here.\n= story\n\n- lifted the onions\n= picked onions from Pickles\n",
    );
    expect(problems.flatMap(({ rule, line, fix }) => (rule === "note/settled-no-dash" ? [[line, fix]] : []))).toEqual([
      [2, "Begin it with a hyphen: - = story"],
      [5, "Begin it with a hyphen: - = picked onions from Pickles"],
    ]);
  });

  test("may stand in quotation marks", async () => {
    const { events } = await read('- onions out\n  - = "picked 3 kg onions from Pickles"\n');
    expect(events.map(({ kind, crop, grams }) => [kind, crop, grams])).toEqual([["picked", "onion", 3000]]);
  });

  test("keeps the quotation marks of a name", async () => {
    const { events } = await read('- onions in\n  - = planted 3 "Red One" onions in Pickles\n');
    expect(events.map(({ variety }) => variety)).toEqual(["red-one"]);
  });
});

describe("words that are no amount and no day of the line", () => {
  test("an hour behind a harvest", async () => {
    const [reading] = (await read("- picked 2 kg rhubarb. Rain by four.\n")).readings;
    const told = [...(reading?.events ?? []), ...(reading?.readings ?? []).flatMap(({ events }) => events)];
    const picked = told.filter(({ kind }) => kind === "picked");
    expect(picked.length).toBeGreaterThan(0);
    for (const { grams, count } of picked) expect([grams, count]).toEqual([2000, undefined]);
  });

  test("the day on which a film is to be made", async () => {
    const { events } = await read("- filming on Saturday so I weeded Pickles\n", "2026-06-24");
    expect(events.map(({ kind, day, bed }) => [kind, day, bed])).toEqual([["did", "2026-06-24", "pickles"]]);
  });
});
