import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf, told, toldChanges } from "./small-garden.ts";

const ended = (lines: readonly Line[], bed = "long-bed", settings = {}) =>
  state(grow({ lines, settings }), bed, "2029-01-01").plantings.map((planting) => planting.ended);

describe("an annual", () => {
  test("ends when it is cleared", () => {
    expect(
      ended([
        ["2026-04-02", "sowed", { variety: "boltardy", bed: "long-bed" }],
        ["2026-09-10", "cleared", { variety: "boltardy", bed: "long-bed" }],
      ]),
    ).toEqual(["2026-09-10"]);
  });

  test("ends with its season when nothing says so, with a hint once the notes have gone on", () => {
    const lines: Line[] = [
      ["2025-05-24", "planted", { variety: "crown-prince", bed: "long-bed", count: 3, plantsFrom: "bought" }],
      ["2025-09-24", "picked", { variety: "crown-prince", bed: "long-bed", grams: 4000 }],
    ];
    const early = grow({ lines });
    expect(state(early, "long-bed", "2025-12-30").plantings[0]).toMatchObject({ stage: "picking", ended: undefined });
    expect(state(early, "long-bed", "2025-12-31").plantings[0]).toMatchObject({
      stage: "finished",
      ended: "2025-12-31",
    });
    expect(toldChanges(early, "long-bed", "2025-09-24", "2026-03-01").map(({ text }) => text)).toEqual([
      "The Crown Prince squash are taken to be over since 31 December; no note says when they were cleared.",
    ]);
    expect(early.problems).toEqual([]);
    const later = grow({
      lines: [...lines, ["2026-07-01", "did", { bed: "bean-row", verb: "weeded", what: "weeded" }]],
    });
    expect(told(later.problems)).toEqual([
      "timeline/never-cleared: No line says when the Crown Prince squash in Long Bed were cleared; they count as over from 31 December 2025.",
    ]);
    expect(later.problems[0]).toMatchObject({ file: "notes/2025-09-24.md", line: 2, severity: "hint" });
  });

  test("goes by the garden's own season", () => {
    const lines: Line[] = [["2025-11-24", "sowed", { variety: "french-breakfast", bed: "long-bed" }]];
    expect(ended(lines, "long-bed", { seasonStarts: "07-01" })).toEqual(["2026-06-30"]);
  });
});

// Common practice in temperate gardens: garlic and broad beans go in before winter and come out the next summer.
describe("crops that overwinter", () => {
  test.each([
    ["garlic planted in October", "solent", "planted", "2025-10-18", "2026-12-31"],
    ["garlic planted in February", "solent", "planted", "2026-02-18", "2026-12-31"],
    ["broad beans sown in November", "aquadulce", "sowed", "2025-11-08", "2026-12-31"],
    ["broad beans sown in March", "aquadulce", "sowed", "2026-03-08", "2026-12-31"],
    ["leeks planted in June", "musselburgh", "planted", "2025-06-30", "2026-05-31"],
    ["kale planted in June", "nero-di-toscana", "planted", "2025-06-30", "2026-05-31"],
    ["sweet peas sown in October", "matucana", "sowed", "2025-10-20", "2026-12-31"],
    ["lettuce sown in September", "little-gem", "sowed", "2025-09-10", "2026-12-31"],
    ["lettuce sown in May", "little-gem", "sowed", "2025-05-10", "2025-12-31"],
    ["radishes sown in September", "french-breakfast", "sowed", "2025-09-10", "2025-12-31"],
    ["courgettes planted in June", "black-beauty", "planted", "2025-06-10", "2025-12-31"],
  ] as const)("%s", (_name, variety, kind, day, end) => {
    expect(ended([[day, kind, { variety, bed: "long-bed", plantsFrom: "bought" }]])).toEqual([end]);
  });

  test("a kind that ripens in time ends with its season", () => {
    const garden = grow({
      varieties: { "little-gem": { maturity: { days: 50, from: "sowing" } } },
      lines: [["2025-09-05", "sowed", { variety: "little-gem", bed: "long-bed" }]],
    });
    expect(state(garden, "long-bed", "2026-06-01").plantings[0]?.ended).toBe("2025-12-31");
  });

  test("south of the equator garlic goes in in April", () => {
    const lines: Line[] = [["2026-04-20", "planted", { variety: "solent", bed: "long-bed" }]];
    expect(ended(lines, "long-bed", { seasonStarts: "07-01" })).toEqual(["2027-06-30"]);
  });
});

describe("a line of the next spring", () => {
  const summer: Line[] = [
    ["2025-06-10", "planted", { variety: "black-beauty", bed: "tunnel", count: 2, plantsFrom: "bought" }],
    ["2025-09-10", "trouble", { variety: "black-beauty", bed: "tunnel", cause: "mildew" }],
  ];

  test("shows that the planting still stood, and takes its end back", () => {
    const garden = grow({ lines: [...summer, ["2026-01-17", "cleared", { variety: "black-beauty", bed: "tunnel" }]] });
    expect(state(garden, "tunnel", "2026-01-10").plantings[0]?.ended).toBeUndefined();
    expect(state(garden, "tunnel", "2026-01-10").troubles[0]?.ended).toBeUndefined();
    expect(state(garden, "tunnel", "2026-02-10")).toMatchObject({
      plantings: [{ ended: "2026-01-17" }],
      troubles: [{ ended: "2026-01-17" }],
    });
    expect(garden.problems).toEqual([]);
  });

  test("does so once: it does not live through another year", () => {
    const garden = grow({
      lines: [
        ...summer,
        ["2026-02-01", "picked", { variety: "black-beauty", bed: "tunnel", grams: 200 }],
        ["2026-09-01", "picked", { variety: "black-beauty", bed: "tunnel", grams: 900 }],
      ],
    });
    const [old, next] = state(garden, "tunnel", "2026-10-01").plantings;
    expect(old).toMatchObject({ ended: "2026-05-31", picked: { grams: 200 } });
    expect(next).toMatchObject({ implied: true, picked: { grams: 900 } });
  });

  test("does not wake what was planted anew since", () => {
    const garden = grow({
      lines: [
        ...summer,
        ["2026-04-20", "planted", { variety: "black-beauty", bed: "tunnel", count: 2, plantsFrom: "bought" }],
        ["2026-05-20", "flowered", { variety: "black-beauty", bed: "tunnel", verb: "first flower" }],
      ],
    });
    expect(state(garden, "tunnel", "2026-06-01").plantings.map(({ ended, stage }) => [ended, stage])).toEqual([
      ["2025-12-31", "finished"],
      [undefined, "flowering"],
    ]);
  });
});

describe("a perennial", () => {
  const lines: Line[] = [
    ["2024-03-02", "planted", { variety: "victoria", bed: "long-bed", count: 1 }],
    ["2025-05-10", "picked", { variety: "victoria", bed: "long-bed", grams: 1600 }],
    ["2026-05-09", "picked", { variety: "victoria", bed: "long-bed", grams: 1800 }],
  ];

  test("goes on over the years as one planting", () => {
    const [planting, ...others] = state(grow({ lines }), "long-bed", "2026-06-01").plantings;
    expect(others).toEqual([]);
    expect(planting).toMatchObject({
      ended: undefined,
      perennial: true,
      planted: "2024-03-02",
      picked: { grams: 3400, times: 2, first: "2025-05-10", last: "2026-05-09" },
    });
  });

  test("begins each season anew", () => {
    const garden = grow({ lines });
    expect(state(garden, "long-bed", "2025-06-01").plantings[0]).toMatchObject({
      stage: "picking",
      stageSince: "2025-05-10",
    });
    expect(state(garden, "long-bed", "2026-01-01").plantings[0]).toMatchObject({
      stage: "growing",
      stageSince: "2026-01-01",
    });
    expect(state(garden, "long-bed", "2026-06-01").plantings[0]).toMatchObject({
      stage: "picking",
      stageSince: "2026-05-09",
    });
    expect(toldChanges(garden, "long-bed", "2025-12-31", "2026-01-01").map(({ text }) => text)).toEqual([
      "The Victoria rhubarb went into its third year.",
    ]);
  });

  test("can be one by its own variety, whatever its crop", () => {
    const garden = grow({
      varieties: { "nero-di-toscana": { perennial: true } },
      lines: [["2024-03-02", "planted", { variety: "nero-di-toscana", bed: "long-bed", plantsFrom: "given" }]],
    });
    expect(state(garden, "long-bed", "2027-01-01").plantings[0]?.ended).toBeUndefined();
  });

  test("ends when it is cleared or lost", () => {
    const lost = grow({
      lines: [...lines, ["2026-07-01", "lost", { variety: "victoria", count: 1, bed: "long-bed" }]],
    });
    expect(state(lost, "long-bed", "2026-07-01").plantings[0]).toMatchObject({ stage: "lost", ended: "2026-07-01" });
  });

  test("that was there before the notes is taken as it is, without a word", () => {
    const garden = grow({ lines: [["2026-05-09", "picked", { variety: "victoria", bed: "long-bed", grams: 900 }]] });
    expect(garden.problems).toEqual([]);
    expect(state(garden, "long-bed", "2026-05-09").plantings[0]).toMatchObject({
      implied: true,
      picked: { grams: 900 },
    });
    expect(
      garden.changes
        .get("long-bed")
        ?.slice(0, 2)
        .map(({ kind, text }) => [kind, text]),
    ).toEqual([
      ["new", "Victoria rhubarb was first noted here."],
      ["picked", "The Victoria rhubarb gave 900 g."],
    ]);
  });
});

test("a cleared bed keeps its perennials", () => {
  const garden = grow({
    lines: [
      ["2026-03-02", "planted", { variety: "victoria", bed: "long-bed" }],
      ["2026-04-02", "sowed", { variety: "boltardy", bed: "long-bed" }],
      ["2026-09-02", "cleared", { bed: "long-bed" }],
    ],
  });
  expect(state(garden, "long-bed", "2026-10-01").plantings.map(({ variety, ended }) => [variety, ended])).toEqual([
    ["victoria", undefined],
    ["boltardy", "2026-09-02"],
  ]);
  expect(rulesOf(garden.problems)).toEqual([]);
});
