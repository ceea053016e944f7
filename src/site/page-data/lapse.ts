/** A spot's season as a time-lapse. */
import { filmPath } from "../time-lapses.ts";
import { type Spot, saySpot } from "./comparison-book.ts";
import type { Lapse } from "./comparison-shapes.ts";
import type { View } from "./view.ts";

/** The one with most photos of those that this site may show; undefined where there are too few. */
export function lapseOf(view: View, { bed, viewpoint }: Spot): Lapse | undefined {
  const { garden, links, locale, words } = view;
  const [best] = view.lapses
    .filter((lapse) => lapse.bed === bed && lapse.viewpoint === viewpoint)
    .toSorted((a, b) => b.photos.length - a.photos.length);
  if (best === undefined) return undefined;
  const { lapse, compared } = words.sentences;
  const span = compared.span(locale.day(best.from, best.to), locale.day(best.to));
  const title = garden.beds.get(bed)?.title ?? bed;
  return {
    caption: lapse.caption(saySpot(viewpoint), span, best.photos.length),
    alt: lapse.alt(title, viewpoint.replaceAll("-", " "), span),
    still: links.photo(best.still.name),
    moving: links.photo(best.moving.name),
    width: best.still.width,
    height: best.still.height,
    film: best.film === undefined || !view.isPrivate ? undefined : links.below(filmPath(best)),
  };
}
