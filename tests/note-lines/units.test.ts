/**
 * Units and amounts. Factors: NIST Special Publication 811 (2008), appendix B, and NIST Handbook 44, appendix C; from
 * memory, exact unless said. Check values: 53 lb, 18 in, 100 ft, 50/86/40 °F and -40 (check-values, section 15).
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Event } from "../../src/model.ts";
import { wordsOf } from "../../src/records/line-words.ts";
import { printEvent } from "../../src/records/print-event.ts";
import { type Amount, amountAt, writeCount, writePickUnit } from "../../src/records/quantities.ts";
import { type UnitSystem, units } from "../../src/records/units.ts";
import { gardenNames, readLine } from "./a-garden.ts";

function amount(text: string, system: UnitSystem = "metric"): Omit<Amount, "end"> | undefined {
  const words = wordsOf(text);
  const found = amountAt(words, 0, system);
  if (found === undefined) return undefined;
  expect([text, found.end]).toEqual([text, words.length]);
  const { end, ...rest } = found;
  return rest;
}

test("exact factors", () => {
  const factor = Object.fromEntries(units.map((unit) => [unit.names[0], unit.usFactor ?? unit.factor]));
  expect(factor.lb).toBe(453.59237);
  expect(factor.oz).toBe(28.349523125);
  expect(factor.in).toBe(2.54);
  expect(factor.ft).toBe(30.48);
  expect(factor.yd).toBe(91.44);
  expect(factor.gallon).toBe(3.785411784);
  expect(factor.quart).toBeCloseTo(0.946352946, 12);
  expect(factor.pint).toBeCloseTo(0.473176473, 12);
  expect(factor.bushel).toBe(35.23907016688);
  expect(units.find((unit) => unit.names[0] === "gallon")?.factor).toBe(4.54609);
});

test("no two units have a name in common", () => {
  const names = units.flatMap((unit) => unit.names);
  expect(names.length).toBeGreaterThan(60);
  expect(new Set(names).size).toBe(names.length);
});

test.each([
  ["53 lb", "grams", 24040.4],
  ["18 in", "cm", 45.72],
  ["100 ft", "cm", 3048],
  ["50 °F", "celsius", 10],
  ["86 °F", "celsius", 30],
  ["40 °F", "celsius", 4.444],
  ["-40 °F", "celsius", -40],
  ["-40 °C", "celsius", -40],
  ["minus 3 °C", "celsius", -3],
  ["12 degrees C", "celsius", 12],
  ["54 degrees Fahrenheit", "celsius", 12.222],
  ["1.4 kg", "grams", 1400],
  ["1,4 kg", "grams", 1400],
  ["1,400 g", "grams", 1400],
  ["500g", "grams", 500],
  ["half a pound", "grams", 226.796],
  ["a quarter of a pound", "grams", 113.398],
  ["1 1/2 lb", "grams", 680.389],
  ["1-1/2 lb", "grams", 680.389],
  ["1½ lb", "grams", 680.389],
  ["1 ½ lb", "grams", 680.389],
  ["½ lb", "grams", 226.796],
  ["¾ kg", "grams", 750],
  ["3/4 lb", "grams", 340.194],
  ["one and a half kilos", "grams", 1500],
  ["2 lb 3 oz", "grams", 992.233],
  ["1 kg 200 g", "grams", 1200],
  ["6 ft 2 in", "cm", 187.96],
  ["6'2\"", "cm", 187.96],
  ["5′ 4″", "cm", 162.56],
  ["a foot", "cm", 30.48],
  ["1.2 m", "cm", 120],
  ["250 ml", "litres", 0.25],
  ["2 litres", "litres", 2],
] as const)("%s", (text, key, value) => {
  expect(amount(text)?.[key]).toBeCloseTo(value, text.endsWith("lb") || text.includes("oz") ? 1 : 2);
});

test.each([
  ["½", 1 / 2],
  ["⅓", 1 / 3],
  ["⅔", 2 / 3],
  ["¼", 1 / 4],
  ["¾", 3 / 4],
  ["⅕", 1 / 5],
  ["⅖", 2 / 5],
  ["⅗", 3 / 5],
  ["⅘", 4 / 5],
  ["⅙", 1 / 6],
  ["⅚", 5 / 6],
  ["⅐", 1 / 7],
  ["⅛", 1 / 8],
  ["⅜", 3 / 8],
  ["⅝", 5 / 8],
  ["⅞", 7 / 8],
  ["⅑", 1 / 9],
  ["⅒", 1 / 10],
])("%s kg, alone and behind a number", (sign, share) => {
  expect(amount(`${sign} kg`)?.grams).toBeCloseTo(1000 * share, 9);
  expect(amount(`2${sign} kg`)?.grams).toBeCloseTo(2000 + 1000 * share, 9);
});

test("pints, quarts and gallons are imperial in a metric garden and US liquid measure in a US one", () => {
  expect(amount("1 pint")?.litres).toBeCloseTo(0.56826125, 12);
  expect(amount("1 pint", "us")?.litres).toBeCloseTo(0.473176473, 12);
  expect(amount("2 quarts", "us")?.litres).toBeCloseTo(1.892705892, 12);
  expect(amount("1 gal")?.litres).toBe(4.54609);
  expect(amount("1 gal", "us")?.litres).toBe(3.785411784);
});

test.each([
  ["24", { value: 24, approx: false }],
  ["about 10", { value: 10, approx: true }],
  ["approx. 10", { value: 10, approx: true }],
  ["~10", { value: 10, approx: true }],
  ["at least 10", { value: 10, approx: true }],
  ["8-10", { value: 8, upTo: 10, approx: false }],
  ["8–10", { value: 8, upTo: 10, approx: false }],
  ["8 to 10", { value: 8, upTo: 10, approx: false }],
  ["eight or nine", { value: 8, upTo: 9, approx: false }],
  ["about 8 to 10", { value: 8, upTo: 10, approx: true }],
  ["a dozen", { value: 12, approx: false }],
  ["half a dozen", { value: 6, approx: false }],
  ["two dozen", { value: 24, approx: false }],
  ["two to three dozen", { value: 24, upTo: 36, approx: false }],
  ["a couple of", { value: 2, approx: false }],
  ["a hundred", { value: 100, approx: false }],
  ["twenty-four", { value: 24, approx: false }],
  ["seventeen", { value: 17, approx: false }],
  ["3 x 12", { value: 36, approx: false }],
  ["1,200", { value: 1200, approx: false }],
])("%s plants", (text, count) => {
  expect(amount(text)?.count).toEqual(count);
});

test.each([
  ["12 stems", "stem", 12],
  ["3 bunches", "bunch", 3],
  ["2 heads", "head", 2],
  ["5 fruits", "fruit", 5],
  ["40 pods", "pod", 40],
  ["3 punnets", "punnet", 3],
  ["a crate", "crate", 1],
  ["half a crate", "crate", 0.5],
  ["2 roots", "root", 2],
  ["34 bulbs", "bulb", 34],
  ["6 cobs", "ear", 6],
  ["a handful", "handful", 1],
  ["9 pieces", "piece", 9],
] as const)("%s", (text, unit, value) => {
  expect(amount(text)).toMatchObject({ unit, count: { value } });
});

test.each(["a few", "a row", "some", "in Long Bed", "½", "2.5", "Musselburgh", "F1"])("%s counts nothing", (text) => {
  expect(amountAt(wordsOf(text), 0, "metric")).toBeUndefined();
});

test("an inch written in is none before a bed", () => {
  expect(amountAt(wordsOf("6 in Long Bed"), 0, "metric")).toMatchObject({ count: { value: 6 }, end: 1 });
  expect(amountAt(wordsOf("6 in apart"), 0, "metric")).toMatchObject({ cm: 15.24, end: 2 });
});

test("counts are read as they are written", () => {
  const counts = fc
    .record({
      value: fc.integer({ min: 1, max: 5000 }),
      more: fc.option(fc.integer({ min: 1, max: 50 })),
      approx: fc.boolean(),
    })
    .map(({ value, more, approx }) => ({ value, ...(more === null ? {} : { upTo: value + more }), approx }));
  const pickUnits = fc.constantFrom(
    ...([
      "stem",
      "bunch",
      "head",
      "fruit",
      "pod",
      "punnet",
      "crate",
      "root",
      "bulb",
      "ear",
      "handful",
      "piece",
    ] as const),
  );
  fc.assert(
    fc.property(counts, pickUnits, (count, unit) => {
      expect(amount(writeCount(count))?.count).toEqual(count);
      expect(amount(`${writeCount(count)} ${writePickUnit(unit, count)}`)).toMatchObject({ count, unit });
    }),
  );
});

test("a measure in any unit is its number times the factor", () => {
  const measures = units.filter(({ dimension }) => dimension !== "temperature");
  fc.assert(
    fc.property(fc.constantFrom(...measures), fc.integer({ min: 1, max: 9999 }), fc.nat(3), (unit, number, places) => {
      const value = number / 10 ** places;
      // A sign such as " stands right behind its number.
      for (const name of unit.names) {
        const read = amount(/^[a-z]/.test(name) && name !== "in" ? `${value} ${name}` : `${value}${name}`);
        const key = { mass: "grams", length: "cm", volume: "litres", temperature: "celsius" }[
          unit.dimension
        ] as "grams";
        expect(read?.[key]).toBeCloseTo(value * unit.factor, 8);
      }
    }),
  );
});

test.each([
  ["picked 10 gallons comfrey", "us", "picked 10 gallons comfrey"],
  ["picked 2.5 gal apples", "us", "picked 2.5 gallons apples"],
  ["picked half a bushel of apples", "us", "picked 0.5 bushels apples"],
  ["picked 1 pint blackcurrants", "us", "picked 1 pint blackcurrants"],
  ["picked 2 gal 2 qt blueberries", "us", "picked 2.5 gallons blueberries"],
  ["picked 3 l blueberries", "us", "picked 3 l blueberries"],
  ["picked 5 gallons plums", "metric", "picked 5 gallons plums"],
  ["picked 2.5 litres plums", "metric", "picked 2.5 l plums"],
  ["measured 72 °F in Long Bed", "us", "measured 72 °F in Long Bed"],
  ["measured 72 °F in Long Bed", "metric", "measured 72 °F in Long Bed"],
  ["measured 22.5 °C in Long Bed", "us", "measured 22.5 °C in Long Bed"],
  ["soil test Long Bed 61 degrees", "us", "soil test Long Bed 61 °F"],
] as const)("%s (%s) is said in units in which it is round, and read again", (text, system, said) => {
  const measures = (line: string) => {
    const { litres, celsius } = readLine(line, { units: system })?.events[0] ?? {};
    return litres ?? celsius;
  };
  const [event] = readLine(text, { units: system })?.events ?? [];
  const printed = printEvent(event as Event, gardenNames(), system);
  expect(printed).toBe(said);
  expect(measures(printed)).toBeCloseTo(measures(text) ?? Number.NaN, 9);
});
