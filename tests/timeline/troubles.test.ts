import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf, told, toldChanges } from "./small-garden.ts";

const beans: Line = ["2026-03-08", "sowed", { variety: "aquadulce", bed: "bean-row" }];
const blackfly: Line = ["2026-05-23", "trouble", { variety: "aquadulce", cause: "blackfly", detail: "growing tips" }];
const troublesOn = (lines: readonly Line[], on: string, bed = "bean-row") => state(grow({ lines }), bed, on).troubles;

describe("a trouble", () => {
  test("is open from its line until it is cured, with what was tried in between", () => {
    const lines: Line[] = [
      beans,
      ["2026-05-01", "did", { variety: "aquadulce", verb: "staked", what: "staked" }],
      blackfly,
      [
        "2026-05-24",
        "did",
        { variety: "aquadulce", verb: "pinched out", what: "pinched out the tips", reason: "for the blackfly" },
      ],
      ["2026-05-26", "did", { variety: "aquadulce", verb: "cut back", what: "cut back the lower leaves" }],
      [
        "2026-05-28",
        "did",
        { variety: "aquadulce", verb: "sprayed", what: "sprayed with soapy water", reason: "for the black fly" },
      ],
      ["2026-06-06", "cured", { variety: "aquadulce", cause: "blackfly" }],
      ["2026-06-10", "did", { variety: "aquadulce", verb: "watered", what: "watered" }],
    ];
    expect(troublesOn(lines, "2026-05-25")).toMatchObject([
      { cause: "blackfly", opened: "2026-05-23", tried: [{ what: "pinched out the tips" }], varieties: ["aquadulce"] },
    ]);
    expect(troublesOn(lines, "2026-07-01")).toMatchObject([
      { ended: "2026-06-06", tried: [{ what: "pinched out the tips" }, { what: "sprayed with soapy water" }] },
    ]);
    expect(
      toldChanges(grow({ lines }), "bean-row", "2026-05-20", "2026-06-06").map(({ kind, text }) => [kind, text]),
    ).toEqual([
      ["trouble opened", "Blackfly showed up on the Aquadulce Claudia broad beans, growing tips."],
      ["did", "The tips were pinched out on the Aquadulce Claudia broad beans, for the blackfly."],
      ["did", "The lower leaves were cut back on the Aquadulce Claudia broad beans."],
      ["did", "The Aquadulce Claudia broad beans were sprayed with soapy water, for the black fly."],
      ["trouble ended", "The Aquadulce Claudia broad beans were clear of blackfly after two weeks."],
    ]);
  });

  test("may be over on the day it was noted", () => {
    const lines: Line[] = [
      beans,
      ["2026-05-23", "cured", { variety: "aquadulce", cause: "blackfly" }],
      ["2026-05-23", "trouble", { variety: "aquadulce", cause: "Blackfly" }],
    ];
    expect(troublesOn(lines, "2026-07-01")).toMatchObject([{ opened: "2026-05-23", ended: "2026-05-23" }]);
    expect(rulesOf(grow({ lines }).problems)).not.toContain("timeline/no-such-trouble");
  });

  test("noted again stays one trouble", () => {
    const lines: Line[] = [
      beans,
      blackfly,
      ["2026-05-30", "trouble", { variety: "aquadulce", cause: "black fly again" }],
    ];
    expect(troublesOn(lines, "2026-06-01")).toHaveLength(1);
  });

  test("of another cause or other plants is another trouble", () => {
    const lines: Line[] = [
      beans,
      ["2026-03-28", "sowed", { variety: "boltardy", bed: "bean-row" }],
      blackfly,
      ["2026-05-30", "trouble", { variety: "aquadulce", cause: "rust" }],
      ["2026-05-30", "trouble", { variety: "boltardy", cause: "blackfly" }],
    ];
    expect(troublesOn(lines, "2026-06-01").map(({ cause, varieties }) => [cause, varieties])).toEqual([
      ["blackfly", ["aquadulce"]],
      ["rust", ["aquadulce"]],
      ["blackfly", ["boltardy"]],
    ]);
  });

  test("of a bed names no plants; what is put up against it counts as tried where the line names it", () => {
    const lines: Line[] = [
      ["2026-05-01", "trouble", { bed: "long-bed", cause: "pigeons" }],
      ["2026-05-02", "did", { bed: "long-bed", verb: "watered", what: "watered" }],
      ["2026-05-03", "put up", { bed: "long-bed", gear: "mesh" }],
      ["2026-05-05", "put up", { bed: "long-bed", gear: "mesh", reason: "against the pigeons" }],
    ];
    expect(troublesOn(lines, "2026-05-04", "long-bed")).toMatchObject([{ cause: "pigeons", plantings: [], tried: [] }]);
    expect(troublesOn(lines, "2026-05-06", "long-bed")).toMatchObject([
      { cause: "pigeons", plantings: [], tried: [{ gear: "mesh" }] },
    ]);
  });

  test("of a whole crop is opened in each bed where it grows", () => {
    const garden = grow({
      lines: [
        ["2026-05-20", "planted", { variety: "ailsa-craig", bed: "tunnel", plantsFrom: "bought" }],
        ["2026-05-20", "planted", { variety: "gardeners-delight", bed: "long-bed", plantsFrom: "bought" }],
        ["2026-09-03", "trouble", { crop: "tomato", cause: "blight" }],
        ["2026-09-20", "cured", { crop: "tomato", cause: "blight" }],
      ],
    });
    for (const bed of ["tunnel", "long-bed"]) {
      expect(state(garden, bed, "2026-09-21").troubles).toMatchObject([{ cause: "blight", ended: "2026-09-20" }]);
    }
    expect(garden.problems).toEqual([]);
  });

  test("ends with its plants, and may be called over after that", () => {
    const lines: Line[] = [
      beans,
      blackfly,
      ["2026-07-06", "cleared", { variety: "aquadulce" }],
      ["2026-07-10", "cured", { variety: "aquadulce", cause: "blackfly", bed: "bean-row" }],
    ];
    expect(troublesOn(lines, "2026-07-06")).toMatchObject([{ ended: "2026-07-06" }]);
    expect(rulesOf(grow({ lines }).problems)).toEqual([]);
  });

  test("that was never open cannot end: a hint", () => {
    const garden = grow({ lines: [beans, ["2026-06-06", "cured", { variety: "aquadulce", cause: "rust" }]] });
    expect(told(garden.problems)).toEqual([
      'timeline/no-such-trouble: "Rust" is noted as over, and no open trouble of that name was found.',
    ]);
    expect(garden.changes.get("bean-row")?.map(({ text }) => text)).toContain(
      "The Aquadulce Claudia broad beans were clear of rust.",
    );
  });

  test("of a bed is over when its season ends, with a hint when the notes go on", () => {
    const garden = grow({
      lines: [
        ["2025-05-01", "trouble", { bed: "long-bed", cause: "pigeons" }],
        ["2026-03-01", "did", { bed: "bean-row", verb: "weeded", what: "weeded" }],
      ],
    });
    expect(state(garden, "long-bed", "2026-01-01").troubles).toMatchObject([{ ended: "2025-12-31" }]);
    expect(told(garden.problems)).toEqual([
      'timeline/trouble-left-open: Nothing says when the trouble "pigeons" of 1 May 2025 ended; it was taken as over when the season did.',
    ]);
  });

  test("of a perennial lasts through the next season", () => {
    const lines: Line[] = [
      ["2024-03-02", "planted", { variety: "victoria", bed: "long-bed" }],
      ["2025-09-01", "trouble", { variety: "victoria", bed: "long-bed", cause: "crown rot" }],
    ];
    expect(troublesOn(lines, "2026-07-01", "long-bed")[0]?.ended).toBeUndefined();
    expect(troublesOn(lines, "2027-01-01", "long-bed")[0]?.ended).toBe("2026-12-31");
  });

  test("keeps private work out of what was tried", () => {
    const lines: Line[] = [
      beans,
      blackfly,
      [
        "2026-05-24",
        "did",
        { variety: "aquadulce", verb: "did", what: "begged the neighbour for advice", private: true },
      ],
    ];
    expect(troublesOn(lines, "2026-05-25")[0]?.tried).toEqual([]);
  });
});
