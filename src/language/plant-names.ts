/** What crops and varieties are called in a sentence. */
import type { Crop } from "../model.ts";

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
