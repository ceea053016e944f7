/**
 * Weights, volumes, lengths, temperatures and rain in the units a garden is kept in. Measures keep their digits: "1 inch",
 * "3 pints"; what rounds to nothing is not said to be nothing.
 */
import {
  centimetresPerInch,
  fahrenheitOf,
  gramsPerOunce,
  gramsPerPound,
  litresPerUsBushel,
  litresPerUsPint,
  litresPerUsQuart,
  metresPerFoot,
  metresPerInch,
  metresPerMile,
  metresPerYard,
  millimetresPerInch,
  squareMetresPerSquareFoot,
} from "../measures.ts";
import type { GardenSettings } from "../model.ts";
import { digits, sayPlural } from "./numbers.ts";

const litresPerUsPeck = litresPerUsBushel / 4;

export type Units = GardenSettings["units"];

/** Units, and the English whose spelling they take. */
export type Measures = Pick<GardenSettings, "units" | "language">;

/** "650 g", "1.4 kg", "41.3 kg"; in US units "9 oz", "3.1 lb". */
export function sayWeight(grams: number, units: Units): string {
  if (units === "us") {
    const ounces = grams / gramsPerOunce;
    const said = ounces < 3.95 ? rounded(ounces, 1) : Math.round(ounces);
    return said < 16 ? `${said} oz` : `${digits(rounded(grams / gramsPerPound, 1))} lb`;
  }
  if (Math.round(grams) < 1000) return `${grams < 10 ? rounded(grams, 1) : Math.round(grams)} g`;
  return `${digits(rounded(grams / 1000, grams < 10_000 ? 2 : 1))} kg`;
}

/** "500 ml", "1 litre", "2.5 litres"; in US units "3 pints", "2 quarts". What was picked by the peck is told by the peck: nobody pours beans. */
export function sayVolume(litres: number, { units, language }: Measures): string {
  const pecks = Math.round(litres / litresPerUsPeck);
  if (pecks >= 1 && Math.abs(litres / litresPerUsPeck - pecks) < 1e-6) return sayPecks(pecks);
  if (units === "us") {
    const pints = rounded(litres / litresPerUsPint, 1);
    return pints < 4 ? unit(pints, "pint", "pints") : unit(rounded(litres / litresPerUsQuart, 1), "quart", "quarts");
  }
  const millilitres = Math.round(litres * 1000);
  if (millilitres < 1000) return `${millilitres} ml`;
  return isAmerican(language)
    ? unit(rounded(litres, 1), "liter", "liters")
    : unit(rounded(litres, 1), "litre", "litres");
}

function sayPecks(pecks: number): string {
  if (pecks === 2) return "half a bushel";
  return pecks % 2 === 0 ? unit(pecks / 4, "bushel", "bushels") : unit(pecks, "peck", "pecks");
}

/** "42 cm", "1.2 m"; in US units "16.5 inches", "5 feet 6 inches". `cm` is a height, length or distance in centimetres. */
export function sayLength(cm: number, units: Units): string {
  if (units === "us") {
    const inches = cm / centimetresPerInch;
    if (inches < 47.5) return unit(inches < 24 ? rounded(inches, 1) : Math.round(inches), "inch", "inches");
    return feetAndInches(Math.round(inches));
  }
  return Math.round(cm) < 100 ? `${cm < 10 ? rounded(cm, 1) : Math.round(cm)} cm` : `${digits(rounded(cm / 100, 2))} m`;
}

/** A side of a bed: "80 cm", "1.2 m"; from a foot on in feet, as beds are built: "8 feet", "2 feet 6 inches". */
export function saySide(metres: number, units: Units): string {
  const inches = Math.round(metres / metresPerInch);
  return units === "us" && inches >= 12 ? feetAndInches(inches) : sayLength(metres * 100, units);
}

function feetAndInches(inches: number): string {
  const rest = inches % 12;
  const feet = unit(Math.floor(inches / 12), "foot", "feet");
  return rest === 0 ? feet : `${feet} ${unit(rest, "inch", "inches")}`;
}

/** To the nearest hundred metres or yards, and to the kilometre or mile where it is far: nobody paces it out. */
export function sayRoughDistance(metres: number, units: Units): string {
  if (units === "us") {
    return metres < 0.75 * metresPerMile
      ? `about ${Math.max(1, Math.round(metres / metresPerYard / 100)) * 100} yards`
      : `about ${sayPlural(Math.round(metres / metresPerMile), "mile", "miles")}`;
  }
  if (metres < 3000) return `about ${Math.max(1, Math.round(metres / 100)) * 100} m`;
  return `about ${sayPlural(Math.round(metres / 1000), "km", "km")}`;
}

/** "7 km", "4 miles", "under 1 mile". */
export function sayDistance(km: number, units: Units): string {
  const whole = Math.round(units === "us" ? (km * 1000) / metresPerMile : km);
  const [one, many] = units === "us" ? ["mile", "miles"] : ["km", "km"];
  return whole === 0 ? `under 1 ${one}` : unit(whole, one, many);
}

/** How much higher one place lies than another: "120 m", "390 feet". */
export function sayClimb(metres: number, units: Units): string {
  return units === "us" ? `${digits(Math.round(metres / metresPerFoot / 10) * 10)} feet` : `${digits(metres)} m`;
}

/** "24.3 °C", "27.5 °F", with a true minus sign, as a thermometer in the garden is read. */
export function sayTemperature(celsius: number, units: Units): string {
  return units === "us" ? degrees(rounded(fahrenheitOf(celsius), 1), "F") : degrees(rounded(celsius, 1), "C");
}

/** "24.3 °C", "76 °F": of the air, where nobody asks for a fraction of a degree Fahrenheit. */
export function sayAirTemperature(celsius: number, units: Units): string {
  return units === "us" ? degrees(Math.round(fahrenheitOf(celsius)), "F") : sayTemperature(celsius, units);
}

function degrees(n: number, scale: "C" | "F"): string {
  return `${digits(n === 0 ? 0 : n).replace("-", "−")} °${scale}`;
}

/** "3.2 mm", "48 mm"; "1 inch", "less than a tenth of an inch". */
export function sayRain(millimetres: number, units: Units): string {
  if (units === "us") {
    const inches = rounded(millimetres / millimetresPerInch, 1);
    return inches === 0 && millimetres > 0 ? "less than a tenth of an inch" : unit(inches, "inch", "inches");
  }
  return `${digits(millimetres < 10 ? rounded(millimetres, 1) : Math.round(millimetres))} mm`;
}

/** "square metre", "square foot". */
export function groundUnit({ units, language }: Measures): string {
  if (units === "us") return "square foot";
  return isAmerican(language) ? "square meter" : "square metre";
}

/** The weight from one of them: "3.89 kg", "2.1 oz". */
export function sayFromGround(gramsPerSquareMetre: number, units: Units): string {
  return sayWeight(units === "us" ? gramsPerSquareMetre * squareMetresPerSquareFoot : gramsPerSquareMetre, units);
}

/** What charts count in: grams or centimetres in one of it, and its sign. */
export function chartUnit(of: "weight" | "length", units: Units): { readonly size: number; readonly sign: string } {
  if (of === "weight") return units === "us" ? { size: gramsPerPound, sign: "lb" } : { size: 1000, sign: "kg" };
  return units === "us" ? { size: centimetresPerInch, sign: "in" } : { size: 1, sign: "cm" };
}

function isAmerican(language: string): boolean {
  return /^en-US\b/u.test(language);
}

function rounded(n: number, places: number): number {
  const factor = 10 ** places;
  return Math.round(n * factor) / factor;
}

function unit(n: number, one: string, many: string): string {
  return `${digits(n)} ${n === 1 ? one : many}`;
}
