/** Plain lines, verb first, with a remark behind them: facts when the remark tells of nothing else, and never when it takes the line back. */
import { describe, expect, test } from "vitest";
import { problemsOf, recordsOf } from "./records-of.ts";

const garden = {
  "beds/long-bed.md": "---\ntitle: Long Bed\nalso called: [the tank]\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
  "varieties/early-purple-sprouting.md": "---\ntitle: Early Purple Sprouting\ncrop: sprouting-broccoli\n---\n",
};

async function readingOf(line: string) {
  const { readings } = await recordsOf({ ...garden, "notes/2026-05-16.md": `- ${line}\n` });
  return readings[0];
}

describe("a remark behind a plain line", () => {
  test.each([
    ["picked 600 g Musselburgh from Long Bed, pink as a prawn", "picked"],
    ["picked 600 g Musselburgh from Long Bed, two split and one kept", "picked"],
    ["picked 500 g Musselburgh from Long Bed, all shoots, gone to flower under my hand", "picked"],
    ["dug 1 kg Musselburgh from Long Bed, 20 roots, 7 clean, early row", "picked"],
    ["planted 5 Musselburgh in Long Bed, in the gaps where the cabbages came out", "planted"],
    ["planted 5 Musselburgh in Long Bed, too late really", "planted"],
    ["saved seed: Musselburgh, 180 g, from the six best plants", "saved seed"],
    ["lost 1 Musselburgh to clubroot, fists where the roots should be", "lost"],
    ["did: squashed every pupa I could find", "did"],
    ["cleared the tank", "cleared"],
  ])("%s", async (line, kind) => {
    const reading = await readingOf(line);
    expect(reading?.events.map((event) => event.kind)).toEqual([kind]);
  });
});

describe("what takes a line back, or tells of something else", () => {
  test.each([
    "picked 600 g Musselburgh from Long Bed, last year",
    "planted 5 Musselburgh in Long Bed, next week",
    "planted 5 Musselburgh in Long Bed, maybe",
    "might have planted 5 Musselburgh in Long Bed",
    "did: squashed what I could have eaten",
    "picked 600 g Musselburgh from Long Bed, slugs had been at three",
  ])("%s", async (line) => {
    const reading = await readingOf(line);
    expect([reading?.as, reading?.events.length]).not.toEqual(["facts", 1]);
  });

  test("a variety that is named behind the comma alone is not passed over", async () => {
    const { events } = await recordsOf({
      ...garden,
      "notes/2026-05-16.md": "- sowed leeks in Long Bed, 40 Musselburgh, two rows\n",
    });
    expect(events.filter(({ variety }) => variety !== "musselburgh")).toEqual([]);
  });
});

test("a day that does not exist is told of though the line is a question", async () => {
  const found = await problemsOf({ ...garden, "notes/2026-05-16.md": "- picked 2 punnets Musselburgh on 31 June\n" });
  expect(found.join("\n")).toContain("note/unclear-day");
});

test("a line in which no garden thing stands is asked nothing", async () => {
  for (const text of ["See ![x](https://films.example/x.jpg).\n", "\u{1f345} é x\n", "- so it goes\n"])
    expect(await problemsOf({ ...garden, "notes/2026-05-16.md": text }), text).toEqual([]);
});

test("no two readings of a question are the same words", async () => {
  const { readings } = await recordsOf({
    ...garden,
    "notes/2026-05-16.md": "- picked 9.4 kg Musselburgh, 8 heads, slugs had been at three\n",
  });
  const said = readings[0]?.readings.map(({ line }) => line) ?? [];
  expect(said.length).toBeGreaterThan(0);
  expect(new Set(said).size).toBe(said.length);
});
