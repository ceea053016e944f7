/** Sentences of the pages, read whole. */
import { describe, expect, it } from "vitest";
import type { GardenSettings, Planting } from "../../src/model.ts";
import { filmTime } from "../../src/site/page-data/film-time.ts";
import { sayPicked, sayPlanting } from "../../src/site/page-data/planting-words.ts";
import { sayGear, saySource, sourceLine, webAddress } from "../../src/site/page-data/sources.ts";
import { wordsIn } from "../../src/site/words/index.ts";

const settings: GardenSettings = {
  name: "Two Walls",
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

const words = wordsIn("en-GB");

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
  picked: { grams: 0, counts: {}, litres: 0, times: 0 },
  perennial: false,
  implied: false,
  firstEvent: "e1",
  lastEvent: "e1",
  lastNote: { file: "notes/2026-05-24.md", line: 1, column: 1 },
  private: false,
};

describe("a planting on a page", () => {
  const say = (changed: Partial<Planting>, on = "2026-07-18") => sayPlanting({ ...planting, ...changed }, settings, on);

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
        picked: { grams: 1400, counts: { fruit: 1 }, litres: 0, times: 2 },
      }),
    ).toBe(
      "Six plants, sown on 21 April and planted out on 24 May. Being picked since 8 July. 1.4 kg and one fruit picked so far. One lost.",
    );
  });

  it("counts one plant as one, and no seeds as plants", () => {
    expect(say({ count: { value: 1, approx: false } })).toBe("One plant, sown on 21 April and planted out on 24 May.");
    expect(say({ count: { value: 200, approx: true }, planted: undefined })).toBe("Sown on 21 April.");
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
    expect(say({ ...ended, picked: { grams: 12_000, counts: {}, litres: 0, times: 4 } }, "2025-10-03")).toBe(
      "Six plants, planted on 20 May. Finished on 3 October. 12 kg picked.",
    );
    expect(say({ ...ended, stage: "lost", lost: 6 }, "2025-10-03")).toBe(
      "Six plants, planted on 20 May. Lost on 3 October.",
    );
  });
});

describe("amounts", () => {
  it("keeps weights, volumes and pieces apart and gets the plurals right", () => {
    expect(sayPicked({ grams: 650, litres: 0, counts: {} }, settings)).toBe("650 g");
    expect(sayPicked({ grams: 0, litres: 0, counts: { stem: 40, bunch: 1 } }, settings)).toBe("40 stems and one bunch");
    expect(sayPicked({ grams: 0, litres: 0, counts: {} }, settings)).toBe("");
  });
});

describe("sources", () => {
  it("says what must be said, next to the name", () => {
    expect(saySource(words, { name: "Drift Lane Seeds", obtained: "bought", year: 2025 })).toBe(
      "Drift Lane Seeds, bought in 2025",
    );
    expect(saySource(words, { name: "own saved seed", obtained: "saved", year: 2025 })).toBe("own saved seed, 2025");
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
