import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { deflateRawSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { formatOf, shownDay, shownNumber } from "../../src/past/spreadsheet/number-formats.ts";
import { openWorkbook } from "../../src/past/spreadsheet/read-workbook.ts";
import { partsOf, storedZip } from "../../src/past/spreadsheet/zip-parts.ts";
import { brought, filesIn, gardenWith, ingest, recordsIn } from "./bringing.ts";

const seeds = readFileSync(brought("seeds-2025.xlsx"));

async function rowsOf(bytes: Uint8Array, name: string) {
  const workbook = openWorkbook(bytes);
  if (typeof workbook === "string") return workbook;
  const sheet = await workbook.read(name);
  return typeof sheet === "string"
    ? sheet
    : sheet.rows.map(({ line, cells }) => [line, ...cells.map(({ text }) => text)]);
}

/** The seeds' workbook with one part of it changed. */
function changed(file: string, change: (xml: string) => string): Uint8Array {
  const parts = partsOf(seeds, () => true, 10_000_000);
  if (typeof parts === "string") throw new Error(parts);
  const text = new TextDecoder().decode(parts.get(file));
  return storedZip(new Map([...parts, [file, new TextEncoder().encode(change(text))]]));
}

const sheet = "xl/worksheets/sheet1.xml";

describe("a spreadsheet that another program wrote", () => {
  it("is read cell by cell as it is shown, by the rows of the sheet", async () => {
    expect(await rowsOf(seeds, "Seeds & sowing")).toEqual([
      [1, "My seed list 2025", ...Array(10).fill("")],
      [3, ..."Cultivar,Crop,Seed house,Ordered,Price,Sown,Where sown,Planted out,How many,Bed,Germination".split(",")],
      [
        4,
        ..."Sungold,tomato,Penrow Seeds,2025-01-12,£2.40,2025-03-01,propagator,2025-05-24,6,Top Border,85%".split(","),
      ],
      [5, ..."Boltardy,beetroot,own saved,,,2025-04-12 23:59,direct,,40,Top Border,".split(",")],
      [6, ..."Winter Density,lettuce,Penrow Seeds,,,April 2025,trays,,,,".split(",")],
      [7, ..."Musselburgh,leek,Penrow Seeds,,,,,2025-06-20,,Low Border,".split(",")],
      [8, "Rouge vif d’Étampes", "squash", "Swap at the hall", ...Array(8).fill("")],
    ]);
  });

  it("counts its days from 1904 where it says so", async () => {
    expect(await rowsOf(readFileSync(brought("two-sheets.xlsx")), "Plantings")).toEqual([
      [1, "Variety", "Crop", "Planted", "Bed"],
      [2, "Crown Prince", "squash", "2024-05-30", "Long Bed"],
    ]);
  });

  it("has the same days in any time zone", async () => {
    const before = process.env.TZ;
    try {
      for (const zone of ["Pacific/Auckland", "America/Los_Angeles", "Etc/GMT+12"]) {
        process.env.TZ = zone;
        expect((await rowsOf(seeds, "Seeds & sowing"))[2]).toContain("2025-05-24");
      }
    } finally {
      if (before === undefined) delete process.env.TZ;
      else process.env.TZ = before;
    }
  });

  it("is shown first, and becomes what its list as text would become", async () => {
    const dir = gardenWith();
    const before = filesIn(dir);
    const shown = await ingest(dir, brought("seeds-2025.xlsx"));
    expect(shown.out).toContain('seeds-2025.xlsx, sheet "Seeds & sowing": a table of 5 rows.');
    expect(shown.out).toContain("Nothing was written yet.");
    expect(filesIn(dir)).toEqual(before);
    const { exitCode, out } = await ingest(dir, brought("seeds-2025.xlsx"), "--write");
    expect(exitCode).toBe(1);
    // The first of April is what the cell holds, and no day that anybody wrote.
    expect(out).toContain('line 6: Sown: "April 2025" says no day, and a note is of a day');
    expect(out).toContain("line 7: I7 holds a formula whose result was not saved with it");
    const { events, varieties } = await recordsIn(dir);
    expect(varieties.size).toBe(5);
    expect(events.map(({ day, kind, variety, count, price }) => [day, kind, variety, count?.value, price])).toEqual([
      ["2025-01-12", "acquired", "sungold", undefined, "£2.40"],
      ["2025-03-01", "sowed", "sungold", undefined, undefined],
      ["2025-04-12", "sowed", "boltardy", 40, undefined],
      ["2025-05-24", "planted", "sungold", 6, undefined],
      ["2025-06-20", "planted", "musselburgh", undefined, undefined],
    ]);
    expect(events.every((event) => event.private)).toBe(true);
    const after = filesIn(dir);
    // The row in doubt comes to nothing new either.
    await ingest(dir, brought("seeds-2025.xlsx"), "--write");
    expect(filesIn(dir)).toEqual(after);
  });
});

describe("several sheets", () => {
  it("are told, and one is brought in by its name", async () => {
    const dir = gardenWith();
    const asked = await ingest(dir, brought("two-sheets.xlsx"), "--write");
    expect(asked.exitCode).toBe(2);
    expect(asked.err).toContain('2 sheets with rows: "Varieties" (2 rows), "Plantings" (2 rows).');
    const wrong = await ingest(dir, brought("two-sheets.xlsx"), "--sheet", "Planting");
    expect(wrong.err).toContain('is called "Planting". Did you mean "Plantings"?');
    await ingest(dir, brought("two-sheets.xlsx"), "--sheet", "plantings", "--write");
    expect((await recordsIn(dir)).events.map(({ text }) => text)).toEqual(["planted Crown Prince in Long Bed"]);
  });

  it("are asked about where somebody sits there", async () => {
    const { run } = await import("../cli/run.ts");
    const keys = ["2", "n"];
    const { out } = await run(["ingest", brought("two-sheets.xlsx")], { cwd: gardenWith(), today: "2026-07-18", keys });
    expect(out).toContain('sheet "Plantings": a table of 1 row.');
  });

  it("are of no use to a text", async () => {
    const { err, exitCode } = await ingest(gardenWith(), brought("seed-tin.csv"), "--sheet", "Seeds");
    expect(exitCode).toBe(2);
    expect(err).toContain("--sheet is for a spreadsheet (.xlsx)");
  });
});

describe("numbers and days as a sheet shows them", () => {
  it.each([
    ["General", 2.4000000000000004, "2.4"],
    ["0.00", 2.4, "2.40"],
    ["[$£-809]#,##0.00", 1234.5, "£1234.50"],
    ["#,##0.00\\ [$€-407]", 3.5, "3.50 €"],
    ['"£"#,##0.00;[Red]-"£"#,##0.00', 2.4, "£2.40"],
    ["0%", 0.85, "85%"],
    ["0.##", 2.5, "2.5"],
    // Which currency this is depends on the computer it is opened on.
    ["_-* #,##0.00_-", 2.4, "2.40"],
  ])("%s", (pattern, value, said) => expect(shownNumber(value, formatOf(pattern))).toBe(said));

  it.each([
    ["dd/mm/yyyy", "2025-04-01"],
    ["[$-809]d mmmm yyyy;@", "2025-04-01"],
    ["mmm-yy", "April 2025"],
    ["mmmm", "April 2025"],
    ["yyyy", "2025"],
    ["h:mm AM/PM", "00:00"],
  ])("%s", (pattern, said) => expect(shownDay(new Date(Date.UTC(2025, 3, 1)), formatOf(pattern))).toBe(said));
});

describe("a file that wants to do harm", () => {
  /** An archive that unpacks to far more than it says. */
  function bomb(): Buffer {
    const packed = deflateRawSync(Buffer.alloc(200_000_000, 0x20));
    const honest = Buffer.from(storedZip(new Map([[sheet, packed]])));
    const directory = honest.lastIndexOf(Buffer.from([0x50, 0x4b, 0x01, 0x02]));
    for (const at of [8, directory + 10]) honest.writeUInt16LE(8, at);
    return honest;
  }

  it.each([
    ["unpacks to 200 MB", bomb()],
    [
      "has a row beyond the last",
      changed(sheet, (xml) => xml.replace('r="A8"', 'r="A999999999"').replace('<row r="8"', '<row r="999999999"')),
    ],
    [
      "is as wide as it is long",
      changed(sheet, (xml) => xml.replace('r="A8"', 'r="XFD1048576"').replace('<row r="8"', '<row r="1048576"')),
    ],
    [
      "hides a cell in what looks like text",
      changed(sheet, (xml) => xml.replace('<c r="A8"', '<x y="<c r="A8"/><c r="XFD1048576"')),
    ],
  ])("is refused when it %s", async (_, bytes) => {
    const dir = gardenWith();
    const file = path.join(dir, "bad.xlsx");
    writeFileSync(file, bytes);
    const { err, exitCode } = await ingest(dir, file, "--write");
    expect(exitCode).toBe(3);
    expect(err).toMatch(/bad\.xlsx (?:is too large|cannot be taken apart)/);
  });

  it.each([
    ["cut off", seeds.subarray(0, 4000)],
    ["empty", new Uint8Array()],
    ["a text", Buffer.from("Variety,Crop\nSungold,tomato\n")],
    ["without sheets", storedZip(new Map([["xl/workbook.xml", Buffer.from("<workbook/>")]]))],
    ["with cells out of order", changed(sheet, (xml) => xml.replace('r="B4"', 'r="A2"'))],
    ["with tags that do not close", changed(sheet, (xml) => xml.replace("</sheetData>", ""))],
    [
      "with a sheet that is not there",
      changed("xl/_rels/workbook.xml.rels", (xml) => xml.replaceAll("sheet1", "sheet9")),
    ],
  ])("is told in words when it is %s", async (_, bytes) => {
    const dir = gardenWith();
    const file = path.join(dir, "bad.xlsx");
    writeFileSync(file, bytes);
    const { err, exitCode } = await ingest(dir, file, "--write");
    expect(err).toMatch(/^bad\.xlsx cannot be taken apart|^No sheet of bad\.xlsx holds any row/);
    expect(exitCode).not.toBe(0);
  });

  it("says of a locked or an older file what to do", async () => {
    const dir = gardenWith();
    writeFileSync(path.join(dir, "old.xlsx"), Buffer.from("d0cf11e0a1b11ae1", "hex"));
    expect((await ingest(dir, path.join(dir, "old.xlsx"))).err).toContain("locked by a password");
    writeFileSync(path.join(dir, "old.ods"), "PK");
    expect((await ingest(dir, path.join(dir, "old.ods"))).err).toContain("save it as XLSX");
  });

  it("never ends in an error of the program, whatever byte is another", async () => {
    let state = 7;
    const next = (below: number) => {
      state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
      return state % below;
    };
    const xml = (file: string) => (text: string) => {
      const at = next(text.length);
      const piece = ["<", ">", '"', "&#x110000;", "</c>", ' r="', "<c>", ""][next(8)] ?? "";
      return file === "" ? text : text.slice(0, at) + piece + text.slice(at + next(5));
    };
    for (let round = 0; round < 300; round += 1) {
      const file = [sheet, "xl/styles.xml", "xl/workbook.xml", "xl/sharedStrings.xml"][round % 4] ?? sheet;
      const read = await rowsOf(changed(file, xml(file)), "Seeds & sowing");
      expect(typeof read === "string" || Array.isArray(read)).toBe(true);
    }
    for (let round = 0; round < 300; round += 1) {
      const bytes = Uint8Array.from(seeds);
      bytes[next(bytes.length)] = next(256);
      const read = await rowsOf(bytes, "Seeds & sowing");
      expect(typeof read === "string" || Array.isArray(read)).toBe(true);
    }
  });
});
