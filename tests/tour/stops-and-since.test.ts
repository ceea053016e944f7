/** Which beds a tour stops at, in what order, and since when each is told. */
import { describe, expect, test } from "vitest";
import { makeBrief } from "../../src/tour/index.ts";
import { type Files, gardenOf } from "./garden-of.ts";

const bed = (title: string, site: string, x: number, y: number, more = "") =>
  `---\ntitle: ${title}\nsite: ${site}\nplan: {x: ${x}, y: ${y}}\nin use since: 2025-01-01\n${more}---\n`;
const tour = (date: string, stops: string, more = "status: published") =>
  `---\ntitle: Tour\ndate: ${date}\n${more}\nstops: [${stops}]\n---\n`;

const threeSites: Files = {
  "sites/yard.md": "---\ntitle: Yard\norder: 2\n---\n",
  "sites/hill.md": "---\ntitle: Hill\norder: 1\n---\n",
  "sites/cellar.md": "---\ntitle: Cellar\nprivate: true\n---\n",
  "beds/pots.md": bed("Pots", "yard", 0, 0),
  "beds/far-bed.md": bed("Far Bed", "hill", 9, 1),
  "beds/near-bed.md": bed("Near Bed", "hill", 1, 2),
  "beds/middle-bed.md": bed("Middle Bed", "hill", 5, 0),
  "beds/old-bed.md": bed("Old Bed", "hill", 2, 2, "in use until: 2025-12-31\n"),
  "beds/secret-bed.md": bed("Secret Bed", "hill", 3, 2, "private: true\n"),
  "beds/cellar-shelf.md": bed("Cellar Shelf", "cellar", 0, 0),
  "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\n---\n",
  "notes/2026-04-01.md": ["pots", "far-bed", "near-bed", "middle-bed", "secret-bed", "cellar-shelf"]
    .map((id) => `- sowed 20 Boltardy in ${id}\n`)
    .join(""),
};

describe("the order of stops", () => {
  test("without an episode: sites by order, beds along the longer side of the plan", async () => {
    const garden = await gardenOf(threeSites, "2026-06-01");
    const brief = makeBrief(garden, { day: "2026-06-01", today: "2026-06-01" });
    expect(brief.stops.map((stop) => [stop.id, stop.bed, stop.siteTitle])).toEqual([
      ["S1", "near-bed", "Hill"],
      ["S2", "middle-bed", "Hill"],
      ["S3", "far-bed", "Hill"],
      ["S4", "pots", "Yard"],
    ]);
    expect(brief.tour).toBe("2026-06-01");
    expect(brief.title).toBe("Tour of 1 June");
    expect(brief.leftOut.map(({ bed: id, why }) => [id, why])).toEqual([
      ["old-bed", "not in use since 31 December"],
      ["secret-bed", "private"],
      ["cellar-shelf", "private"],
    ]);
  });

  test("with an episode: as given, even a private bed, and what it skips is said", async () => {
    const files = {
      ...threeSites,
      "episodes/june/index.md": tour(
        "2026-06-01",
        "pots, secret-bed, far-bed, old-bed",
        "status: planned\nskip: [far-bed]\nkeep: [Middle Bed]",
      ),
    };
    const brief = makeBrief(await gardenOf(files, "2026-06-01"), { episode: "june", today: "2026-06-01" });
    expect(brief.stops.map((stop) => stop.bed)).toEqual(["pots", "secret-bed", "middle-bed"]);
    expect(brief.leftOut.map(({ bed: id, why }) => [id, why])).toEqual([
      ["far-bed", "you said skip"],
      ["old-bed", "not in use since 31 December"],
      ["near-bed", "never shown yet"],
      ["cellar-shelf", "private"],
    ]);
    expect(brief.leftOut.find((line) => line.bed === "near-bed")?.miss).toBe(
      "Not seen before: Boltardy beetroot, sown here on 1 April, so nearly nine weeks from seed.",
    );
  });

  test("a tour with nothing to stop at says so", async () => {
    const brief = makeBrief(await gardenOf({}, "2026-06-01"), { day: "2026-06-01", today: "2026-06-01" });
    expect(brief.stops).toEqual([]);
    expect(brief.checks.map(({ text }) => text)).toEqual([
      "No bed of this tour is in use on that day: there is nothing to stop at.",
    ]);
  });
});

describe("since when a bed is told", () => {
  const films: Files = {
    ...threeSites,
    "episodes/april/index.md": tour("2026-04-10", "pots, near-bed"),
    "episodes/may/index.md": tour("2026-05-10", "pots", "status: published\npublished: 2026-05-14"),
    "episodes/may-not-out/index.md": tour("2026-05-20", "near-bed", "status: filmed"),
    "episodes/late/index.md": tour("2026-05-25", "near-bed", "status: published\npublished: 2026-06-20"),
    "episodes/june/index.md": tour("2026-06-01", "pots, near-bed, far-bed", "status: planned"),
  };

  test("the last published tour that showed it, by then out; else its own start", async () => {
    const brief = makeBrief(await gardenOf(films, "2026-06-01"), { episode: "june", today: "2026-06-01" });
    expect(brief.stops.map(({ bed: id, since }) => [id, since.episode, since.day, since.text])).toEqual([
      ["pots", "may", "2026-05-10", "since the last tour"],
      ["near-bed", "april", "2026-04-10", "since the tour of 10 April"],
      ["far-bed", undefined, "2025-01-01", "for the first time"],
    ]);
    expect(brief.since).toBe("2026-05-10");
    expect(brief.stops[2]?.lastSeen[0]?.text).toBe("No published tour has stopped at the far bed yet.");
  });

  test("what was new at the last tour is not new again", async () => {
    const brief = makeBrief(await gardenOf(films, "2026-06-01"), { episode: "june", today: "2026-06-01" });
    expect(brief.stops.map((stop) => stop.show.map(({ kind }) => kind))).toEqual([["standing"], ["standing"], ["new"]]);
    expect(brief.stops[0]?.show[0]?.text).toBe("Boltardy beetroot is sown and not up yet.");
  });
});
