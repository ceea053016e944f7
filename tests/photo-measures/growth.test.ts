import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { measureByStake, plantHeights, withinGoal } from "../../scripts/truth/heights.ts";
import { type GrowthPoint, growthSeries, weeklyGrowth } from "../../src/photos/growth-series.ts";
import { heightByStake } from "../../src/photos/stake-height.ts";
import { demoPhotos } from "./demo-truth.ts";

describe("height by a marked stake", () => {
  const stake = { foot: [500, 800], top: [500, 400], lengthCm: 120 } as const;

  test("a point beside the stake", () => {
    expect(heightByStake(stake, [430, 600])?.heightCm).toBeCloseTo(60, 10);
  });

  test("a leaning camera leans the stake; heights go along it", () => {
    const turned = { foot: [500, 800], top: [540, 402], lengthCm: 120 } as const;
    const half: [number, number] = [520, 601];
    expect(heightByStake(turned, half)?.heightCm).toBeCloseTo(60, 6);
    // Level with the stake's half means square to it, not level with the frame.
    expect(heightByStake(turned, [520 - 39.8, 601 - 4])?.heightCm).toBeCloseTo(60, 6);
  });

  test("uncertainty: three marked points, the plant's own distance below the camera, the camera's pitch", () => {
    // 3 px at 0.3 cm a pixel, times the square root of 1 + 0.25 + 0.25; the bend of half a stake of 120 cm.
    const [marking, pitch] = [0.9 * Math.sqrt(1.5), 0.00078 * 120 ** 2 * 0.25];
    expect(heightByStake(stake, [430, 600], 0)?.uncertaintyCm).toBeCloseTo(Math.hypot(marking, pitch), 10);
    // 60 cm high, 80 below a camera of 140, which varies by 15.
    const depth = 0.05 * Math.hypot(80, 15);
    expect(heightByStake(stake, [430, 600], 0.05)?.uncertaintyCm).toBeCloseTo(Math.hypot(marking, pitch, depth), 10);
  });

  // Without the camera's height and pitch a plant of 10 to 30 cm was stated to a centimetre and off by 5.6.
  test.each(plantHeights.flatMap(([from, to]) => [0.6, 1.2, 2].map((length) => [from, to, length] as const)))(
    "plants of %d to %d m by a stake of %d m: the stated error is what a simulation of known truth shows",
    (from, to, length) => {
      const { error, stated, within } = measureByStake(3000, from, to, length);
      expect(within).toBeGreaterThan(withinGoal.from);
      expect(within).toBeLessThan(withinGoal.to);
      expect(stated / error).toBeGreaterThan(0.85);
      expect(stated / error).toBeLessThan(1.2);
    },
  );

  test("a stake of a few pixels measures nothing, nor does a point below the ground", () => {
    expect(heightByStake({ ...stake, top: [500, 785] }, [500, 790])).toBeUndefined();
    expect(heightByStake(stake, [500, 850])).toBeUndefined();
  });

  test("the demo's drawn stake: its tenth bands come out right within the stated uncertainty", () => {
    let compared = 0;
    for (const { truth, stakeCm } of demoPhotos()) {
      const { stakeFootPx: foot, stakeTopPx: top } = truth;
      if (!stakeCm || !foot || !top) continue;
      const point = [foot[0] + (top[0] - foot[0]) * 0.7 + 2, foot[1] + (top[1] - foot[1]) * 0.7 - 2] as const;
      const measured = heightByStake({ foot, top, lengthCm: stakeCm }, point);
      expect(Math.abs((measured?.heightCm ?? 0) - 84)).toBeLessThan(measured?.uncertaintyCm ?? 0);
      compared++;
    }
    expect(compared).toBeGreaterThanOrEqual(15);
  });
});

const point = (day: string, value: number, source = day): GrowthPoint => ({ day, value, origin: "photo", source });
const about = { what: "cover", bed: "long-bed", viewpoint: "gate" } as const;

describe("growth series", () => {
  test("gaps stay gaps", () => {
    const series = growthSeries(about, [
      point("2026-07-17", 0.8),
      point("2026-05-16", 0.2),
      point("2026-05-23", 0.3),
      point("2025-07-19", 0.7),
    ]);
    expect(series.stretches.map((stretch) => stretch.map(({ day }) => day))).toEqual([
      ["2025-07-19"],
      ["2026-05-16", "2026-05-23"],
      ["2026-07-17"],
    ]);
  });

  test("every point is kept, two of one day as well, and none is changed", () => {
    const day = fc
      .integer({ min: 0, max: 400 })
      .map((n) => new Date(Date.UTC(2026, 0, 1 + n)).toISOString().slice(0, 10));
    fc.assert(
      fc.property(fc.array(fc.tuple(day, fc.double({ min: 0, max: 1, noNaN: true }))), (pairs) => {
        const points = pairs.map(([on, value], i) => point(on, value, `photo ${i}`));
        const kept = growthSeries(about, points).stretches.flat();
        expect(kept).toHaveLength(points.length);
        expect(new Set(kept)).toEqual(new Set(points));
        expect(kept.every((p, i) => i === 0 || (kept[i - 1]?.day ?? "") <= p.day)).toBe(true);
      }),
    );
  });

  test("growth per week rests on two weeks or more, and never goes across a gap", () => {
    const series = growthSeries(about, [
      point("2026-05-16", 0.13),
      point("2026-05-17", 0.18),
      point("2026-05-30", 0.4),
      point("2026-06-06", 0.42),
      point("2026-07-17", 0.9),
    ]);
    const steps = weeklyGrowth(series);
    expect(steps.map(({ from, to, days }) => [from.day, to.day, days])).toEqual([
      ["2026-05-16", "2026-05-30", 14],
      ["2026-05-17", "2026-06-06", 20],
    ]);
    expect(steps[0]?.perWeek).toBeCloseTo(0.135, 10);
    // Five points of a difference over two weeks.
    expect(steps[0]?.perWeekUncertainty).toBeCloseTo(0.025, 10);
  });

  test.each([
    ["cover", 0.72, 0.69, undefined, false],
    ["cover", 0.72, 0.82, undefined, true],
    ["cover", 0.72, 0.8, undefined, false],
    ["height", 40, 42, undefined, false],
    ["height", 40, 43, undefined, true],
    // Two readings off photos, six centimetres each: 8.5 of their difference, and twice that is 17.
    ["height", 40, 56, 6, false],
    ["height", 40, 58, 6, true],
  ] as const)("%s from %d to %d is told: %s %s", (what, from, to, uncertainty, isTold) => {
    const at = (day: string, value: number): GrowthPoint => ({
      ...point(day, value),
      ...(uncertainty !== undefined && { uncertainty }),
    });
    const [step] = weeklyGrowth(growthSeries({ ...about, what }, [at("2026-05-16", from), at("2026-05-30", to)]));
    expect(step?.isTold).toBe(isTold);
  });

  test("heights from notes and photos stand in one series, each with its origin", () => {
    const series = growthSeries(
      { what: "height", bed: "tunnel-north", planting: "tunnel-north/saint-pierre/2026-05-09" },
      [
        { day: "2026-06-24", value: 118, origin: "note", source: "notes/2026/2026-06-24.md:9" },
        { day: "2026-07-02", value: 139, uncertainty: 6, origin: "photo", source: "photos/tunnel-north/door/a.jpg" },
      ],
    );
    expect(series.stretches.flat().map(({ origin }) => origin)).toEqual(["note", "photo"]);
  });
});
