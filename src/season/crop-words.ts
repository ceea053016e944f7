/** What a person's words in garden.md mean: "tomato sauce" is of tomatoes, "the Long Bed" a bed, "Crown Prince" a variety. */

import { type CanningFact, canningFactFor } from "../almanac/index.ts";
import { cropOf } from "../crop-of.ts";
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
  if (variety !== undefined) return { variety, crop: cropOf(garden, variety) ?? crop };
  return { crop };
}

/** The product of the canning guide that is meant: "San Marzano tomatoes" are tomatoes to it. */
export function productMeant({ variety }: Meant, words: string): CanningFact | undefined {
  const names = variety === undefined ? [] : [variety.title, ...variety.alsoSpelled];
  return canningFactFor(names.reduce((left, name) => left.split(name.toLowerCase()).join(" "), words.toLowerCase()));
}

/**
 * Whether the words are of the crop or variety itself: its name is the last of them. Ten kilograms of tomato soup are not ten of
 * tomatoes.
 */
export function isOfItself({ crop, variety }: Meant, words: string): boolean {
  const said = ` ${normaliseName(words.replace(/[,(].*$|\s(?:for|from|in|out of|to)\s.*$/is, ""))}`;
  const names = [
    ...(crop === undefined ? [] : [crop.name, crop.plural, crop.id, ...crop.alsoCalled]),
    ...(variety === undefined ? [] : [variety.title, ...variety.alsoSpelled]),
  ].map(normaliseName);
  // "Musselburgh plants" are of it too, and names of crops take an s.
  const bare = said.replace(/ (?:plants?|heads?|roots?|bulbs?|ears?|stems?|bunches|fruits?|pods?)$/, "");
  return names.some(
    (name) => name !== "" && [name, `${name}s`].some((one) => [said, bare].some((text) => text.endsWith(` ${one}`))),
  );
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
