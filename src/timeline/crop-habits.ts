/**
 * How crops begin, are taken and end, as far as the timeline has to know it. Common practice of growers in temperate
 * climates, from memory; no days of the year stand here, so that it holds in both hemispheres.
 */
import type { Crop } from "../model.ts";

export interface CropHabit {
  /**
   * `stands`: begun in one season and picked from the ground until spring. `autumn`: begun late in a season, it goes on
   * into the next. `biennial`: picked or in flower the season after it was begun. Others end with their season.
   */
  readonly winter?: "stands" | "autumn" | "biennial";
  /** Picking takes the plant: as a root or bulb that is lifted, or as a head that is cut. */
  readonly takenWhole?: "lifted" | "cut";
  /** Taken up all at one time: its only picking is no first one. */
  readonly atOnce?: true;
  /** Begun from tubers, sets, cloves or seed put straight in its place, so that no nursery sowing is missed. */
  readonly begunInPlace?: true;
}

const lifted = { takenWhole: "lifted" } as const;
const cut = { takenWhole: "cut" } as const;
const inPlace = { begunInPlace: true } as const;
const stands = { winter: "stands" } as const;
const autumn = { winter: "autumn" } as const;
const biennial = { winter: "biennial" } as const;

/** Habit, and the ids of the crops that have it. */
const rows: readonly (readonly [CropHabit, string])[] = [
  [{ ...stands, ...lifted }, "leek celeriac"],
  [{ ...stands, ...lifted, ...inPlace }, "parsnip carrot swede salsify scorzonera hamburg-parsley mooli"],
  [stands, "kale collard brussels-sprout chard parsley chicory endive"],
  [{ ...stands, ...inPlace }, "perpetual-spinach"],
  [biennial, "sprouting-broccoli foxglove wallflower honesty sweet-william hollyhock forget-me-not"],

  [{ ...autumn, ...lifted, ...inPlace, atOnce: true }, "garlic shallot onion"],
  [{ ...autumn, ...lifted, ...inPlace }, "spring-onion"],
  [{ ...autumn, ...cut }, "cabbage cauliflower lettuce pak-choi"],
  [{ ...autumn, ...inPlace }, "broad-bean pea spinach corn-salad winter-purslane mizuna mustard-greens rocket cress"],
  [{ ...autumn, ...inPlace }, "coriander chervil cornflower ammi nigella calendula larkspur poppy orlaya corncockle"],
  [{ ...autumn, ...inPlace }, "gypsophila clarkia cerinthe anemone ranunculus freesia"],
  [autumn, "sweet-pea stock snapdragon viola statice"],

  [{ ...lifted, ...inPlace }, "beetroot turnip radish"],
  [cut, "kohlrabi fennel chinese-cabbage celery"],
  [inPlace, "potato sweet-potato oca bean runner-bean french-bean lima-bean soya-bean cowpea chickpea peanut"],
  [inPlace, "mangetout sugar-snap sweetcorn dill borage nasturtium sunflower"],
];

const cropHabits = new Map<string, CropHabit>(rows.flatMap(([habit, ids]) => ids.split(" ").map((id) => [id, habit])));

const noHabit: CropHabit = {};

export function habitOf(crop: Crop | undefined): CropHabit {
  if (crop === undefined) return noHabit;
  return cropHabits.get(crop.id) ?? (crop.use === "cover" ? { ...autumn, ...inPlace } : noHabit);
}

const dug = new Set(
  "potato sweet-potato oca jerusalem-artichoke carrot parsnip swede salsify scorzonera celeriac".split(" "),
);

/** What is done to a crop to have it, where nobody's own word says it: nobody picks potatoes. */
export function takingVerb(crop: Crop | undefined): "picked" | "dug" | "lifted" | "cut" {
  if (crop === undefined) return "picked";
  if (dug.has(crop.id)) return "dug";
  if (crop.use === "flower") return "cut";
  return habitOf(crop).takenWhole === "lifted" ? "lifted" : "picked";
}

/** Crops that come as sets, cloves, bulbs, tubers and crowns, and are no plants yet when they are bought. */
const noPlantsYet = new Set(
  (
    "garlic onion shallot potato sweet-potato oca jerusalem-artichoke dahlia rhubarb asparagus tulip daffodil crocus snowdrop " +
    "hyacinth allium lily gladiolus iris anemone ranunculus freesia"
  ).split(" "),
);

export function comesAsPlants(crop: string | undefined): boolean {
  return !noPlantsYet.has(crop ?? "");
}
