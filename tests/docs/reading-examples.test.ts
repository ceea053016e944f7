/** Every example of docs/notes.md, and what README shows of them, is what the reader makes of it today. */
import { readFile } from "node:fs/promises";
import { describe, expect, it } from "vitest";
import { notesPage } from "../../scripts/docs/notes-page.ts";
import {
  everyExample,
  exampleDay,
  exampleGarden,
  type LineExample,
  type NoteExample,
  ownWords,
  taughtNote,
} from "../../scripts/docs/reading-examples.ts";
import { sayEvent } from "../../src/cli/reading-words.ts";
import { namesOfGarden } from "../../src/records/index.ts";
import { type Files, recordsOf } from "../records/records-of.ts";

/** Every line of a garden's notes as the examples show it, by file. */
async function linesOf(files: Files) {
  const garden = await recordsOf(files, "2026-11-01");
  const names = namesOfGarden(garden);
  const lines = garden.readings.map(({ place: { file }, text, as, events, readings }) => ({
    file,
    line: text,
    as,
    says:
      as === "question"
        ? readings.map(({ line }) => line)
        : events.map((event) => sayEvent(event, names, { language: "en-GB", units: "metric" }, exampleDay)),
  }));
  return Map.groupBy(lines, ({ file }) => file);
}

const fileOf = (at: number) => `notes/${exampleDay}-${at}.md`;
const files: Files = Object.fromEntries(everyExample.map(({ note }, at) => [fileOf(at), note]));
const examples = everyExample.map(
  (example, at) => [example.lines.map(({ line }) => line).join(" / "), example, at] as const,
);

/** A question is shown with its likeliest readings: those must be the first. */
function expectRead(read: Awaited<ReturnType<typeof linesOf>>, at: number, { lines: expected }: NoteExample) {
  const lines = (read.get(fileOf(at)) ?? []).map(({ line, as, says }, index) => ({
    line,
    as,
    says: as === "question" ? says.slice(0, expected[index]?.says?.length) : says,
  }));
  expect(lines).toEqual(expected.map((line) => ({ says: [], ...line })));
}

describe("docs/notes.md", async () => {
  const read = await linesOf({ ...exampleGarden, ...files });
  it.each(examples)("%s", (_lines, example, at) => expectRead(read, at, example));

  it("shows what the garden's own words change", async () => {
    const note = { [fileOf(0)]: taughtNote.note };
    const taught = await linesOf({ ...exampleGarden, ...note, "words.md": ownWords });
    expectRead(taught, 0, taughtNote);
    expect(await linesOf({ ...exampleGarden, ...note })).not.toEqual(taught);
  });

  it("has examples enough of each kind, and none twice", () => {
    const lines = everyExample.flatMap((example) => example.lines);
    const count = (as: LineExample["as"]) => lines.filter((line) => line.as === as).length;
    expect(count("facts")).toBeGreaterThanOrEqual(30);
    expect(count("question")).toBeGreaterThanOrEqual(9);
    expect(count("story")).toBeGreaterThanOrEqual(14);
    const notes = everyExample.map(({ note }) => note);
    expect(notes.filter((note, at) => notes.indexOf(note) !== at)).toEqual([]);
  });
});

describe("README", () => {
  it("shows examples of docs/notes.md, word for word", async () => {
    const readme = await readFile("README.md", "utf8");
    const section = /^## Write as you like\n([\s\S]*?)^## /mu.exec(readme)?.[1] ?? "";
    const page = notesPage();
    const rows = section.match(/^\| `.*$/gmu) ?? [];
    const blocks = section.match(/^```\n[\s\S]*?^```$/gmu) ?? [];
    expect(rows.length).toBeGreaterThanOrEqual(10);
    expect(blocks.length).toBeGreaterThanOrEqual(2);
    const stories = section.match(/^- (?!.*:).*$/gmu) ?? [];
    expect(stories.length).toBeGreaterThanOrEqual(4);
    for (const shown of [...rows, ...blocks, ...stories]) expect(page).toContain(`\n${shown}\n`);
  });

  it("begins with a note that is facts in every line", async () => {
    const readme = await readFile("README.md", "utf8");
    const note = /```markdown\n([\s\S]*?)```/u.exec(readme)?.[1]?.replaceAll(/^ {3}/gmu, "") ?? "";
    const file = "notes/2026-05-16-long-bed.md";
    const read = (await linesOf({ [file]: note })).get(file) ?? [];
    expect(read.map(({ as }) => as)).toEqual(["facts", "facts", "facts", "facts"]);
  });
});
