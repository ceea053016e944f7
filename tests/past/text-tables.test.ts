import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { matchColumns, readTextTable, rowsBy } from "../../src/records/index.ts";

const cellsOf = (text: string) => readTextTable(text)?.rows.map(({ cells }) => cells.map((cell) => cell.text));

describe("a table of text", () => {
  it.each([
    ["commas", "Crop,Variety\nleek,Musselburgh\n", ","],
    ["semicolons, with commas in the cells", "Crop;Price\nleek;3,20\npea;2,10\n", ";"],
    ["tabs", "Crop\tNotes\nleek\tlate, good\n", "\t"],
  ])("has its cells set off by %s", (_by, text, separator) => {
    expect(readTextTable(text)?.separator).toBe(separator);
    expect(cellsOf(text)?.every((cells) => cells.length === 2)).toBe(true);
  });

  it("is none where no line has two cells", () => {
    expect(readTextTable("Planted leeks\nRained.\n")).toBeUndefined();
  });

  it("says of each cell where it stands, also behind a cell of several lines", () => {
    const text = 'Variety,Notes\r\nSungold,"for the tunnel,\r\nand ""two"" for Mum"\r\n\r\nCafé au Lait,deep\r\n';
    const rows = readTextTable(text)?.rows ?? [];
    expect(rows.map(({ line, cells }) => [line, ...cells.map((cell) => [cell.text, cell.line, cell.column])])).toEqual([
      [1, ["Variety", 1, 1], ["Notes", 1, 9]],
      [2, ["Sungold", 2, 1], ['for the tunnel,\r\nand "two" for Mum', 2, 9]],
      [5, ["Café au Lait", 5, 1], ["deep", 5, 14]],
    ]);
  });

  it("loses no line to a quotation mark that stands alone", () => {
    expect(cellsOf('Variety,Height\nSungold,"6 foot\nLongor,2\n')).toEqual([
      ["Variety", "Height"],
      ["Sungold", '"6 foot'],
      ["Longor", "2"],
    ]);
  });

  it("keeps every cell of any table that is written by the rules", () => {
    const cell = fc.string({ unit: fc.constantFrom("a", "é", " ", '"', ",", "\n", "7"), minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 6 }), (table) => {
        const written = table.map((row) => row.map((text) => `"${text.replaceAll('"', '""')}"`).join(",")).join("\n");
        const expected = table
          .map((row) => row.map((text) => text.trim()))
          .filter((row) => row.some((text) => text !== ""));
        expect(rowsBy(written, ",").map(({ cells }) => cells.map(({ text }) => text))).toEqual(expected);
      }),
    );
  });
});

describe("the columns of a table", () => {
  const meanings = (headings: readonly string[], said?: Parameters<typeof matchColumns>[1]) =>
    matchColumns(headings, said).map(({ meaning }) => meaning);

  it("are known by the words a gardener puts at their heads", () => {
    expect(
      meanings([
        "Cultivar",
        "Crop type",
        "Seed house",
        "Date sown (indoors)",
        "No. of plants:",
        "Planted_out",
        "Where",
        "Cost (£)",
        "Remarks",
      ]),
    ).toEqual(["variety", "crop", "source", "sown", "number", "planted", "bed", "price", "notes"]);
  });

  it("are not guessed at: what is unknown, numbers the rows or comes twice is left out", () => {
    expect(meanings(["No.", "Variety", "Colour", "Cultivar"])).toEqual([undefined, "variety", undefined, undefined]);
  });

  it("are what the person says", () => {
    const said = new Map([
      ["label", "variety"],
      ["From", undefined],
    ] as const);
    expect(meanings(["Label", "Name", "From"], said)).toEqual(["variety", undefined, undefined]);
  });
});
