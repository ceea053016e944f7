import fc from "fast-check";
import { expect, test } from "vitest";
import { betweenDays } from "../src/order.ts";

const day = fc.integer({ min: 1, max: 28 }).map((date) => `2026-02-${String(date).padStart(2, "0")}`);

test("things between two days are those that going through all of them finds", () => {
  fc.assert(
    fc.property(fc.array(day), day, day, (days, from, to) => {
      const ordered = days.sort().map((one, at) => ({ day: one, at }));
      expect(betweenDays(ordered, from, to)).toEqual(ordered.filter((one) => one.day >= from && one.day <= to));
      expect(betweenDays(ordered, "", to)).toEqual(ordered.filter((one) => one.day <= to));
    }),
  );
});
