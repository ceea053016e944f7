/** The field list of a brief, with the pictures it carries and the names by which notes are read on the phone. */
import type { Garden } from "../../model.ts";
import type { PublishedPhoto } from "../../photos/index.ts";
import { typedGarden } from "../../records/index.ts";
import type { CardSet } from "../../tour/index.ts";
import { type FieldList, fieldListData } from "./field-list-data.ts";
import { fieldPictures } from "./field-pictures.ts";

/** `copies` by photo path; a photo without copies is not shown. */
export async function makeFieldList(
  cards: CardSet,
  garden: Garden,
  copies: ReadonlyMap<string, PublishedPhoto>,
): Promise<FieldList> {
  return { ...fieldListData(cards, garden.settings, await fieldPictures(copies)), reads: typedGarden(garden) };
}
