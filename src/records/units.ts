/** Units people weigh and measure with, by every word for them. A US pint is taken as liquid measure (measures.ts). */
import {
  celsiusOf,
  centimetresPerFoot,
  centimetresPerInch,
  gramsPerOunce,
  gramsPerPound,
  litresPerImperialGallon,
  litresPerUsBushel,
  litresPerUsGallon,
  litresPerUsPint,
  litresPerUsQuart,
} from "../measures.ts";

export type Dimension = "mass" | "length" | "volume" | "temperature";

/** The measures a garden is kept in; decides how large a pint, quart and gallon are. */
export type UnitSystem = "metric" | "us";

export interface Unit {
  readonly dimension: Dimension;
  /** As written, in lower case; several words apart by one space. */
  readonly names: readonly string[];
  /** Grams, centimetres or litres in one unit; for temperatures the degrees Celsius in one degree. */
  readonly factor: number;
  /** Where the same word means another amount in US measure. */
  readonly usFactor?: number | undefined;
}

export const units: readonly Unit[] = [
  { dimension: "mass", names: ["g", "gr", "gram", "grams", "gramme", "grammes", "gms", "gm"], factor: 1 },
  { dimension: "mass", names: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme"], factor: 1000 },
  { dimension: "mass", names: ["mg", "milligram", "milligrams"], factor: 0.001 },
  { dimension: "mass", names: ["oz", "ozs", "ounce", "ounces"], factor: gramsPerOunce },
  { dimension: "mass", names: ["lb", "lbs", "pound", "pounds"], factor: gramsPerPound },
  { dimension: "length", names: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"], factor: 0.1 },
  { dimension: "length", names: ["cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"], factor: 1 },
  { dimension: "length", names: ["m", "metre", "metres", "meter", "meters"], factor: 100 },
  { dimension: "length", names: ["in", "ins", "inch", "inches", '"', "″", "”"], factor: centimetresPerInch },
  { dimension: "length", names: ["ft", "foot", "feet", "'", "′", "’"], factor: centimetresPerFoot },
  { dimension: "length", names: ["yd", "yds", "yard", "yards"], factor: 3 * centimetresPerFoot },
  { dimension: "volume", names: ["ml", "millilitre", "millilitres", "milliliter", "milliliters"], factor: 0.001 },
  { dimension: "volume", names: ["cl", "centilitre", "centilitres"], factor: 0.01 },
  { dimension: "volume", names: ["l", "litre", "litres", "liter", "liters", "ltr"], factor: 1 },
  {
    dimension: "volume",
    names: ["pint", "pints", "pt", "pts"],
    factor: litresPerImperialGallon / 8,
    usFactor: litresPerUsPint,
  },
  {
    dimension: "volume",
    names: ["quart", "quarts", "qt", "qts"],
    factor: litresPerImperialGallon / 4,
    usFactor: litresPerUsQuart,
  },
  {
    dimension: "volume",
    names: ["gallon", "gallons", "gal", "gals"],
    factor: litresPerImperialGallon,
    usFactor: litresPerUsGallon,
  },
  // A cup is customary: half a US liquid pint there, a quarter of a litre elsewhere.
  { dimension: "volume", names: ["cup", "cups", "cupful", "cupfuls"], factor: 0.25, usFactor: litresPerUsGallon / 16 },
  { dimension: "volume", names: ["peck", "pecks"], factor: litresPerUsBushel / 4 },
  { dimension: "volume", names: ["bushel", "bushels", "bu"], factor: litresPerUsBushel },
  { dimension: "temperature", names: ["°c", "c", "celsius", "centigrade", "℃"], factor: 1 },
  { dimension: "temperature", names: ["°f", "f", "fahrenheit", "℉"], factor: 5 / 9 },
];

const unitByName = new Map(units.flatMap((unit) => unit.names.map((name) => [name, unit] as const)));

/** The unit a word stands for, in lower case: "kg", "lbs", "inches". */
export function unitCalled(name: string): Unit | undefined {
  return unitByName.get(name);
}

/** A number of some unit in grams, centimetres, litres or degrees Celsius. */
export function inBaseUnit(value: number, unit: Unit, system: UnitSystem): number {
  if (unit.dimension === "temperature") return unit.factor === 1 ? value : celsiusOf(value);
  return value * (system === "us" ? (unit.usFactor ?? unit.factor) : unit.factor);
}
