/** The field list of a brief, with the pictures it carries. */
import type { GardenSettings } from "../../model.ts";
import type { PublishedPhoto } from "../../photos/index.ts";
import type { Brief } from "../../tour/index.ts";
import { type FieldList, fieldListData } from "./field-list-data.ts";
import { fieldPictures } from "./field-pictures.ts";

/** `copies` by photo path; a photo without copies is not shown. */
export async function makeFieldList(
  brief: Brief,
  settings: GardenSettings,
  copies: ReadonlyMap<string, PublishedPhoto>,
): Promise<FieldList> {
  return fieldListData(brief, settings, await fieldPictures(copies));
}
