import { describe, expect, test } from "vitest";
import { plantsOf } from "../../src/facts/index.ts";
import { state } from "../../src/timeline/index.ts";
import { grow, type Line, type Said } from "../timeline/small-garden.ts";

const on = "2026-09-18";
const sown = (said: Said): Line => ["2026-04-12", "sowed", { variety: "boltardy", bed: "long-bed", ...said }];
const of = (day: string, kind: Line[1], said: Said): Line => [
  day,
  kind,
  { variety: "boltardy", bed: "long-bed", ...said },
];

function plants(...lines: readonly Line[]) {
  const garden = grow({ lines });
  const planting = state(garden, "long-bed", on).plantings.at(-1);
  if (planting === undefined) throw new Error("Nothing grew in Long Bed.");
  return plantsOf(garden, planting, on).value;
}

describe("the plants of a planting", () => {
  test("are nobody's guess while only seeds were counted, thinned or not", () => {
    expect(plants(sown({ count: 200 }))).toEqual({});
    expect(plants(sown({ count: 200 }), of("2026-05-10", "thinned", { spacingCm: 10 }))).toEqual({});
    expect(
      plants(sown({ count: 200 }), of("2026-05-10", "thinned", { count: 1, text: "thinned to one a station" })),
    ).toEqual({});
  });

  test("are those it was thinned to, however many seeds there were", () => {
    const thinned = of("2026-05-10", "thinned", { count: 60, text: "thinned to 60" });
    const sixty = { value: 60, approx: false };
    expect(plants(sown({ count: 200 }), thinned)).toEqual({ alive: sixty, begun: sixty, borne: 60 });
    expect(plants(sown({ count: { value: 200, approx: true } }), thinned)).toMatchObject({ begun: sixty, borne: 60 });
    expect(plants(sown({}), thinned)).toMatchObject({ begun: sixty, borne: 60 });
  });

  test("that were lost or taken up were there to bear; those that left the bed were not", () => {
    const thinned = of("2026-05-10", "thinned", { count: 60, text: "thinned to 60" });
    const lost = of("2026-05-20", "lost", { count: 5, cause: "slugs" });
    const lifted = of("2026-07-20", "picked", { count: 20, verb: "lifted" });
    const given = of("2026-07-01", "gave away", { count: 3 });
    expect(plants(sown({ count: 200 }), thinned, lost, given, lifted)).toEqual({
      alive: { value: 32, approx: false },
      begun: { value: 57, approx: false },
      borne: 57,
    });
  });

  test("are not known where nobody counted", () => {
    expect(
      plants(["2026-05-24", "planted", { variety: "nero-di-toscana", bed: "long-bed", plantsFrom: "bought" }]),
    ).toEqual({
      alive: undefined,
      begun: undefined,
      borne: undefined,
    });
  });
});
