/** The ribbon on private pages: it begins with its photo, and a day is told by the lines of its notes, each the way to itself. */
import { describe, expect, it } from "vitest";
import type { PublishedPhoto } from "../../src/photos/index.ts";
import { fieldSite } from "../../src/site/page-data/field-site.ts";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { publicGarden } from "../../src/site/public-garden.ts";
import { gardenOf, photoOf } from "../tour/garden-of.ts";

const today = "2026-07-18";
const files = {
  "garden.md": "---\nname: Test Garden\nlanguage: en-GB\n---\n",
  "beds/long-bed.md": "---\ntitle: Long Bed\n---\n",
  "beds/pea-row.md": "---\ntitle: Pea Row\n---\n",
  "notes/2026-04-18.md": "---\nbed: Long Bed\n---\n\n- planted 6 bought Sungold tomatoes\n",
  "notes/2026-07-11.md":
    "# A round\n\n## Long Bed\n\n- picked 400 g Sungold\n- lifted the leeks\n- planted 3 bought lettuces yesterday\n\n## Pea Row\n\n- sowed 40 peas\n",
  "notes/2026-07-16.md": "- picked 300 g Sungold\n",
};
const photos = [
  photoOf("photos/long-bed/gate/2026-04-25.jpg", "2026-04-25", "long-bed", "gate"),
  photoOf("photos/long-bed/gate/2026-05-09.jpg", "2026-05-09", "long-bed", "gate"),
];
const copy = (name: string): PublishedPhoto => ({
  width: 800,
  height: 600,
  placeholder: "#3c7828",
  files: [{ name: `${name}.jpg`, cachePath: `/${name}.jpg`, width: 800, height: 600, format: "jpeg" }],
});
const copies = new Map(photos.map(({ path: of, day = "" }) => [of, copy(day)]));
const garden = await gardenOf(files, today, photos);
const own = fieldSite(garden, today, { photos: copies });
const longBed = own.bedPages.find(({ id }) => id === "long-bed");
const dayOf = (iso: string) => longBed?.ribbon?.days.find((day) => day.iso === iso);

describe("a bed's ribbon on private pages", () => {
  it("begins with its newest photo, though days came after it", () => {
    const { days = [], begins = -1, stage, stands } = longBed?.ribbon ?? {};
    expect(days.map(({ iso }) => iso)).toEqual([
      "2026-07-16",
      "2026-07-11",
      "2026-07-10",
      "2026-05-09",
      "2026-04-25",
      "2026-04-18",
    ]);
    expect(days[begins]?.iso).toBe("2026-05-09");
    expect(stage?.iso).toBe("2026-05-09");
    expect(stands).toBe("Sungold");
    // So do those of viewers.
    const seen = publicSite(publicGarden(garden), today, copies).bedPages.find(({ id }) => id === "long-bed")?.ribbon;
    expect(seen?.days[seen.begins]?.iso).toBe("2026-05-09");
  });

  it("tells a day by its lines, each with the way to it, and says nothing of them twice", () => {
    expect(dayOf("2026-07-11")).toMatchObject({
      lines: [],
      notes: [
        { text: "picked 400 g Sungold", href: "/notes/2026-07-11/#line-5" },
        { text: "lifted the leeks", href: "/notes/2026-07-11/#line-6" },
      ],
    });
    // What is told of another day stands on that day.
    expect(dayOf("2026-07-10")?.notes?.map(({ text }) => text)).toEqual(["planted 3 bought lettuces yesterday"]);
    // A line that names no bed stands where its plants stand.
    expect(dayOf("2026-07-16")?.notes?.map(({ text }) => text)).toEqual(["picked 300 g Sungold"]);
    for (const { notes = [] } of longBed?.ribbon?.days ?? [])
      for (const { href } of notes) {
        const [, id, line] = /^\/notes\/(.*)\/#line-(\d+)$/u.exec(href) ?? [];
        const note = own.notePages.find((page) => page.id === id);
        expect(note?.lines.map(({ number }) => String(number))).toContain(line);
      }
  });

  it("leads to no page of a variety, of which private pages have none", () => {
    expect(longBed?.ribbon?.rows.map(({ name, href }) => [name, href])).toEqual([
      ["Sungold", undefined],
      ["Lettuces", undefined],
    ]);
  });
});

it("the desk has the season, a row for each bed that leads to it, and the lines of the day of each photo", () => {
  const { ribbon } = own.home;
  expect(ribbon?.rows.map(({ href }) => href)).toEqual(["/beds/long-bed/", "/beds/pea-row/"]);
  expect(ribbon?.days.map(({ iso }) => iso)).toEqual(["2026-05-09", "2026-04-25"]);
  expect(ribbon?.begins).toBe(0);
});

it("viewers are shown no line of a note", () => {
  const site = publicSite(publicGarden(garden), today, copies);
  const days = [...site.bedPages.map(({ ribbon }) => ribbon), ...site.recaps.map(({ ribbon }) => ribbon)].flatMap(
    (ribbon) => ribbon?.days ?? [],
  );
  expect(days.length).toBeGreaterThan(5);
  expect(days.filter(({ notes }) => notes !== undefined)).toEqual([]);
});
