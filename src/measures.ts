/**
 * What units are worth in the measures that records are kept in: grams, centimetres, litres, degrees Celsius.
 *
 * Source: NIST Special Publication 811 (2008), appendix B, and NIST Handbook 44, appendix C. The international pound, ounce,
 * inch, foot, yard and mile and the US gallon (231 cubic inches) are exact by definition; so is the imperial gallon.
 */
export const gramsPerPound = 453.59237;
export const gramsPerOunce = gramsPerPound / 16;
export const millimetresPerInch = 25.4;
export const centimetresPerInch = 2.54;
export const centimetresPerFoot = 30.48;
export const metresPerInch = 0.0254;
export const metresPerFoot = 0.3048;
export const metresPerYard = 0.9144;
export const metresPerMile = 1609.344;
export const squareMetresPerSquareFoot = metresPerFoot ** 2;
export const litresPerUsGallon = 3.785411784;
/** Liquid measure, as all US pints and quarts here: berries sold by the dry pint hold 16 % more. */
export const litresPerUsQuart = litresPerUsGallon / 4;
export const litresPerUsPint = litresPerUsGallon / 8;
export const litresPerUsBushel = 35.23907016688;
export const litresPerImperialGallon = 4.54609;
/** A difference of one degree Celsius in degrees Fahrenheit. */
export const fahrenheitPerCelsius = 1.8;

export function fahrenheitOf(celsius: number): number {
  return celsius * fahrenheitPerCelsius + 32;
}

export function celsiusOf(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}
