import { describe, expect, it } from "vitest";
import { choose, compareArms, spread } from "../../src/season/trial-statistics.ts";

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

describe("Welch's test", () => {
  it.each([
    ["sleep", SLEEP1, SLEEP2, -1.860813, 17.776474, 0.079394],
    ["PlantGrowth 1", CTRL, TRT1, 1.19126, 16.523585, 0.250383],
    ["PlantGrowth 2", CTRL, TRT2, -2.13402, 16.785764, 0.047899],
    ["mouse", MOUSE_T, MOUSE_C, 1.058711, 9.65449, 0.315501],
  ])("%s", (_, a, b, t, df, p) => {
    const { welch } = compareArms(a, b) ?? {};
    expect(welch?.t).toBeCloseTo(t, 5);
    expect(welch?.df).toBeCloseTo(df, 5);
    expect(welch?.p).toBeCloseTo(p, 5);
  });

  it("says nothing of a single value, of values that never vary, or of an empty arm", () => {
    expect(compareArms([1], [2, 3])?.welch).toBeUndefined();
    expect(compareArms([2, 2], [3, 3])?.welch).toBeUndefined();
    expect(compareArms([], [1, 2])).toBeUndefined();
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
