/** Crops by the words that a person writes: who says zucchini in every note and file is told of zucchini, not of courgettes. */
import type { Crop } from "../model.ts";
import type { Names } from "./names.ts";

/** A place where a crop was written of. */
export interface WrittenCrop {
  readonly crop: string | undefined;
  readonly text: string;
}

/** Other names that have one form, counted or not; those that end in a vowel but e have one as well. */
const oneForm = new Set(
  "corn,maize,sweet corn,daikon,edamame,cilantro,silverbeet,elderflower,calabrese,Swiss chard,bok choy".split(","),
);

/** The crops of a garden, each by the one other name it goes by there; by the table's where that is written too, or two others are. */
export function cropsAsWritten(
  crops: ReadonlyMap<string, Crop>,
  written: Iterable<WrittenCrop>,
  names: Names,
): ReadonlyMap<string, Crop> {
  const words = new Map<string, Set<string>>();
  for (const { crop, text } of written) {
    const name = crop === undefined ? undefined : crops.get(crop)?.name;
    if (crop === undefined || name === undefined) continue;
    const known = words.get(crop);
    // Settled: most crops are by the first text that names them, and no other is looked through.
    if (known !== undefined && (known.size > 1 || known.has(name))) continue;
    const said = names.cropWordIn(crop, text);
    if (said === undefined) continue;
    if (known === undefined) words.set(crop, new Set([said]));
    else known.add(said);
  }
  return new Map(
    [...crops].map(([id, crop]) => {
      const [word, second] = words.get(id) ?? [];
      if (word === undefined || second !== undefined || word === crop.name) return [id, crop];
      const also = [crop.name, crop.plural, ...crop.alsoCalled.filter((name) => name !== word)];
      return [id, { ...crop, name: word, plural: pluralOf(word), alsoCalled: also }];
    }),
  );
}

function pluralOf(word: string): string {
  if (oneForm.has(word) || /[aiou]$|greens$/.test(word)) return word;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  return /(?:s|x|ch|sh)$/.test(word) ? `${word}es` : `${word}s`;
}
