/** The crop that plants are of: by the record of their variety, else as their line or record says. */
import type { Crop, PlantIds, Records } from "./model.ts";

export function cropOf(
  { varieties, crops }: Pick<Records, "varieties" | "crops">,
  plants: PlantIds | undefined,
): Crop | undefined {
  const id = (plants?.variety === undefined ? undefined : varieties.get(plants.variety)?.crop) ?? plants?.crop;
  return id === undefined ? undefined : crops.get(id);
}
