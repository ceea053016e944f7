import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf } from "./small-garden.ts";

const arch: Line = ["2026-05-30", "put up", { bed: "bean-row", gear: "hazel-arch" }];
const gear = { "hazel-arch": { title: "Hazel arch" }, mesh: { title: "Fine mesh" } };

describe("gear", () => {
  test("stands in its bed from being put up until it is taken down", () => {
    const garden = grow({ gear, lines: [arch, ["2026-10-04", "took down", { bed: "bean-row", gear: "hazel-arch" }]] });
    expect(state(garden, "bean-row", "2026-05-29").gear).toEqual([]);
    expect(state(garden, "bean-row", "2026-05-30").gear).toEqual(["hazel-arch"]);
    expect(state(garden, "bean-row", "2026-10-04").gear).toEqual([]);
    expect(garden.changes.get("bean-row")?.map(({ text }) => text)).toEqual([
      "The hazel arch went up.",
      "The hazel arch came down.",
    ]);
  });

  test("without a bed comes down where it stands", () => {
    const garden = grow({ gear, lines: [arch, ["2026-10-04", "took down", { gear: "hazel-arch" }]] });
    expect(state(garden, "bean-row", "2026-10-04").gear).toEqual([]);
    expect(garden.problems).toEqual([]);
  });

  test("that is moved stands in the new bed only when the notes say so", () => {
    const garden = grow({ gear, lines: [arch, ["2026-06-04", "took down", { bed: "long-bed", gear: "mesh" }]] });
    expect(rulesOf(garden.problems)).toEqual(["timeline/gear-not-there"]);
  });

  test("carries plantings, until it is gone", () => {
    const garden = grow({
      gear,
      lines: [
        arch,
        [
          "2026-05-30",
          "planted",
          { variety: "crown-prince", bed: "bean-row", count: 2, gear: "hazel-arch", plantsFrom: "bought" },
        ],
        ["2026-09-04", "took down", { bed: "bean-row", gear: "hazel-arch" }],
      ],
    });
    expect(state(garden, "bean-row", "2026-06-01").plantings[0]?.gear).toBe("hazel-arch");
    expect(state(garden, "bean-row", "2026-09-04").plantings[0]?.gear).toBeUndefined();
    expect(garden.changes.get("bean-row")?.[1]?.text).toBe(
      "Two bought-in Crown Prince squash went in, on the hazel arch.",
    );
  });
});

test("a line that can be of one bed only is of the first its note is about, with a hint", () => {
  const garden = grow({
    noteBeds: { "notes/2026-05-30.md": ["long-bed", "tunnel"] },
    lines: [["2026-05-30", "soil test", { ph: 6.4 }]],
  });
  expect(state(garden, "long-bed", "2026-05-30").soilPh?.ph).toBe(6.4);
  expect(state(garden, "tunnel", "2026-05-30").soilPh).toBeUndefined();
  expect(rulesOf(garden.problems)).toEqual(["timeline/several-beds"]);
});

describe("a bed", () => {
  test("tells what it is built of and filled with, and since when", () => {
    const garden = grow({
      beds: {
        "long-bed": {
          inUseSince: "2023-03-11",
          built: [{ what: "larch boards", day: "2023-03-01" }],
          filled: [
            { what: "garden compost" },
            { what: "leaf mould", day: "2026-03" },
            { what: "top-dressed with grit", day: "2026-04-01" },
          ],
        },
      },
      lines: [],
    });
    expect(garden.changes.get("long-bed")?.map(({ kind, day, text }) => [kind, day, text])).toEqual([
      ["did", "2023-03-01", "Long Bed was built of larch boards."],
      ["new", "2023-03-11", "Long Bed came into use."],
      ["did", "2026-03-01", "Long Bed was filled with leaf mould."],
      ["did", "2026-04-01", "Long Bed was top-dressed with grit."],
    ]);
    expect(state(garden, "long-bed", "2026-03-15")).toMatchObject({
      built: [{ what: "larch boards" }],
      filled: [{ what: "garden compost" }, { what: "leaf mould" }],
    });
  });

  test("that was not in use when it was planted is reported", () => {
    const garden = grow({
      beds: { "long-bed": { inUseSince: "2025-03-01", inUseUntil: "2026-10-01" } },
      lines: [
        ["2024-04-02", "sowed", { variety: "boltardy", bed: "long-bed" }],
        ["2026-11-02", "sowed", { variety: "aquadulce", bed: "long-bed" }],
      ],
    });
    expect(rulesOf(garden.problems).filter((rule) => rule === "timeline/bed-not-in-use")).toHaveLength(2);
  });

  test("keeps its last soil test", () => {
    const garden = grow({
      lines: [
        ["2025-03-08", "soil test", { bed: "long-bed", ph: 6.1 }],
        ["2026-03-08", "soil test", { bed: "long-bed", ph: 6.4, detail: "with the drops" }],
      ],
    });
    expect(state(garden, "long-bed", "2025-12-01").soilPh).toEqual({ ph: 6.1, day: "2025-03-08" });
    expect(state(garden, "long-bed", "2026-12-01").soilPh).toEqual({ ph: 6.4, day: "2026-03-08" });
    expect(garden.changes.get("long-bed")?.at(1)?.text).toBe("The soil tested at pH 6.4, with the drops.");
  });
});
