/** How numbers, days, spans and amounts are said, metric and US units side by side. */

import { describe, expect, test } from "vitest";
import { localeOf } from "../../src/language/index.ts";

const english = localeOf({ language: "en-GB", units: "metric" });

describe("the English of a garden", () => {
  test("is made once, because its formatters are slow to make", () => {
    expect(localeOf({ language: "en-GB", units: "metric" })).toBe(english);
  });

  test("writes days as its country does", () => {
    const days = (language: string) => localeOf({ language, units: "metric" }).day("2025-01-03");
    expect(["en-GB", "en-IE", "en-AU", "en-US"].map(days)).toEqual([
      "3 January 2025",
      "3 January 2025",
      "3 January 2025",
      "January 3, 2025",
    ]);
  });
});

/**
 * NIST Special Publication 811 (2008), appendix B.8: 1 lb = 0.453 592 37 kg and 1 in = 2.54 cm exactly, 1 oz = 28.349 52 g,
 * 1 US liquid quart = 0.946 352 9 L, 1 US liquid pint = 0.473 176 5 L; degrees Fahrenheit = degrees Celsius × 1.8 + 32.
 */
describe("the other units", () => {
  const { otherUnits } = english;
  const back = localeOf({ language: "en-US", units: "us" }).otherUnits;

  test.each([
    [453.59237, "1 lb"],
    [4535.9237, "10 lb"],
    [28.34952, "1 oz"],
    [226.796, "8 oz"],
  ])("%d g", (grams, said) => expect(otherUnits.weight(grams)).toBe(said));

  test.each([
    [2.54, "1 inch"],
    [30.48, "12 inches"],
    [121.92, "4 feet"],
    [800, "26 feet 3 inches"],
  ])("%d cm", (cm, said) => expect(otherUnits.length(cm)).toBe(said));

  test.each([
    [0.4731765, "1 pint"],
    [3.7854116, "4 quarts"],
  ])("%d litres", (litres, said) => expect(otherUnits.volume(litres)).toBe(said));

  test.each([
    [0, "32 °F"],
    [100, "212 °F"],
    [-40, "−40 °F"],
  ])("%d °C", (celsius, said) => expect(otherUnits.temperature(celsius)).toBe(said));

  test("stand beside the garden's own, whichever these are", () => {
    expect(back.weight(453.59237)).toBe("454 g");
    expect(back.volume(2.5)).toBe("2.5 liters");
    expect(english.weight(1400)).toBe("1.4 kg");
  });
});
