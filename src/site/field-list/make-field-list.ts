/** The field list of a tour, with the pictures it carries and the names by which notes are read on the phone. */
import type { Garden } from "../../model.ts";
import { typedGarden } from "../../records/index.ts";
import type { TourCards } from "../../tour/index.ts";
import { type FieldList, type FieldPicture, fieldListData } from "./field-list-data.ts";

/** `pictures` by photo path; a photo without one is not shown. */
export function makeFieldList(
  cards: TourCards,
  garden: Garden,
  pictures: ReadonlyMap<string, FieldPicture>,
): FieldList {
  return { ...fieldListData(cards, garden.settings, pictures), reads: typedGarden(garden) };
}
