/** How numbers, days, spans and amounts are said in each language, metric and US units side by side. */
import { describe, expect, test } from "vitest";
import { crops } from "../../src/records/index.ts";
import { languageOf, speechOf, tongueOf } from "../../src/timeline/index.ts";
import { germanNames } from "../../src/timeline/speech/german-crop-names.ts";

const english = speechOf({ language: "en-GB", units: "metric" });
const german = speechOf({ language: "de", units: "metric" });
const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("the language of a garden", () => {
  test("is its own where there are words in it, and British English else", () => {
    expect(["de", "de-AT", "de-CH", "en-US", "fr", "nds"].map(languageOf)).toEqual([
      "de",
      "de",
      "de",
      "en",
      "en",
      "en",
    ]);
    expect(["de", "de-AT", "en-US", "fr"].map(tongueOf)).toEqual(["de", "de-AT", "en-US", "en-GB"]);
  });

  test("is made once, because its formatters are slow to make", () => {
    expect(speechOf({ language: "de", units: "metric" })).toBe(german);
  });
});

describe("German", () => {
  test("says numbers up to twelve in words, and single things with their article", () => {
    expect(german.number(12)).toBe("zwölf");
    expect(german.number(1234.5)).toBe("1.234,5");
    expect(german.many(1, "eine Sorte", "Sorten")).toBe("eine Sorte");
    expect(german.many(3, "eine Sorte", "Sorten")).toBe("drei Sorten");
    expect(german.many(0, "eine Sorte", "Sorten")).toBe("keine Sorten");
    expect(german.count({ value: 8, upTo: 10, approx: true })).toBe("acht bis zehn");
    expect(german.list(["Lauch", "Bohnen", "Kürbisse"])).toBe("Lauch, Bohnen und Kürbisse");
  });

  test("writes days and numbers as its country does", () => {
    expect(german.day("2026-04-21", "2026-06-19")).toBe("21. April");
    expect(german.day("2025-01-03")).toBe("3. Januar 2025");
    expect(speechOf({ language: "de-AT", units: "metric" }).day("2025-01-03")).toBe("3. Jänner 2025");
    expect(german.weekdayAndDay("2026-07-13", "2026-07-18")).toBe("Montag, 13. Juli");
    expect(german.digits(1234.5)).toBe("1.234,5");
    expect(speechOf({ language: "de-CH", units: "metric" }).digits(1234.5)).toMatch(/^1['’]234\.5$/u);
  });

  test("puts spans into the case they stand in", () => {
    expect([1, 7, 21, 300, 365].map(german.age)).toEqual([
      "ein Tag",
      "sieben Tage",
      "drei Wochen",
      "rund zehn Monate",
      "rund ein Jahr",
    ]);
    expect([1, 7, 21, 300, 365].map(german.ageAfter)).toEqual([
      ...["einem Tag", "sieben Tagen", "drei Wochen", "rund zehn Monaten", "rund einem Jahr"],
    ]);
    expect([1, 30].map(german.ageLong)).toEqual(["einen Tag", "30 Tage"]);
    expect(german.age(54)).toBe("knapp acht Wochen");
  });

  test("names a variety with its crop before it, once", () => {
    const tomato = crops.find(({ id }) => id === "tomato");
    const leek = crops.find(({ id }) => id === "leek");
    expect(german.variety({ title: "Ochsenherz" }, tomato)).toBe("Tomaten Ochsenherz");
    expect(german.variety({ title: "Ochsenherz" }, tomato, 1)).toBe("Tomate Ochsenherz");
    expect(german.variety({ title: "Gelbe Tomate" }, tomato)).toBe("Gelbe Tomate");
    expect(german.variety({ title: "Tomate" }, tomato)).toBe("Tomaten");
    expect(german.one("Tomate Ochsenherz", tomato)).toBe("eine Tomate Ochsenherz");
    expect(german.one("Lauch", leek)).toBe("ein Lauch");
    const rose = crops.find(({ id }) => id === "rose");
    expect(german.variety({ title: "Rosella" }, rose)).toBe("Rosen Rosella");
  });

  test("has a name for every crop", () => {
    expect(crops.filter(({ id }) => !germanNames.has(id))).toEqual([]);
    expect([...germanNames].filter(([, { one, gender }]) => one === "" || !/^[mfn]$/.test(gender))).toEqual([]);
    const sweetPotato = crops.find(({ id }) => id === "sweet-potato");
    const swiss = speechOf({ language: "de-CH", units: "metric" });
    expect(sweetPotato && swiss.crop(sweetPotato)).toBe("Süsskartoffeln");
  });
});

/**
 * NIST Special Publication 811 (2008), appendix B.8: 1 lb = 0.453 592 37 kg and 1 in = 2.54 cm exactly, 1 oz = 28.349 52 g,
 * 1 US liquid quart = 0.946 352 9 L, 1 US liquid pint = 0.473 176 5 L; degrees Fahrenheit = degrees Celsius × 1.8 + 32.
 */
describe("the other units", () => {
  const { otherUnits } = english;
  const back = speechOf({ language: "en-US", units: "us" }).otherUnits;

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

  test("stand beside the garden's own, whichever these are, in its language", () => {
    expect(back.weight(453.59237)).toBe("454 g");
    expect(back.volume(2.5)).toBe("2.5 liters");
    expect(plain(german.weight(1400))).toBe("1,4 kg");
    expect(plain(german.otherUnits.weight(1400))).toBe("3,1 lb");
    expect(plain(german.otherUnits.length(42))).toBe("16,5 Zoll");
    expect(english.weight(1400)).toBe("1.4 kg");
  });
});
