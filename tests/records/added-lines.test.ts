/** Lines written into a note: where a person would write them, read as they were shown, and every other byte as it was. */
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  bedsOfFront,
  namesOfGarden,
  readOneNote,
  readTyped,
  shownReading,
  typedGarden,
  typedNames,
  withAddedLines,
} from "../../src/records/index.ts";
import { recordsOf } from "./records-of.ts";

const files = {
  "garden.md": "---\nname: Test Garden\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
  "varieties/musselburgh.md": "---\ntitle: Musselburgh\ncrop: leek\n---\n",
};
const day = "2026-07-18";
const records = await recordsOf(files);
const names = namesOfGarden(records);
const context = { names, day, settings: { language: "en-GB" } };
const utf8 = (text: string) => new TextEncoder().encode(text);
const beds = { long: { id: "long-bed", title: "Long Bed" }, peas: { id: "pea-row", title: "Pea Row" } } as const;

function added(note: string | undefined, lines: readonly string[], bed?: keyof typeof beds): string {
  const written = withAddedLines(
    note === undefined ? undefined : utf8(note),
    { lines, bed: bed && beds[bed] },
    context,
  );
  if ("refused" in written) return `refused: ${written.refused}`;
  expect(Buffer.from(written.bytes).toString("utf8")).toBe(written.text);
  const all = written.text.split(/\r\n|\n|\r/);
  expect(written.at).toHaveLength(lines.length);
  for (const [at, line] of written.at.entries())
    expect(all[line - 1]?.replaceAll("\\", "")).toContain((lines[at] ?? "").replaceAll("\\", ""));
  return written.text;
}

describe("a line is added", () => {
  it.each([
    ["to a note that it begins", undefined, undefined, "- wet\n"],
    ["to a note of one bed that it begins", undefined, "long", "## Long Bed\n\n- wet\n"],
    ["below the last item", "- leeks in\n", undefined, "- leeks in\n- wet\n"],
    ["with the mark of the list", "* leeks in\n", undefined, "* leeks in\n* wet\n"],
    [
      "below what belongs to the last item",
      "- leeks in\n  - = up: leeks\n",
      undefined,
      "- leeks in\n  - = up: leeks\n- wet\n",
    ],
    ["to a file that ends without a line end", "- leeks in", undefined, "- leeks in\n- wet"],
    ["below a paragraph", "It rained.\n", undefined, "It rained.\n\n- wet\n"],
    ["below front matter", "---\ndate: 2026-07-18\n---\n", undefined, "---\ndate: 2026-07-18\n---\n\n- wet\n"],
    ["with the line ends of the file", "- leeks in\r\n", undefined, "- leeks in\r\n- wet\r\n"],
    [
      "above the first bed, when it speaks of none",
      "## Long Bed\n\n- leeks in\n",
      undefined,
      "- wet\n\n## Long Bed\n\n- leeks in\n",
    ],
    [
      "below its own bed",
      "- hot\n\n## Long Bed\n\n- leeks in\n\n## Pea Row\n\n- peas up\n",
      "long",
      "- hot\n\n## Long Bed\n\n- leeks in\n- wet\n\n## Pea Row\n\n- peas up\n",
    ],
    ["below a bed of which nothing is said yet", "## Long Bed\n", "long", "## Long Bed\n\n- wet\n"],
    [
      "below a heading of its own",
      "## Long Bed\n\n- leeks in\n",
      "peas",
      "## Long Bed\n\n- leeks in\n\n## Pea Row\n\n- wet\n",
    ],
    [
      "in a note about its bed",
      "---\nbed: Long Bed\n---\n\n- leeks in\n",
      "long",
      "---\nbed: Long Bed\n---\n\n- leeks in\n- wet\n",
    ],
    ["not below what was done, or another day", "# Sown\n\n- leeks\n", undefined, "- wet\n\n# Sown\n\n- leeks\n"],
    [
      "under a heading that ends what was done",
      "# Sown\n\n- leeks\n",
      "peas",
      "# Sown\n\n- leeks\n\n# Pea Row\n\n- wet\n",
    ],
  ] as const)("%s", (_where, note, bed, after) => {
    expect(added(note, ["wet"], bed)).toBe(after);
  });

  it("with signs that Markdown would take for marks", () => {
    expect(added("- wet\n", ['planted 3 "Black *K*" tomato'])).toBe('- wet\n- planted 3 "Black \\*K\\*" tomato\n');
    expect(added("- wet\n", ["1. leeks", "- peas", "= story", "~~~", "# beans"])).toBe(
      "- wet\n- 1\\. leeks\n- \\- peas\n- \\= story\n- \\~~~\n- \\# beans\n",
    );
  });

  it("in the file's own encoding, or not at all", () => {
    const old = Buffer.from("- caf\xe9\n", "latin1");
    const written = withAddedLines(old, { lines: ["picked 2 kg Café"] }, context);
    expect("bytes" in written && Buffer.from(written.bytes).toString("latin1")).toBe(
      "- caf\xe9\n- picked 2 kg Caf\xe9\n",
    );
    expect(withAddedLines(old, { lines: ["planted Šťovík"] }, context)).toMatchObject({
      refused: expect.stringContaining("old encoding"),
    });
    const wide = Buffer.from("\ufeff- wet\n", "utf16le");
    const added16 = withAddedLines(wide, { lines: ["dry"] }, context);
    expect("bytes" in added16 && Buffer.from(added16.bytes).toString("utf16le")).toBe("\ufeff- wet\n- dry\n");
  });

  it("nowhere where it would be taken for something else", () => {
    expect(added("```\nopen code\n", ["wet"])).toContain("refused");
    expect(added("<!-- to myself\n", ["wet"])).toContain("refused");
  });
});

it("reads back as it was shown, whatever the note says and whatever is typed", async () => {
  const garden = typedGarden(records);
  const typed = typedNames(garden);
  const piece = fc.constantFrom(
    "- planted 12 Musselburgh, row 2",
    "- sowed 20 radish between the leeks",
    "## Long Bed",
    "## Pea Row",
    "# Monday",
    "It rained all night, and the wind was up.",
    "1. peas up",
    "- lifted the leeks\n  - = picked 2 kg Musselburgh",
    "> said the neighbour",
    "| bed | sown |\n|---|---|\n| Pea Row | peas |",
    "",
  );
  const line = fc.oneof(
    fc.constantFrom(
      "picked 1.4 kg Musselburgh",
      "planted 6 leeks in Pea Row yesterday",
      "trouble: slugs on the leeks",
      "[ ] net the leeks by Friday",
      "4 lettuces bolted",
      "a robin again",
      "*watered* everything",
    ),
    fc.string({ minLength: 1, maxLength: 40 }),
  );
  const words = (text: string) =>
    text
      .replace(/[^\S ]+/gu, " ")
      .replace(/\p{Cc}/gu, " ")
      .replace(/\s+/gu, " ")
      .replace(/^(?:[-*+] )+/u, "")
      .trim();
  let written = 0;
  fc.assert(
    fc.property(
      fc.array(piece, { maxLength: 6 }),
      fc.array(
        line.map(words).filter((text) => text !== ""),
        { minLength: 1, maxLength: 3 },
      ),
      fc.constantFrom(undefined, beds.long, beds.peas),
      (pieces, lines, bed) => {
        const note = pieces.length === 0 ? undefined : `${pieces.join("\n\n")}\n`;
        const result = withAddedLines(note === undefined ? undefined : utf8(note), { lines, bed }, context);
        if ("refused" in result) return;
        written += 1;
        // What stood there stands there still: the new text is the old one, cut once.
        const old = note ?? "";
        const front = [...old].findIndex((_, at) => old[at] !== result.text[at]);
        const cut = front < 0 ? old.length : front;
        const tail = result.text.slice(result.text.length - (old.length - cut));
        expect(result.text.slice(0, cut) + tail).toBe(old);
        const own = bed === undefined ? bedsOfFront(note === undefined ? undefined : utf8(note), names) : [bed.id];
        const shown = lines.flatMap((text) => readTyped(text, { garden, names: typed, day, beds: own }));
        const read = readOneNote("notes/2026-07-18.md", result.text, { records, words: undefined, today: day });
        const back = result.at.map((number) => read.readings.find(({ place }) => place.line === number));
        for (const [index, one] of back.entries()) {
          const wanted = shown[index];
          // A name that a line is the first to use, the lines below it know.
          if (one === undefined || wanted === undefined || index > 0) continue;
          expect({ note, lines, ...shownReading(one, read.names) }).toEqual({
            note,
            lines,
            as: wanted.as,
            says: wanted.says.slice(0, shownReading(one, read.names).says.length),
          });
        }
      },
    ),
    { numRuns: 300, seed: Number(process.env.SEED ?? 11) },
  );
  expect(written).toBeGreaterThan(200);
});
