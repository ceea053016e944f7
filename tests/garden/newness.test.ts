/** What is new to a garden is said alike by the brief, the field pages and the pages for viewers. */
import { describe, expect, it } from "vitest";
import { bookOf, isFirstOfItsCrop, isNewToGarden } from "../../src/garden/index.ts";
import { publicGarden } from "../../src/site/index.ts";
import { viewGarden } from "../../src/site/page-data/view.ts";
import { makeBrief } from "../../src/tour/index.ts";
import { type Files, gardenOf } from "../tour/garden-of.ts";

const variety = (title: string, crop: string, source = "") => `---\ntitle: ${title}\ncrop: ${crop}\n${source}---\n`;

const files: Files = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "varieties/musselburgh.md": variety("Musselburgh", "leek"),
  "varieties/boltardy.md": variety("Boltardy", "beetroot"),
  "varieties/nantes.md": variety("Nantes", "carrot"),
  "varieties/own-pea.md": variety("Own Pea", "pea", "source: {name: own seed, obtained: saved}\n"),
  "varieties/red-baron.md": variety("Red Baron", "onion"),
  "notes/2025-05-01.md":
    "- planted 6 Musselburgh leek in Long Bed\n- sowed Boltardy beetroot in Long Bed\n- sowed Nantes carrot in Long Bed\n",
  "notes/2025-07-01.md": "- picked 400 g Boltardy beetroot from Long Bed\n",
  "notes/2026-05-01.md":
    "- sowed 20 Own Pea in Long Bed\n- sowed Boltardy beetroot in Long Bed\n- planted 6 Red Baron onion in Long Bed\n",
};
const day = "2026-06-01";

async function newIn(all: Files, on = day) {
  const garden = await gardenOf(all, on);
  const pages = (of: typeof garden) => [...viewGarden(of, on, "/", new Map(), new Map()).newVarieties].sort();
  const brief = makeBrief(garden, { day: on, today: on })
    .stops.flatMap(({ varieties }) => varieties)
    .filter(({ newThisYear }) => newThisYear)
    .map(({ label }) => label);
  return { field: pages(garden), public: pages(publicGarden(garden)), brief };
}

describe("new to the garden", () => {
  it("is what was never sown or planted here before; own saved seed was", async () => {
    expect(await newIn(files)).toEqual({ field: ["red-baron"], public: ["red-baron"], brief: ["Red Baron, onion"] });
  });

  it("is nothing where only a private table goes back further", async () => {
    const old = files["notes/2025-05-01.md"] ?? "";
    const kept = { ...files, "notes/2025-05-01.md": `---\nprivate: true\n---\n${old}` };
    expect(await newIn(kept)).toEqual({ field: [], public: [], brief: [] });
  });

  it("is nothing in the first season of the notes, whatever old plants they name", async () => {
    const { "notes/2025-05-01.md": _, "notes/2025-07-01.md": _later, ...first } = files;
    const none = { field: [], public: [], brief: [] };
    expect(await newIn(first)).toEqual(none);
    const many = ["Detroit", "Amsterdam", "Bedfordshire Champion", "Sturon", "Rijnsburger", "Ailsa Craig"];
    const oldOne: Files = {
      ...first,
      ...Object.fromEntries(many.map((title) => [`varieties/${title.split(" ")[0]}.md`, variety(title, "onion")])),
      "notes/2020-03-01.md": "- planted 1 Victoria rhubarb in Long Bed\n",
      "notes/2026-05-02.md": `${many.map((title) => `- planted 6 ${title} in Long Bed`).join("\n")}\n`,
    };
    expect(await newIn(oldOne)).toEqual(none);
  });

  it("is nothing where the season before has no notes but a single day, or the notes left off years ago", async () => {
    const { "notes/2025-05-01.md": sown = "", "notes/2025-07-01.md": picked = "", ...rest } = files;
    const none = { field: [], public: [], brief: [] };
    expect(await newIn({ ...rest, "notes/2025-05-01.md": sown })).toEqual(none);
    expect(await newIn({ ...rest, "notes/2021-05-01.md": sown, "notes/2021-07-01.md": picked })).toEqual(none);
  });

  it("is told where a fifth of all kinds was begun before the season, and not where it was less", async () => {
    const isNew = async (kinds: number) => {
      const titles = ["Detroit", "Sturon", "Rijnsburger", "Carlton", "Ailsa"].slice(0, kinds);
      const all: Files = {
        "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
        "varieties/musselburgh.md": variety("Musselburgh", "leek"),
        ...Object.fromEntries(titles.map((title) => [`varieties/${title.toLowerCase()}.md`, variety(title, "onion")])),
        "notes/2025-05-01.md": "- planted 6 Musselburgh leek in Long Bed\n",
        "notes/2025-09-01.md": "- picked 2 Musselburgh leek from Long Bed\n",
        "notes/2026-05-02.md": `${titles.map((title) => `- planted 6 ${title} onion in Long Bed`).join("\n")}\n`,
      };
      return isNewToGarden(await gardenOf(all, day), "detroit", day);
    };
    expect([await isNew(4), await isNew(5)]).toEqual([true, false]);
  });

  it("is so from its first day, for that season alone", async () => {
    const garden = await gardenOf(files, "2027-06-01");
    const on = (when: string) => isNewToGarden(garden, "red-baron", when);
    expect(["2026-04-30", "2026-05-01", "2026-12-31", "2027-01-01"].map(on)).toEqual([false, true, true, false]);
  });
});

describe("a crop that was never grown here", () => {
  const firsts = async (all: Files, on = day) => {
    const garden = await gardenOf(all, on);
    const { plantings } = bookOf(garden).stateOf("long-bed", on);
    return plantings.filter((planting) => isFirstOfItsCrop(garden, planting, on)).map(({ id }) => id.split("/")[1]);
  };
  const older = {
    ...files,
    "notes/2024-11-01.md": "- planted 2 Nantes carrot in Long Bed\n",
    "notes/2024-12-31.md": "- planted 2 Nantes carrot in Long Bed\n",
  };

  it("is told only where the notes know the whole season before; of own saved seed it was grown", async () => {
    expect(await firsts(older)).toEqual(["red-baron"]);
    const { "notes/2024-12-31.md": _, ...once } = older;
    const late = { ...once, "notes/2025-01-01.md": "- planted 2 Nantes carrot in Long Bed\n" };
    expect(await firsts(late)).toEqual([]);
    expect(await firsts(older, "2027-06-01")).toEqual([]);
  });

  it("is not told where one old line is all that the notes have from before", async () => {
    const { "notes/2025-05-01.md": _, "notes/2025-07-01.md": _later, ...rest } = files;
    expect(await firsts({ ...rest, "notes/2019-05-01.md": "- planted 2 Nantes carrot in Long Bed\n" })).toEqual([]);
    // Nor where that line stands before the notes of last year, which began in May.
    expect(
      await firsts({ ...files, "notes/2026-05-02.md": "- planted 2 Nantes in Long Bed, on 1 May 2019\n" }),
    ).toEqual([]);
  });

  it("is not what a line only finds there, and not another kind of a crop that was", async () => {
    const found = {
      ...older,
      "varieties/victoria.md": variety("Victoria", "rhubarb"),
      "varieties/sturon.md": variety("Carlton", "leek"),
      "notes/2026-05-20.md": "- picked 600 g Victoria rhubarb from Long Bed\n- planted 6 Carlton leek in Long Bed\n",
    };
    expect(await firsts(found)).toEqual(["red-baron"]);
  });
});
