/** The trials' arithmetic against published data, and against Welch's test as somebody else wrote it. */
import ttest2 from "@stdlib/stats-ttest2";
import { describe, expect, it } from "vitest";
import {
  choose,
  compareArms,
  compareBlocks,
  fewestPlots,
  plotsToShow,
  spread,
} from "../../src/season/trial-statistics.ts";
import { publishedSizes } from "./published-sizes.ts";

// R's datasets PlantGrowth and sleep (R documentation; outputs of t.test reproduced with SciPy); exact counts worked with SciPy.
const CTRL = [4.17, 5.58, 5.18, 6.11, 4.5, 4.61, 5.17, 4.53, 5.33, 5.14];
const TRT1 = [4.81, 4.17, 4.41, 3.59, 5.87, 3.83, 6.03, 4.89, 4.32, 4.69];
const TRT2 = [6.31, 5.12, 5.54, 5.5, 5.37, 5.29, 4.92, 6.15, 5.8, 5.26];
const SLEEP1 = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
const SLEEP2 = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
// Efron & Tibshirani, An Introduction to the Bootstrap (1993), mouse survival.
const MOUSE_T = [94, 197, 16, 38, 99, 141, 23];
const MOUSE_C = [52, 104, 146, 10, 51, 30, 40, 27, 46];

describe("the exact permutation test", () => {
  // Lane, HyperStat Online, randomization test: 3 of 70 splits as large one way, 6 of 70 both ways.
  it("counts the splits of the textbook's example", () => {
    const { permutation, difference } = compareArms([11, 14, 7, 8], [2, 9, 0, 5]) ?? {};
    expect(difference).toBe(6);
    expect(permutation).toEqual({ p: 6 / 70, asLarge: 6, splits: 70, exact: true });
  });

  it.each([
    ["mouse", MOUSE_T, MOUSE_C, 3184, 11_440],
    ["PlantGrowth 1", CTRL, TRT1, 45_806, 184_756],
    ["PlantGrowth 2", CTRL, TRT2, 8930, 184_756],
    ["sleep", SLEEP1, SLEEP2, 15_048, 184_756],
  ])("%s", (_, a, b, asLarge, splits) => {
    expect(compareArms(a, b)?.permutation).toEqual({ p: asLarge / splits, asLarge, splits, exact: true });
  });

  it("knows what so few plants can show at all", () => {
    expect(compareArms([1, 2, 3], [4, 5, 6])).toMatchObject({ smallestP: 0.1, permutation: { p: 0.1 } });
    expect(compareArms([1, 2, 3, 4], [5, 6, 7, 8])?.smallestP).toBeCloseTo(0.0286, 4);
    expect(choose(16, 7)).toBe(11_440);
  });

  it("samples splits when there are too many, the same each time", () => {
    const a = Array.from({ length: 14 }, (_, i) => i);
    const b = Array.from({ length: 14 }, (_, i) => i + 0.5);
    const { permutation } = compareArms(a, b) ?? {};
    expect(permutation?.exact).toBe(false);
    expect(permutation).toEqual(compareArms(a, b)?.permutation);
    expect(permutation?.p).toBeGreaterThan(0.5);
  });
});

describe("the interval of the difference", () => {
  it.each([
    ["sleep", SLEEP1, SLEEP2],
    ["PlantGrowth 1", CTRL, TRT1],
    ["PlantGrowth 2", CTRL, TRT2],
  ])("lies near Welch's for data without outliers: %s", (_, a, b) => {
    const { interval } = compareArms(a, b) ?? {};
    const { ci } = ttest2([...a], [...b]);
    const width = (ci[1] as number) - (ci[0] as number);
    expect(Math.abs((interval?.[0] ?? 99) - (ci[0] as number))).toBeLessThan(0.06 * width);
    expect(Math.abs((interval?.[1] ?? 99) - (ci[1] as number))).toBeLessThan(0.06 * width);
  });

  it("leaves out nothing exactly where the same test finds a difference", () => {
    for (const [a, b] of [
      [CTRL, TRT1],
      [CTRL, TRT2],
      [MOUSE_T, MOUSE_C],
      [
        [5, 6, 7, 8],
        [1, 2, 3, 4],
      ],
    ] as const) {
      const { interval, permutation, difference } = compareArms(a, b) ?? {};
      const [low, high] = interval ?? [Number.NaN, Number.NaN];
      expect(low <= (difference ?? 0) && (difference ?? 0) <= high).toBe(true);
      expect(low > 0 || high < 0).toBe((permutation?.p ?? 1) <= 0.05);
    }
  });

  it("is turned when the arms are", () => {
    const [low, high] = compareArms(CTRL, TRT2)?.interval ?? [0, 0];
    const [turnedLow, turnedHigh] = compareArms(TRT2, CTRL)?.interval ?? [0, 0];
    expect(turnedLow).toBeCloseTo(-high, 6);
    expect(turnedHigh).toBeCloseTo(-low, 6);
  });

  it("is none where so few plots could reject nothing", () => {
    expect(compareArms([1, 2, 3], [4, 5, 6])?.interval).toBeUndefined();
    expect(compareArms([1, 2, 3, 4], [5, 6, 7, 8])?.interval).toBeDefined();
    // Four against four, looked at in two measures: 2 x 2 of 70 is above one in twenty.
    expect(compareBlocks([{ a: [1, 2, 3, 4], b: [5, 6, 7, 8] }], 2)?.interval).toBeUndefined();
  });
});

describe("blocks", () => {
  // Fisher, The Design of Experiments (1935), after Darwin: fifteen pairs of maize, crossed less self-fertilised, eighths of an
  // inch; of 32,768 ways to turn the signs 1,726 are as far out (from memory of the book; counted here too).
  const DARWIN = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48];

  it("are split within themselves: Darwin's maize", () => {
    const { permutation, difference } = compareBlocks(DARWIN.map((gap) => ({ a: [gap], b: [0] }))) ?? {};
    expect(difference).toBeCloseTo(314 / 15, 9);
    expect(permutation).toEqual({ p: 1726 / 32_768, asLarge: 1726, splits: 32_768, exact: true });
  });

  it("take a poor bed out of the difference", () => {
    const beds = [10, 20, 40, 80, 160, 320].map((bed, at) => ({ a: [bed + 1 + at / 10], b: [bed] }));
    expect(compareBlocks(beds)?.permutation).toMatchObject({ asLarge: 2, splits: 64 });
    expect(
      compareArms(
        beds.flatMap(({ a }) => a),
        beds.flatMap(({ b }) => b),
      )?.permutation.p,
    ).toBeGreaterThan(0.9);
    expect(compareBlocks(beds)?.sd).toBeLessThan(0.2);
  });

  it("say nothing of an arm without values", () => {
    expect(compareArms([], [1, 2])).toBeUndefined();
  });
});

describe("plots that would do", () => {
  it.each(publishedSizes)("%f standard deviations apart: %i a side", (apart, table) => {
    expect(Math.abs(plotsToShow(apart, 1) - table)).toBeLessThanOrEqual(Math.max(1, table / 100));
    expect(plotsToShow(apart * 250, 250)).toBe(plotsToShow(-apart, 1));
  });

  it("has no most: a difference of 7 g among rows that vary by 500 g takes tens of thousands", () => {
    expect(plotsToShow(7, 500)).toBeGreaterThan(80_000);
  });

  it("are at least so many that a clean split is rare enough", () => {
    expect([1, 2, 3, 7].map(fewestPlots)).toEqual([4, 5, 5, 6]);
  });
});

describe("spread", () => {
  it.each([
    [CTRL, 5.032, 0.583091, 11.588],
    [TRT1, 4.661, 0.793676, 17.028],
    [TRT2, 5.526, 0.442573, 8.009],
  ])("of PlantGrowth", (values, mean, sd, cv) => {
    const found = spread(values);
    expect(found?.mean).toBeCloseTo(mean, 6);
    expect(found?.sd).toBeCloseTo(sd, 6);
    expect(found?.cv).toBeCloseTo(cv, 3);
  });

  it("has no variation where there is nothing to divide by", () => {
    expect(spread([])).toBeUndefined();
    expect(spread([4])).toEqual({ n: 1, mean: 4 });
    expect(spread([-1, 1])?.cv).toBeUndefined();
  });
});
