/** Days of two gardens that were worked out by hand and came out wrong once. */
import { describe, expect, test } from "vitest";
import { changes, state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf, told } from "./small-garden.ts";

// Nobody counted the seed; sixty plants were left, and all sixty were pulled.
test("a sowing nobody counted, thinned to 60 and picked to the last of them, is over", () => {
  const lines: Line[] = [
    ["2026-04-02", "sowed", { variety: "boltardy", bed: "long-bed" }],
    ["2026-05-10", "thinned", { variety: "boltardy", bed: "long-bed", count: 60, text: "thinned to 60" }],
    ["2026-07-10", "picked", { variety: "boltardy", bed: "long-bed", count: 25, unit: "root", verb: "pulled" }],
    ["2026-08-10", "picked", { variety: "boltardy", bed: "long-bed", count: 35, unit: "root", verb: "pulled" }],
  ];
  expect(state(grow({ lines }), "long-bed", "2026-07-10").plantings).toMatchObject([
    { count: { value: 35 }, pickedWhole: 25, ended: undefined },
  ]);
  expect(state(grow({ lines }), "long-bed", "2026-08-10").plantings).toMatchObject([
    { count: { value: 0 }, pickedWhole: 60, ended: "2026-08-10", stage: "finished" },
  ]);
});

// 30 sown indoors, 24 planted, two of them broken on the way: 22 stand, six wait.
describe("a loss on the day of planting", () => {
  const sown: Line = ["2026-03-12", "sowed", { variety: "musselburgh", nursery: true, count: 30 }];
  const planted: Line = ["2026-05-30", "planted", { variety: "musselburgh", bed: "long-bed", count: 24 }];
  const lost = (bed?: string): Line => ["2026-05-30", "lost", { variety: "musselburgh", bed, count: 2, cause: "wind" }];

  test.each([
    ["with its bed", "long-bed"],
    ["without a word of the bed", undefined],
  ])("below it %s is of the plants planted", (_said, bed) => {
    const garden = grow({ lines: [sown, planted, lost(bed)] });
    expect(state(garden, "long-bed", "2026-05-30").plantings).toMatchObject([{ count: { value: 22 }, lost: 2 }]);
    expect(garden.nurseryLots).toMatchObject([{ left: 6 }]);
    expect(garden.problems).toEqual([]);
  });

  test("above it is of the seedlings", () => {
    const garden = grow({ lines: [sown, lost(), planted] });
    expect(state(garden, "long-bed", "2026-05-30").plantings).toMatchObject([{ count: { value: 24 }, lost: 0 }]);
    expect(garden.nurseryLots).toMatchObject([{ left: 4 }]);
  });

  test("in the bed the plants moved to that day is of those", () => {
    const garden = grow({
      lines: [
        sown,
        planted,
        ["2026-06-20", "moved", { variety: "musselburgh", bed: "long-bed", toBed: "bean-row", count: 5 }],
        ["2026-06-20", "lost", { variety: "musselburgh", bed: "bean-row", count: 1 }],
      ],
    });
    expect(state(garden, "bean-row", "2026-06-20").plantings).toMatchObject([{ count: { value: 4 }, lost: 1 }]);
    expect(state(garden, "long-bed", "2026-06-20").plantings).toMatchObject([{ count: { value: 19 }, lost: 0 }]);
  });
});

describe("transplanted from one bed to another", () => {
  const move: Line = [
    "2026-06-20",
    "moved",
    { variety: "musselburgh", bed: "tunnel", toBed: "long-bed", count: 12, verb: "transplanted" },
  ];

  test("moves the plants that stood there", () => {
    const garden = grow({
      lines: [
        ["2026-05-30", "planted", { variety: "musselburgh", bed: "tunnel", count: 20, plantsFrom: "bought" }],
        move,
      ],
    });
    expect(state(garden, "tunnel", "2026-06-20").plantings).toMatchObject([{ count: { value: 8 }, movedOut: 12 }]);
    expect(state(garden, "long-bed", "2026-06-20").plantings).toMatchObject([{ count: { value: 12 } }]);
    expect(garden.problems).toEqual([]);
  });

  test("plants out the seedlings that stood there in trays", () => {
    const garden = grow({
      lines: [["2026-03-12", "sowed", { variety: "musselburgh", bed: "tunnel", nursery: true, count: 30 }], move],
    });
    expect(garden.nurseryLots).toMatchObject([{ left: 18 }]);
    expect(state(garden, "long-bed", "2026-06-20").plantings).toMatchObject([
      { count: { value: 12 }, sown: "2026-03-12", planted: "2026-06-20" },
    ]);
    expect(garden.problems).toEqual([]);
  });
});

describe("plants that no table knows", () => {
  const clematis = { "jackmanii-superba": { title: "Jackmanii Superba", crop: undefined } };
  const planted: Line = [
    "2024-04-10",
    "planted",
    { variety: "jackmanii-superba", bed: "long-bed", count: 6, plantsFrom: "bought" },
  ];
  const later = (day: string): Line => [day, "did", { bed: "bean-row", verb: "weeded", what: "weeded" }];

  test("are not over when the year is, and the person is asked once", () => {
    const garden = grow({ varieties: clematis, lines: [planted, later("2026-03-01")] });
    expect(state(garden, "long-bed", "2026-03-01").plantings).toMatchObject([
      { ended: undefined, count: { value: 6 }, stage: "growing" },
    ]);
    expect(changes(garden, "long-bed", "2024-04-10", "2027-01-01")).toEqual([]);
    expect(told(garden.problems)).toEqual([
      "timeline/annual-or-perennial: Nothing says whether the Jackmanii Superba in Long Bed stands for years or for one season; it counts as alive.",
    ]);
    expect(garden.problems[0]?.fix).toBe(
      'Write "perennial: true" or "perennial: false" in varieties/jackmanii-superba.md, or a line with the day it was cleared.',
    );
  });

  test("are asked about only once a season has turned", () => {
    expect(grow({ varieties: clematis, lines: [planted, later("2024-12-01")] }).problems).toEqual([]);
  });

  test("are not asked about once they came back, were cleared, or their file says it", () => {
    const back: Line = ["2025-04-10", "came back", { variety: "jackmanii-superba", bed: "long-bed" }];
    expect(rulesOf(grow({ varieties: clematis, lines: [planted, back, later("2026-03-01")] }).problems)).toEqual([]);
    const cleared: Line = ["2025-04-10", "cleared", { variety: "jackmanii-superba", bed: "long-bed" }];
    expect(rulesOf(grow({ varieties: clematis, lines: [planted, cleared] }).problems)).toEqual([]);
    for (const perennial of [true, false]) {
      const said = { "jackmanii-superba": { ...clematis["jackmanii-superba"], perennial } };
      const garden = grow({ varieties: said, lines: [planted, later("2025-03-01")] });
      expect(rulesOf(garden.problems)).not.toContain("timeline/annual-or-perennial");
      expect(state(garden, "long-bed", "2025-03-01").plantings[0]?.ended).toBe(perennial ? undefined : "2024-12-31");
    }
  });

  test("a perennial grown for one season is one when its file says so", () => {
    const garden = grow({
      varieties: { victoria: { perennial: false } },
      lines: [["2024-04-10", "planted", { variety: "victoria", bed: "long-bed" }]],
    });
    expect(state(garden, "long-bed", "2025-01-01").plantings).toMatchObject([
      { ended: "2024-12-31", perennial: false, takenToBeOver: true },
    ]);
  });
});

test.each(["olive", "hazelnut", "clematis", "raspberry", "apple", "hydrangea"])("%s stands for years", (crop) => {
  const garden = grow({ lines: [["2024-04-10", "planted", { crop, bed: "long-bed", count: 6 }]] });
  expect(state(garden, "long-bed", "2027-02-01").plantings).toMatchObject([
    { ended: undefined, perennial: true, count: { value: 6 } },
  ]);
  expect(garden.problems).toEqual([]);
});
