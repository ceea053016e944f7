import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf } from "./small-garden.ts";

const planted = (variety: string, count?: number, bed = "long-bed"): Line => [
  "2026-05-20",
  "planted",
  { variety, bed, plantsFrom: "bought", ...(count === undefined ? {} : { count }) },
];
const pickedOf = (lines: readonly Line[], bed = "long-bed") =>
  state(grow({ lines }), bed, "2026-12-01").plantings.map(({ picked }) => picked);

describe("picked totals", () => {
  test("keep weights, pieces and volumes apart", () => {
    expect(
      pickedOf([
        planted("matucana", 12),
        ["2026-06-20", "picked", { variety: "matucana", count: 12, unit: "stem", verb: "cut" }],
        ["2026-06-27", "picked", { variety: "matucana", count: 3, unit: "bunch", verb: "cut" }],
        ["2026-06-29", "picked", { variety: "matucana", count: 8 }],
        ["2026-07-04", "picked", { variety: "matucana", grams: 250 }],
        ["2026-07-05", "picked", { variety: "matucana", litres: 1.5 }],
        ["2026-07-06", "picked", { variety: "matucana" }],
      ]),
    ).toEqual([
      {
        grams: 250,
        counts: { stem: 20, bunch: 3 },
        weighed: {},
        weightAlone: true,
        litres: 1.5,
        times: 6,
        first: "2026-06-20",
        last: "2026-07-06",
      },
    ]);
  });

  test("add up without the dust of binary fractions", () => {
    const line = (day: string): Line => [day, "picked", { variety: "black-beauty", grams: 0.1 }];
    expect(
      pickedOf([planted("black-beauty"), line("2026-07-01"), line("2026-07-02"), line("2026-07-03")])[0]?.grams,
    ).toBe(0.3);
  });

  test("count the lower end of a range", () => {
    const range = { value: 8, upTo: 10, approx: true };
    expect(
      pickedOf([planted("matucana"), ["2026-07-01", "picked", { variety: "matucana", count: range, unit: "stem" }]])[0]
        ?.counts,
    ).toEqual({
      stem: 8,
    });
  });

  test("of a crop with several plantings are counted for the bed and for none of them", () => {
    const garden = grow({
      lines: [
        planted("ailsa-craig", 3, "tunnel"),
        planted("gardeners-delight", 3, "tunnel"),
        ["2026-07-20", "picked", { crop: "tomato", bed: "tunnel", grams: 2000 }],
        ["2026-07-27", "picked", { crop: "tomato", bed: "tunnel", grams: 1500 }],
      ],
    });
    expect(state(garden, "tunnel", "2026-08-01")).toMatchObject({
      plantings: [{ picked: { grams: 0 } }, { picked: { grams: 0 } }],
      unassigned: [{ crop: "tomato", picked: { grams: 3500, times: 2 } }],
    });
    expect(rulesOf(garden.problems)).toEqual(["timeline/picked-of-several", "timeline/picked-of-several"]);
  });

  test("of a crop with one planting are that planting's", () => {
    const lines: Line[] = [
      planted("ailsa-craig", 3, "tunnel"),
      ["2026-07-20", "picked", { crop: "tomato", bed: "tunnel", grams: 2000 }],
    ];
    expect(pickedOf(lines, "tunnel")[0]?.grams).toBe(2000);
  });

  test("stay with their change", () => {
    const garden = grow({
      lines: [planted("black-beauty"), ["2026-07-01", "picked", { variety: "black-beauty", count: 5, grams: 900 }]],
    });
    expect(garden.changes.get("long-bed")?.at(1)?.harvest).toEqual({
      grams: 900,
      litres: undefined,
      count: { value: 5, approx: false },
      unit: "fruit",
    });
  });
});

describe("crops that are taken whole", () => {
  test("are fewer after a picking, and finished after the last", () => {
    const garden = grow({
      lines: [
        planted("musselburgh", 12),
        ["2026-10-01", "picked", { variety: "musselburgh", count: 5, verb: "lifted" }],
        ["2026-11-01", "picked", { variety: "musselburgh", count: 7, verb: "dug" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-10-01").plantings[0]).toMatchObject({
      count: { value: 7 },
      pickedWhole: 5,
      stage: "picking",
    });
    expect(state(garden, "long-bed", "2026-11-01").plantings[0]).toMatchObject({
      count: { value: 0 },
      pickedWhole: 12,
      stage: "finished",
      ended: "2026-11-01",
    });
  });

  test.each([
    [
      "scapes are cut from garlic that stays",
      "solent",
      { count: 20, unit: "piece", verb: "cut", text: "cut 20 pieces, the scapes" },
    ],
    ["leaves are picked from lettuce that stays", "little-gem", { count: 20, text: "picked 20 leaves" }],
    ["bunches say nothing about plants", "musselburgh", { count: 2, unit: "bunch", text: "picked 2 bunches" }],
    ["weights say nothing about plants", "musselburgh", { grams: 900, text: "picked 900 g" }],
  ] as const)("%s", (_name, variety, said) => {
    const garden = grow({ lines: [planted(variety, 20), ["2026-06-20", "picked", { variety, ...said }]] });
    expect(state(garden, "long-bed", "2026-06-20").plantings[0]).toMatchObject({
      count: { value: 20 },
      pickedWhole: 0,
      ended: undefined,
    });
  });

  test("of a sowing that was never thinned, seeds are not plants", () => {
    const garden = grow({
      lines: [
        ["2026-04-02", "sowed", { variety: "boltardy", bed: "long-bed", count: 60 }],
        ["2026-07-02", "picked", { variety: "boltardy", bed: "long-bed", count: 60, unit: "root" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-07-02").plantings[0]).toMatchObject({
      count: { value: 60 },
      ended: undefined,
    });
  });

  test("fruit is picked from plants that stay", () => {
    const garden = grow({
      lines: [planted("black-beauty", 2), ["2026-07-01", "picked", { variety: "black-beauty", count: 2 }]],
    });
    expect(state(garden, "long-bed", "2026-07-01").plantings[0]).toMatchObject({
      count: { value: 2 },
      ended: undefined,
    });
  });
});

describe("what is lifted in part", () => {
  const left = (variety: string, picked: Line[2]) =>
    state(
      grow({ lines: [planted(variety, 40), ["2026-07-10", "picked", { variety, ...picked }]] }),
      "long-bed",
      "2026-07-20",
    ).plantings[0]?.count?.value;

  test("leaves a number of bulbs nobody knows", () => {
    expect(left("solent", {})).toBeUndefined();
    expect(left("solent", { grams: 900 })).toBeUndefined();
  });

  test("and a known one where it was counted, or where they are taken one by one", () => {
    expect(left("solent", { count: 10 })).toBe(30);
    expect(left("musselburgh", { grams: 900 })).toBe(40);
  });
});
