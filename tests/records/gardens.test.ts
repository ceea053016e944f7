/**
 * Small gardens a person could have written, each with all its problems as they are printed.
 *
 * After a wanted change of words: REWRITE=1 npx vitest run tests/records/gardens, then read the difference.
 */
import { readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { openRecordsFolder, problemText, readRecords } from "../../src/records/index.ts";
import { filmingDay } from "./records-of.ts";

const gardens = path.join(import.meta.dirname, "..", "gardens");
const rewrite = process.env.REWRITE === "1" && process.env.CI === undefined;

const cases = {
  "two-beds": "nothing to mend",
  smallest: "one note and one photo",
  slips: "a slip in every kind of record",
  "same-names": "two records with one name",
  "broken-front-matter": "front matter broken in every way",
};

describe("the problems of a garden", () => {
  test.each(Object.entries(cases))("%s: %s", async (garden) => {
    const { problems } = await readGarden(garden);
    const found = problems.map((problem) => `${problemText(problem)}\n`).join("\n");
    expect(found).toBe(await expectation(garden, "expected-problems.txt", found));
  });
});

test("everything that is read of two beds", async () => {
  const records = await readGarden("two-beds");
  const plain = JSON.stringify(records, (_, value) => (value instanceof Map ? Object.fromEntries(value) : value), 2);
  const expected = await expectation("two-beds", "expected-records.json", `${plain}\n`);
  expect(JSON.parse(plain)).toEqual(JSON.parse(expected));
});

test("what is broken or doubtful stays private", async () => {
  const { beds, notes } = await readGarden("broken-front-matter");
  const open = [...beds.values()].filter((bed) => !bed.private).map(({ id }) => id);
  expect(open).toEqual(["empty", "rule-not-front-matter"]);
  expect(notes.map((note) => [note.id, note.private])).toEqual([
    ["2026-05-16-unclosed", true],
    ["2026-05-17-closed-with-a-space", false],
    ["2026-05-18-four-hyphens", true],
  ]);
  const slips = await readGarden("slips");
  expect(slips.beds.get("bean-row")?.private).toBe(true);
  expect(slips.varieties.get("musselburgh")?.private).toBe(true);
});

test("broken front matter takes none of the note below it away", async () => {
  const { events } = await readGarden("broken-front-matter");
  expect(events.map(({ kind, day }) => [kind, day])).toEqual([
    ["did", "2026-05-16"],
    ["did", "2026-05-17"],
    ["did", "2026-05-18"],
  ]);
});

async function readGarden(name: string) {
  return readRecords(await openRecordsFolder(path.join(gardens, name)), { today: filmingDay });
}

/** The text that is expected; what was found is written in its place only when that is asked for. */
async function expectation(garden: string, name: string, found: string): Promise<string> {
  const file = path.join(gardens, garden, name);
  if (rewrite) await writeFile(file, found);
  return readFile(file, "utf8");
}
