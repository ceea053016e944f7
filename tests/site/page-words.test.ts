/** Sentences of the pages, read whole. */
import { describe, expect, it } from "vitest";
import { pickedAmount, sayPicked } from "../../src/language/index.ts";
import type { GardenSettings, Planting } from "../../src/model.ts";
import { filmTime } from "../../src/site/page-data/film-time.ts";
import { sayPlanting } from "../../src/site/page-data/planting-words.ts";
import { sayGear, saySource, sourceLine, webAddress } from "../../src/site/page-data/sources.ts";
import { siteWords } from "../../src/site/words/index.ts";
import { grow } from "../timeline/small-garden.ts";

const settings: GardenSettings = {
  name: "Two Walls",
  southern: false,
  timeZone: "Europe/London",
  units: "metric",
  language: "en-GB",
  seasonStarts: "01-01",
  narrationRate: 130,
  photoGapDays: 14,
  kit: [],
  weights: {},
  base: "/",
  body: "",
};

const words = siteWords;
const garden = grow({ lines: [], settings });

const planting: Planting = {
  id: "south-wall/crown-prince/2026-05-24",
  bed: "south-wall",
  variety: "crown-prince",
  since: "2026-05-24",
  count: { value: 6, approx: false },
  began: { value: 6, approx: false },
  lost: 0,
  givenAway: 0,
  movedOut: 0,
  thinnedOut: 0,
  pickedWhole: 0,
  sown: "2026-04-21",
  planted: "2026-05-24",
  stage: "growing",
  stageSince: "2026-05-24",
  picked: { grams: 0, counts: {}, weighed: {}, weightAlone: false, litres: 0, times: 0 },
  perennial: false,
  implied: false,
  firstEvent: "e1",
  lastEvent: "e1",
  lastNote: { file: "notes/2026-05-24.md", line: 1, column: 1 },
  private: false,
};

const notWeighed = { weighed: {}, weightAlone: false };

describe("a planting on a page", () => {
  const say = (changed: Partial<Planting>, on = "2026-07-18") => sayPlanting(garden, { ...planting, ...changed }, on);

  it("tells pieces that were weighed once, as a weight, or with it where all were counted", () => {
    const picked = { grams: 4800, litres: 0, counts: { piece: 6 }, weighed: { piece: 6 }, weightAlone: true };
    expect(sayPicked(picked, settings)).toBe("4.8 kg");
    expect(sayPicked({ ...picked, counts: { piece: 8 } }, settings)).toBe("4.8 kg and two pieces");
    expect(sayPicked({ ...picked, counts: { bulb: 28 }, weighed: { bulb: 28 }, weightAlone: false }, settings)).toBe(
      "28 bulbs, 4.8 kg",
    );
  });

  it("says how many, since when, how it stands and what it gave", () => {
    expect(say({})).toBe("Six plants, sown on 21 April and planted out on 24 May.");
    expect(
      say({ stage: "flowering", stageSince: "2026-07-02", spot: "row 2", heightCm: 42, heightOn: "2026-07-10" }),
    ).toBe(
      "Six plants in row 2, sown on 21 April and planted out on 24 May. In flower since 2 July. Measured 42 cm on 10 July.",
    );
    expect(
      say({
        stage: "picking",
        stageSince: "2026-07-08",
        lost: 1,
        picked: {
          grams: 1400,
          counts: { fruit: 1 },
          weighed: {},
          weightAlone: false,
          litres: 0,
          times: 2,
          last: "2026-07-16",
        },
      }),
    ).toBe(
      "Six plants, sown on 21 April and planted out on 24 May. Being picked since 8 July. 1.4 kg and one fruit picked so far. One lost.",
    );
  });

  it("is not being picked weeks after its last picking", () => {
    const picked = { grams: 900, counts: {}, weighed: {}, weightAlone: true, litres: 0, times: 4, last: "2026-06-20" };
    expect(say({ stage: "picking", stageSince: "2026-05-01", picked })).toBe(
      "Six plants, sown on 21 April and planted out on 24 May. Last picked on 20 June. 900 g picked so far.",
    );
  });

  it("came as plants only where it did", () => {
    const bought = { plantsFrom: "bought", sown: undefined, planted: "2026-05-24" } as const;
    expect(say({ ...bought, crop: "tomato" })).toMatch(/^Six plants, bought as plants and planted/);
    expect(say({ ...bought, crop: "garlic" })).toMatch(/^Six plants, bought and planted on 24 May/);
  });

  it("counts one plant as one, and no seeds as plants", () => {
    expect(say({ count: { value: 1, approx: false } })).toBe("One plant, sown on 21 April and planted out on 24 May.");
    expect(say({ count: { value: 200, approx: true }, planted: undefined, seeds: true })).toBe("Sown on 21 April.");
    expect(say({ count: { value: 10, approx: false }, planted: undefined, thinnedOut: 30 })).toBe(
      "Ten plants, sown on 21 April.",
    );
  });

  it("says only what the notes know", () => {
    expect(say({ count: undefined, sown: undefined })).toBe("Planted on 24 May.");
    expect(say({ count: undefined, sown: undefined, planted: undefined, implied: true })).toBe(
      "First noted on 24 May.",
    );
    expect(say({ sown: undefined, plantsFrom: "bought" })).toBe("Six plants, bought as plants and planted on 24 May.");
    expect(say({ perennial: true, since: "2024-05-01", count: undefined })).toBe("In its third year here.");
  });

  it("tells an ended planting from its end", () => {
    const ended = {
      ended: "2025-10-03",
      stage: "finished",
      stageSince: "2025-10-03",
      sown: undefined,
      planted: "2025-05-20",
      since: "2025-05-20",
    } as const;
    expect(
      say(
        { ...ended, picked: { grams: 12_000, counts: {}, weighed: {}, weightAlone: false, litres: 0, times: 4 } },
        "2025-10-03",
      ),
    ).toBe("Six plants, planted on 20 May. Finished on 3 October. 12 kg picked.");
    expect(say({ ...ended, stage: "lost", lost: 6 }, "2025-10-03")).toBe(
      "Six plants, planted on 20 May. Lost on 3 October.",
    );
  });

  it("says what is only assumed, and what nobody sowed", () => {
    const over = {
      ...planting,
      sown: undefined,
      stage: "finished",
      stageSince: "2026-12-31",
      ended: "2026-12-31",
    } as const;
    expect(sayPlanting(garden, { ...over, takenToBeOver: true }, "2026-12-31")).toBe(
      "Six plants, planted on 24 May. Taken to be over since 31 December.",
    );
    const wild = { ...planting, sown: undefined, planted: undefined, stage: "up", selfSown: true } as const;
    expect(sayPlanting(garden, wild, "2026-06-01")).toBe(
      "Six plants, self-sown, first noted on 24 May. Up since 24 May.",
    );
    const given = { ...planting, sown: undefined, plantsFrom: "given", from: "a neighbour" } as const;
    expect(sayPlanting(garden, given, "2026-06-01")).toBe(
      "Six plants, given as plants from a neighbour and planted on 24 May.",
    );
  });
});

describe("amounts", () => {
  it("keeps weights, volumes and pieces apart and gets the plurals right", () => {
    expect(sayPicked({ grams: 650, litres: 0, counts: {}, ...notWeighed }, settings)).toBe("650 g");
    expect(sayPicked({ grams: 0, litres: 0, counts: { stem: 40, bunch: 1 }, ...notWeighed }, settings)).toBe(
      "40 stems and one bunch",
    );
    expect(sayPicked({ grams: 0, litres: 0, counts: {}, ...notWeighed }, settings)).toBeUndefined();
  });
});

/** 1 lb = 453.592 37 g and 1 US liquid quart = 0.946 352 946 L: NIST Special Publication 811 (2008), appendix B.8. */
describe("amounts in both measures", () => {
  const american: GardenSettings = { ...settings, language: "en-US", units: "us" };

  it("lead with the garden's own and set the other beside it, where there is another", () => {
    const picked = { grams: 4535.9237, litres: 0, counts: { bunch: 3 }, ...notWeighed };
    expect(pickedAmount(picked, settings)).toEqual({ text: "4.54 kg and three bunches", other: "10 lb" });
    expect(pickedAmount(picked, american)).toEqual({ text: "10 lb and three bunches", other: "4.54 kg" });
    expect(pickedAmount({ grams: 0, litres: 1.892705892, counts: {}, ...notWeighed }, settings).other).toBe("2 quarts");
    expect(pickedAmount({ grams: 0, litres: 0, counts: { stem: 4 }, ...notWeighed }, settings).other).toBeUndefined();
  });
});

describe("sources", () => {
  it("says what must be said, next to the name", () => {
    expect(saySource(words, { name: "Drift Lane Seeds", obtained: "bought", year: 2025 })).toBe(
      "Drift Lane Seeds, bought in 2025",
    );
    expect(saySource(words, { name: "own saved seed", obtained: "saved", year: 2025 })).toBe("own saved seed, 2025");
    expect(saySource(words, { name: "own seed", obtained: "saved" })).toBe("own seed");
    expect(saySource(words, undefined)).toBe("Source not recorded");
    for (const obtained of ["gifted", "lent", "paid promotion", "commission link", "own product"] as const) {
      expect(sourceLine(words, { name: "Tidewater Cloth", obtained })).toMatchObject({ mustSay: true });
      expect(sourceLine(words, { name: "Tidewater Cloth", obtained })?.disclosure).not.toBe("");
    }
  });

  it("says it beside gear too", () => {
    expect(sayGear(words, { title: "Fine netting", obtained: "gifted", from: "Tidewater Cloth" })).toBe(
      "Fine netting (given free by Tidewater Cloth)",
    );
    expect(sayGear(words, { title: "Hazel arch", obtained: "bought" })).toBe("Hazel arch");
  });

  it("links only to the web", () => {
    expect(webAddress("https://driftlane.example/a b")).toBe("https://driftlane.example/a%20b");
    for (const link of ["javascript:alert(1)", "data:text/html,x", "driftlane.example", "file:///etc/passwd"])
      expect(webAddress(link)).toBeUndefined();
  });
});

describe("times in a film", () => {
  it("reads as players show them", () => {
    expect([0, 65, 400, 3725].map(filmTime)).toEqual(["0:00", "1:05", "6:40", "1:02:05"]);
  });
});

it("has a word wherever the catalogue has a place for one", () => {
  const leaves = (of: unknown, path: string): readonly (readonly [string, unknown])[] =>
    typeof of === "object" && of !== null
      ? Object.entries(of).flatMap(([key, value]) => leaves(value, `${path}.${key}`))
      : [[path, of]];
  const all = leaves(words, "");
  expect(all.length).toBeGreaterThan(250);
  for (const [place, value] of all) expect(value, place).not.toBe("");
});
