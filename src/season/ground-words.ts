/** How much a piece of ground gave, in the measure the garden is planned in: a square metre, or a square foot. */
import type { GardenSettings } from "../model.ts";
import { sayWeight } from "../timeline/index.ts";

type Units = GardenSettings["units"];

/** Square metres in a square foot (NIST Special Publication 811: 0.3048 m, exact). */
const squareFoot = 0.3048 ** 2;

/** "square metre", "square foot" */
export function groundUnit(units: Units): string {
  return units === "us" ? "square foot" : "square metre";
}

/** The weight from one of them: "3.89 kg", "2.1 oz". */
export function sayFromGround(gramsPerSquareMetre: number, units: Units): string {
  return sayWeight(units === "us" ? gramsPerSquareMetre * squareFoot : gramsPerSquareMetre, units);
}
