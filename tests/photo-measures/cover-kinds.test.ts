import { expect, test } from "vitest";
import { coverErrors, coverKinds, fleeceTold } from "../../scripts/truth/cover.ts";

test.each(coverKinds.flatMap((kind) => (kind.goal === undefined ? [] : [[kind.kind, kind] as const])))(
  "cover of %s keeps to its goal",
  (_, kind) => {
    const { cases, mean, worst } = coverErrors(kind);
    expect(cases).toBe(12);
    expect(mean).toBeLessThanOrEqual(kind.goal?.mean ?? 0);
    expect(worst).toBeLessThanOrEqual(kind.goal?.worst ?? 0);
  },
);

test("fleece is told from every ground that is drawn", () => {
  expect(fleeceTold()).toEqual({ cases: 39, right: 39 });
});
