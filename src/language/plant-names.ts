/** What plants are called in a sentence: by crop, by variety, by both; one or many. */
import type { Crop, Variety } from "../model.ts";

/**
 * A variety as a gardener says it: "Musselburgh leeks", "one Musselburgh leek" (count 1), "Crown Prince squash".
 * The crop's word is left out when the title brings it ("Red Baron onion") or no crop is known.
 * Without a count the plural is said: a row of leeks.
 */
export function varietyName(
  variety: { readonly title: string } | undefined,
  crop: Crop | undefined,
  count?: number,
): string {
  if (variety === undefined) return crop === undefined ? "plants" : cropName(crop, count);
  if (crop === undefined) return variety.title;
  const word = cropName(crop, count);
  const words = ` ${plain(variety.title)} `;
  for (const known of [crop.plural, crop.name, ...crop.alsoCalled]) {
    const found = plain(known);
    const own = found === plain(crop.plural) || found === plain(crop.name);
    if (own && words.trim() === found) return word;
    // "Red Baron onion" becomes "Red Baron onions": the title's own crop word takes the number asked for.
    if (own && words.endsWith(` ${found} `)) {
      return `${variety.title.slice(0, variety.title.length - known.length)}${word}`;
    }
    if (words.includes(` ${found} `)) return variety.title;
  }
  return `${variety.title} ${word}`;
}

/** "leek" for one, "leeks" for any other number or none. */
export function cropName(crop: Crop, count?: number): string {
  return count === 1 ? crop.name : crop.plural;
}

/** Lower case without accents and hyphens, for comparing words only. */
function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[-\s]+/g, " ")
    .trim();
}

/** Crops counted like sheep: one squash, six squash. Other crops with one form are not counted: the kale was cleared. */
export const oneForm: ReadonlySet<string> = new Set(
  "squash summer-squash cosmos phlox dianthus scabious ranunculus".split(" "),
);

/** A lot, a variety row, anything that has a name. */
export interface Named {
  readonly variety?: Variety | undefined;
  readonly crop?: Crop | undefined;
}

/** Crops said as a mass, "the garlic is", against "the leeks are" and "the squash are". */
function isMass(crop: Crop): boolean {
  return crop.plural === crop.name && !oneForm.has(crop.id);
}

/** Whether plants are spoken of as one thing ("is", "it"); `count` is their number when it is known. */
export function isSingular({ crop }: Named, count?: number): boolean {
  return count === 1 || (crop !== undefined && isMass(crop));
}

/** "the leeks", "the garlic", "the leek" for one plant. */
export function theCrop(crop: Crop, count?: number): string {
  return `the ${cropName(crop, count)}`;
}

/** Names are said thousands of times in a brief; each is put together once. */
const names = new WeakMap<Variety, Map<string, string>>();
const cultivars = new WeakMap<Variety, { readonly crop: Crop | undefined; readonly name: string }>();
const wordsOfCrops = new WeakMap<Crop, readonly string[]>();

/** "Musselburgh leeks", "Musselburgh leek" for one plant, "lettuces" when nobody wrote down which. */
export function plantName(named: Named, count?: number): string {
  const { variety, crop } = named;
  if (variety === undefined) return varietyName(variety, crop, count);
  const known = names.get(variety) ?? new Map<string, string>();
  names.set(variety, known);
  const key = `${crop?.id ?? ""} ${count === 1 ? "one" : "many"}`;
  const name = known.get(key) ?? putTogether(named, count);
  known.set(key, name);
  return name;
}

function putTogether(named: Named, count?: number): string {
  const { variety, crop } = named;
  return crop !== undefined && isUnnamed(named) ? cropName(crop, count) : varietyName(variety, crop, count);
}

/** "the Musselburgh leeks" */
export function thePlants(named: Named, count?: number): string {
  return `the ${plantName(named, count)}`;
}

/** The cultivar alone: "Musselburgh" of "Musselburgh leek"; the crop when nobody wrote down which. */
export function cultivar(named: Named): string {
  const { variety, crop } = named;
  if (variety === undefined) return plantName(named);
  const known = cultivars.get(variety);
  if (known?.crop === crop && known !== undefined) return known.name;
  const name = isUnnamed(named)
    ? plantName(named)
    : crop === undefined
      ? variety.title
      : withoutCropWord(variety.title, crop);
  cultivars.set(variety, { crop, name });
  return name;
}

/** Title and crop as printed in a list: "Crown Prince, squash"; a title that names its crop stays as written. */
export function label(named: Named): string {
  const { variety, crop } = named;
  if (variety === undefined || crop === undefined) return variety?.title ?? crop?.name ?? "plants";
  return withoutCropWord(variety.title, crop) === variety.title && !isUnnamed(named)
    ? `${variety.title}, ${crop.name}`
    : variety.title;
}

/** Whether nobody wrote down which variety it is: no variety at all, or a title that says no more than the crop. */
export function isUnnamed({ variety, crop }: Named): boolean {
  if (variety === undefined) return true;
  const title = variety.title.trim().toLowerCase();
  return crop !== undefined && cropWords(crop).includes(title);
}

function withoutCropWord(written: string, crop: Crop): string {
  const title = written.trim();
  const lower = title.toLowerCase();
  for (const said of cropWords(crop)) {
    if (lower.endsWith(` ${said}`)) return title.slice(0, -said.length - 1).trim();
    if (lower.startsWith(`${said} `)) return title.slice(said.length + 1).trim();
  }
  return title;
}

/** Longest first, so that "runner bean" goes before "bean"; in lower case. */
function cropWords(crop: Crop): readonly string[] {
  const known = wordsOfCrops.get(crop);
  if (known !== undefined) return known;
  const words = [crop.plural, crop.name, ...crop.alsoCalled].map((word) => word.toLowerCase());
  words.sort((a, b) => b.length - a.length);
  wordsOfCrops.set(crop, words);
  return words;
}
