/**
 * Units people weigh and measure with, and the exact factor of each.
 *
 * Source: NIST Special Publication 811 (2008), appendix B, and NIST Handbook 44, appendix C. The international pound,
 * ounce, inch, foot and yard and the US gallon (231 cubic inches) are exact by definition; so is the imperial gallon
 * (4.54609 litres). US pints and quarts are taken as liquid measure; berries sold by the dry pint hold 16 % more.
 */

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

const gramsInPound = 453.59237;
const litresInImperialGallon = 4.54609;
const litresInUsGallon = 3.785411784;
const litresInUsBushel = 35.23907016688;

export const units: readonly Unit[] = [
  { dimension: "mass", names: ["g", "gr", "gram", "grams", "gramme", "grammes", "gms", "gm"], factor: 1 },
  { dimension: "mass", names: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme"], factor: 1000 },
  { dimension: "mass", names: ["mg", "milligram", "milligrams"], factor: 0.001 },
  { dimension: "mass", names: ["oz", "ozs", "ounce", "ounces"], factor: gramsInPound / 16 },
  { dimension: "mass", names: ["lb", "lbs", "pound", "pounds"], factor: gramsInPound },
  { dimension: "length", names: ["mm", "millimetre", "millimetres", "millimeter", "millimeters"], factor: 0.1 },
  { dimension: "length", names: ["cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"], factor: 1 },
  { dimension: "length", names: ["m", "metre", "metres", "meter", "meters"], factor: 100 },
  { dimension: "length", names: ["in", "ins", "inch", "inches", '"', "″", "”"], factor: 2.54 },
  { dimension: "length", names: ["ft", "foot", "feet", "'", "′", "’"], factor: 30.48 },
  { dimension: "length", names: ["yd", "yds", "yard", "yards"], factor: 91.44 },
  { dimension: "volume", names: ["ml", "millilitre", "millilitres", "milliliter", "milliliters"], factor: 0.001 },
  { dimension: "volume", names: ["cl", "centilitre", "centilitres"], factor: 0.01 },
  { dimension: "volume", names: ["l", "litre", "litres", "liter", "liters", "ltr"], factor: 1 },
  {
    dimension: "volume",
    names: ["pint", "pints", "pt", "pts"],
    factor: litresInImperialGallon / 8,
    usFactor: litresInUsGallon / 8,
  },
  {
    dimension: "volume",
    names: ["quart", "quarts", "qt", "qts"],
    factor: litresInImperialGallon / 4,
    usFactor: litresInUsGallon / 4,
  },
  {
    dimension: "volume",
    names: ["gallon", "gallons", "gal", "gals"],
    factor: litresInImperialGallon,
    usFactor: litresInUsGallon,
  },
  // A cup is customary: half a US liquid pint there, a quarter of a litre elsewhere.
  { dimension: "volume", names: ["cup", "cups", "cupful", "cupfuls"], factor: 0.25, usFactor: litresInUsGallon / 16 },
  { dimension: "volume", names: ["peck", "pecks"], factor: litresInUsBushel / 4 },
  { dimension: "volume", names: ["bushel", "bushels", "bu"], factor: litresInUsBushel },
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
  if (unit.dimension === "temperature") return unit.factor === 1 ? value : celsiusOfFahrenheit(value);
  return value * (system === "us" ? (unit.usFactor ?? unit.factor) : unit.factor);
}

function celsiusOfFahrenheit(degrees: number): number {
  return ((degrees - 32) * 5) / 9;
}
