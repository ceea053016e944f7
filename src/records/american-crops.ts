/** Crops by the names they have in America, for a garden whose language is American English; the British names are still read. */
import type { Crop } from "../model.ts";
import { crops } from "./crops.ts";

/** Name and plural by crop id. From memory of American seed lists and extension tables. */
const american: Readonly<Record<string, readonly [name: string, plural: string]>> = {
  aubergine: ["eggplant", "eggplants"],
  chilli: ["hot pepper", "hot peppers"],
  courgette: ["zucchini", "zucchinis"],
  "chinese-cabbage": ["napa cabbage", "napa cabbages"],
  "pak-choi": ["bok choy", "bok choy"],
  rocket: ["arugula", "arugula"],
  swede: ["rutabaga", "rutabagas"],
  mooli: ["daikon", "daikon"],
  mangetout: ["snow pea", "snow peas"],
  "sugar-snap": ["snap pea", "snap peas"],
  "broad-bean": ["fava bean", "fava beans"],
  "french-bean": ["snap bean", "snap beans"],
  "soya-bean": ["soybean", "soybeans"],
  "spring-onion": ["scallion", "scallions"],
  beetroot: ["beet", "beets"],
  sweetcorn: ["sweet corn", "sweet corn"],
  coriander: ["cilantro", "cilantro"],
  lupin: ["lupine", "lupines"],
  lucerne: ["alfalfa", "alfalfa"],
  "bitter-gourd": ["bitter melon", "bitter melons"],
  "wax-gourd": ["winter melon", "winter melons"],
  "long-bean": ["yardlong bean", "yardlong beans"],
  "fat-hen": ["lamb’s quarters", "lamb’s quarters"],
  liquorice: ["licorice", "licorice"],
  buddleja: ["butterfly bush", "butterfly bushes"],
};

let americanTable: readonly Crop[] | undefined;

/** The crops as a garden's language names them: the same list each time. */
export function cropsIn(language: string): readonly Crop[] {
  if (!/^en-US\b/i.test(language)) return crops;
  americanTable ??= crops.map((crop) => {
    const [name, plural] = american[crop.id] ?? [];
    if (name === undefined || plural === undefined) return crop;
    return { ...crop, name, plural, alsoCalled: [crop.name, crop.plural, ...crop.alsoCalled] };
  });
  return americanTable;
}
