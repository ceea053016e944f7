import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Fitting, fitToTarget } from "../../src/films/fit.ts";

const fitting = fc.record({
  stop: fc.constantFrom("long-bed", "bean-row", "yard"),
  seconds: fc.integer({ min: 1, max: 40 }),
  value: fc.integer({ min: 0, max: 20 }),
  must: fc.boolean().map((yes) => yes),
});
const OVERHEAD: Record<string, number> = { "long-bed": 10, "bean-row": 25, yard: 0 };
const overhead = (stop: string) => OVERHEAD[stop] ?? 0;

/** Every choice there is: the reference for the dynamic programme. */
function exhaustive(candidates: readonly Fitting[], target: number): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let choice = 0; choice < 1 << candidates.length; choice += 1) {
    const chosen = candidates.filter((_, index) => (choice & (1 << index)) !== 0);
    if (candidates.some((candidate) => candidate.must && !chosen.includes(candidate))) continue;
    const stops = new Set(chosen.map((candidate) => candidate.stop));
    const seconds =
      chosen.reduce((total, candidate) => total + candidate.seconds, 0) +
      [...stops].reduce((total, stop) => total + overhead(stop), 0);
    if (seconds > target && chosen.some((candidate) => !candidate.must)) continue;
    best = Math.max(
      best,
      chosen.reduce((total, candidate) => total + candidate.value, 0),
    );
  }
  return best;
}

describe("fitting the film's length", () => {
  it("is as good as trying every choice", () => {
    fc.assert(
      fc.property(fc.array(fitting, { maxLength: 9 }), fc.integer({ min: 0, max: 160 }), (drawn, target) => {
        const candidates = drawn.map((one, index) => ({ ...one, id: `c${index}` }));
        const fit = fitToTarget(candidates, target, overhead);
        expect(fit.value).toBe(exhaustive(candidates, target));
        for (const candidate of candidates) if (candidate.must) expect(fit.chosen).toContain(candidate.id);
        if (fit.over === 0) expect(fit.seconds).toBeLessThanOrEqual(target);
      }),
      { numRuns: 400 },
    );
  });

  it("keeps the must-shows and says by how much they are over", () => {
    const must = { id: "owed", stop: "long-bed", seconds: 50, value: 1, must: true };
    const could = { id: "mint", stop: "long-bed", seconds: 5, value: 9, must: false };
    expect(fitToTarget([must, could], 40, overhead)).toEqual({ chosen: ["owed"], seconds: 60, value: 1, over: 20 });
  });

  it("has nothing to say of nothing", () => {
    expect(fitToTarget([], 600, overhead)).toEqual({ chosen: [], seconds: 0, value: 0, over: 0 });
  });
});
