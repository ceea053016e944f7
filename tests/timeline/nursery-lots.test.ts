import { describe, expect, test } from "vitest";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, rulesOf, told } from "./small-garden.ts";

const sowed = (day: string, count?: number, variety = "musselburgh"): Line => [
  day,
  "sowed",
  { variety, nursery: true, ...(count === undefined ? {} : { count }) },
];
const planted = (day: string, count?: number, said: object = {}): Line => [
  day,
  "planted",
  { variety: "musselburgh", bed: "long-bed", ...(count === undefined ? {} : { count }), ...said },
];

function plantingsOf(lines: readonly Line[]) {
  const garden = grow({ lines });
  const changes = [...garden.changes.values()].flat();
  return {
    garden,
    plantings: changes.filter((change) => change.kind === "planted").flatMap((change) => change.effect.plantings ?? []),
  };
}

describe("a nursery lot", () => {
  test("gives a planting its sowing day, and closes when it is empty", () => {
    const { garden, plantings } = plantingsOf([
      sowed("2026-03-12", 24),
      planted("2026-05-30", 20),
      ["2026-04-20", "lost", { variety: "musselburgh", count: 4, cause: "damping off" }],
    ]);
    expect(plantings[0]?.sown).toBe("2026-03-12");
    const [lot] = garden.nurseryLots;
    expect(lot).toMatchObject({ left: 0, closed: "2026-05-30" });
    expect(lot?.taken.map(({ to, count }) => [to, count])).toEqual([
      ["lost", 4],
      ["planted", 20],
    ]);
    expect(garden.problems).toEqual([]);
  });

  test("is drawn from oldest first, and the next one after it", () => {
    const { garden, plantings } = plantingsOf([
      sowed("2026-03-12", 10),
      sowed("2026-04-12", 10),
      planted("2026-05-30", 8),
      planted("2026-06-10", 6),
    ]);
    expect(plantings.map(({ sown }) => sown)).toEqual(["2026-03-12", "2026-03-12"]);
    expect(garden.nurseryLots.map(({ left }) => left)).toEqual([0, 6]);
    expect(garden.problems).toEqual([]);
  });

  test("gives no plants on the day it is sown", () => {
    const { plantings } = plantingsOf([sowed("2026-03-01", 12), sowed("2026-05-30", 12), planted("2026-05-30", 12)]);
    expect(plantings[0]?.sown).toBe("2026-03-01");
  });

  test("says when it was up and potted on", () => {
    const garden = grow({
      lines: [
        sowed("2026-03-12", 24),
        ["2026-03-22", "up", { variety: "musselburgh" }],
        ["2026-04-18", "potted on", { variety: "musselburgh" }],
      ],
    });
    expect(garden.nurseryLots[0]).toMatchObject({ up: "2026-03-22", pottedOn: "2026-04-18", left: 24 });
    expect(garden.changes.size).toBe(0);
  });

  test("of an annual is closed when nobody planted it for most of a year", () => {
    const { garden } = plantingsOf([
      sowed("2025-03-12", 24),
      planted("2025-05-30", 20),
      sowed("2026-03-12", 24),
      planted("2026-05-30", 20),
    ]);
    expect(garden.nurseryLots.map(({ left, closed }) => [left, closed])).toEqual([
      [4, "2025-12-07"],
      [4, undefined],
    ]);
    expect(garden.problems).toEqual([]);
  });
});

describe("plants are conserved", () => {
  test("more planted than sown is believed and reported", () => {
    const { garden, plantings } = plantingsOf([sowed("2026-03-12", 9), planted("2026-05-30", 12)]);
    expect(plantings[0]).toMatchObject({ count: { value: 12 }, sown: "2026-03-12" });
    expect(garden.nurseryLots[0]?.left).toBe(0);
    expect(garden.problems).toEqual([
      {
        rule: "timeline/more-than-sown",
        severity: "warning",
        file: "notes/2026-05-30.md",
        line: 2,
        column: 1,
        what: "Twelve Musselburgh leeks were planted, but only nine were left of the sowing of 12 March.",
        fix: 'Correct the count here or in the "sowed" line, or write "bought" or "given" before the name if plants came from elsewhere.',
      },
    ]);
  });

  test("planting from a lot that is used up is reported too", () => {
    const { garden, plantings } = plantingsOf([
      sowed("2026-03-12", 12),
      planted("2026-05-30", 12),
      planted("2026-06-02", 3),
    ]);
    expect(plantings[1]?.sown).toBeUndefined();
    expect(told(garden.problems)).toEqual([
      "timeline/more-than-sown: Three Musselburgh leeks were planted, but none was left of the sowing of 12 March.",
    ]);
  });

  test("bought and given plants come from elsewhere", () => {
    const { garden } = plantingsOf([
      sowed("2026-03-12", 9),
      planted("2026-05-30", 12, { plantsFrom: "bought" }),
      planted("2026-05-31", 3, { plantsFrom: "given" }),
    ]);
    expect(garden.nurseryLots[0]?.left).toBe(9);
    expect(garden.problems).toEqual([]);
  });

  test("where a count is a guess nothing can be proved", () => {
    const about = { value: 20, approx: true };
    const { garden } = plantingsOf([
      ["2026-03-12", "sowed", { variety: "musselburgh", nursery: true, count: about }],
      planted("2026-05-30", 22),
    ]);
    expect(garden.problems).toEqual([]);
  });

  test("of a range the lot holds the upper end", () => {
    const { garden } = plantingsOf([
      ["2026-03-12", "sowed", { variety: "musselburgh", nursery: true, count: { value: 8, upTo: 10, approx: true } }],
      planted("2026-05-30", 10),
    ]);
    expect(garden.nurseryLots[0]).toMatchObject({ left: 0, closed: "2026-05-30" });
    expect(garden.problems).toEqual([]);
  });

  test("losses and gifts are drawn like plantings", () => {
    const garden = grow({
      lines: [
        sowed("2026-03-12", 10),
        ["2026-04-01", "lost", { variety: "musselburgh", count: 8 }],
        ["2026-04-02", "gave away", { variety: "musselburgh", count: 4 }],
      ],
    });
    expect(told(garden.problems)).toEqual([
      "timeline/more-than-sown: Four Musselburgh leeks were given away, but only two were left of the sowing of 12 March.",
    ]);
  });

  test("spare seedlings are given away before plants in a bed", () => {
    const garden = grow({
      lines: [
        sowed("2026-03-12", 60),
        planted("2026-05-30", 48),
        ["2026-05-31", "gave away", { variety: "musselburgh", count: 10 }],
      ],
    });
    expect(garden.nurseryLots[0]?.left).toBe(2);
    expect(garden.problems).toEqual([]);
  });

  test("from a bed that the line names, they are plants of that bed", () => {
    const garden = grow({
      lines: [
        sowed("2026-03-12", 60),
        planted("2026-05-30", 48),
        ["2026-05-31", "gave away", { variety: "musselburgh", bed: "long-bed", count: 10 }],
      ],
    });
    expect(garden.nurseryLots[0]?.left).toBe(12);
    expect(state(garden, "long-bed", "2026-05-31").plantings[0]?.count?.value).toBe(38);
    expect(garden.problems).toEqual([]);
  });
});

describe("what nobody counted", () => {
  test("a lot without a count never runs short", () => {
    const { garden, plantings } = plantingsOf([
      sowed("2026-03-12"),
      planted("2026-05-30", 12),
      planted("2026-06-01", 40),
    ]);
    expect(plantings.map(({ sown }) => sown)).toEqual(["2026-03-12", "2026-03-12"]);
    expect(garden.nurseryLots[0]?.left).toBeUndefined();
    expect(garden.problems).toEqual([]);
  });

  test("a younger lot follows an uncounted one three weeks after that was first planted from", () => {
    const { plantings } = plantingsOf([
      sowed("2026-03-12"),
      sowed("2026-04-12"),
      planted("2026-05-01"),
      planted("2026-05-10"),
      planted("2026-06-01"),
    ]);
    expect(plantings.map(({ sown }) => sown)).toEqual(["2026-03-12", "2026-03-12", "2026-04-12"]);
  });

  test("a planting without a count leaves the rest of the lot unknown", () => {
    const { garden, plantings } = plantingsOf([
      sowed("2026-03-12", 24),
      planted("2026-05-30"),
      planted("2026-06-01", 30),
    ]);
    expect(plantings[0]?.count).toBeUndefined();
    expect(garden.nurseryLots[0]?.left).toBeUndefined();
    expect(garden.problems).toEqual([]);
  });
});

describe("plants without a sowing", () => {
  test("of a crop that is raised give a hint", () => {
    const { garden } = plantingsOf([planted("2026-05-30", 12)]);
    expect(told(garden.problems)).toEqual([
      "timeline/no-sowing: No line says when the Musselburgh leeks planted on 30 May were sown.",
    ]);
  });

  test("of sets, tubers and perennials give none", () => {
    const garden = grow({
      lines: [
        ["2026-03-12", "planted", { variety: "solent", bed: "long-bed", count: 30 }],
        ["2026-04-12", "planted", { variety: "charlotte", bed: "long-bed", count: 12 }],
        ["2026-04-12", "planted", { variety: "victoria", bed: "long-bed", count: 1 }],
      ],
    });
    expect(garden.problems).toEqual([]);
  });

  test("that name only a crop are those of the one variety in the nursery", () => {
    const garden = grow({
      lines: [sowed("2026-03-12", 24), ["2026-05-30", "planted", { crop: "leek", bed: "long-bed", count: 12 }]],
    });
    expect(garden.changes.get("long-bed")?.[0]?.effect.plantings?.[0]).toMatchObject({
      variety: "musselburgh",
      sown: "2026-03-12",
    });
    expect(rulesOf(garden.problems)).toEqual(["timeline/variety-from-nursery"]);
  });

  test("that name only a crop, of which two kinds wait, are of no known variety", () => {
    const garden = grow({
      lines: [
        sowed("2026-03-12", 6, "gardeners-delight"),
        sowed("2026-03-12", 6, "ailsa-craig"),
        ["2026-05-30", "planted", { crop: "tomato", bed: "tunnel", count: 4 }],
      ],
    });
    expect(garden.changes.get("tunnel")?.[0]?.effect.plantings?.[0]).toMatchObject({
      variety: undefined,
      crop: "tomato",
    });
  });

  test("can come from a seedbed, as leeks do", () => {
    const garden = grow({
      lines: [
        ["2026-03-20", "sowed", { variety: "musselburgh", bed: "bean-row", count: 60 }],
        planted("2026-06-10", 24),
      ],
    });
    expect(garden.problems).toEqual([]);
    expect(garden.changes.get("long-bed")?.map(({ text }) => text)[0]).toBe(
      "24 Musselburgh leeks went in, raised from the sowing of 20 March in Bean Row.",
    );
    expect(garden.changes.get("bean-row")?.[1]).toMatchObject({
      kind: "moved",
      text: "24 Musselburgh leeks moved to Long Bed.",
      effect: { plantings: [{ count: { value: 36 }, movedOut: 24 }] },
    });
  });
});

describe("a seedbed", () => {
  const lines: Line[] = [
    ["2026-03-20", "sowed", { variety: "musselburgh", bed: "bean-row", count: 60 }],
    planted("2026-06-10", 24),
  ];

  test("that held fewer seedlings is reported", () => {
    const garden = grow({ lines: [...lines.slice(0, 1), planted("2026-06-10", 70)] });
    expect(told(garden.problems)).toEqual([
      "timeline/more-than-there: 70 Musselburgh leeks were planted, but only 60 stood in Bean Row, where they were sown.",
    ]);
  });

  test("with seedlings left over is not what later lines speak of", () => {
    const garden = grow({ lines: [...lines, ["2026-07-01", "measured", { variety: "musselburgh", heightCm: 20 }]] });
    expect(garden.changes.get("long-bed")?.at(-2)?.text).toBe("The Musselburgh leeks stood 20 cm tall.");
    expect(garden.problems).toEqual([]);
  });
});

describe("a lot that stands in a bed of its own", () => {
  test("is told there when the line names it", () => {
    const garden = grow({
      noteBeds: { "notes/2026-03-12.md": ["long-bed"] },
      lines: [
        [
          "2026-03-12",
          "sowed",
          { variety: "musselburgh", count: 24, nursery: true, bed: "tunnel", text: "sowed 24 in trays in Tunnel" },
        ],
        ["2026-03-24", "up", { variety: "musselburgh" }],
      ],
    });
    expect(garden.nurseryLots[0]?.bed).toBe("tunnel");
    expect(garden.changes.get("tunnel")?.map(({ kind, text }) => [kind, text])).toEqual([
      ["sown", "24 Musselburgh leeks were sown."],
      ["up", "The Musselburgh leeks came up."],
    ]);
  });

  test("is not told in the bed that only its note is about", () => {
    const garden = grow({
      noteBeds: { "notes/2026-03-12.md": ["long-bed"] },
      lines: [
        [
          "2026-03-12",
          "sowed",
          { variety: "musselburgh", count: 24, nursery: true, bed: "long-bed", text: "sowed 24 indoors" },
        ],
      ],
    });
    expect(garden.changes.size).toBe(0);
  });
});

test("a sowing that says neither bed nor indoors is taken as indoors", () => {
  const garden = grow({ lines: [["2026-03-12", "sowed", { variety: "musselburgh", count: 24 }]] });
  expect(garden.nurseryLots).toHaveLength(1);
  expect(rulesOf(garden.problems)).toEqual(["timeline/sown-where"]);
});

test("a planting without a bed leaves the nursery and stands nowhere", () => {
  const garden = grow({
    lines: [sowed("2026-03-12", 24), ["2026-05-30", "planted", { variety: "musselburgh", count: 4 }]],
  });
  expect(garden.nurseryLots[0]?.left).toBe(20);
  expect(garden.changes.size).toBe(0);
  expect(rulesOf(garden.problems)).toEqual(["timeline/no-bed"]);
});
