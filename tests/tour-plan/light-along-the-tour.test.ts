/** Light: words for a stop at its clock time, the best start, its score, clouds, midnight, the pole, and far-off years. */
import { describe, expect, test } from "vitest";
import { briefPage } from "../../src/site/index.ts";
import { makeBrief, makeCards } from "../../src/tour/index.ts";
import { cardsAround, dossierOf, type Files, gardenFile, gardenOf } from "../tour/garden-of.ts";

const day = "2026-06-20";
const settings = (more: string) => gardenFile.replace("---\n", `---\n${more}`);
const greenwich = "place: {latitude: 51.4779, longitude: 0}\n";

const beds = (looking: string, shade = ""): Files => ({
  "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\n---\n",
  "beds/long-bed.md": `---\ntitle: Long Bed\nviewpoints: [{name: gate, looking: ${looking}}]\n${shade}---\n`,
  "notes/2026-05-01.md": "- sowed 20 Boltardy in Long Bed\n",
});
const briefOf = async (files: Files, more: { start?: string; overcast?: boolean; day?: string } = {}) => {
  const garden = await gardenOf(files, "2026-06-20");
  return { garden, brief: makeBrief(garden, { day, today: "2026-06-20", ...more }) };
};

describe("the best start", () => {
  const morning: Files = { "garden.md": settings(`${greenwich}film between: 08:00 to 12:00\n`), ...beds("east") };

  test("is the first with most stops in good light, within the person's hours", async () => {
    const { brief } = await briefOf(morning);
    // Looking east, the sun stands against the camera until it is 60° off: at azimuth 150°, about 12:10 summer time.
    expect(brief.plan.startScores.map(({ start }) => start)[0]).toBe("8:00");
    expect(brief.plan.startScores.at(-1)?.start).toBe("11:45");
    const west = await briefOf({ ...morning, ...beds("west") });
    expect(west.brief.plan).toMatchObject({ start: "8:00", startBy: "light", litStops: 1 });
    expect(west.brief.stops[0]?.light).toMatch(/^sun behind you until \d+:\d\d$/);
    expect(west.brief.plan.startScores.every(({ score }) => score === 1)).toBe(true);
  });

  test("gives way to the person's own, and a clearly better one is named", async () => {
    const walled = { ...morning, ...beds("west", "shade: wall to the east, 3 m high, 2 m away\n") };
    const { brief, garden } = await briefOf(walled, { start: "09:00" });
    expect(brief.plan).toMatchObject({ start: "9:00", startBy: "person" });
    expect(brief.stops[0]).toMatchObject({ from: "9:00" });
    expect(brief.stops[0]?.light).toMatch(/^in the wall's shade before 10:4\d$/);
    expect(brief.plan.light).toMatch(/^hard light, better from 10:45$/);
    const after = (await briefOf(walled, { start: "11:00" })).brief;
    expect(after.stops[0]?.light).toMatch(/^sun behind you until 1\d:\d\d, wall shade gone since 10:4\d$/);
    const { cover } = makeCards(garden, { day: brief.date, today: brief.date, start: "09:00" });
    expect(cover.times).toMatch(/^Be there 8:45, first shot 9:00, done about 9:0\d\.$/);
    expect(dossierOf(brief, garden)).toMatch(/`8:00 ▂+█+ 11:45`/);
    expect(cover.light).toMatch(
      /^Hard light, better from 10:45\. Best start by the light: 10:45, with the one stop in good light\. Sunrise 4:4\d, sunset 21:2\d; low sun until 5:\d\d and from 20:\d\d\./,
    );
    const page = briefPage(cardsAround(brief, garden), garden);
    expect(page).toMatch(
      /<svg [^>]*role="img" aria-label="Light by starting time from 8:00 to 11:45; the table below has the numbers\."/,
    );
    const chart = /<figure class="light">.*?<\/svg>/s.exec(page)?.[0];
    expect(chart?.match(/<rect /g)).toHaveLength(brief.plan.startScores.length);
    expect(page).toContain('<tr><th scope="row">10:45</th><td>1</td><td>100</td></tr>');
  });

  test("is worth the same all day under cloud", async () => {
    const { brief } = await briefOf(morning, { overcast: true });
    expect(brief.stops[0]?.light).toBe("even light under cloud");
    expect(brief.plan.light).toBe("even light under cloud");
    expect(new Set(brief.plan.startScores.map(({ score }) => score))).toEqual(new Set([1]));
  });

  test("is the episode's where it gives one, and --start goes before that", async () => {
    const episode = `---\ntitle: June\ndate: ${day}\nstatus: planned\nstart: "10:00"\nstops: [long-bed]\n---\n`;
    const garden = await gardenOf({ ...morning, "episodes/june/index.md": episode }, day);
    expect(makeBrief(garden, { episode: "june", today: day }).start).toBe("10:00");
    expect(makeBrief(garden, { episode: "june", today: day, start: "09:30" }).start).toBe("09:30");
  });
});

describe("where nothing tells the light", () => {
  test("no place, or no camera direction: no start, no clock, no word", async () => {
    for (const files of [
      beds("west"),
      { "garden.md": settings(greenwich), ...beds("west"), "beds/long-bed.md": "---\ntitle: Long Bed\n---\n" },
    ]) {
      const { brief, garden } = await briefOf(files);
      expect(brief.plan).toMatchObject({ start: undefined, end: undefined, light: undefined, startScores: [] });
      expect(brief.stops[0]).toMatchObject({ from: undefined, light: undefined });
      expect(dossierOf(brief, garden)).toContain("### 1 · Long Bed · 22 s\n");
    }
  });
});

describe("odd days and places", () => {
  test("a tour across midnight goes on into the next day", async () => {
    const night = { "garden.md": settings(`${greenwich}film between: 22:00 to 2:00\n`), ...beds("west") };
    const { brief } = await briefOf(night, { start: "23:59" });
    expect(brief.stops[0]).toMatchObject({ from: "23:59" });
    // Sunrise is 4:43 by the almanac; a bed is lit when the sun's whole disc has come up.
    expect(brief.stops[0]?.light).toMatch(/^the sun is not up before 4:4\d$/);
    expect(brief.plan.end).toBe("0:00");
    expect(brief.plan.light).toBe("no daylight at the start");
    expect(brief.plan.startScores.map(({ start }) => start)).toContain("0:15");
    expect(brief.plan.startScores.every(({ score }) => score === 0)).toBe(true);
  });

  test("at the pole the sun stays up or down all day", async () => {
    const pole = (month: string) => ({
      "garden.md": settings("place: {latitude: 90, longitude: 0}\n"),
      ...beds("west"),
      "notes/2026-05-01.md": `- sowed 20 Boltardy in Long Bed on 1 ${month}\n`,
    });
    const summer = (await briefOf(pole("May"))).brief;
    expect(summer.plan.sun).toBe("The sun stays up all day.");
    expect(summer.stops[0]?.light).toMatch(/^sun /);
    const winter = (await briefOf(pole("May"), { day: "2026-12-20" })).brief;
    expect(winter.plan.sun).toBe("The sun stays down all day.");
    expect(winter.stops.map(({ light }) => light).filter((light) => light !== "the sun is down")).toEqual([]);
  });

  test.each(["1931-06-20", "2093-06-20"])("years away: %s", async (far) => {
    const files = {
      "garden.md": settings(greenwich),
      ...beds("west"),
      "notes/1931-05-01.md": "- planted 5 rhubarb in Long Bed\n",
    };
    const { brief } = await briefOf(files, { day: far });
    expect(brief.plan.sun).toMatch(/^Sunrise [45]:\d\d, sunset 2[01]:\d\d;/);
    expect(JSON.stringify(brief)).not.toMatch(/NaN|Infinity/);
  });

  test("a polytunnel takes the edges off the light", async () => {
    const { brief } = await briefOf(
      { "garden.md": settings(greenwich), ...beds("east", "shade: tunnel skin\n") },
      { start: "09:00" },
    );
    expect(brief.stops[0]?.light).toBe("soft light");
  });

  test("a wall at the end of a long bed leaves its middle in the sun", async () => {
    const shade = "shade: wall to the east, 1.6 m high, 1 m away\n";
    const short = { "garden.md": settings(greenwich), ...beds("west", shade) };
    const long = { "garden.md": settings(greenwich), ...beds("west", `${shade}size: 8 x 1.2 m\nfacing: south\n`) };
    expect((await briefOf(short, { start: "09:00" })).brief.stops[0]?.light).toMatch(/^in the wall's shade/);
    expect((await briefOf(long, { start: "09:00" })).brief.stops[0]?.light).toMatch(/^sun behind you/);
  });
});
