/** Amounts at the edges, where a rounded figure would be said in the wrong unit, or as nothing. */
import { describe, expect, it } from "vitest";
import {
  chartUnit,
  groundUnit,
  sayAirTemperature,
  sayClimb,
  sayDistance,
  sayFromGround,
  sayLength,
  sayRain,
  sayRoughDistance,
  saySide,
  sayTemperature,
  sayVolume,
  sayWeight,
} from "../../src/language/index.ts";

const ounce = 28.349523125;

describe("weights", () => {
  it("never come to sixteen ounces", () => {
    expect([3.94, 3.96, 15.4, 15.6, 16].map((ounces) => sayWeight(ounces * ounce, "us"))).toEqual([
      "3.9 oz",
      "4 oz",
      "15 oz",
      "1 lb",
      "1 lb",
    ]);
  });

  it("never come to a thousand grams", () => {
    expect([999.4, 999.6].map((grams) => sayWeight(grams, "metric"))).toEqual(["999 g", "1 kg"]);
  });
});

describe("volumes", () => {
  it("never come to a thousand millilitres, and are spelled as the garden's English spells them", () => {
    const said = (litres: number, language: string) => sayVolume(litres, { units: "metric", language });
    expect([0.9994, 0.9996].map((litres) => said(litres, "en-GB"))).toEqual(["999 ml", "1 litre"]);
    expect(["en-US", "en-IE", "en-AU", "en-GB"].map((language) => said(2.5, language))).toEqual([
      "2.5 liters",
      "2.5 litres",
      "2.5 litres",
      "2.5 litres",
    ]);
  });
});

describe("volumes of a picking", () => {
  it("are told by the peck and the bushel where they were picked so, and by the quart where they were not", () => {
    const bushel = 35.23907016688;
    for (const units of ["us", "metric"] as const)
      expect([0.25, 0.5, 0.75, 1, 1.5, 3].map((n) => sayVolume(n * bushel, { units, language: "en-US" }))).toEqual([
        ...["1 peck", "half a bushel", "3 pecks", "1 bushel", "1.5 bushels", "3 bushels"],
      ]);
    expect(sayVolume(2.5 * 0.946352946, { units: "us", language: "en-US" })).toBe("2.5 quarts");
  });
});

describe("lengths", () => {
  it("are one inch and several inches", () => {
    expect([2.54, 2.6, 5.08].map((cm) => sayLength(cm, "us"))).toEqual(["1 inch", "1 inch", "2 inches"]);
    expect([99.4, 99.6].map((cm) => sayLength(cm, "metric"))).toEqual(["99 cm", "1 m"]);
  });

  it("of beds are in feet and inches on both sides", () => {
    expect([8, 1.2, 0.3048, 0.2].map((metres) => saySide(metres, "us"))).toEqual([
      "26 feet 3 inches",
      "3 feet 11 inches",
      "1 foot",
      "7.9 inches",
    ]);
    expect([8, 1.2, 0.8].map((metres) => saySide(metres, "metric"))).toEqual(["8 m", "1.2 m", "80 cm"]);
  });

  it("of ways are in the garden's units", () => {
    expect([80, 320, 1300, 1700, 5000].map((metres) => sayRoughDistance(metres, "us"))).toEqual([
      "about 100 yards",
      "about 300 yards",
      "about one mile",
      "about one mile",
      "about three miles",
    ]);
    expect([80, 320, 2940, 3200].map((metres) => sayRoughDistance(metres, "metric"))).toEqual([
      "about 100 m",
      "about 300 m",
      "about 2900 m",
      "about three km",
    ]);
    expect([0.3, 1.6, 6.4].map((km) => sayDistance(km, "us"))).toEqual(["under 1 mile", "1 mile", "4 miles"]);
    expect([0.3, 1, 6.4].map((km) => sayDistance(km, "metric"))).toEqual(["under 1 km", "1 km", "6 km"]);
    expect([sayClimb(120, "us"), sayClimb(120, "metric")]).toEqual(["390 feet", "120 m"]);
  });
});

describe("temperatures", () => {
  it("have a true minus sign everywhere, and no minus nought", () => {
    expect([-2.5, -0.04, 24.3].map((celsius) => sayTemperature(celsius, "metric"))).toEqual([
      "−2.5 °C",
      "0 °C",
      "24.3 °C",
    ]);
    expect([-2.5, -40].map((celsius) => sayTemperature(celsius, "us"))).toEqual(["27.5 °F", "−40 °F"]);
  });

  it("of the air are whole in Fahrenheit", () => {
    expect([-2.5, 24.3, -18].map((celsius) => sayAirTemperature(celsius, "us"))).toEqual(["28 °F", "76 °F", "0 °F"]);
    expect(sayAirTemperature(-2.5, "metric")).toBe("−2.5 °C");
  });
});

it("rain is an inch, and never nothing when it fell", () => {
  expect([0, 0.5, 25.4, 48].map((mm) => sayRain(mm, "us"))).toEqual([
    "0 inches",
    "less than a tenth of an inch",
    "1 inch",
    "1.9 inches",
  ]);
  expect([0.3, 9.94, 48.4].map((mm) => sayRain(mm, "metric"))).toEqual(["0.3 mm", "9.9 mm", "48 mm"]);
});

it("ground is measured as the garden is", () => {
  expect(["en-GB", "en-US"].map((language) => groundUnit({ units: "metric", language }))).toEqual([
    "square metre",
    "square meter",
  ]);
  expect(groundUnit({ units: "us", language: "en-US" })).toBe("square foot");
  expect([sayFromGround(3890, "metric"), sayFromGround(640, "us")]).toEqual(["3.89 kg", "2.1 oz"]);
  expect([chartUnit("weight", "us"), chartUnit("length", "metric")]).toEqual([
    { size: 453.59237, sign: "lb" },
    { size: 1, sign: "cm" },
  ]);
});
