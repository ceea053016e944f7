/** Photos taken in one go: one stands for all, the others stay within reach, and a private one never does. */
import { rm } from "node:fs/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import type { PublishedPhoto } from "../../src/photos/index.ts";
import { publicGarden } from "../../src/site/index.ts";
import { linksBelow } from "../../src/site/page-data/links.ts";
import { pictureBook } from "../../src/site/page-data/pictures.ts";
import { pathOf, readPhotographedGarden, shots, writePhotographedGarden } from "./photographed-garden.ts";

let dir: string;
let garden: Garden;
const at = (day: string) => pathOf({ day, cover: 0 });

beforeAll(async () => {
  dir = await writePhotographedGarden();
  garden = await readPhotographedGarden(dir);
});

afterAll(() => rm(dir, { recursive: true, force: true }));

/** Copies that nobody has to make: only their names are looked at. */
const copies = new Map(
  shots.map((shot): [string, PublishedPhoto] => [
    pathOf(shot),
    {
      width: 800,
      height: 600,
      placeholder: "#888888",
      files: [{ width: 800, height: 600, format: "jpeg", name: `${shot.day}.jpg`, cachePath: "" }],
    },
  ]),
);

const taken = (days: readonly string[], best: string): Garden => ({
  ...garden,
  growth: { photos: [], bursts: [{ best: at(best), photos: days.map(at) }] },
});
const book = (of: Garden) => pictureBook(of, copies, linksBelow("/"));

describe("a burst", () => {
  it("is shown by its best photo, with links to the others", () => {
    const { all, others } = book(taken(["2026-05-02", "2026-05-16", "2026-06-13"], "2026-05-16"));
    expect(all.map(({ day }) => day)).toEqual([
      "2026-06-19",
      "2026-06-06",
      "2026-05-23",
      "2026-05-16",
      "2026-04-18",
      "2025-06-21",
    ]);
    const best = all.find(({ day }) => day === "2026-05-16");
    expect(best && others(best)).toEqual([
      { href: "/photos/2026-05-02.jpg", text: "second photo" },
      { href: "/photos/2026-06-13.jpg", text: "third photo" },
    ]);
  });

  it("whose best photo is private is shown in public by the first that is not", () => {
    const { all, others } = book(publicGarden(taken(["2026-05-23", "2026-06-13", "2026-06-19"], "2026-05-23")));
    expect(all.map(({ day }) => day)).not.toContain("2026-05-23");
    const first = all.find(({ day }) => day === "2026-06-13");
    expect(first && others(first)).toEqual([{ href: "/photos/2026-06-19.jpg", text: "second photo" }]);
  });
});
