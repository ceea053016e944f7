/** What a person's words in garden.md mean: "tomato sauce" is of tomatoes, "the Long Bed" a bed, "Crown Prince" a variety. */
import type { Bed, Crop, Variety } from "../model.ts";
import { crops as cropTable, normaliseName } from "../records/index.ts";
import type { SeasonBook } from "./season-book.ts";

export interface Meant {
  readonly crop?: Crop | undefined;
  readonly variety?: Variety | undefined;
}

/** A variety by its title, else a crop by any of its names; the longest name in the words wins. */
export function meantBy({ garden }: Pick<SeasonBook, "garden">, words: string): Meant {
  const said = ` ${normaliseName(words)} `;
  const holds = (name: string) => {
    const plain = normaliseName(name);
    return plain !== "" && said.includes(` ${plain} `) ? plain.length : 0;
  };
  let variety: Variety | undefined;
  let longest = 0;
  for (const one of garden.varieties.values()) {
    const length = Math.max(0, ...[one.title, ...one.alsoSpelled].map(holds));
    if (length > longest) [variety, longest] = [one, length];
  }
  const crop = cropIn(garden.crops.values(), holds) ?? cropIn(cropTable, holds);
  if (variety !== undefined) return { variety, crop: garden.crops.get(variety.crop ?? "") ?? crop };
  return { crop };
}

function cropIn(crops: Iterable<Crop>, holds: (name: string) => number): Crop | undefined {
  let found: Crop | undefined;
  let longest = 0;
  for (const crop of crops) {
    const length = Math.max(0, ...[crop.name, crop.plural, crop.id, ...crop.alsoCalled].map(holds));
    if (length > longest) [found, longest] = [crop, length];
  }
  return found;
}

/** A bed by its title, id or another name. */
export function bedMeant({ garden }: Pick<SeasonBook, "garden">, words: string): Bed | undefined {
  const said = normaliseName(words);
  return [...garden.beds.values()].find((bed) =>
    [bed.title, bed.id, ...bed.alsoCalled].some((name) => normaliseName(name) === said),
  );
}
