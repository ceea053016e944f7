/**
 * Crops by the names they have where a garden is, by its language; the British names are still read, and a garden's own word
 * comes before both (crop-words.ts).
 */
import type { Crop } from "../model.ts";
import { crops } from "./crops.ts";

/** Name and plural by crop id. From memory of American seed lists and extension tables. */
const american: Region = {
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

type Region = Readonly<Record<string, readonly [name: string, plural: string]>>;

/** What Australia and New Zealand share. */
const antipodean: Region = {
  aubergine: ["eggplant", "eggplants"],
  pepper: ["capsicum", "capsicums"],
  chard: ["silverbeet", "silverbeet"],
  melon: ["rockmelon", "rockmelons"],
  mangetout: ["snow pea", "snow peas"],
  mooli: ["daikon", "daikon"],
  "pak-choi": ["bok choy", "bok choy"],
};

/** By region, from memory of its seed lists. A word that means another crop there, as "turnip" in Ireland does, is in none. */
const regions: Readonly<Record<string, Region>> = {
  US: american,
  CA: { ...american, "french-bean": ["green bean", "green beans"], "spring-onion": ["green onion", "green onions"] },
  AU: {
    ...antipodean,
    courgette: ["zucchini", "zucchinis"],
    sweetcorn: ["sweet corn", "sweet corn"],
    "new-zealand-spinach": ["warrigal greens", "warrigal greens"],
  },
  NZ: { ...antipodean, "sweet-potato": ["kumara", "kumara"] },
  ZA: {
    courgette: ["baby marrow", "baby marrows"],
    aubergine: ["brinjal", "brinjals"],
    chard: ["Swiss chard", "Swiss chard"],
    melon: ["spanspek", "spanspeks"],
  },
  IE: { "spring-onion": ["scallion", "scallions"] },
  IN: { aubergine: ["brinjal", "brinjals"], pepper: ["capsicum", "capsicums"] },
};

const tables = new Map<string, readonly Crop[]>();

/** The crops as a garden's language names them: the same list each time. */
export function cropsIn(language: string): readonly Crop[] {
  const region = /^en-([A-Z]{2})\b/i.exec(language)?.[1]?.toUpperCase() ?? "";
  const own = regions[region];
  if (own === undefined) return crops;
  const known = tables.get(region);
  if (known !== undefined) return known;
  const table = crops.map((crop) => {
    const [name, plural] = own[crop.id] ?? [];
    if (name === undefined || plural === undefined) return crop;
    return { ...crop, name, plural, alsoCalled: [crop.name, crop.plural, ...crop.alsoCalled] };
  });
  tables.set(region, table);
  return table;
}
