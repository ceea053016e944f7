/** The varieties of one film as plates, each with its moment: those named aloud in order of time, then all that stood in its beds. */
import type { Episode } from "../../model.ts";
import type { EpisodeWraps } from "./episode-wrap.ts";
import type { FilmMoment } from "./film-shapes.ts";
import type { SmallPlate } from "./plate-shapes.ts";
import type { Shown } from "./shown.ts";
import type { SmallPlates } from "./small-plates.ts";

export interface FilmPlate {
  readonly plate: SmallPlate;
  readonly at?: FilmMoment | undefined;
}

export function filmPlates(
  { id }: Episode,
  { shown, wraps, plates }: { readonly shown: Shown; readonly wraps: EpisodeWraps; readonly plates: SmallPlates },
): readonly FilmPlate[] {
  const found = new Map<string, FilmPlate>();
  const add = (variety: string, at: FilmMoment | undefined) => {
    const plate = plates.get(variety);
    if (plate !== undefined && !found.has(variety)) found.set(variety, { plate, at });
  };
  const wrapped = wraps.get(id);
  for (const { variety, at } of wrapped?.wrap.coverage.named ?? []) add(variety, wrapped?.moment(at));
  for (const { plantings, at } of shown.stops.get(id) ?? [])
    for (const { variety } of plantings) if (variety !== undefined) add(variety, at);
  return [...found.values()];
}
