import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line } from "./small-garden.ts";

const sown: Line = ["2026-04-02", "sowed", { variety: "boltardy", bed: "long-bed", count: 60 }];
const at = (lines: readonly Line[], on: string) => state(grow({ lines }), "long-bed", on).plantings[0];

describe("stages come from events only", () => {
  const life: Line[] = [
    ["2026-05-20", "sowed", { variety: "black-beauty", bed: "long-bed", count: 3 }],
    ["2026-05-29", "up", { variety: "black-beauty", bed: "long-bed" }],
    ["2026-06-10", "thinned", { variety: "black-beauty", bed: "long-bed", count: 1 }],
    ["2026-07-01", "flowered", { variety: "black-beauty", bed: "long-bed" }],
    ["2026-07-08", "fruited", { variety: "black-beauty", bed: "long-bed" }],
    ["2026-07-15", "picked", { variety: "black-beauty", bed: "long-bed", grams: 300 }],
    ["2026-10-01", "cleared", { variety: "black-beauty", bed: "long-bed" }],
  ];

  test.each([
    ["2026-05-21", "sown", "2026-05-20"],
    ["2026-05-29", "up", "2026-05-29"],
    ["2026-06-11", "growing", "2026-06-10"],
    ["2026-07-03", "flowering", "2026-07-01"],
    ["2026-07-09", "fruiting", "2026-07-08"],
    ["2026-08-01", "picking", "2026-07-15"],
    ["2026-10-01", "finished", "2026-10-01"],
  ])("on %s it is %s since %s", (on, stage, stageSince) => {
    expect(at(life, on)).toMatchObject({ stage, stageSince });
  });

  test("a plant that is picked and flowers again is still picked", () => {
    const lines: Line[] = [
      ...life.slice(0, 6),
      ["2026-08-01", "flowered", { variety: "black-beauty", bed: "long-bed" }],
    ];
    expect(at(lines, "2026-08-02")).toMatchObject({ stage: "picking", stageSince: "2026-07-15" });
  });

  test("time alone changes nothing", () => {
    expect(at([sown], "2026-11-30")).toMatchObject({ stage: "sown", stageSince: "2026-04-02" });
  });
});

describe("thinning", () => {
  test("counts what is left, and what was taken out", () => {
    const lines: Line[] = [
      sown,
      ["2026-05-14", "thinned", { variety: "boltardy", bed: "long-bed", count: 20, spacingCm: 10 }],
    ];
    expect(at(lines, "2026-05-14")).toMatchObject({
      count: { value: 20 },
      thinnedOut: 40,
      began: { value: 60 },
      spacingCm: 10,
    });
  });

  test("to one a station numbers places, not plants", () => {
    const lines: Line[] = [
      sown,
      [
        "2026-05-14",
        "thinned",
        { variety: "boltardy", bed: "long-bed", count: 1, text: "thinned Boltardy to one a station" },
      ],
    ];
    expect(at(lines, "2026-05-14")).toMatchObject({ count: { value: 60 }, thinnedOut: 0, stage: "growing" });
  });
});

describe("heights", () => {
  test("are the last one measured", () => {
    const lines: Line[] = [
      sown,
      ["2026-06-01", "measured", { variety: "boltardy", heightCm: 9 }],
      ["2026-06-15", "measured", { variety: "boltardy", heightCm: 21 }],
    ];
    expect(at(lines, "2026-06-10")).toMatchObject({ heightCm: 9, heightOn: "2026-06-01" });
    expect(at(lines, "2026-06-20")).toMatchObject({ heightCm: 21, heightOn: "2026-06-15" });
  });

  test("a temperature is of the bed, and begins no planting", () => {
    const garden = grow({
      lines: [["2026-03-28", "measured", { bed: "long-bed", celsius: 9, verb: "soil temperature" }]],
    });
    expect(state(garden, "long-bed", "2026-03-28").plantings).toEqual([]);
    expect(garden.changes.get("long-bed")?.map(({ text }) => text)).toEqual(["The soil was at 9 °C."]);
  });
});
