/** Which picture a variety's page begins with. */
import { expect, test } from "vitest";
import type { Photo } from "../../src/model.ts";
import { readRecords } from "../../src/records/index.ts";
import { varietyPages } from "../../src/site/page-data/variety-pages.ts";
import { viewGarden } from "../../src/site/page-data/view.ts";
import { growGarden } from "../../src/timeline/index.ts";

const files: Readonly<Record<string, string>> = {
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/bean-row.md": "---\ntitle: Bean Row\n---\n",
  "varieties/crown-prince.md": "---\ntitle: Crown Prince\ncrop: squash\n---\n",
  "varieties/sungold.md": "---\ntitle: Sungold\ncrop: tomato\n---\n",
  "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\n---\n",
  "notes/2026-05-16.md":
    "- planted 4 Crown Prince in Long Bed, row 2\n- planted 3 Sungold in Long Bed\n- sowed 20 Boltardy in Bean Row\n",
};

async function leads(photos: readonly Photo[]) {
  const records = await readRecords(
    { list: async () => Object.keys(files).sort(), read: async (file) => Buffer.from(files[file] ?? "") },
    { today: "2026-06-20" },
  );
  const file = { format: "jpeg" as const, width: 480, height: 360, bytes: 1, cachePath: "" };
  const copies = new Map(
    photos.map(({ path }) => [path, { width: 480, height: 360, placeholder: "", files: [{ ...file, name: path }] }]),
  );
  const view = viewGarden(growGarden(records, photos), "2026-06-20", "/", copies, new Map());
  const shown = { stops: new Map(), byVariety: new Map(), byBed: new Map() };
  return Object.fromEntries(
    varietyPages(view, shown as unknown as Parameters<typeof varietyPages>[1], new Map(), new Map()).map(
      ({ id, picture }) => [id, picture && [picture.alt, picture.caption]],
    ),
  );
}

const photo = (path: string, more: Partial<Photo>): Photo => ({
  path,
  day: "2026-06-13",
  dateBasis: "file name",
  varieties: [],
  private: false,
  ...more,
});

test("its own photo; a bed's view only where it grows alone there or the notes say at which spot", async () => {
  const ofBeds = [
    photo("photos/long-bed/a.jpg", { bed: "long-bed", caption: "After rain." }),
    photo("photos/bean-row/a.jpg", { bed: "bean-row" }),
    photo("photos/bean-row/before.jpg", { bed: "bean-row", day: "2026-04-01" }),
  ];
  expect(await leads(ofBeds)).toEqual({
    boltardy: ["Bean Row, 13 June 2026", undefined],
    "crown-prince": ["Long Bed, 13 June 2026", "After rain. Where to look: row 2."],
    sungold: undefined,
  });
  const own = photo("photos/varieties/sungold/a.jpg", { varieties: ["sungold"], caption: "First truss" });
  expect((await leads([...ofBeds, own])).sungold).toEqual(["Sungold tomatoes, 13 June 2026", "First truss"]);
});
