/**
 * The crops a garden grows: vegetables, fruit, herbs, flowers and shrubs, and cover crops. Their names are those of the
 * gardens of Britain and Ireland, North America, Australia and New Zealand, South and East Africa, India and the Caribbean.
 *
 * `perennial` means that the crop commonly stands from year to year where it was planted: rhubarb and dahlias do,
 * tomatoes do not, whatever they would do in a warmer place.
 */
import type { Crop, PickUnit } from "../model.ts";
import { annualFlowers } from "./crop-rows/annual-flowers.ts";
import { coverCrops } from "./crop-rows/cover-crops.ts";
import { fruit } from "./crop-rows/fruit.ts";
import { herbs } from "./crop-rows/herbs.ts";
import { lastingFlowers } from "./crop-rows/lasting-flowers.ts";
import { vegetables } from "./crop-rows/vegetables.ts";
import { lowerForm } from "./line-words.ts";
import { cultivarTable } from "./reading/tables/cultivars.ts";
import { keyOf } from "./reading/tables/rows.ts";

export const crops: readonly Crop[] = [
  ...vegetables,
  ...fruit,
  ...herbs,
  ...annualFlowers,
  ...lastingFlowers,
  ...coverCrops,
];

/**
 * What one piece of a crop is when a picking only counts: "picked 3 Crown Prince" is three fruits, "cut 12 dahlias"
 * twelve stems. Flowers are counted in stems; crops that stand neither here nor among flowers in pieces.
 */
const countedIn: Readonly<Partial<Record<PickUnit, string>>> = {
  fruit:
    "tomato pepper chilli aubergine garden-egg tomatillo ground-cherry cucumber gherkin squash summer-squash courgette " +
    "marrow pumpkin gourd bitter-gourd bottle-gourd ridge-gourd snake-gourd wax-gourd chayote melon watermelon strawberry " +
    "apple pear plum cherry peach apricot quince medlar fig lemon citrus orange-tree mandarin lime-tree grapefruit pomelo " +
    "kumquat feijoa guava pomegranate persimmon passion-fruit avocado mango papaya pineapple banana plantain breadfruit " +
    "soursop custard-apple tamarillo kiwi loquat olive",
  head:
    "cabbage chinese-cabbage broccoli cauliflower lettuce endive chicory pak-choi tatsoi globe-artichoke celery fennel " +
    "celtuce",
  root:
    "radish mooli turnip swede beetroot carrot parsnip celeriac hamburg-parsley mangel-wurzel sugar-beet " +
    "turnip-rooted-chervil",
  bulb: "onion shallot garlic",
  ear: "sweetcorn",
  stem: "rhubarb asparagus",
  pod: "pea mangetout sugar-snap broad-bean runner-bean french-bean long-bean hyacinth-bean okra",
};

/**
 * The crop of a cultivar whose name ends in another crop's word, which says nothing of what it is: "Yellow Pear" is a
 * tomato. Only as the name is written: "yellow pears" are pears.
 */
export function cropOfCultivar(title: string): string | undefined {
  const named = cultivarTable()
    .get(keyOf(title))
    ?.filter((cultivar) => !cultivar.weak && asWritten(cultivar.title) === asWritten(title));
  return named?.length === 1 ? named[0]?.crop : undefined;
}

/**
 * The crop of a plant's name that is known of one crop alone: "Sturon" is an onion, "Charlotte" a potato. For names that
 * stand for a plant already; whether they do, this does not tell.
 */
export function onlyCropOf(title: string): Crop | undefined {
  const named = cultivarTable()
    .get(keyOf(title))
    ?.filter((cultivar) => asWritten(cultivar.title) === asWritten(title));
  const ids = new Set(named?.map(({ crop }) => crop));
  return ids.size === 1 ? crops.find(({ id }) => ids.has(id)) : undefined;
}

const pieceByCrop = new Map(
  Object.entries(countedIn).flatMap(([unit, ids]) => ids.split(" ").map((id) => [id, unit as PickUnit] as const)),
);

/** The unit in which a picking of this crop is counted when the line names none. */
export function pieceOf(crop: Crop | undefined): PickUnit {
  if (crop === undefined) return "piece";
  return pieceByCrop.get(crop.id) ?? (crop.use === "flower" ? "stem" : "piece");
}

/** Plurals tell names apart here, and accents and apostrophes, curly or straight, do not: "Kerr's Pink" is Kerr’s Pink. */
function asWritten(title: string): string {
  return lowerForm(title.trim()).replace(/\s+/g, " ");
}
