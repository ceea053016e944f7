/**
 * Weights, volumes, lengths and temperatures as a language writes them, in metric or US units. Digits and unit words come
 * from Intl; it has no word for pints and quarts, so these stand in a table. Factors: NIST Special Publication 811, appendix B.8.
 */
import type { Speech, Units } from "./speech.ts";

const gramsPerOunce = 28.349523125;
const gramsPerPound = 453.59237;
const centimetresPerInch = 2.54;
/** US liquid quart and pint. */
const litresPerQuart = 0.946352946;
const litresPerPint = 0.473176473;

export type Amounts = Pick<Speech, "weight" | "volume" | "length" | "temperature">;

/** A figure at a mark of an axis, whose space does not break. */
export function marksIn(tongue: string): Speech["mark"] {
  const made = new Map<string, Intl.NumberFormat>();
  return (n, unit) => {
    const known = made.get(unit) ?? new Intl.NumberFormat(tongue, { style: "unit", unit, maximumFractionDigits: 1 });
    made.set(unit, known);
    return known.format(n).replaceAll(" ", "\u00a0");
  };
}

/** One and several. */
export type PintsAndQuarts = Readonly<Record<"pint" | "quart", readonly [one: string, many: string]>>;

export function amountsIn(tongue: string, units: Units, words: PintsAndQuarts): Amounts {
  const digits = new Intl.NumberFormat(tongue, { maximumFractionDigits: 2 });
  const made = new Map<string, Intl.NumberFormat>();
  const say = (n: number, unit: string, unitDisplay: "short" | "long" = "short") => {
    const known =
      made.get(unit) ?? new Intl.NumberFormat(tongue, { style: "unit", unit, unitDisplay, maximumFractionDigits: 2 });
    made.set(unit, known);
    return known.format(n);
  };
  const spoken = (n: number, unit: keyof PintsAndQuarts) => `${digits.format(n)} ${words[unit][n === 1 ? 0 : 1]}`;
  // A space stands before the degree sign, as NIST SP 811, 7.2 has it and as Intl in English has not.
  const degrees = (n: number, scale: string) => `${digits.format(rounded(n, 1)).replace("-", "−")} ${scale}`;
  if (units === "metric")
    return {
      weight: (grams) =>
        Math.round(grams) < 1000
          ? say(grams < 10 ? rounded(grams, 1) : Math.round(grams), "gram")
          : say(rounded(grams / 1000, grams < 10_000 ? 2 : 1), "kilogram"),
      volume: (litres) =>
        litres < 1 ? say(Math.round(litres * 1000), "milliliter") : say(rounded(litres, 1), "liter", "long"),
      length: (cm) =>
        rounded(cm, 0) < 100
          ? say(cm < 10 ? rounded(cm, 1) : Math.round(cm), "centimeter")
          : say(rounded(cm / 100, 2), "meter"),
      temperature: (celsius) => degrees(celsius, "°C"),
    };
  return {
    weight(grams) {
      const ounces = rounded(grams / gramsPerOunce, 1);
      return ounces < 16
        ? say(ounces < 4 ? ounces : Math.round(ounces), "ounce")
        : say(rounded(grams / gramsPerPound, 1), "pound");
    },
    volume(litres) {
      const pints = rounded(litres / litresPerPint, 1);
      return pints < 4 ? spoken(pints, "pint") : spoken(rounded(litres / litresPerQuart, 1), "quart");
    },
    length(cm) {
      const inches = cm / centimetresPerInch;
      if (inches < 47.5) return say(inches < 24 ? rounded(inches, 1) : Math.round(inches), "inch", "long");
      const whole = Math.round(inches);
      const rest = whole % 12;
      return `${say(Math.floor(whole / 12), "foot", "long")}${rest === 0 ? "" : ` ${say(rest, "inch", "long")}`}`;
    },
    temperature: (celsius) => degrees(celsius * 1.8 + 32, "°F"),
  };
}

function rounded(n: number, places: number): number {
  const factor = 10 ** places;
  return Math.round(n * factor) / factor;
}
