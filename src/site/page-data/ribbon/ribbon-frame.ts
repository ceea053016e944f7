/** What every ribbon of a season has, whatever its rows are: its months, a bead for each photo. */
import type { Season } from "../../../garden/index.ts";
import type { ShownPhoto } from "../pictures.ts";
import type { View } from "../view.ts";
import type { RibbonDay, SeasonRibbon } from "./ribbon-shapes.ts";
import type { SeasonScale } from "./season-scale.ts";

/** `photos` newest first. */
export function ribbonFrame(
  { book, locale }: View,
  season: Season,
  scale: SeasonScale,
  photos: readonly ShownPhoto[],
): Pick<SeasonRibbon, "id" | "season" | "months" | "beads"> {
  return {
    id: `ribbon-${season.from}`,
    season: season.label,
    months: scale.months.map((day) => ({ at: scale.at(day), name: locale.shortMonth(day) })),
    beads: photos.toReversed().map((photo) => ({
      href: book.file(photo),
      text: locale.day(photo.day, photo.day),
      at: scale.at(photo.day),
    })),
  };
}

/** With the newest photo: who opens a page sees what the words beside it tell. */
export function beginningOf(days: readonly Pick<RibbonDay, "iso">[], newest: ShownPhoto | undefined): number {
  return Math.max(
    0,
    days.findIndex(({ iso }) => iso === newest?.day),
  );
}
