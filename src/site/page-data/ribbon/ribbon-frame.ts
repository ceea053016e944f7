/** What every ribbon of a season has, whatever its rows are: its months, how far the season has come, a bead for each photo. */
import type { Season } from "../../../garden/index.ts";
import type { ShownPhoto } from "../pictures.ts";
import type { View } from "../view.ts";
import type { SeasonRibbon } from "./ribbon-shapes.ts";
import type { SeasonScale } from "./season-scale.ts";

/** `photos` newest first. */
export function ribbonFrame(
  { today, book, locale }: View,
  season: Season,
  scale: SeasonScale,
  photos: readonly ShownPhoto[],
): Pick<SeasonRibbon, "id" | "season" | "months" | "today" | "beads"> {
  return {
    id: `ribbon-${season.from}`,
    season: season.label,
    months: scale.months.map((day) => ({ at: scale.at(day), name: locale.shortMonth(day) })),
    today: today < season.to ? scale.at(today) : undefined,
    beads: photos.toReversed().map((photo) => ({
      href: book.file(photo),
      text: locale.day(photo.day, photo.day),
      at: scale.at(photo.day),
    })),
  };
}
