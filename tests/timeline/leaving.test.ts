import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf, told } from "./small-garden.ts";

const leeks: Line[] = [
  ["2026-03-12", "sowed", { variety: "musselburgh", nursery: true, count: 30 }],
  ["2026-05-30", "planted", { variety: "musselburgh", bed: "long-bed", count: 24 }],
];
const on = (lines: readonly Line[], bed = "long-bed", day = "2026-12-01") =>
  state(grow({ lines: [...leeks, ...lines] }), bed, day).plantings;

describe("lost", () => {
  test("a number of plants are fewer", () => {
    const [planting] = on([
      ["2026-06-02", "lost", { variety: "musselburgh", bed: "long-bed", count: 3, cause: "leek moth" }],
    ]);
    expect(planting).toMatchObject({ count: { value: 21 }, lost: 3, began: { value: 24 }, ended: undefined });
  });

  test("to the last plant, the planting is lost", () => {
    const [planting] = on([
      ["2026-06-02", "lost", { variety: "musselburgh", bed: "long-bed", count: 3 }],
      ["2026-06-09", "lost", { variety: "musselburgh", bed: "long-bed", count: 21 }],
    ]);
    expect(planting).toMatchObject({
      count: { value: 0 },
      lost: 24,
      stage: "lost",
      stageSince: "2026-06-09",
      ended: "2026-06-09",
    });
  });

  test("without a number, it is lost as a whole", () => {
    const [planting] = on([
      ["2026-06-02", "lost", { variety: "musselburgh", bed: "long-bed", text: "lost the leeks to rust" }],
    ]);
    expect(planting).toMatchObject({ lost: 24, stage: "lost", ended: "2026-06-02" });
  });

  test("in part, nobody knows how many are left", () => {
    const [planting] = on([
      ["2026-06-02", "lost", { variety: "musselburgh", bed: "long-bed", text: "lost some leeks to rust" }],
    ]);
    expect(planting).toMatchObject({ count: { value: 24, approx: true }, lost: 0, ended: undefined });
  });

  test("more than there were is reported, and the count stops at none", () => {
    const garden = grow({
      lines: [...leeks, ["2026-06-02", "lost", { variety: "musselburgh", bed: "long-bed", count: 30 }]],
    });
    expect(state(garden, "long-bed", "2026-06-02").plantings[0]).toMatchObject({ count: { value: 0 }, lost: 24 });
    expect(told(garden.problems)).toEqual([
      "timeline/more-than-there: 30 Musselburgh leeks were lost, but only 24 were left in Long Bed.",
    ]);
  });

  test("of plants nobody counted, the count stays unknown", () => {
    const garden = grow({
      lines: [
        ["2026-04-02", "sowed", { variety: "boltardy", bed: "long-bed" }],
        ["2026-06-02", "lost", { variety: "boltardy", bed: "long-bed", count: 5 }],
      ],
    });
    expect(state(garden, "long-bed", "2026-06-02").plantings[0]).toMatchObject({ count: undefined, lost: 5 });
    expect(garden.problems).toEqual([]);
  });

  test("seedlings in the nursery leave their lot as a whole", () => {
    const garden = grow({
      lines: [
        ["2026-03-12", "sowed", { variety: "musselburgh", nursery: true, count: 30 }],
        ["2026-04-01", "lost", { variety: "musselburgh", cause: "damping off" }],
      ],
    });
    expect(garden.nurseryLots[0]).toMatchObject({ left: 0, closed: "2026-04-01" });
  });
});

describe("given away", () => {
  test("plants are fewer", () => {
    const garden = grow({
      lines: [
        ["2026-05-30", "planted", { variety: "musselburgh", bed: "long-bed", count: 24, plantsFrom: "bought" }],
        ["2026-06-02", "gave away", { variety: "musselburgh", bed: "long-bed", count: 4 }],
      ],
    });
    expect(state(garden, "long-bed", "2026-06-02").plantings[0]).toMatchObject({ count: { value: 20 }, givenAway: 4 });
  });

  test("from plants in fruit it is fruit that went", () => {
    const garden = grow({
      lines: [
        ["2026-05-30", "planted", { variety: "black-beauty", bed: "long-bed", count: 2, plantsFrom: "bought" }],
        ["2026-07-02", "picked", { variety: "black-beauty", bed: "long-bed", count: 6, unit: "fruit" }],
        ["2026-07-03", "gave away", { variety: "black-beauty", bed: "long-bed", count: 4 }],
      ],
    });
    expect(state(garden, "long-bed", "2026-07-03").plantings[0]).toMatchObject({ count: { value: 2 }, givenAway: 0 });
    expect(garden.problems).toEqual([]);
  });
});

describe("moved", () => {
  test("some plants begin a planting in the other bed, with what is known of them", () => {
    const lines: Line[] = [
      ["2026-06-20", "measured", { variety: "musselburgh", bed: "long-bed", heightCm: 20 }],
      ["2026-07-12", "moved", { variety: "musselburgh", bed: "long-bed", toBed: "bean-row", count: 5, spot: "row 3" }],
    ];
    expect(on(lines)[0]).toMatchObject({ count: { value: 19 }, movedOut: 5, ended: undefined });
    expect(on(lines, "bean-row")[0]).toMatchObject({
      id: "bean-row/musselburgh/2026-07-12",
      since: "2026-07-12",
      sown: "2026-03-12",
      planted: "2026-05-30",
      count: { value: 5 },
      heightCm: 20,
      spot: "row 3",
      movedFrom: "long-bed/musselburgh/2026-05-30",
    });
  });

  test("all plants end the planting they leave", () => {
    const lines: Line[] = [["2026-07-12", "moved", { variety: "musselburgh", bed: "long-bed", toBed: "bean-row" }]];
    expect(on(lines)[0]).toMatchObject({ count: { value: 0 }, movedOut: 24, stage: "finished", ended: "2026-07-12" });
    expect(on(lines, "bean-row")[0]).toMatchObject({ count: { value: 24 }, stage: "growing" });
  });

  test("seedlings of a direct sowing are planted on the day they move", () => {
    const garden = grow({
      lines: [
        ["2026-04-02", "sowed", { variety: "little-gem", bed: "long-bed", count: 40 }],
        ["2026-05-12", "moved", { variety: "little-gem", bed: "long-bed", toBed: "tunnel", count: 6 }],
      ],
    });
    expect(state(garden, "tunnel", "2026-05-12").plantings[0]).toMatchObject({
      sown: "2026-04-02",
      planted: "2026-05-12",
    });
  });

  test("within its bed a planting only changes its place", () => {
    const lines: Line[] = [["2026-07-12", "moved", { variety: "musselburgh", bed: "long-bed", spot: "the north end" }]];
    expect(on(lines)).toMatchObject([{ count: { value: 24 }, spot: "the north end", ended: undefined }]);
    const garden = grow({ lines: [...leeks, ...lines] });
    expect(garden.changes.get("long-bed")?.[1]?.text).toBe("The Musselburgh leeks moved, at the north end.");
    expect(garden.problems).toEqual([]);
  });

  test("what is not there is reported, and stands where it went", () => {
    const garden = grow({
      lines: [["2026-07-12", "moved", { variety: "victoria", bed: "long-bed", toBed: "bean-row", count: 1 }]],
    });
    expect(state(garden, "bean-row", "2026-07-12").plantings).toHaveLength(1);
    expect(told(garden.problems)).toEqual([
      "timeline/nothing-there: The line says that Victoria rhubarb was moved, but none grows in Long Bed on this day.",
    ]);
  });
});

describe("cleared", () => {
  test("ends the planting and the troubles it had", () => {
    const garden = grow({
      lines: [
        ...leeks,
        ["2026-06-02", "trouble", { variety: "musselburgh", bed: "long-bed", cause: "rust" }],
        ["2026-09-02", "cleared", { variety: "musselburgh", bed: "long-bed" }],
        ["2026-09-02", "cured", { variety: "musselburgh", bed: "long-bed", cause: "rust" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-09-02")).toMatchObject({
      plantings: [{ ended: "2026-09-02", stage: "finished", count: { value: 24 } }],
      troubles: [{ ended: "2026-09-02" }],
    });
    expect(garden.problems).toEqual([]);
  });

  test("after the last plant was picked needs no word", () => {
    const garden = grow({
      lines: [
        ...leeks,
        ["2026-11-02", "picked", { variety: "musselburgh", bed: "long-bed", count: 24, verb: "lifted" }],
        ["2026-11-09", "cleared", { variety: "musselburgh", bed: "long-bed" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-11-09").plantings[0]).toMatchObject({
      ended: "2026-11-02",
      pickedWhole: 24,
    });
    expect(garden.problems).toEqual([]);
  });

  test("twice is reported", () => {
    const garden = grow({
      lines: [
        ...leeks,
        ["2026-09-02", "cleared", { variety: "musselburgh", bed: "long-bed" }],
        ["2026-09-20", "cleared", { variety: "musselburgh", bed: "long-bed" }],
      ],
    });
    expect(rulesOf(garden.problems)).toEqual(["timeline/nothing-there"]);
  });
});
