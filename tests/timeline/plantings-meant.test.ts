import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf, told } from "./small-garden.ts";

const bought = (day: string, variety: string, bed: string, said: object = {}): Line => [
  day,
  "planted",
  { variety, bed, plantsFrom: "bought", ...said },
];
const tomatoes: Line[] = [
  bought("2026-05-20", "ailsa-craig", "tunnel", { count: 3 }),
  bought("2026-05-20", "gardeners-delight", "tunnel", { count: 2 }),
  bought("2026-05-21", "gardeners-delight", "long-bed", { count: 4 }),
];
const stages = (lines: readonly Line[], bed: string, on = "2026-12-01") =>
  state(grow({ lines }), bed, on).plantings.map(({ variety, stage }) => [variety, stage]);

describe("a line that names only a crop", () => {
  test("is of each living planting of it in its bed", () => {
    const garden = grow({
      lines: [...tomatoes, ["2026-06-21", "flowered", { crop: "tomato", bed: "tunnel", verb: "in flower" }]],
    });
    const [change] = garden.changes.get("tunnel")?.filter(({ kind }) => kind === "stage") ?? [];
    expect(change).toMatchObject({ text: "The tomatoes were in flower.", planting: undefined });
    expect(change?.effect.plantings?.map(({ variety, stage }) => [variety, stage])).toEqual([
      ["ailsa-craig", "flowering"],
      ["gardeners-delight", "flowering"],
    ]);
    expect(garden.changes.get("long-bed")?.some(({ kind }) => kind === "stage")).toBe(false);
    expect(garden.problems).toEqual([]);
  });

  test("is of all beds when none is meant", () => {
    const garden = grow({
      lines: [
        ...tomatoes,
        ["2026-06-21", "did", { crop: "tomato", verb: "did", what: "pruned side shoots, all tomatoes" }],
      ],
    });
    for (const bed of ["tunnel", "long-bed"]) {
      expect(garden.changes.get(bed)?.find(({ kind }) => kind === "did")?.text).toBe(
        "Side shoots were pruned on the tomatoes.",
      );
    }
  });

  test("is of the beds its note is about, when the line names none", () => {
    const garden = grow({
      noteBeds: { "notes/2026-06-21.md": ["tunnel", "bean-row"] },
      lines: [...tomatoes, ["2026-06-21", "did", { crop: "tomato", verb: "watered", what: "watered the tomatoes" }]],
    });
    expect(garden.changes.get("tunnel")?.find(({ kind }) => kind === "did")?.text).toBe("The tomatoes were watered.");
    expect(garden.changes.get("long-bed")?.some(({ kind }) => kind === "did")).toBe(false);
  });

  test("of which kinds have longer names is of those too: beans are runner beans, but no sweet peas are peas", () => {
    const garden = grow({
      varieties: { "painted-lady": { title: "Painted Lady", crop: "runner-bean" } },
      lines: [
        bought("2026-05-20", "painted-lady", "bean-row"),
        bought("2026-05-20", "matucana", "bean-row"),
        ["2026-06-21", "did", { crop: "bean", verb: "watered", what: "watered the beans" }],
        ["2026-06-22", "did", { crop: "pea", bed: "bean-row", verb: "watered", what: "watered the peas" }],
      ],
    });
    const work = garden.changes.get("bean-row")?.filter(({ kind }) => kind === "did") ?? [];
    expect(work.map(({ text, effect }) => [text, effect.plantings?.map(({ variety }) => variety)])).toEqual([
      ["The beans were watered.", ["painted-lady"]],
      ["The peas were watered.", []],
    ]);
  });

  test("says all of them and lives in another bed: no hint is needed", () => {
    const garden = grow({
      lines: [
        ...tomatoes,
        [
          "2026-06-21",
          "did",
          { crop: "tomato", bed: "bean-row", verb: "watered", what: "watered", text: "watered all tomatoes" },
        ],
      ],
    });
    expect(garden.changes.get("tunnel")?.some(({ kind }) => kind === "did")).toBe(true);
    expect(garden.problems).toEqual([]);
  });

  test("loses all of them when it names no number", () => {
    expect(
      stages([...tomatoes, ["2026-09-03", "lost", { crop: "tomato", bed: "tunnel", cause: "blight" }]], "tunnel"),
    ).toEqual([
      ["ailsa-craig", "lost"],
      ["gardeners-delight", "lost"],
    ]);
  });

  test("takes a number of plants from one planting, with a hint", () => {
    const garden = grow({ lines: [...tomatoes, ["2026-06-03", "lost", { crop: "tomato", bed: "tunnel", count: 1 }]] });
    expect(state(garden, "tunnel", "2026-06-03").plantings.map(({ count }) => count?.value)).toEqual([2, 2]);
    expect(told(garden.problems)).toEqual([
      "timeline/several-plantings: Several plantings of tomatoes stand in Tunnel; the line was taken to mean that of 20 May.",
    ]);
  });
});

describe("a line without a bed", () => {
  test("is of the only living planting of its variety", () => {
    const garden = grow({
      lines: [...tomatoes, ["2026-06-21", "flowered", { variety: "ailsa-craig", verb: "first flower" }]],
    });
    expect(state(garden, "tunnel", "2026-06-21").plantings[0]).toMatchObject({
      stage: "flowering",
      stageSince: "2026-06-21",
    });
    expect(garden.problems).toEqual([]);
  });

  test("is of the oldest that fits when its variety grows in two beds, with a hint", () => {
    const garden = grow({
      lines: [...tomatoes, ["2026-06-21", "flowered", { variety: "gardeners-delight", verb: "first flower" }]],
    });
    expect(state(garden, "tunnel", "2026-06-21").plantings[1]?.stage).toBe("flowering");
    expect(state(garden, "long-bed", "2026-06-21").plantings[0]?.stage).toBe("growing");
    expect(told(garden.problems)).toEqual([
      "timeline/several-plantings: Several plantings of Gardener’s Delight tomatoes stand in Tunnel and Long Bed; the line was taken to mean the one in Tunnel, 20 May.",
    ]);
  });

  test("that names plants which grow nowhere is reported, and nothing is made up", () => {
    const garden = grow({ lines: [["2026-06-21", "picked", { variety: "black-beauty", grams: 900 }]] });
    expect(garden.changes.size).toBe(0);
    expect(rulesOf(garden.problems)).toEqual(["timeline/nothing-planted"]);
  });
});

describe("a line whose plants do not grow in its bed", () => {
  test("is of those in the one other bed, with a hint", () => {
    const garden = grow({
      lines: [...tomatoes, ["2026-07-21", "picked", { variety: "ailsa-craig", bed: "long-bed", grams: 500 }]],
    });
    expect(state(garden, "tunnel", "2026-07-21").plantings[0]?.picked.grams).toBe(500);
    expect(told(garden.problems)).toEqual([
      "timeline/in-another-bed: No Ailsa Craig tomatoes grow in Long Bed; the line was taken to mean those in Tunnel.",
    ]);
  });

  test("begins a planting that is only implied when there is none anywhere", () => {
    const garden = grow({
      lines: [["2026-07-21", "picked", { variety: "black-beauty", bed: "long-bed", grams: 500 }]],
    });
    expect(state(garden, "long-bed", "2026-07-21").plantings[0]).toMatchObject({
      implied: true,
      sown: undefined,
      planted: undefined,
      picked: { grams: 500 },
    });
    expect(told(garden.problems)).toEqual([
      "timeline/nothing-planted: No line says when the Black Beauty courgettes in Long Bed were sown or planted.",
    ]);
  });

  test("dated before its planting is reported, counted for the bed and for no planting", () => {
    const garden = grow({
      lines: [
        ["2026-05-03", "picked", { variety: "black-beauty", bed: "long-bed", grams: 500 }],
        bought("2026-05-24", "black-beauty", "long-bed"),
      ],
    });
    expect(state(garden, "long-bed", "2026-06-01")).toMatchObject({
      plantings: [{ since: "2026-05-24", picked: { grams: 0 } }],
      unassigned: [{ variety: "black-beauty", picked: { grams: 500, times: 1 } }],
    });
    expect(told(garden.problems)).toEqual([
      "timeline/before-planting: This is noted of Black Beauty courgettes in Long Bed before they were sown or planted there, on 24 May.",
    ]);
  });

  test.each(["lost", "gave away", "cleared", "moved"] as const)("and that are %s is reported", (kind) => {
    const garden = grow({ lines: [["2026-05-03", kind, { variety: "black-beauty", bed: "long-bed", count: 2 }]] });
    expect(rulesOf(garden.problems)).toEqual(["timeline/nothing-there"]);
  });
});

describe("two sowings of one variety in a bed", () => {
  const sown: Line[] = [
    ["2026-04-04", "sowed", { variety: "boltardy", bed: "long-bed", spot: "row 1" }],
    ["2026-05-09", "sowed", { variety: "boltardy", bed: "long-bed", spot: "row 2", detail: "late row" }],
  ];

  test("come up one after the other, and are picked oldest first", () => {
    const garden = grow({
      lines: [
        ...sown,
        ["2026-04-18", "up", { variety: "boltardy", bed: "long-bed" }],
        ["2026-05-19", "up", { variety: "boltardy", bed: "long-bed" }],
        ["2026-05-30", "thinned", { variety: "boltardy", bed: "long-bed", count: 20 }],
        ["2026-07-01", "picked", { variety: "boltardy", bed: "long-bed", grams: 800 }],
      ],
    });
    expect(state(garden, "long-bed", "2026-07-01").plantings).toMatchObject([
      { stage: "picking", picked: { grams: 800 }, count: { value: 20 } },
      { stage: "up", stageSince: "2026-05-19", picked: { grams: 0 } },
    ]);
    expect(garden.problems).toEqual([]);
  });

  test("are told apart by their place, or by words they were sown with", () => {
    const garden = grow({
      lines: [
        ...sown,
        ["2026-07-01", "picked", { variety: "boltardy", bed: "long-bed", grams: 300, spot: "row 2" }],
        ["2026-07-08", "picked", { variety: "boltardy", bed: "long-bed", grams: 200, detail: "from the late row" }],
        ["2026-07-09", "measured", { variety: "boltardy", bed: "long-bed", heightCm: 20, spot: "row 1" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-07-10").plantings).toMatchObject([
      { heightCm: 20, picked: { grams: 0 } },
      { heightCm: undefined, picked: { grams: 500 } },
    ]);
    expect(garden.problems).toEqual([]);
  });

  test("are cleared one after the other", () => {
    const garden = grow({
      lines: [
        ...sown,
        ["2026-07-01", "picked", { variety: "boltardy", bed: "long-bed", grams: 800 }],
        ["2026-07-12", "cleared", { variety: "boltardy", bed: "long-bed" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-07-12").plantings.map(({ ended }) => ended)).toEqual([
      "2026-07-12",
      undefined,
    ]);
    expect(rulesOf(garden.problems)).toEqual(["timeline/several-plantings"]);
  });

  test("begun together are cleared together", () => {
    const garden = grow({
      lines: [
        bought("2026-05-17", "ailsa-craig", "tunnel", { count: 4, detail: "ten-litre pots" }),
        bought("2026-05-17", "ailsa-craig", "tunnel", { count: 4, detail: "thirty-litre pots" }),
        ["2026-08-01", "picked", { variety: "ailsa-craig", bed: "tunnel", grams: 900, detail: "30 litre pots" }],
        ["2026-10-01", "cleared", { variety: "ailsa-craig", bed: "tunnel" }],
      ],
    });
    expect(state(garden, "tunnel", "2026-10-01").plantings).toMatchObject([
      { id: "tunnel/ailsa-craig/2026-05-17", ended: "2026-10-01", picked: { grams: 0 } },
      { id: "tunnel/ailsa-craig/2026-05-17-2", ended: "2026-10-01", picked: { grams: 900 } },
    ]);
    expect(garden.problems).toEqual([]);
  });
});

describe("a line after the end", () => {
  const onions: Line[] = [
    ["2026-03-20", "planted", { variety: "solent", bed: "long-bed", count: 40 }],
    ["2026-07-12", "cleared", { variety: "solent", bed: "long-bed" }],
  ];

  test("of the same day is of what was cleared, in whatever order the notes tell it", () => {
    const garden = grow({
      lines: [...onions, ["2026-07-12", "picked", { variety: "solent", bed: "long-bed", grams: 2000 }]],
    });
    expect(state(garden, "long-bed", "2026-07-12").plantings[0]).toMatchObject({
      ended: "2026-07-12",
      picked: { grams: 2000 },
    });
    expect(garden.problems).toEqual([]);
  });

  test("that weighs what has dried is added, with a hint", () => {
    const garden = grow({ lines: [...onions, ["2026-08-12", "picked", { variety: "solent", grams: 1900 }]] });
    expect(state(garden, "long-bed", "2026-08-12").plantings[0]).toMatchObject({
      ended: "2026-07-12",
      stage: "finished",
      picked: { grams: 1900 },
    });
    expect(rulesOf(garden.problems)).toEqual(["timeline/after-its-end"]);
  });
});
