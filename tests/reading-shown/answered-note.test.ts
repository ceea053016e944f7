/** Writing an answer into a note: the plain line goes below the person's words, and every other byte stays. */
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answeredNote, blockAt } from "../../src/records/index.ts";

const utf8 = (text: string) => new TextEncoder().encode(text);

function answered(note: string, line: number, ...plain: string[]): string {
  const written = answeredNote(utf8(note), line, plain);
  if ("refused" in written) return `refused: ${written.refused}`;
  expect(Buffer.from(written.bytes).toString("utf8")).toBe(written.text);
  return written.text;
}

describe("an answer is written", () => {
  it.each([
    ["below an item", "- leeks in\n- wet\n", 1, "- leeks in\n  - = up: leeks\n- wet\n"],
    ["below a numbered one", "9. peas out\n10. leeks in\n", 2, "9. peas out\n10. leeks in\n    - = up: leeks\n"],
    ["below a box to tick", "* [x] leeks in\n", 1, "* [x] leeks in\n  - = up: leeks\n"],
    [
      "below one set in",
      "- Long Bed:\n  - leeks in\n  - wet\n",
      2,
      "- Long Bed:\n  - leeks in\n    - = up: leeks\n  - wet\n",
    ],
    ["below one with a tab", "-\tleeks in\n-\twet\n", 1, "-\tleeks in\n \t- = up: leeks\n-\twet\n"],
    ["before what stands below it", "- leeks in\n  - under mesh\n", 1, "- leeks in\n  - = up: leeks\n  - under mesh\n"],
    ["below all its lines", "- leeks\n  in at last\n- wet\n", 1, "- leeks\n  in at last\n  - = up: leeks\n- wet\n"],
    ["at the end of a file without a line end", "- wet\n- leeks in", 2, "- wet\n- leeks in\n  - = up: leeks"],
    ["below a paragraph", "Leeks in,\nat last.\n\nWet.\n", 2, "Leeks in,\nat last.\n\n- = up: leeks\n\nWet.\n"],
    ["below a paragraph before a list", "Leeks in:\n- wet\n", 1, "Leeks in:\n\n- = up: leeks\n- wet\n"],
    ["below a paragraph before a heading", "Leeks in.\n# Wet\n", 1, "Leeks in.\n\n- = up: leeks\n# Wet\n"],
    ["below a paragraph at the end", "Leeks in.", 1, "Leeks in.\n\n- = up: leeks"],
    [
      "below the front matter",
      "---\ndate: 2026-05-20\n---\n- leeks in\n",
      4,
      "---\ndate: 2026-05-20\n---\n- leeks in\n  - = up: leeks\n",
    ],
  ])("%s", (_where, note, line, after) => {
    expect(answered(note, line, "up: leeks")).toBe(after);
  });

  it("as several lines, or as story", () => {
    expect(answered("- in and out\n", 1, "up: leeks", "cleared peas")).toBe(
      "- in and out\n  - = up: leeks\n  - = cleared peas\n",
    );
    expect(answered("- in my dreams\n", 1)).toBe("- in my dreams\n  - = story\n");
  });

  it("with the line ends of the file", () => {
    expect(answered("- leeks in\r\n- wet\r\n", 1, "up: leeks")).toBe("- leeks in\r\n  - = up: leeks\r\n- wet\r\n");
    expect(answered("- wet\r\n- leeks in", 2, "up: leeks")).toBe("- wet\r\n- leeks in\r\n  - = up: leeks");
  });

  it("with signs that Markdown would take for marks", () => {
    expect(answered("- BK in\n", 1, 'planted 3 "Black *K*_x_" tomato')).toBe(
      '- BK in\n  - = planted 3 "Black \\*K\\*\\_x\\_" tomato\n',
    );
  });

  it.each([
    [
      "UTF-8 with its mark",
      Buffer.from("\ufeff- léeks in\n- wet\n", "utf8"),
      "utf8",
      "\ufeff- léeks in\n  - = up: «leeks»\n- wet\n",
    ],
    [
      "UTF-16",
      Buffer.from("\ufeff- léeks in\n- wet\n", "utf16le"),
      "utf16le",
      "\ufeff- léeks in\n  - = up: «leeks»\n- wet\n",
    ],
    ["Windows-1252", Buffer.from("- léeks in\n- wet\n", "latin1"), "latin1", "- léeks in\n  - = up: «leeks»\n- wet\n"],
  ] as const)("in the file's own encoding: %s", (_name, bytes, encoding, after) => {
    const written = answeredNote(bytes, 1, ["up: «leeks»"]);
    expect("bytes" in written && Buffer.from(written.bytes).toString(encoding)).toBe(after);
  });

  it("never touching another byte, whatever the note", () => {
    const line = fc.constantFrom(
      "- leeks in",
      "  - under mesh",
      "* peas",
      "1. beans",
      "",
      "Wet day.",
      "> a quotation",
      "# Bed",
      "    code",
      "---",
      "| a | b |",
      "```",
      "- = up: leeks",
      "\t- tab",
      "-",
      "<!-- x -->",
    );
    const end = fc.constantFrom("\n", "\r\n");
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 1, maxLength: 12 }),
        end,
        fc.boolean(),
        fc.nat(11),
        (lines, mark, closed, at) => {
          const note = lines.join(mark) + (closed ? mark : "");
          const written = answeredNote(utf8(note), (at % lines.length) + 1, ["up: leeks"]);
          if ("refused" in written) return;
          const { text } = written;
          let same = 0;
          while (same < note.length && text[same] === note[same]) same += 1;
          const tail = note.length - same;
          expect(text.slice(0, same) + text.slice(text.length - tail)).toBe(note);
          expect(text.length).toBeGreaterThan(note.length);
        },
      ),
      { numRuns: 400 },
    );
  });
});

describe("an answer is refused", () => {
  it("where it would not belong to the line", () => {
    expect(answered("> leeks in\n", 1, "up: leeks")).toContain("refused: Below this line no answer");
    expect(answered("# leeks in\n", 1, "up: leeks")).toContain("refused: Below");
    expect(answered("    leeks in\n", 1, "up: leeks")).toContain("refused: Below");
  });

  it("where the line is settled already", () => {
    expect(answered("- leeks in\n  - = up: leeks\n", 1, "up: peas")).toBe("refused: This line is settled already.");
  });

  it("where the file's old encoding has no such letter", () => {
    const written = answeredNote(Buffer.from("- léeks in\n", "latin1"), 1, ["planted 3 Łódź leeks"]);
    expect("refused" in written && written.refused).toContain("Save it as UTF-8");
  });
});

it("knows which lines one answer settles", () => {
  const note = utf8("- leeks in\n  at last\n  - wet\n\nPeas out.\nBeans in.\n\n> quoted\n");
  expect([1, 2, 3, 5, 6, 8].map((line) => blockAt(note, line))).toEqual([
    { line: 1, lastLine: 2, text: "leeks in at last", isItem: true },
    { line: 1, lastLine: 2, text: "leeks in at last", isItem: true },
    { line: 3, lastLine: 3, text: "wet", isItem: true },
    { line: 5, lastLine: 6, text: "Peas out. Beans in.", isItem: false },
    { line: 5, lastLine: 6, text: "Peas out. Beans in.", isItem: false },
    undefined,
  ]);
});
