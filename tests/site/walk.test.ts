/** A film's page as the walk: stops in order, the plan with the way, and what became of what it showed. */
import path from "node:path";
import { describe, expect, it } from "vitest";
import type { Garden } from "../../src/model.ts";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { sinceFilm } from "../../src/site/page-data/walk/since-film.ts";
import { publicGarden } from "../../src/site/public-garden.ts";
import { siteWords } from "../../src/site/words/index.ts";
import { living, state } from "../../src/timeline/index.ts";
import { readGarden, today } from "./built-site.ts";

const demo = publicGarden(await readGarden(path.resolve("demo-content")));
const films = publicSite(demo, today, new Map()).episodePages;
const june = films.find(({ id }) => id === "2026-06-tour");

describe("the walk of a film", () => {
  it("numbers its stops in the order of the film, with what stood there that day", () => {
    const episode = demo.episodes.get("2026-06-tour");
    expect(june?.stops.map(({ number, anchor }) => [number, anchor])).toEqual(
      episode?.stops.map((_, index) => [index + 1, `stop-${index + 1}`]),
    );
    for (const [index, stop] of (june?.stops ?? []).entries()) {
      const { bed = "" } = episode?.stops[index] ?? {};
      const stood = living(state(demo, bed, "2026-06-13")).flatMap(
        ({ variety }) => demo.varieties.get(variety ?? "")?.title ?? [],
      );
      const shown = [...stop.named.map(({ plate }) => plate.name), ...stop.others.map(({ name }) => name)];
      for (const name of stood) expect(shown, bed).toContain(name);
    }
  });

  it("draws the way from the gate past every stop, each box leading to it", () => {
    const [hill] = june?.plans ?? [];
    const marked = hill?.beds.filter(({ href }) => href !== undefined) ?? [];
    expect(marked.map(({ said, href }) => [said, href]).sort()).toEqual(
      [
        ["1 Squash Bed", "#stop-1"],
        ["2 Brassica Bed", "#stop-2"],
        ["3 Long Bed", "#stop-3"],
        ["4 Onion Bed", "#stop-4"],
        ["5 Bean Row", "#stop-5"],
        ["6 Cutting Patch", "#stop-6"],
      ].sort(),
    );
    expect(hill?.route).toHaveLength(7);
    expect(hill?.route[0]).toEqual(hill?.gates[0]);
    // The gate lies in the south-east: right of the first bed's middle, and below it.
    expect(hill?.gates[0]?.x).toBeGreaterThan(hill?.route[1]?.x ?? 0);
    expect(hill?.gates[0]?.y).toBeGreaterThan(hill?.route[1]?.y ?? 0);
    expect(hill?.told).toMatch(/^The walk over Hill Allotment: 1 Squash Bed in the /u);
  });

  it("is numbered all the same where no plan says where the beds lie", async () => {
    const garden = publicGarden(await readGarden(path.resolve("tests/gardens/two-walls")));
    const [film] = publicSite(garden, today, new Map()).episodePages;
    expect(film?.plans).toEqual([]);
    expect(film?.stops.map(({ number }) => number)).toEqual([1]);
  });
});

describe("what became of it since", () => {
  const facts = (garden: Garden, bed: string, variety: string, film: string, until = today) => {
    const then = living(state(garden, bed, film)).filter((planting) => planting.variety === variety);
    expect(then.length).toBeGreaterThan(0);
    return sinceFilm(garden, then, { film, seasonStart: `${film.slice(0, 4)}-01-01`, until });
  };

  it("is what the timeline says after the filming day and by the end of that season", () => {
    const potatoes = facts(demo, "step-pots", "sharpes-express", "2026-06-13");
    expect(potatoes).toMatchObject({ picked: { grams: 3100 }, over: { day: "2026-07-04", wasLost: false } });
    const before = facts(demo, "step-pots", "sharpes-express", "2026-06-13", "2026-07-03");
    expect(before).toMatchObject({ picked: { times: 0 }, over: undefined });
    expect(facts(demo, "squash-bed", "crown-prince", "2026-06-13")).toMatchObject({
      flowered: "2026-06-27",
      lost: 0,
      over: undefined,
    });
    // It was picked before the film too; that is no news.
    const strawberries = facts(demo, "step-pots", "royal-sovereign", "2026-06-13");
    const whole = living(state(demo, "step-pots", today)).find(({ variety }) => variety === "royal-sovereign");
    expect(strawberries.picked.grams).toBeLessThan(whole?.picked.grams ?? 0);
  });

  it("is said in a sentence, and not at all when nothing was noted", () => {
    const { since } = siteWords.walk;
    expect(since({ picked: "3.1 kg", times: 1, lost: 0, over: { day: "4 July", wasLost: false } })).toBe(
      "Since then: 3.1 kg picked, cleared on 4 July.",
    );
    expect(since({ flowered: "27 June", times: 0, lost: 2 })).toBe("Since then: in flower from 27 June, two lost.");
    expect(since({ picked: "", times: 3, lost: 0 })).toBe("Since then: picked again and again.");
    expect(since({ times: 0, lost: 0 })).toBe("");
  });

  it("tells of another day than the film's how far away it was", () => {
    expect(siteWords.walk.taken(-2)).toBe("Two days before the film.");
    expect(siteWords.walk.taken(9)).toBe("Nine days after the film.");
  });
});
