/** The private pages of notes: each line with what it is taken to say beside it, and none of it on a public page. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { HtmlValidate } from "html-validate";
import { parseHTML } from "linkedom";
import { describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import { fieldSite } from "../../src/site/page-data/field-site.ts";
import { addressOfNote } from "../../src/site/page-data/note-pages.ts";
import { folderWith, run } from "../cli/run.ts";
import { event, offered, question } from "../reading-shown/asked.ts";
import { gardenOf } from "../tour/garden-of.ts";

const today = "2026-07-18";
const files = {
  "garden.md": "---\nname: Test Garden\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "notes/2026/2026-07-16.md": "---\nbed: long-bed\n---\n- planted 12 leeks on 14 July\n\nIt rained.\n",
  "notes/2026-07-17.md": "---\ntitle: A short one\nprivate: true\n---\n- whipped out the onions\n",
};

async function site(more: Partial<Garden> = {}) {
  const garden = await gardenOf({ ...files, "garden.md": "---\nname: Test Garden\nlanguage: en-GB\n---\n" }, today);
  return fieldSite({ ...garden, ...more }, today, { photos: new Map() });
}

const asked = question(
  "whipped out the onions",
  [
    offered("picked onions\ndid: dug over", event("picked", { crop: "onion" })),
    offered("cleared onions", event("cleared", { crop: "onion" })),
    offered(""),
  ],
  { place: { file: "notes/2026-07-17.md", line: 5, column: 3 }, lastLine: 5 },
);

describe("the page of a note", () => {
  it("has its facts with a day that is not the note's, its story, and the beds it speaks of", async () => {
    const { notePages } = await site();
    expect(notePages.map(({ id }) => id)).toEqual(["2026-07-17", "2026~2026-07-16"]);
    expect(notePages[1]).toEqual({
      id: "2026~2026-07-16",
      name: "16 July 2026",
      day: "16 July 2026",
      file: "notes/2026/2026-07-16.md",
      isPrivate: false,
      beds: [{ href: "/beds/long-bed/", text: "Long Bed" }],
      read: "One line is facts and one is story.",
      lines: [
        {
          number: 4,
          text: "planted 12 leeks on 14 July",
          as: "facts",
          says: [{ line: "planted 12 leeks in Long Bed", day: "on 14 July" }],
          offered: [],
        },
        { number: 6, text: "It rained.", as: "story", says: [], offered: [] },
      ],
      wrong: [],
    });
  });

  it("has a question with its readings, the likeliest first", async () => {
    const { notePages, notes, home } = await site({ readings: [asked] });
    expect(notePages[0]).toMatchObject({ name: "A short one", isPrivate: true, read: "One line is a question." });
    expect(notePages[0]?.lines).toEqual([
      {
        number: 5,
        text: "whipped out the onions",
        as: "question",
        says: [],
        offered: [["picked onions", "did: dug over"], ["cleared onions"], []],
      },
    ]);
    expect(notes.notes.map(({ note, hasQuestions }) => [note.text, hasQuestions])).toEqual([
      ["17 July 2026, A short one", true],
      ["16 July 2026", false],
    ]);
    expect(home.questions.asked.map(({ text, from }) => [text, from.href])).toEqual([
      ["whipped out the onions", "/notes/2026-07-17/#line-5"],
    ]);
  });

  it("is led to from the first page and from the pages of its beds", async () => {
    const { home, bedPages, notes } = await site({ readings: [] });
    expect(home.others).toContainEqual({ href: "/notes/", text: "Notes, line by line" });
    expect(bedPages.map(({ id, readNotes }) => [id, readNotes])).toEqual([
      ["long-bed", [{ href: "/notes/2026~2026-07-16/", text: "16 July 2026" }]],
    ]);
    expect(notes.notes.map(({ note }) => note.href)).toEqual(["/notes/2026-07-17/", "/notes/2026~2026-07-16/"]);
  });

  it("has an address of its own, whatever its folder", () => {
    const ids = ["a/b", "a~b", "a~~b", "a/b~c", "a~b/c"];
    expect(new Set(ids.map(addressOfNote)).size).toBe(ids.length);
    expect(ids.map(addressOfNote).filter((id) => id.includes("/"))).toEqual([]);
  });
});

describe("published", () => {
  it("stands among the private pages alone, valid, with every line as it was written", async () => {
    const cwd = folderWith("two-beds");
    mkdirSync(path.join(cwd, "content/notes/2026"), { recursive: true });
    writeFileSync(path.join(cwd, "content/notes/2026/2026-07-01 own.md"), '- picked 3 kg beans\n- <b>&amp; "x"\n');
    const { exitCode } = await run(["publish", "--today", today], { cwd });
    expect(exitCode).toBe(0);
    const pages = readdirSync(path.join(cwd, "out/private/notes"));
    expect(pages.sort()).toEqual(["2026-03-21-sowing", "2026-06-13-planting", "2026~2026-07-01 own", "index.html"]);
    expect(readdirSync(path.join(cwd, "out/public"))).not.toContain("notes");
    const page = readFileSync(path.join(cwd, "out/private/notes/2026~2026-07-01 own/index.html"), "utf8");
    const { document } = parseHTML(page);
    const lines = [...document.querySelectorAll(".note-lines > li")].map((line) => [
      line.className,
      (line.textContent ?? "").replace(/\s+/g, " ").trim(),
    ]);
    expect(lines).toEqual([
      ["is-facts", "1 picked 3 kg beans picked 3000 g beans"],
      ["is-story", '2 & "x" Story'],
    ]);
    const validator = new HtmlValidate({ extends: ["html-validate:standard"], rules: { "no-inline-style": "off" } });
    for (const file of ["index.html", "2026-06-13-planting/index.html", "2026~2026-07-01 own/index.html"]) {
      const report = await validator.validateString(readFileSync(path.join(cwd, "out/private/notes", file), "utf8"));
      expect(
        report.results.flatMap(({ messages }) => messages.map(({ message, line }) => `${file}:${line} ${message}`)),
      ).toEqual([]);
    }
  });
});
