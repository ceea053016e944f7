/** Crops of which the notes name no variety: they grow here as much as the others, so lists show them with their beds. */
import { cropOf } from "../../crop-of.ts";
import { capital, cropName } from "../../language/index.ts";
import type { Planting } from "../../model.ts";
import { sayPlanting } from "./planting-words.ts";
import type { SmallPlate } from "./plate-shapes.ts";
import type { View } from "./view.ts";

export interface NamelessCrop {
  readonly crop: string;
  readonly beds: readonly string[];
  readonly isGrowing: boolean;
  readonly plate: SmallPlate;
}

/** Only crops that no described or noted variety is of. */
export function namelessCrops(view: View): readonly NamelessCrop[] {
  const { garden, links } = view;
  const named = new Set([...garden.varieties.values()].map((variety) => cropOf(garden, variety)?.id));
  const plantings = [...view.states.values()]
    .flatMap((state) => state.plantings)
    .filter((one) => one.variety === undefined);
  const byCrop = Map.groupBy(plantings, (planting) => cropOf(garden, planting)?.id);
  return [...byCrop].flatMap(([id, all]): readonly NamelessCrop[] => {
    const crop = id === undefined ? undefined : garden.crops.get(id);
    if (crop === undefined || named.has(crop.id)) return [];
    const living = all.filter(({ ended }) => ended === undefined);
    const [latest] = (living.length > 0 ? living : all).toSorted((a, b) => (a.since < b.since ? 1 : -1));
    if (latest === undefined) return [];
    return [
      {
        crop: crop.id,
        beds: [...new Set(living.map(({ bed }) => bed))],
        isGrowing: living.length > 0,
        plate: {
          href: links.bed(latest.bed),
          name: capital(cropName(crop)),
          crop: "",
          isNew: false,
          says: sayIn(view, latest),
        },
      },
    ];
  });
}

/** "In Long Bed: 20 plants, sown on 16 May." */
function sayIn(view: View, planting: Planting): string {
  const bed = view.garden.beds.get(planting.bed)?.title ?? planting.bed;
  return view.words.sentences.inBed(bed, sayPlanting(view.garden, planting, planting.ended ?? view.today));
}
