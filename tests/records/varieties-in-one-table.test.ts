import { describe, expect, it } from "vitest";
import { recordsOf } from "./records-of.ts";

const garden = { "garden.md": "---\nunits: metric\nlanguage: en-GB\n---\n" };
const read = (table: string, more: Readonly<Record<string, string>> = {}) =>
  recordsOf({ ...garden, "varieties.csv": table, ...more }, "2026-07-18");
const told = ({ problems }: Awaited<ReturnType<typeof read>>) =>
  problems.map(({ rule, file, line, column }) => `${rule} ${file}:${line}:${column}`);

describe("all varieties in one table", () => {
  it("are read as if each had a file", async () => {
    const records = await read(
      "Variety;Crop;From;Year;Say it as;Also spelled;Days;Notes\n" +
        "Sungold;tomato;Penrow Seeds;2024;;Sun Gold, Sungold F1;57;splits\n" +
        "Uchiki Kuri;squash;own saved;2023;oo-CHEE-kee KOO-ree;;95 from planting;\n",
      { "notes/2026-05-16.md": "- planted 6 Sun Gold in Long Bed\n" },
    );
    expect(records.varieties.get("sungold")).toMatchObject({
      title: "Sungold",
      crop: "tomato",
      private: false,
      described: true,
      source: { name: "Penrow Seeds", year: 2024 },
      alsoSpelled: ["Sun Gold", "Sungold F1"],
      maturity: { days: 57, from: "planting" },
      body: "<!--\nsplits\n-->",
      place: { file: "varieties.csv", line: 2, column: 1 },
    });
    expect(records.varieties.get("uchiki-kuri")).toMatchObject({
      source: { name: "own saved seed", obtained: "saved", year: 2023 },
      sayAs: "oo-CHEE-kee KOO-ree",
      maturity: { days: 95, from: "planting" },
    });
    expect(records.events.map(({ variety }) => variety)).toEqual(["sungold"]);
    expect(told(records)).toEqual(["name/bed-taken notes/2026-05-16.md:1:3"]);
  });

  it("have each problem at its cell, and a doubt keeps all of them private", async () => {
    const records = await read("Variety,Crop,Year,Link\nSungold,tomato,2024,\nMarmande,tomato,long ago,penrow\n");
    expect(told(records)).toEqual(["record/wrong-value varieties.csv:3:17", "record/wrong-value varieties.csv:3:26"]);
    expect(records.varieties.get("marmande")).toMatchObject({ crop: "tomato" });
    expect([...records.varieties.values()].every((variety) => variety.private)).toBe(true);
  });

  it("are private where their row says so, or says something that is neither yes nor no", async () => {
    const kept = async (mark: string) => {
      const { varieties } = await read(`Variety,Private\nSungold,${mark}\n`);
      return varieties.get("sungold")?.private;
    };
    expect([await kept("yes"), await kept("x"), await kept("true"), await kept("perhaps")]).toEqual([
      true,
      true,
      true,
      true,
    ]);
    expect([await kept(""), await kept("no"), await kept("false")]).toEqual([false, false, false]);
  });

  it("are private where a heading may be a slip for private", async () => {
    const records = await read("Variety,Privat\nSungold,yes\nMarmande,\n");
    expect(told(records)).toEqual(["table/like-private varieties.csv:1:9"]);
    expect([...records.varieties.values()].map((variety) => variety.private)).toEqual([true, true]);
  });

  it("may have columns of the person's own", async () => {
    const records = await read("Variety,Colour,Sown\nSungold,orange,2024-03-01\n");
    expect(told(records)).toEqual([
      "table/unknown-column varieties.csv:1:9",
      "table/unknown-column varieties.csv:1:16",
    ]);
    expect(records.varieties.get("sungold")?.private).toBe(false);
  });

  it("give way to a file of the same name, and the first row to none", async () => {
    const records = await read("Variety,Crop\nSungold,pea\nMarmande,tomato\nMarmande,pea\n,leek\n", {
      "varieties/sungold.md": "---\ncrop: tomato\n---\n",
    });
    expect(told(records)).toEqual([
      "table/same-variety varieties.csv:2:1",
      "table/same-variety varieties.csv:4:1",
      "table/no-name varieties.csv:5:1",
    ]);
    expect([...records.varieties.values()].map(({ id, crop }) => `${id} ${crop}`)).toEqual([
      "marmande tomato",
      "sungold tomato",
    ]);
  });

  it("are asked for by name when no column holds any", async () => {
    expect(told(await read("Colour,Height\norange,2 m\n"))).toEqual(["table/no-headings varieties.csv:1:1"]);
  });

  it("are read in any encoding, and told of", async () => {
    const records = await recordsOf(
      { ...garden, "varieties.csv": Buffer.from("Variety;Crop\nCafé au Lait;dahlia\n", "latin1") },
      "2026-07-18",
    );
    expect(records.varieties.get("cafe-au-lait")?.crop).toBe("dahlia");
    expect(told(records)).toEqual(["text/not-utf8 varieties.csv:2:4"]);
  });

  it("keep back what only notes name while the table cannot be read", async () => {
    const { varieties } = await recordsOf(
      {
        ...garden,
        "varieties.csv": Buffer.from([0, 1, 255, 0]),
        "notes/2026-05-16.md": "- planted 6 Sungold tomatoes in Long Bed\n",
      },
      "2026-07-18",
    );
    expect(varieties.get("sungold")?.private).toBe(true);
  });
});
