// Takes: a plant's botanical name, crop and names; lines of notes.
// Gives: the rows of the hazard table that belong to them. No row is no clearance.
export {
  allOf,
  type Cautions,
  cautionsFor,
  closingCaution,
  namesPoison,
  preservingCautions,
  saidOnce,
} from "./cautions.ts";
export type { SharedName } from "./false-friends.ts";
export { type NamedPlant, plantHazardsOf, sharedNameOf } from "./find-plant-hazards.ts";
export { type HazardSource, hazardSources } from "./hazard-sources.ts";
export type { Grade, PlantHazard, Proof } from "./plant-hazard.ts";
export { plantHazards } from "./plant-hazards.ts";
export type { WorkHazard } from "./work-hazard.ts";
export { isPreserving, workCaution, workHazards, workHazardsIn } from "./work-hazards.ts";
