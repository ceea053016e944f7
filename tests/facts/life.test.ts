/** The life of a planting, above all of one that was moved: every output draws it from here. */
import { describe, expect, test } from "vitest";
import { lifeOf } from "../../src/facts/index.ts";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line } from "../timeline/small-garden.ts";

const today = "2026-10-18";
const leeks = { variety: "musselburgh" };

function life(lines: readonly Line[], bed: string, on = today) {
  const garden = grow({ lines });
  const planting = state(garden, bed, on).plantings.at(-1);
  if (planting === undefined) throw new Error(`Nothing grew in ${bed}.`);
  return lifeOf(garden, planting, on);
}

const sown: Line = ["2026-03-12", "sowed", { ...leeks, nursery: true, count: 30 }];
const planted: Line = ["2026-05-30", "planted", { ...leeks, bed: "long-bed", count: 24 }];
const moved: Line = ["2026-07-12", "moved", { ...leeks, bed: "long-bed", toBed: "bean-row" }];
const some: Line = ["2026-07-12", "moved", { ...leeks, bed: "long-bed", toBed: "bean-row", count: 5 }];
const picked: Line = ["2026-09-20", "picked", { ...leeks, bed: "bean-row", grams: 900 }];

describe("a planting that stays in its bed", () => {
  test("is raised until it is planted, and stands until it ends or the day asked for", () => {
    expect(life([sown, planted], "long-bed").value).toEqual({
      sown: "2026-03-12",
      planted: "2026-05-30",
      raised: { from: "2026-03-12", to: "2026-05-30" },
      before: [],
      movedFrom: undefined,
      stood: { from: "2026-05-30", to: today },
      pickings: [],
      over: undefined,
    });
    const cleared: Line = ["2026-09-30", "cleared", { ...leeks, bed: "long-bed" }];
    const whole = [sown, planted, cleared];
    expect(life(whole, "long-bed").value).toMatchObject({
      stood: { to: "2026-09-30" },
      over: { day: "2026-09-30", by: "end" },
    });
    expect(life(whole, "long-bed", "2026-09-29").value.over).toBeUndefined();
    const lost: Line = ["2026-08-02", "lost", { ...leeks, bed: "long-bed" }];
    expect(life([sown, planted, lost], "long-bed").value.over).toEqual({ day: "2026-08-02", by: "loss" });
  });

  test("that was sown in it was neither raised nor set out", () => {
    expect(life([["2026-06-12", "sowed", { variety: "boltardy", bed: "long-bed" }]], "long-bed").value).toMatchObject({
      sown: "2026-06-12",
      planted: undefined,
      raised: undefined,
      stood: { from: "2026-06-12", to: today },
    });
  });

  test("that came as plants was planted, and nobody raised it here", () => {
    const came: Line = ["2026-05-30", "planted", { ...leeks, bed: "long-bed", plantsFrom: "bought" }];
    expect(life([came], "long-bed").value).toMatchObject({ planted: "2026-05-30", raised: undefined, sown: undefined });
  });
});

describe("a planting that was moved", () => {
  test("stood in the other bed until then, and is not called raised there", () => {
    expect(life([sown, planted, moved, picked], "bean-row").value).toEqual({
      sown: "2026-03-12",
      planted: "2026-05-30",
      raised: undefined,
      before: [{ bed: "long-bed", from: "2026-05-30", to: "2026-07-12" }],
      movedFrom: { bed: "long-bed" },
      stood: { from: "2026-07-12", to: today },
      pickings: ["2026-09-20"],
      over: undefined,
    });
  });

  test("leaves a planting behind that goes on in the new bed, or, of some of its plants, stays", () => {
    const left = life([sown, planted, moved], "long-bed").value;
    expect(left).toMatchObject({
      raised: { from: "2026-03-12", to: "2026-05-30" },
      stood: { from: "2026-05-30", to: "2026-07-12" },
      over: { day: "2026-07-12", by: "move", into: { id: "bean-row/musselburgh/2026-07-12" } },
    });
    expect(life([sown, planted, some], "long-bed").value).toMatchObject({ stood: { to: today }, over: undefined });
    const later: Line = ["2026-09-30", "cleared", { ...leeks, bed: "long-bed" }];
    expect(life([sown, planted, some, later], "long-bed").value.over).toEqual({ day: "2026-09-30", by: "end" });
  });

  test("twice has each bed in turn", () => {
    const again: Line = ["2026-08-20", "moved", { ...leeks, bed: "bean-row", toBed: "tunnel" }];
    expect(life([sown, planted, moved, again], "tunnel").value.before).toEqual([
      { bed: "long-bed", from: "2026-05-30", to: "2026-07-12" },
      { bed: "bean-row", from: "2026-07-12", to: "2026-08-20" },
    ]);
  });

  test("as a seedling was raised in the bed where it was sown, and set out that day", () => {
    const here: Line = ["2026-04-10", "sowed", { ...leeks, bed: "long-bed" }];
    const out: Line = ["2026-06-20", "moved", { ...leeks, bed: "long-bed", toBed: "bean-row", count: 20 }];
    const on: Line = ["2026-08-20", "moved", { ...leeks, bed: "bean-row", toBed: "tunnel" }];
    expect(life([here, out], "bean-row").value).toMatchObject({
      planted: "2026-06-20",
      raised: { from: "2026-04-10", to: "2026-06-20" },
      before: [],
      movedFrom: { bed: "long-bed" },
    });
    expect(life([here, out, on], "tunnel").value).toMatchObject({
      planted: "2026-06-20",
      raised: undefined,
      before: [{ bed: "bean-row", from: "2026-06-20", to: "2026-08-20" }],
    });
  });

  test("and stood before anybody wrote of it was not planted on the day of its move", () => {
    const found: Line = ["2026-05-01", "picked", { variety: "victoria", bed: "long-bed", grams: 600 }];
    const away: Line = ["2026-09-12", "moved", { variety: "victoria", bed: "long-bed", toBed: "bean-row" }];
    expect(life([found, away], "bean-row").value).toMatchObject({
      planted: undefined,
      before: [{ bed: "long-bed", from: "2026-05-01", to: "2026-09-12" }],
      pickings: [],
    });
  });
});

test("a life rests on the line that began it, in whichever bed, and on its pickings, and is as private as they are", () => {
  const files = ({ sources }: ReturnType<typeof life>) => sources.map(({ file }) => file);
  const lines = [sown, planted, moved, picked];
  expect(files(life(lines, "bean-row"))).toEqual(["notes/2026-05-30.md", "notes/2026-09-20.md"]);
  expect(life(lines, "bean-row").private).toBe(false);
  for (const secret of [1, 3]) {
    const hidden = lines.map(
      (line, index): Line => (index === secret ? [line[0], line[1], { ...line[2], private: true }] : line),
    );
    expect(life(hidden, "bean-row").private, `line ${secret}`).toBe(true);
  }
  expect(files(life(lines, "bean-row", "2026-09-19"))).toEqual(["notes/2026-05-30.md"]);
});
