/** What viewers could be shown and are not yet: public pages leave such places out, so the private side says what would fill them. */
import type { Variety } from "../../model.ts";
import { newestPair } from "./comparison-book.ts";
import { platePhotos } from "./plate-photos.ts";
import type { View } from "./view.ts";

/** What is private counts as not there. */
export function notYetShown(view: View): readonly string[] {
  const { garden, words } = view;
  const { notYet } = words.field;
  const varieties = [...garden.varieties.values()].filter((variety) => !variety.private);
  const isPictured = (variety: Variety) => platePhotos(view, variety).some(({ photo }) => !photo.private);
  const unpictured = varieties.filter((variety) => !isPictured(variety)).length;
  const isOut = [...garden.episodes.values()].some(({ status }) => status === "published");
  return [
    isOut ? undefined : notYet.film,
    varieties.length === 0 ? notYet.variety : undefined,
    unpictured === 0 ? undefined : notYet.photos(unpictured, varieties.length),
    newestPair(garden, view.comparisons, view.links) === undefined ? notYet.pair : undefined,
  ].filter((hint) => hint !== undefined);
}
