/** A ribbon against the timeline it is drawn from: bars, days, what stood there, and nothing private. */
import path from "node:path";
import { describe, expect, it } from "vitest";
import { noWeather, type Weather } from "../../src/almanac/index.ts";
import { addDays, daysBetween } from "../../src/calendar.ts";
import { seasonBeginning } from "../../src/garden/index.ts";
import type { Garden } from "../../src/model.ts";
import { makeRecap } from "../../src/season/index.ts";
import { dayMeant, photoFor } from "../../src/site/components/ribbon-steps.ts";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { joined } from "../../src/site/page-data/ribbon/season-ribbon.ts";
import { seasonScale } from "../../src/site/page-data/ribbon/season-scale.ts";
import { weekWeather } from "../../src/site/page-data/ribbon/week-weather.ts";
import { publicGarden } from "../../src/site/public-garden.ts";
import { siteWords } from "../../src/site/words/index.ts";
import { changes, living, state } from "../../src/timeline/index.ts";
import { grow } from "../timeline/small-garden.ts";
import { readGarden, today } from "./built-site.ts";

const demo = await readGarden(path.resolve("demo-content")).then(publicGarden);
const pages = publicSite(demo, today, new Map());
const ribbonsOf = (id: string) => {
  const bed = pages.bedPages.find((one) => one.id === id);
  return [bed?.ribbon, ...(bed?.seasons ?? [])].filter((one) => one !== undefined);
};

/** Names as rows have them. */
function namesIn(garden: Garden, bed: string, day: string): readonly string[] {
  const of = living(state(garden, bed, day)).map(
    ({ variety, crop }) => garden.varieties.get(variety ?? "")?.title ?? crop,
  );
  return [...new Set(of.map((name) => name?.toLowerCase() ?? ""))].sort();
}

describe("a bed's ribbon", () => {
  it("says of each of its days what the timeline says stood there", () => {
    let compared = 0;
    for (const bed of demo.beds.keys())
      for (const { rows, days } of ribbonsOf(bed))
        for (const { iso, standing } of days) {
          const named = new Set(standing.map((index) => rows[index]?.name.toLowerCase()));
          const known = namesIn(demo, bed, iso);
          expect(named.size, `${bed} on ${iso}: ${[...named].join()} against ${known.join()}`).toBe(known.length);
          for (const name of known.filter((one) =>
            [...demo.varieties.values()].some(({ title }) => title.toLowerCase() === one),
          ))
            expect(named.has(name), `${bed} on ${iso}: ${name}`).toBe(true);
          compared += 1;
        }
    expect(compared).toBeGreaterThan(300);
  });

  it("has a day for every day on which something changed, and no other", () => {
    for (const bed of ["long-bed", "cutting-patch", "herb-trough"]) {
      const told = ribbonsOf(bed).flatMap(({ days }) => days.map(({ iso }) => iso));
      const changed = changes(demo, bed, "", today)
        .filter(({ kind }) => kind !== "taken to be over")
        .map(({ day }) => day);
      expect(new Set(told), bed).toEqual(new Set(changed));
      expect(told.length, bed).toBe(new Set(told).size);
    }
  });

  it("draws a planting raised, in the bed, and picked, and says the same in words", () => {
    const [now] = ribbonsOf("long-bed");
    const beetroot = now?.rows.find(({ name }) => name === "Boltardy");
    expect(beetroot?.told).toBe("Sown on 7 March, planted on 18 April, picked from 20 June to 11 July.");
    // Twelfths: March is the third, April the fourth, June the sixth, July the seventh.
    const twelfth = (months: number, day: number, of: number) =>
      Math.round(((months + (day - 1) / of) / 12) * 1000) / 10;
    expect(beetroot?.bars.map(({ kind, at }) => [kind, at])).toEqual([
      ["raised", twelfth(2, 7, 31)],
      ["grown", twelfth(3, 18, 30)],
      ["picked", twelfth(5, 20, 30)],
    ]);
    const [raised, grown, picked] = beetroot?.bars ?? [];
    expect((raised?.at ?? 0) + (raised?.wide ?? 0)).toBeCloseTo(grown?.at ?? 0, 1);
    expect((grown?.at ?? 0) + (grown?.wide ?? 0)).toBeCloseTo(twelfth(6, 18, 31), 1);
    expect((picked?.at ?? 0) + (picked?.wide ?? 0)).toBeCloseTo(twelfth(6, 11, 31), 1);
  });

  it("keeps every bar within its season, wide enough to be seen", () => {
    for (const bed of demo.beds.keys())
      for (const { bars } of ribbonsOf(bed).flatMap(({ rows }) => rows))
        for (const { at, wide } of bars) {
          expect(at).toBeGreaterThanOrEqual(0);
          expect(at + wide).toBeLessThanOrEqual(100.05);
          expect(wide).toBeGreaterThanOrEqual(0.8);
        }
  });

  it("ends what was lost or cleared on its day", () => {
    const [, last] = ribbonsOf("bean-row");
    const leeks = last?.rows.find(({ name }) => name === "Musselburgh");
    expect(leeks?.told).toMatch(/^Sown on \d+ \w+, planted on \d+ \w+/u);
    const french = ribbonsOf("long-bed")[0]?.rows.find(({ name }) => name === "French Breakfast");
    expect(french?.told).toMatch(/, over on \d+ \w+\.$/u);
  });
});

describe("plants that were moved", () => {
  const leeks = { variety: "musselburgh" };
  const garden = grow({
    lines: [
      ["2026-03-07", "sowed", { ...leeks, nursery: true, count: 30 }],
      ["2026-04-18", "planted", { ...leeks, bed: "long-bed", count: 24 }],
      ["2026-06-12", "moved", { ...leeks, bed: "long-bed", toBed: "bean-row" }],
      ["2026-07-11", "picked", { ...leeks, bed: "bean-row", grams: 900 }],
    ],
  });
  const site = publicSite(garden, "2026-07-18", new Map());
  const rowIn = (bed: string) => site.bedPages.find(({ id }) => id === bed)?.ribbon?.rows[0];
  const at = (day: string) => seasonScale({ from: "2026-01-01", to: "2026-12-31" }).at(day);

  it("stand in the ribbon of each bed for as long as they were there, and say where they went", () => {
    expect(rowIn("long-bed")?.told).toBe("Sown on 7 March, planted on 18 April, moved to the bean row on 12 June.");
    expect(rowIn("long-bed")?.bars.map(({ kind, at: from }) => [kind, from])).toEqual([
      ["raised", at("2026-03-07")],
      ["grown", at("2026-04-18")],
    ]);
    expect(rowIn("bean-row")?.told).toBe(
      "Sown on 7 March, planted on 18 April, moved here from the long bed on 12 June, picked on 11 July.",
    );
    expect(rowIn("bean-row")?.bars.map(({ kind, at: from }) => [kind, from])).toEqual([
      ["grown", at("2026-06-12")],
      ["picked", at("2026-07-11")],
    ]);
  });

  it("are one lot in the strip of their variety", () => {
    const strip = site.varietyPages.find(({ id }) => id === "musselburgh")?.plate.years?.years[0];
    expect(strip?.rows).toBe(1);
    expect(strip?.bars.map(({ kind, from, width }) => [kind, Math.round(from), Math.round(width)])).toEqual([
      ["raised", 18, 12],
      ["grown", 29, 25],
      ["picked", 52, 0],
    ]);
    expect(strip?.told).toBe("Sown on 7 March, planted on 18 April, picked on 11 July.");
  });

  it("begin in the recap's calendar of a bed on the day they came", () => {
    const { calendar } = makeRecap(garden, noWeather, {
      season: seasonBeginning(2026, "01-01"),
      today: "2026-07-18",
    }).charts;
    expect(calendar.map(({ bed, from, stood, to }) => [bed, from, stood, to])).toEqual([
      ["bean-row", "2026-06-12", "2026-06-12", "2026-07-18"],
      ["long-bed", "2026-03-07", "2026-04-18", "2026-06-12"],
    ]);
  });
});

describe("the season's ribbon", () => {
  it("has a row for each bed in which something grew, and stands where the timeline says", () => {
    const ribbon = pages.recaps.find(({ id }) => id === "2026")?.ribbon;
    expect(ribbon?.rows.map(({ name }) => name)).toContain("Tunnel South");
    for (const { iso, standing } of ribbon?.days ?? []) {
      const named = standing.map((index) => ribbon?.rows[index]?.name).sort();
      const known = [...demo.beds.values()].filter(({ id }) => living(state(demo, id, iso)).length > 0);
      expect(named, iso).toEqual(known.map(({ title }) => title).sort());
    }
    expect(ribbon?.days.some(({ lines }) => lines.includes("Filmed: June tour, flat calm."))).toBe(true);
  });

  it("joins what overlaps, and pickings a few days apart", () => {
    expect(
      joined(
        [
          ["2026-06-20", "2026-06-20"],
          ["2026-05-01", "2026-05-01"],
          ["2026-06-27", "2026-06-27"],
          ["2026-08-01", "2026-08-02"],
        ],
        14,
      ),
    ).toEqual([
      ["2026-05-01", "2026-05-01"],
      ["2026-06-20", "2026-06-27"],
      ["2026-08-01", "2026-08-02"],
    ]);
  });

  it("is there for years with figures only, as pages and in what leads to them", () => {
    const years = pages.recaps.map(({ id }) => id);
    expect(years).toEqual(["2026", "2025", "2024"]);
    for (const { paragraph } of pages.recaps) expect(paragraph).not.toContain("nothing that was noted");
  });
});

describe("a season's months", () => {
  it("are twelve of one width, thirteen where it begins within a month", () => {
    const year = seasonScale(seasonBeginning(2026, "01-01"));
    expect(year.months).toHaveLength(12);
    expect([year.at("2026-01-01"), year.at("2026-07-01"), year.at("2026-12-31")]).toEqual([0, 50, 99.7]);
    const south = seasonScale(seasonBeginning(2025, "07-15"));
    expect([south.months.length, south.months[0], south.months.at(-1)]).toEqual([13, "2025-07-01", "2026-07-01"]);
    expect(south.at("2026-07-14")).toBeGreaterThan(south.at("2026-06-30"));
    // Days outside lie at the nearer end.
    expect([year.at("2025-11-03"), year.at("2027-02-01")]).toEqual([0, 100]);
  });
});

describe("the week's weather", () => {
  const week = (rain: number, but?: string): Weather => ({
    ...noWeather,
    days: new Map(
      Array.from({ length: 7 }, (_, index) => addDays("2026-07-11", index))
        .filter((day) => day !== but)
        .map((day) => [day, { tmin: 8.7 + daysBetween("2026-07-11", day), tmax: 20.4, rain: rain / 7 }]),
    ),
  });
  const said = (weather: Weather, units: "metric" | "us" = "metric") =>
    weekWeather(weather, "2026-07-17", units, siteWords.ribbon);

  it("is told in whole degrees and a word, so that no station can be known by it", () => {
    expect(said(week(0))).toBe("The week: 9 °C to 20 °C, dry.");
    expect(said(week(12))).toBe("The week: 9 °C to 20 °C, some rain.");
    expect(said(week(40))).toBe("The week: 9 °C to 20 °C, wet.");
    expect(said(week(0), "us")).toBe("The week: 48 °F to 68 °F, dry.");
  });

  it("is not told of a week that lacks a day", () => {
    expect(said(week(0, "2026-07-14"))).toBeUndefined();
    expect(said(noWeather)).toBeUndefined();
  });
});

describe("moving along a ribbon", () => {
  const places = [100, 130, 131, 400];

  it("means the nearest day under a hand, and the next one under a key", () => {
    expect(dayMeant(places, 3, 210, true)).toBe(2);
    expect(dayMeant(places, 3, 399, true)).toBe(3);
    expect(dayMeant(places, 3, 399, false)).toBe(2);
    expect(dayMeant(places, 2, 130, false)).toBe(1);
    expect(dayMeant(places, 0, 99, false)).toBe(0);
    expect(dayMeant(places, 0, 1000, false)).toBe(3);
  });

  it("shows the day's own photo, else the last before it, else the first after", () => {
    expect(photoFor([false, true, false, true], 1)).toBe(1);
    expect(photoFor([false, true, false, true], 2)).toBe(1);
    expect(photoFor([false, true, false, true], 0)).toBe(1);
    expect(photoFor([false, false], 1)).toBeUndefined();
  });
});

it("a ribbon tells nothing that a private line says", async () => {
  const garden = await readGarden(path.resolve("tests/gardens/two-walls"));
  const site = publicSite(publicGarden(garden), today, new Map());
  const south = site.bedPages.find(({ id }) => id === "south-wall");
  // The private note picked 900 g of it.
  expect(south?.ribbon?.rows.find(({ name }) => name === "Crown Prince")?.told).not.toContain("picked");
  const all = JSON.stringify([site.bedPages, site.recaps, site.episodePages]);
  for (const secret of [/thief/iu, /grandfather/iu, /quarrel/iu, /900 g/u, /flowerpot/u])
    expect(all).not.toMatch(secret);
});
