/** A variety's plate: which photos it shows and in which order, and that its years are what the notes say. */
import { describe, expect, it } from "vitest";
import { daysBetween } from "../../src/calendar.ts";
import type { Photo, Variety } from "../../src/model.ts";
import { readRecords } from "../../src/records/index.ts";
import { plantYields } from "../../src/season/index.ts";
import { harvestsByYear } from "../../src/site/page-data/harvests.ts";
import { subjectOf } from "../../src/site/page-data/photo-subjects.ts";
import { varietyPages } from "../../src/site/page-data/variety-pages.ts";
import { viewGarden } from "../../src/site/page-data/view.ts";
import { growGarden } from "../../src/timeline/index.ts";

const TODAY = "2026-06-20";

const files: Readonly<Record<string, string>> = {
  "varieties/crown-prince.md": "---\ntitle: Crown Prince\ncrop: squash\ngrow again: yes, where there is room\n---\n",
  "varieties/sungold.md": "---\ntitle: Sungold\ncrop: tomato\ngrow again: no\n---\n",
  "varieties/red-leaf.md": "---\ntitle: Red Leaf\ncrop: lettuce\n---\n",
  "notes/2025-04-20.md": "- sowed 6 Crown Prince indoors\n",
  "notes/2025-05-30.md": "- planted 5 Crown Prince in Long Bed\n",
  "notes/2025-09-20.md": "- picked 10 kg Crown Prince from Long Bed, 4 fruits\n",
  "notes/2025-10-04.md": "- picked 16 kg Crown Prince from Long Bed, 5 fruits\n- cleared Crown Prince from Long Bed\n",
  "notes/2026-04-25.md": "- sowed 6 Crown Prince indoors\n- sowed 20 Red Leaf in Long Bed\n",
  "notes/2026-05-31.md": "- planted 4 Crown Prince in Long Bed\n",
  "notes/2026-06-13.md": "- picked 2 heads Red Leaf from Long Bed\n",
};

const photo = (name: string, more: Partial<Photo> = {}): Photo => ({
  path: `photos/varieties/crown-prince/${name}.jpg`,
  day: "2025-10-01",
  dateBasis: "file name",
  varieties: ["crown-prince"],
  private: false,
  ...more,
});

async function plates(photos: readonly Photo[] = []) {
  const records = await readRecords(
    { list: async () => Object.keys(files).sort(), read: async (file) => Buffer.from(files[file] ?? "") },
    { today: TODAY },
  );
  expect(records.problems.filter(({ severity }) => severity === "error")).toEqual([]);
  const copies = new Map(
    photos.map(({ path }) => [
      path,
      {
        width: 480,
        height: 360,
        placeholder: "",
        files: [{ format: "jpeg" as const, width: 480, height: 360, bytes: 1, cachePath: "", name: path }],
      },
    ]),
  );
  const garden = growGarden(records, photos);
  const view = viewGarden(garden, TODAY, "/", copies, new Map());
  const shown = { stops: new Map(), byVariety: new Map(), byBed: new Map() };
  const pages = varietyPages(view, shown, harvestsByYear(view), plantYields(garden, TODAY));
  return new Map(pages.map((page) => [page.id, page]));
}

describe("what a photo shows of a variety", () => {
  const variety = { title: "Red Leaf", id: "red-leaf", alsoSpelled: [] as readonly string[] } as Variety;
  const shows = (name: string, caption?: string) =>
    subjectOf({ path: `photos/varieties/x/${name}.jpg`, caption }, variety);

  it.each([
    ["close-up", "close-up"],
    ["cut-open", "cut open"],
    ["a-leaf", "leaf"],
    ["flower", "flower"],
    ["seed", "seed"],
    ["in-the-hand", "in the hand"],
  ])("%s by its file's name", (name, subject) => expect(shows(name)).toBe(subject));

  it("is told by the caption before the file's name, and by the inside before the hand", () => {
    expect(shows("leaf", "Halved, in my hand")).toBe("cut open");
  });

  it("is not told by the variety's own name, nor by a camera's", () => {
    expect(shows("IMG_4711", "Red Leaf in June")).toBeUndefined();
    expect(shows("red-leaf-2")).toBeUndefined();
    expect(shows("red-leaf-seed")).toBe("seed");
  });
});

describe("a plate's photos", () => {
  it("stand in their order, the newest of each part, and none that shows several varieties", async () => {
    const page = (
      await plates([
        photo("in-the-hand"),
        photo("seed"),
        photo("cut-open", { day: "2025-09-20" }),
        photo("cut-open-2", { day: "2025-10-02" }),
        photo("IMG_1"),
        photo("close-up"),
        photo("row", { varieties: ["crown-prince", "sungold"], caption: "Fruit of both" }),
      ])
    ).get("crown-prince");
    expect(
      page?.plate.photos.map(({ picture, shows }) => [picture.src.replace(/.*crown-prince%2F/u, ""), shows]),
    ).toEqual([
      ["close-up.jpg", "Close up"],
      ["IMG_1.jpg", undefined],
      ["cut-open-2.jpg", "Cut open"],
      ["seed.jpg", "Seed"],
      ["in-the-hand.jpg", "In the hand"],
    ]);
    expect(page?.picture?.src).toContain("close-up.jpg");
  });

  it("lead with one that says nothing where none is close", async () => {
    const page = (await plates([photo("cut-open"), photo("IMG_1")])).get("crown-prince");
    expect(page?.plate.photos[0]?.picture.src).toContain("IMG_1.jpg");
  });
});

describe("a variety's years", () => {
  /** Hundredths of a year that begins on 1 January. */
  const share = (day: string) => Math.round((10_000 * daysBetween(`${day.slice(0, 4)}-01-01`, day)) / 365) / 100;

  it("are drawn from the day it was sown to the last picking, newest first", async () => {
    const years = (await plates()).get("crown-prince")?.plate.years?.years ?? [];
    expect(years.map(({ year }) => year)).toEqual(["2026", "2025"]);
    const [now, last] = years;
    const spans = (bars: NonNullable<typeof last>["bars"]) =>
      bars.map(({ kind, row, from, width }) => [kind, row, from, Math.round((from + width) * 100) / 100]);
    // A bar takes in its last day.
    expect(spans(last?.bars ?? [])).toEqual([
      ["raised", 0, share("2025-04-20"), share("2025-05-31")],
      ["grown", 0, share("2025-05-30"), share("2025-10-05")],
      ["picked", 0, share("2025-09-20"), share("2025-10-05")],
    ]);
    expect(spans(now?.bars ?? [])).toEqual([
      ["raised", 0, share("2026-04-25"), share("2026-06-01")],
      ["grown", 0, share("2026-05-31"), share("2026-06-21")],
    ]);
  });

  it("say the same in words, with what a plant gave", async () => {
    const pages = await plates();
    const years = pages.get("crown-prince")?.plate.years?.years ?? [];
    expect(years.map(({ told }) => told)).toEqual([
      "Sown on 25 April, planted on 31 May.",
      "Sown on 20 April, planted on 30 May, picked twice from 20 September to 4 October.",
    ]);
    expect(years[1]?.amount?.text).toBe("Nine fruits, 26 kg");
    // 26 kg from the five that were planted; what is still growing has no yield a plant yet.
    expect(years.map(({ each }) => each)).toEqual([undefined, "5.2 kg a plant"]);
    expect(pages.get("red-leaf")?.plate.years?.years.map(({ told }) => told)).toEqual([
      "Sown on 25 April, picked on 13 June.",
    ]);
    expect(pages.get("sungold")?.plate.years).toBeUndefined();
  });

  it("end with whether it would be grown again, where its record says so", async () => {
    const pages = await plates();
    expect(["crown-prince", "sungold", "red-leaf"].map((id) => pages.get(id)?.plate.again)).toEqual([
      "Would grow it again: where there is room.",
      "Would not grow it again.",
      undefined,
    ]);
  });
});
