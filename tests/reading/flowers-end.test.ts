/** What has finished flowering is not in its first flower. */
import { expect, it } from "vitest";
import { reading } from "./a-reader.ts";

it.each([
  "Santa Rosa plum has finished flowering",
  "the plums have finished flowering",
  "broad beans done blooming",
  "Aquadulce finished flowering in Long Bed",
])("%s", (text) => {
  const { as, events, readings } = reading(text);
  const kinds = [...events, ...readings.flatMap((one) => one.events)].map(({ kind }) => kind);
  expect(as).not.toBe("story");
  expect(kinds).not.toContain("flowered");
});

it("is told from flowering", () => {
  expect(reading("the plums are flowering").events.map(({ kind }) => kind)).toEqual(["flowered"]);
});
