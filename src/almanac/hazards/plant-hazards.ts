/** The one table of plants that can hurt people or animals. A plant without a row is not harmless: nobody looked. */
import { borderPlants } from "./border-plants.ts";
import { bulbs } from "./bulbs.ts";
import { flowersAndWeeds } from "./flowers-and-weeds.ts";
import { fruit } from "./fruit.ts";
import { fruitingVegetables } from "./fruiting-vegetables.ts";
import { herbs } from "./herbs.ts";
import type { PlantHazard } from "./plant-hazard.ts";
import { pulses } from "./pulses.ts";
import { rootsAndLeaves } from "./roots-and-leaves.ts";
import { shrubs } from "./shrubs.ts";

export const plantHazards: readonly PlantHazard[] = [
  ...fruitingVegetables,
  ...rootsAndLeaves,
  ...pulses,
  ...fruit,
  ...herbs,
  ...bulbs,
  ...borderPlants,
  ...flowersAndWeeds,
  ...shrubs,
];
