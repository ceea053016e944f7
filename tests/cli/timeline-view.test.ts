import { describe, expect, test } from "vitest";
import { timelineView } from "../../src/cli/timeline-view.ts";
import { grow, type Line } from "../timeline/small-garden.ts";

const lines: Line[] = [
  ["2025-06-01", "planted", { variety: "black-beauty", bed: "long-bed", count: 2, plantsFrom: "bought" }],
  ["2025-10-01", "cleared", { variety: "black-beauty", bed: "long-bed" }],
  ["2026-03-12", "sowed", { variety: "musselburgh", nursery: true, count: 30 }],
  ["2026-05-30", "planted", { variety: "musselburgh", bed: "long-bed", count: 24, spacingCm: 20 }],
  ["2026-06-02", "lost", { variety: "musselburgh", bed: "long-bed", count: 3, cause: "leek moth" }],
  ["2026-07-12", "measured", { variety: "musselburgh", bed: "long-bed", heightCm: 34 }],
  ["2026-07-13", "picked", { variety: "musselburgh", bed: "long-bed", count: 2, verb: "lifted", grams: 300 }],
];
const varieties = { musselburgh: { sayAs: "MUSSEL-bruh", source: { name: "Drift Lane Seeds" } } };

describe("the timeline of a bed as data", () => {
  test("has just these fields", () => {
    expect(timelineView(grow({ lines, varieties }), "long-bed", { on: "2026-07-18", since: "2026-06-01" })).toEqual({
      bed: "long-bed",
      on: "2026-07-18",
      since: "2026-06-01",
      plantings: [
        {
          id: "long-bed/musselburgh/2026-05-30",
          variety: "musselburgh",
          crop: "leek",
          count: 19,
          sown: "2026-03-12",
          planted: "2026-05-30",
          ageDays: 128,
          daysInGround: 49,
          stage: "picking",
          stageSince: "2026-07-13",
          heightCm: 34,
          heightOn: "2026-07-12",
          picked: { grams: 300, count: 2, times: 1 },
          source: "Drift Lane Seeds",
          sayAs: "MUSSEL-bruh",
          lastNote: { file: "notes/2026-07-13.md", line: 7 },
        },
      ],
      changes: [
        {
          kind: "lost",
          date: "2026-06-02",
          planting: "long-bed/musselburgh/2026-05-30",
          text: "Three Musselburgh leeks were lost to leek moth.",
          note: { file: "notes/2026-06-02.md", line: 5 },
        },
        {
          kind: "grew",
          date: "2026-07-12",
          planting: "long-bed/musselburgh/2026-05-30",
          text: "The Musselburgh leeks stood 34 cm tall.",
          note: { file: "notes/2026-07-12.md", line: 6 },
        },
        {
          kind: "picked",
          date: "2026-07-13",
          planting: "long-bed/musselburgh/2026-05-30",
          text: "The first two Musselburgh leeks were lifted, 300 g.",
          note: { file: "notes/2026-07-13.md", line: 7 },
        },
      ],
    });
  });

  test("without a first day goes back to the beginning", () => {
    const view = timelineView(grow({ lines }), "long-bed", { on: "2026-05-30" });
    expect(view.since).toBeNull();
    expect(view.plantings.map(({ variety, stage, daysInGround }) => [variety, stage, daysInGround])).toEqual([
      ["black-beauty", "finished", 122],
      ["musselburgh", "growing", 0],
    ]);
    expect(view.changes.map(({ kind }) => kind)).toEqual(["planted", "cleared", "planted"]);
  });

  test("says null for what nobody knows", () => {
    const garden = grow({ lines: [["2026-07-01", "picked", { crop: "courgette", bed: "long-bed", grams: 500 }]] });
    expect(timelineView(garden, "long-bed", { on: "2026-07-18" }).plantings).toMatchObject([
      {
        variety: null,
        crop: "courgette",
        count: null,
        sown: null,
        planted: null,
        ageDays: null,
        daysInGround: null,
        heightCm: null,
        source: null,
        sayAs: null,
      },
    ]);
  });

  test("does not add stems to bunches", () => {
    const garden = grow({
      lines: [
        ["2026-05-01", "planted", { variety: "matucana", bed: "long-bed", plantsFrom: "bought" }],
        ["2026-07-01", "picked", { variety: "matucana", bed: "long-bed", count: 12, unit: "stem" }],
        ["2026-07-08", "picked", { variety: "matucana", bed: "long-bed", count: 2, unit: "bunch" }],
      ],
    });
    expect(timelineView(garden, "long-bed", { on: "2026-07-02" }).plantings[0]?.picked).toEqual({
      grams: 0,
      count: 12,
      times: 1,
    });
    expect(timelineView(garden, "long-bed", { on: "2026-07-18" }).plantings[0]?.picked).toEqual({
      grams: 0,
      count: null,
      times: 2,
    });
  });

  test("of a bed nobody knows is empty", () => {
    expect(timelineView(grow({ lines }), "nowhere", { on: "2026-07-18" })).toEqual({
      bed: "nowhere",
      on: "2026-07-18",
      since: null,
      plantings: [],
      changes: [],
    });
  });
});
