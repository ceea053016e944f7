/** Where messages send a person: every rule leads to a page and a heading that are there. */
import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { problemData, problemRules, ruleChapters } from "../../src/records/index.ts";
import { recordsOf } from "./records-of.ts";

/** As sites that show Markdown make it of a heading. */
function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .trim()
    .replace(/\s/g, "-");
}

test("every rule's group has a chapter, and no chapter is without a rule", () => {
  const groups = new Set(Object.keys(problemRules).map((rule) => rule.split("/")[0]));
  expect(new Set(Object.keys(ruleChapters))).toEqual(groups);
});

test.each(Object.entries(ruleChapters))("what explains the rules of %s is there", (_, { page }) => {
  const [file = "", anchor] = page.split("#");
  expect(existsSync(file), file).toBe(true);
  const headings = [...readFileSync(file, "utf8").matchAll(/^#+ (.+)$/gm)].map(([, text = ""]) => anchorOf(text));
  if (anchor !== undefined) expect(headings).toContain(anchor);
});

test("a problem as data says where it is explained, beside all that it says itself", () => {
  const found = {
    rule: "note/unknown-verb",
    severity: "warning",
    file: "notes/2026-05-16.md",
    line: 7,
    column: 3,
    what: "What.",
    fix: "Fix.",
  } as const;
  expect(problemData(found)).toEqual({
    ...found,
    see: "docs/notes.md#when-it-is-read-otherwise-than-you-meant",
  });
});

test("where a rule wants one kind of value, the problem names it apart from its sentences", async () => {
  const { problems } = await recordsOf({
    "garden.md": "---\nunits: metrical\n---\n",
    "beds/long-bed.md":
      "---\ntitle: Long Bed\nviewpoints: [{ x: 2 }]\nplan: { x: far, y: 2 }\nin use since: someday\nsizes: 4 x 1 m\n---\n",
  });
  expect(problems.flatMap(({ rule, expected }) => (expected === undefined ? [] : [[rule, expected]]))).toEqual([
    ["record/missing-key", 'the key "name"'],
    ["record/unknown-key", "name, spot, looking, outline or stake"],
    ["record/wrong-value", "a number from -10000 to 10000"],
    ["date/not-a-date", "a date"],
    [
      "record/unknown-key",
      "title, private, site, also called, was, size, plan, facing, shade, soil, built, filled, in use since, in use until or viewpoints",
    ],
    ["record/wrong-value", "metric or us"],
  ]);
});
