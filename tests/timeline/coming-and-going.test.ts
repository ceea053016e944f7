/** What came, came up by itself, came back, is doing well, was put up, sold or planned, in small gardens. */
import { describe, expect, test } from "vitest";
import { growGarden, state } from "../../src/timeline/index.ts";
import { grow, type Line, recordsOf, rulesOf, told, toldChanges } from "./small-garden.ts";

const toldOf = (lines: readonly Line[], bed = "long-bed") =>
  toldChanges(growGarden(recordsOf({ lines }), []), bed, "", "2027-12-31").map(({ kind, text }) => [kind, text]);

describe("acquired", () => {
  const came: Line = [
    "2026-05-01",
    "acquired",
    { variety: "ailsa-craig", count: 6, from: "a neighbour", plantsFrom: "given", price: "£4", text: "…" },
  ];

  test("is told of the bed it names, and of none when it names none", () => {
    expect(toldOf([came])).toEqual([]);
    const [day, kind, said] = came;
    expect(toldOf([[day, kind, { ...said, bed: "long-bed" }]])).toEqual([
      ["acquired", "Six Ailsa Craig tomatoes were given to the garden by a neighbour."],
    ]);
    expect(toldOf([[day, kind, { what: "a cold frame lid", from: "next door", bed: "long-bed" }]])).toEqual([
      ["acquired", "A cold frame lid came from next door."],
    ]);
  });

  test("plants that are set out are known to have come from there, and no sowing is missed", () => {
    const garden = grow({
      lines: [came, ["2026-05-20", "planted", { variety: "ailsa-craig", bed: "long-bed", count: 4 }]],
    });
    expect(state(garden, "long-bed", "2026-05-20").plantings).toMatchObject([
      { plantsFrom: "given", from: "a neighbour", count: { value: 4 } },
    ]);
    expect(garden.changes.get("long-bed")?.[0]?.text).toBe(
      "Four Ailsa Craig tomatoes went in, a gift from a neighbour.",
    );
    expect(garden.problems).toEqual([]);
  });

  test("not when there were fewer, when two lots came, or when some were raised here", () => {
    const planted = (count: number): Line => [
      "2026-05-20",
      "planted",
      { variety: "ailsa-craig", bed: "long-bed", count },
    ];
    const sourceOf = (lines: readonly Line[]) =>
      state(grow({ lines }), "long-bed", "2026-06-01").plantings.map(({ plantsFrom, from }) => [plantsFrom, from]);
    expect(sourceOf([came, planted(8)])).toEqual([[undefined, undefined]]);
    expect(sourceOf([came, ["2026-05-02", "acquired", { variety: "ailsa-craig", count: 6 }], planted(4)])).toEqual([
      [undefined, undefined],
    ]);
    const sown: Line = ["2026-03-01", "sowed", { variety: "ailsa-craig", nursery: true, count: 12 }];
    expect(sourceOf([sown, came, planted(4)])).toEqual([[undefined, undefined]]);
    const packet: Line = ["2026-03-01", "acquired", { variety: "ailsa-craig", from: "the swap", text: "1 packet" }];
    expect(sourceOf([packet, planted(4)])).toEqual([[undefined, undefined]]);
  });

  test("for nine months, and then nobody remembers where they came from", () => {
    const [, kind, said] = came;
    const setOut = (on: string) => {
      const garden = grow({
        lines: [
          ["2026-01-05", kind, { ...said }],
          [on, "planted", { variety: "ailsa-craig", bed: "long-bed", count: 4 }],
        ],
      });
      const [planting] = state(garden, "long-bed", on).plantings;
      return [planting?.from, garden.problems.map(({ rule }) => rule)];
    };
    expect(setOut("2026-10-02")).toEqual(["a neighbour", []]);
    expect(setOut("2026-10-03")).toEqual([undefined, ["timeline/no-sowing"]]);
  });

  test("of a kind whose crop nobody knows as well", () => {
    const mystery: Line = ["2026-05-01", "acquired", { variety: "mystery", count: 6, from: "a neighbour" }];
    const garden = grow({
      lines: [mystery, ["2026-05-20", "planted", { variety: "mystery", bed: "long-bed", count: 4 }]],
    });
    expect(state(garden, "long-bed", "2026-05-20").plantings).toMatchObject([{ from: "a neighbour" }]);
  });

  test("what was paid stands in no sentence", () => {
    const [day, kind, said] = came;
    const lines: Line[] = [
      [day, kind, { ...said, bed: "long-bed" }],
      ["2026-05-20", "planted", { variety: "ailsa-craig", bed: "long-bed", count: 4 }],
      ["2026-08-20", "sold", { variety: "ailsa-craig", bed: "long-bed", grams: 2000, price: "£3 a kilo" }],
    ];
    expect(JSON.stringify(toldOf(lines))).not.toMatch("£");
  });
});

describe("volunteer", () => {
  const lines: Line[] = [["2026-05-01", "volunteer", { crop: "tomato", count: 3, bed: "long-bed", spot: "the path" }]];

  test("begins a planting that is up and that nobody sowed", () => {
    const garden = grow({ lines });
    expect(state(garden, "long-bed", "2026-05-01").plantings).toMatchObject([
      { selfSown: true, stage: "up", count: { value: 3 }, sown: undefined, planted: undefined, implied: false },
    ]);
    expect(toldOf(lines)).toEqual([
      ["up", "Three self-sown tomatoes came up, in the path."],
      ["taken to be over", "The tomatoes are taken to be over since 31 December; no note says when they were cleared."],
    ]);
    expect(garden.problems).toEqual([]);
  });

  test("is picked and lost like any other", () => {
    const garden = grow({
      lines: [
        ...lines,
        ["2026-06-01", "lost", { crop: "tomato", count: 1, bed: "long-bed" }],
        ["2026-08-01", "picked", { crop: "tomato", grams: 500, bed: "long-bed" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-08-01").plantings).toMatchObject([
      { count: { value: 2 }, lost: 1, picked: { grams: 500 }, stage: "picking" },
    ]);
  });

  test("said again of plants nobody counted is the same planting", () => {
    const again: Line[] = [
      ["2026-05-01", "volunteer", { crop: "dill", bed: "long-bed" }],
      ["2026-05-09", "volunteer", { crop: "dill", bed: "long-bed" }],
    ];
    expect(state(grow({ lines: again }), "long-bed", "2026-06-01").plantings).toHaveLength(1);
  });

  test("without a bed is asked about", () => {
    expect(told(grow({ lines: [["2026-05-01", "volunteer", { crop: "tomato", count: 1 }]] }).problems)).toEqual([
      "timeline/no-bed: The line does not say in which bed tomatoes came up by itself.",
    ]);
  });
});

describe("came back", () => {
  test("a perennial lives on, and is told as back", () => {
    const lines: Line[] = [
      ["2024-03-02", "planted", { variety: "victoria", bed: "long-bed", count: 2 }],
      ["2026-03-09", "came back", { variety: "victoria", bed: "long-bed" }],
    ];
    expect(toldOf(lines).at(-2)).toEqual(["came back", "The Victoria rhubarb came back."]);
    expect(state(grow({ lines }), "long-bed", "2026-03-09").plantings).toMatchObject([
      { ended: undefined, count: { value: 2 }, lastEvent: "notes/2026-03-09.md:2" },
    ]);
  });

  test("what the calendar had ended still stood", () => {
    const lines: Line[] = [
      ["2025-06-30", "planted", { variety: "ailsa-craig", bed: "tunnel", count: 2, plantsFrom: "bought" }],
      ["2026-02-09", "came back", { variety: "ailsa-craig", bed: "tunnel", verb: "overwintered" }],
    ];
    expect(state(grow({ lines }), "tunnel", "2026-02-09").plantings).toMatchObject([{ ended: undefined }]);
    expect(toldOf(lines, "tunnel")[1]).toEqual(["came back", "The Ailsa Craig tomatoes came through the winter."]);
  });

  test("plants from before the notes are taken as there", () => {
    const garden = grow({ lines: [["2026-03-09", "came back", { variety: "victoria", bed: "long-bed", count: 3 }]] });
    expect(state(garden, "long-bed", "2026-03-09").plantings).toMatchObject([{ implied: true, count: { value: 3 } }]);
    expect(garden.problems).toEqual([]);
  });
});

test("doing is told in the person's words, of the plants or of the bed", () => {
  const lines: Line[] = [
    ["2026-05-30", "planted", { variety: "musselburgh", bed: "long-bed", count: 24, plantsFrom: "bought" }],
    ["2026-07-01", "doing", { variety: "musselburgh", bed: "long-bed", what: "thriving" }],
    ["2026-07-02", "doing", { bed: "long-bed", what: "full to the edges" }],
  ];
  expect(toldOf(lines).slice(1, 3)).toEqual([
    ["doing", "The Musselburgh leeks: thriving."],
    ["doing", "Long Bed: full to the edges."],
  ]);
  expect(state(grow({ lines }), "long-bed", "2026-07-01").plantings[0]?.lastEvent).toBe("notes/2026-07-01.md:2");
});

test("preserved changes neither plants nor what was picked", () => {
  const lines: Line[] = [
    ["2026-05-30", "planted", { variety: "ailsa-craig", bed: "long-bed", count: 4, plantsFrom: "bought" }],
    ["2026-08-01", "picked", { variety: "ailsa-craig", bed: "long-bed", grams: 6000 }],
    ["2026-08-02", "preserved", { crop: "tomato", what: "6 pints of tomatoes", litres: 3.4 }],
  ];
  const garden = grow({ lines });
  const [before, after] = ["2026-08-01", "2026-08-02"].map((day) => state(garden, "long-bed", day).plantings);
  expect(after).toEqual(before);
  expect(toldOf(lines)[2]).toEqual(["preserved", "Put up: 6 pints of tomatoes."]);
});

describe("sold and given away", () => {
  const radishes: Line = ["2026-04-02", "sowed", { variety: "french-breakfast", bed: "long-bed" }];

  test("a sale of bunches reaches its bed, and takes no plants", () => {
    const lines: Line[] = [
      radishes,
      ["2026-05-20", "sold", { variety: "french-breakfast", count: 12, unit: "bunch", price: "£1 each" }],
    ];
    expect(toldOf(lines)[1]).toEqual(["sold", "Twelve bunches of French Breakfast radishes were sold."]);
    expect(state(grow({ lines }), "long-bed", "2026-05-20").plantings).toMatchObject([
      { givenAway: 0, ended: undefined },
    ]);
  });

  test("also when the plants are gone, or no line ever named them", () => {
    const gone: Line[] = [
      radishes,
      ["2026-05-15", "cleared", { variety: "french-breakfast", bed: "long-bed" }],
      ["2026-05-15", "sold", { variety: "french-breakfast", bed: "long-bed", count: 5, unit: "bunch" }],
    ];
    expect(toldOf(gone).map(([kind]) => kind)).toEqual(["sown", "sold", "cleared"]);
    const unknown: Line[] = [["2026-05-15", "sold", { crop: "tomato", bed: "long-bed", grams: 2000 }]];
    expect(toldOf(unknown)).toEqual([["sold", "2 kg of tomatoes was sold."]]);
    expect(grow({ lines: unknown }).problems).toEqual([]);
  });

  test("three bunches given away are bunches, and three plants plants", () => {
    const leeks: Line = [
      "2026-05-30",
      "planted",
      { variety: "musselburgh", bed: "long-bed", count: 24, plantsFrom: "bought" },
    ];
    const bunches: Line[] = [leeks, ["2026-10-02", "gave away", { variety: "musselburgh", count: 3, unit: "bunch" }]];
    expect(toldOf(bunches)[1]).toEqual(["did", "Three bunches of Musselburgh leeks were given away."]);
    expect(state(grow({ lines: bunches }), "long-bed", "2026-10-02").plantings).toMatchObject([
      { count: { value: 24 }, givenAway: 0 },
    ]);
    const plants: Line[] = [leeks, ["2026-06-02", "sold", { variety: "musselburgh", count: 3, bed: "long-bed" }]];
    expect(toldOf(plants)[1]).toEqual(["sold", "Three Musselburgh leeks were sold."]);
    expect(state(grow({ lines: plants }), "long-bed", "2026-06-02").plantings).toMatchObject([
      { count: { value: 21 }, givenAway: 3 },
    ]);
  });
});

test("a plan is kept as planned: no task, never due, told of its bed", () => {
  const lines: Line[] = [
    ["2024-03-02", "planted", { variety: "victoria", bed: "long-bed", count: 1 }],
    ["2026-10-02", "plan", { variety: "victoria", what: "move the rhubarb next year", reason: "because of the shade" }],
    ["2027-04-02", "done", { what: "moved the rhubarb" }],
  ];
  const garden = grow({ lines });
  expect(garden.plans).toMatchObject([
    { what: "move the rhubarb next year", bed: "long-bed", variety: "victoria", said: "2026-10-02" },
  ]);
  expect(garden.tasks).toEqual([]);
  expect(state(garden, "long-bed", "2027-12-01").tasks).toEqual([]);
  expect(toldOf(lines)).toContainEqual(["plan", "Planned: move the rhubarb next year, because of the shade."]);
  expect(toldOf(lines).map(([kind]) => kind)).not.toContain("overdue");
});

describe("why something was done", () => {
  const lines: Line[] = [
    [
      "2026-05-30",
      "planted",
      {
        variety: "musselburgh",
        bed: "long-bed",
        count: 24,
        plantsFrom: "bought",
        reason: "because of the moth last year",
      },
    ],
    ["2026-06-01", "put up", { what: "mesh", bed: "long-bed", reason: "to keep the fly off" }],
  ];

  test("stands behind its sentence", () => {
    expect(
      toldOf(lines)
        .map(([, text]) => text)
        .slice(0, 2),
    ).toEqual([
      "24 bought-in Musselburgh leeks went in, because of the moth last year.",
      "Mesh went up to keep the fly off.",
    ]);
  });
});

test("nothing of this is a problem", () => {
  expect(rulesOf(grow({ lines: [["2026-10-02", "plan", { what: "more flowers" }]] }).problems)).toEqual([]);
});

describe("what stands for years and was never planted on record", () => {
  const fig = { fig: { title: "Celeste", crop: "fig" } };
  const stages = (...lines: readonly Line[]) =>
    state(grow({ lines, varieties: fig }), "long-bed", "2026-07-01").plantings.map(({ variety, crop, implied }) => [
      variety ?? crop,
      implied,
    ]);

  test.each<[string, Line]>([
    ["is how it does", ["2026-06-01", "doing", { variety: "fig", bed: "long-bed", what: "sulking" }]],
    ["was pruned", ["2026-06-01", "did", { variety: "fig", bed: "long-bed", what: "pruned the Celeste fig" }]],
    ["was watered", ["2026-06-01", "did", { variety: "fig", bed: "long-bed", what: "watered Celeste" }]],
    ["was picked", ["2026-06-01", "picked", { variety: "fig", bed: "long-bed", count: 3, unit: "fruit" }]],
  ])("stands where it %s", (_, line) => expect(stages(line)).toEqual([["fig", true]]));

  test.each<[string, Line]>([
    [
      "a hole dug for it",
      ["2026-06-01", "did", { variety: "fig", bed: "long-bed", what: "watered the hole for the fig" }],
    ],
    [
      "work on what lasts one season",
      ["2026-06-01", "did", { crop: "tomato", bed: "long-bed", what: "fed the tomatoes" }],
    ],
    [
      "what the bed is fed with",
      ["2026-06-03", "did", { crop: "comfrey", bed: "long-bed", what: "fed all tomatoes, comfrey, one in ten" }],
    ],
    ["work in no bed", ["2026-06-01", "did", { variety: "fig", what: "pruned the fig" }]],
  ])("does not by %s", (_, line) => expect(stages(line)).toEqual([]));

  test("and ends no planting that is on record", () => {
    const planted: Line = [
      "2024-11-02",
      "planted",
      { variety: "fig", bed: "long-bed", count: 1, plantsFrom: "bought" },
    ];
    expect(stages(planted, ["2026-06-01", "did", { variety: "fig", bed: "long-bed", what: "pruned the fig" }])).toEqual(
      [["fig", false]],
    );
  });
});
