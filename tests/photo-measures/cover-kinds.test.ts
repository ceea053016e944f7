import { expect, test } from "vitest";
import { coverErrors, coverKinds, fleeceTold } from "../../scripts/truth/cover.ts";

test.each(coverKinds.map((kind) => [kind.kind, kind] as const))("cover of %s keeps to its goal", (_, kind) => {
  const { cases, unsure, mean, worst } = coverErrors(kind);
  expect(cases).toBe(12);
  // What is not told has to be what cannot be known: no kind gets its errors down by saying nothing.
  expect(unsure).toBe(kind.goal.untold ?? 0);
  expect(mean).toBeLessThanOrEqual(kind.goal.mean);
  expect(worst).toBeLessThanOrEqual(kind.goal.worst);
});

test("what lies under fleece or white net is told from every other kind that is drawn", () => {
  expect(fleeceTold()).toEqual({ cases: 82, right: 82 });
});
