/** Every variety on a small label, made once for all pages that show it. */
import { cropOf } from "../../crop-of.ts";
import { cropName } from "../../language/index.ts";
import type { Variety } from "../../model.ts";
import { platePhotos } from "./plate-photos.ts";
import type { SmallPlate } from "./plate-shapes.ts";
import { sourceLine } from "./sources.ts";
import { type Harvests, sayResult } from "./variety-pages.ts";
import type { View } from "./view.ts";

/** By variety id. */
export type SmallPlates = ReadonlyMap<string, SmallPlate>;

export function smallPlates(view: View, harvests: Harvests): SmallPlates {
  return new Map([...view.garden.varieties].map(([id, variety]) => [id, smallPlate(view, variety, harvests)]));
}

function smallPlate(view: View, variety: Variety, harvests: Harvests): SmallPlate {
  const crop = cropOf(view.garden, variety);
  const [lead] = platePhotos(view, variety);
  return {
    href: view.links.variety(variety.id),
    name: variety.title,
    crop: crop === undefined ? "" : cropName(crop, 1),
    sayAs: variety.sayAs,
    isNew: view.newVarieties.has(variety.id),
    thumb: lead && view.book.thumb(lead.photo),
    source: sourceLine(view.words, variety.source),
    says: sayResult(view, variety, harvests.get(variety.id) ?? new Map()),
  };
}
