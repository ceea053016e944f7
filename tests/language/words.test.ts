import { describe, expect, test } from "vitest";
import {
  capital,
  fullStop,
  sayAge,
  sayCount,
  sayDay,
  sayLength,
  sayList,
  sayMonth,
  sayNumber,
  sayOrdinal,
  sayPlural,
  sayVolume,
  sayWeekday,
  sayWeight,
  varietyName,
} from "../../src/language/index.ts";
import type { Crop } from "../../src/model.ts";
import { crops } from "../../src/records/index.ts";
import { yearOfLife } from "../../src/timeline/index.ts";

const crop = (id: string): Crop | undefined => crops.find((one) => one.id === id);

describe("numbers", () => {
  test.each([
    [0, "no"],
    [1, "one"],
    [12, "twelve"],
    [13, "13"],
    [1200, "1,200"],
    [1.5, "1.5"],
  ])("%d is said as %s", (n, said) => expect(sayNumber(n)).toBe(said));

  test.each([
    [1, "first"],
    [12, "twelfth"],
    [13, "13th"],
    [21, "21st"],
    [42, "42nd"],
    [103, "103rd"],
    [111, "111th"],
  ])("%d. is said as %s", (n, said) => expect(sayOrdinal(n)).toBe(said));

  test.each([
    [{ value: 6, approx: false }, "six"],
    [{ value: 10, approx: true }, "about ten"],
    [{ value: 8, upTo: 10, approx: true }, "eight to ten"],
    [{ value: 24, upTo: 24, approx: false }, "24"],
  ])("a count %o is said as %s", (count, said) => expect(sayCount(count)).toBe(said));

  test("what nobody counted is not said", () => expect(sayCount(undefined)).toBeUndefined());

  test.each([
    [0, "no leeks"],
    [1, "one leek"],
    [3, "three leeks"],
  ])("%d leeks", (n, said) => expect(sayPlural(n, "leek", "leeks")).toBe(said));
});

describe("lists and sentences", () => {
  test.each([
    [[], ""],
    [["a"], "a"],
    [["a", "b"], "a and b"],
    [["a", "b", "c"], "a, b and c"],
  ])("%o", (parts, said) => expect(sayList(parts)).toBe(said));

  test("a sentence begins large, whatever its first letter", () => {
    expect(capital("épinard")).toBe("Épinard");
    expect(capital("24 leeks")).toBe("24 leeks");
    expect(capital("")).toBe("");
  });

  test("a sentence that brings its own ending keeps it", () => {
    expect(fullStop("Which is it?")).toBe("Which is it?");
    expect(fullStop("It came up")).toBe("It came up.");
    expect(fullStop("“Who knows?”")).toBe("“Who knows?”");
  });
});

describe("days", () => {
  const british = { language: "en-GB" };

  test("are written as the garden's English writes them, British where it has none", () => {
    expect(sayDay("2026-04-21", { ...british, near: "2026-06-19" })).toBe("21 April");
    expect(sayDay("2026-04-21", { language: "en-US", near: "2026-06-19" })).toBe("April 21");
  });

  test("bring their year when it does not go without saying", () => {
    expect(sayDay("2025-04-21", { ...british, near: "2026-06-19" })).toBe("21 April 2025");
    expect(sayDay("2025-12-28", { ...british, near: "2026-03-05" })).toBe("28 December");
    expect(sayDay("2026-04-21", british)).toBe("21 April 2026");
  });

  test("have weekdays and months", () => {
    expect(sayWeekday("2026-07-18", british)).toBe("Saturday");
    expect(sayMonth("2026-07-18", { ...british, near: "2026-01-02" })).toBe("July");
    expect(sayMonth("2025-07-18", { ...british, near: "2026-01-02" })).toBe("July 2025");
  });
});

describe("ages", () => {
  test.each([
    [0, "less than a day"],
    [1, "one day"],
    [7, "seven days"],
    [9, "nine days"],
    [14, "two weeks"],
    [26, "26 days"],
    [42, "six weeks"],
    [49, "seven weeks"],
    [51, "just over seven weeks"],
    [54, "nearly eight weeks"],
    [150, "about five months"],
    [365, "about a year"],
    [731, "two years"],
    [800, "just over two years"],
    [1000, "about three years"],
    [1040, "nearly three years"],
  ])("%d days are %s", (days, said) => expect(sayAge(days)).toBe(said));

  test("a perennial planted late in a season has its first year in the next", () => {
    expect(yearOfLife("2024-03-02", "2026-07-18", "01-01")).toBe(3);
    expect(yearOfLife("2022-11-19", "2024-05-01", "01-01")).toBe(2);
    expect(yearOfLife("2024-05-01", "2026-05-01", "07-01")).toBe(2);
  });
});

// Factors: NIST Handbook 44, Appendix C: 1 lb = 453.59237 g, 1 in = 2.54 cm, 1 US quart = 0.946352946 l.
describe("weights, volumes and lengths", () => {
  test.each([
    [650, "650 g"],
    [999.6, "1 kg"],
    [1400, "1.4 kg"],
    [1350, "1.35 kg"],
    [41_320, "41.3 kg"],
    [2.5, "2.5 g"],
  ])("%d g in a metric garden", (grams, said) => expect(sayWeight(grams, "metric")).toBe(said));

  test.each([
    [28.349523125, "1 oz"],
    [250, "9 oz"],
    [453.59237, "1 lb"],
    [24_040.39561, "53 lb"],
    [680, "1.5 lb"],
  ])("%d g in a US garden", (grams, said) => expect(sayWeight(grams, "us")).toBe(said));

  test.each([
    [42, "42 cm"],
    [120, "1.2 m"],
    [99.6, "1 m"],
    [9, "9 cm"],
  ])("%d cm in a metric garden", (cm, said) => expect(sayLength(cm, "metric")).toBe(said));

  test.each([
    [2.54, "1 inch"],
    [45.72, "18 inches"],
    [3048, "100 feet"],
    [170.18, "5 feet 7 inches"],
    [152.4, "5 feet"],
  ])("%d cm in a US garden", (cm, said) => expect(sayLength(cm, "us")).toBe(said));

  test.each([
    [0.5, "metric", "500 ml"],
    [1, "metric", "1 litre"],
    [2.5, "metric", "2.5 litres"],
    [0.473176473, "us", "1 pint"],
    [1.892705892, "us", "2 quarts"],
  ] as const)("%d litres, %s", (litres, units, said) =>
    expect(sayVolume(litres, { units, language: "en-GB" })).toBe(said),
  );
});

describe("names of varieties", () => {
  test.each([
    ["Musselburgh", "leek", undefined, "Musselburgh leeks"],
    ["Musselburgh", "leek", 1, "Musselburgh leek"],
    ["Musselburgh", "leek", 21, "Musselburgh leeks"],
    ["Crown Prince", "squash", 6, "Crown Prince squash"],
    ["Nero di Toscana", "kale", undefined, "Nero di Toscana kale"],
    ["Red Baron onion", "onion", 40, "Red Baron onions"],
    ["Red Baron Onions", "onion", 1, "Red Baron onion"],
    ["Sweet Pea Matucana", "sweet-pea", 3, "Sweet Pea Matucana"],
    ["Rhubarb", "rhubarb", undefined, "rhubarb"],
    ["Mystery", undefined, 3, "Mystery"],
  ])("%s of %s, %s of them", (title, id, count, said) => {
    expect(varietyName({ title }, id === undefined ? undefined : crop(id), count)).toBe(said);
  });

  test("without a variety the crop is said", () => {
    expect(varietyName(undefined, crop("tomato"))).toBe("tomatoes");
    expect(varietyName(undefined, undefined)).toBe("plants");
  });
});
