/**
 * Plants needed next year for what the person wants: the goal over what a plant gave here, the lost ones with it, with the range
 * that good and poor years make; the range of handbooks, said to be that, where nothing of the crop has been weighed.
 */

import { type CanningFact, cannerLoads, canningCautions, gramsForJars, plantYield } from "../almanac/index.ts";
import {
  capital,
  type Ground,
  type Sentence,
  say,
  sayNumber,
  sayPlural,
  sayWeight,
  varietyName,
} from "../language/index.ts";
import type { Crop, Goal, Variety } from "../model.ts";
import { pickedInAll } from "../picked.ts";
import { isOfItself, meantBy, productMeant } from "./crop-words.ts";
import { hasAmount, toldItsYield } from "./results.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

export interface Need {
  readonly goal: Goal;
  readonly crop?: Crop | undefined;
  readonly variety?: Variety | undefined;
  /** Fresh produce the goal takes, grams; undefined for goals in pieces. */
  readonly grams?: number | undefined;
  /**
   * Plants at the mean, in a good year and in a poor one, or at a handbook's middle, most and least; no number of plants does it
   * in a year in which all failed. Undefined when nothing tells what a plant gives.
   */
  readonly plants?: { readonly usual: number; readonly good: number; readonly poor?: number | undefined } | undefined;
  readonly basis: "own" | "handbook" | "none";
  /** What the official guide's table calls it. */
  readonly product?: string | undefined;
  readonly sentence: Sentence;
  /** Stand next to the figure, always. */
  readonly cautions: readonly string[];
}

/** Without a spread of own years, a third more or less (common practice of growers). */
const usualSpread = 1 / 3;
/** No plan is better for a thousand leeks more. */
const mostPlants = 100_000;

export function needs(book: SeasonBook): readonly Need[] {
  return (book.garden.settings.goals ?? []).map((goal) => needOf(book, goal));
}

/** Of goals that count what produce is put into. */
export const vessel = /^(?:jars?|bottles?|tins?|cans?|bags?|boxes|box|tubs?)\b/i;

function needOf(book: SeasonBook, goal: Goal): Need {
  const meant = meantBy(book, goal.what);
  const inJars = goal.jars !== undefined;
  const canning = inJars ? productMeant(meant, goal.what) : undefined;
  const cautions = inJars || vessel.test(goal.what) ? canningCautions(canning ?? unknownProduct) : [];
  const none = (crop: Crop | undefined, why: string): Need => ({
    goal,
    crop,
    variety: meant.variety,
    product: canning?.product,
    cautions,
    basis: "none",
    sentence: say(`${goalSaid(goal)}: ${why}`, gardenFile),
  });
  if (inJars && canning === undefined) {
    const ornamental = meant.crop?.use === "flower" && isOfItself(meant, goal.what);
    return none(
      meant.crop,
      ornamental
        ? `${meant.crop?.plural} are grown for their flowers and are no food; some are poisonous, so nothing is reckoned.`
        : "which product is that? The official guide's table here has none of that name, so no amount is reckoned: take it from your tested recipe, or name one of the table's.",
    );
  }
  const crop =
    canning === undefined || (meant.crop !== undefined && canning.crops.includes(meant.crop.id))
      ? meant.crop
      : meantBy(book, canning.crops[0]?.replaceAll("-", " ") ?? "").crop;
  if (vessel.test(goal.what))
    return none(crop, "how much goes into one is not known here; say quarts or pints of it, or a weight.");
  if (crop === undefined) return none(undefined, "no crop is known by that name, so nothing can be reckoned.");
  if (canning === undefined && !isOfItself(meant, goal.what))
    return none(crop, `how much fresh produce that takes is not known here; name the ${crop.plural} themselves.`);
  const grams =
    goal.grams ??
    (goal.jars !== undefined && canning !== undefined
      ? gramsForJars(canning, goal.jars.count, goal.jars.size)
      : undefined);
  const lots = meant.variety === undefined ? book.lotsOfCrop(crop.id) : book.lotsOf(meant.variety.id);
  const own = ownYield(
    lots.filter((lot) => toldItsYield(lot) && lot.plants !== undefined),
    goal,
  );
  const handbook = own === undefined ? handbookYield(crop.id, goal) : undefined;
  const each = own ?? handbook;
  const wanted = grams ?? goal.pieces?.count;
  const plants = each === undefined || wanted === undefined ? undefined : plantsFor(wanted, each);
  return {
    goal,
    crop,
    variety: meant.variety,
    product: canning?.product,
    cautions,
    grams,
    plants,
    basis: own !== undefined ? "own" : handbook !== undefined ? "handbook" : "none",
    sentence: say(
      sentenceOf(book, goal, { crop, variety: meant.variety, canning, grams, plants, each, grown: lots.length > 0 }),
      [...gardenFile, ...(own?.grounds ?? [])],
    ),
  };
}

/** Goals stand in garden.md; the line is not kept. */
const gardenFile: readonly Ground[] = [{ place: { file: "garden.md", line: 1, column: 1 } }];

/** Something the table does not know is cautioned as the most dangerous kind. */
const unknownProduct: CanningFact = {
  product: "",
  fresh: "",
  names: [],
  crops: [],
  poundsPerSevenQuarts: 0,
  poundsPerNinePints: 0,
  acid: "low",
  source: { title: "", fromMemory: true },
};

interface Yield {
  /** Grams, or pieces of a unit, from one plant. */
  readonly mean: number;
  readonly low: number;
  readonly high: number;
  /** Pieces in all, of goals that count pieces. */
  readonly pieces?: number | undefined;
  readonly seasons: number;
  /** Seasons in which all of them failed. */
  readonly failed: number;
  readonly plants: number;
  readonly from: "own" | "handbook";
  /** Of handbooks, and not read in one. */
  readonly fromMemory?: boolean | undefined;
  readonly grounds: readonly Ground[];
}

/** What a plant gave in each season, from plantings whose plants were counted and all of whose pickings were measured alike. */
function ownYield(lots: readonly Lot[], goal: Goal): Yield | undefined {
  const wantsPieces = goal.pieces !== undefined;
  const seasons = [...Map.groupBy(lots, ({ season }) => season).values()].flatMap((group) => {
    const measured = group.filter(({ pickings }) =>
      pickings.every(
        ({ harvest }) =>
          hasAmount(harvest) && (wantsPieces ? harvest.count !== undefined : harvest.grams !== undefined),
      ),
    );
    const plants = measured.reduce((sum, { plants: own }) => sum + (own ?? 0), 0);
    const pickings = measured.flatMap((lot) => lot.pickings);
    const amount = wantsPieces
      ? pickings.reduce((sum, { harvest }) => sum + (harvest.count?.value ?? 0), 0)
      : pickedInAll(pickings).grams;
    return plants > 0
      ? [
          {
            each: amount / plants,
            plants,
            amount,
            grounds: [
              ...pickings.map(({ note }) => ({ note })),
              ...measured.flatMap(({ events }) => events.filter(({ kind }) => kind === "lost")),
            ],
          },
        ]
      : [];
  });
  const plants = seasons.reduce((sum, one) => sum + one.plants, 0);
  const amount = seasons.reduce((sum, one) => sum + one.amount, 0);
  if (plants <= 0 || amount <= 0) return undefined;
  const mean = amount / plants;
  const each = seasons.map((one) => one.each);
  const several = each.length > 1;
  return {
    mean,
    low: several ? Math.min(...each) : mean * (1 - usualSpread),
    high: several ? Math.max(...each) : mean * (1 + usualSpread),
    pieces: wantsPieces ? amount : undefined,
    seasons: seasons.length,
    failed: seasons.filter((one) => one.amount === 0).length,
    plants,
    from: "own",
    grounds: seasons.flatMap(({ grounds }) => grounds),
  };
}

function handbookYield(crop: string, goal: Goal): Yield | undefined {
  const fact = plantYield(crop, goal.pieces === undefined ? "grams" : "pieces");
  if (fact === undefined) return undefined;
  const { value: found, source } = fact;
  return {
    mean: found.middle,
    low: found.low,
    high: found.high,
    pieces: goal.pieces === undefined ? undefined : found.middle,
    seasons: 0,
    failed: 0,
    plants: 0,
    from: "handbook",
    fromMemory: source.fromMemory,
    grounds: [],
  };
}

function plantsFor(wanted: number, { mean, low, high }: Yield): Need["plants"] {
  const count = (each: number) => Math.min(mostPlants, Math.max(1, Math.ceil(wanted / each - 1e-9)));
  return { usual: count(mean), good: count(high), poor: low > 0 ? count(low) : undefined };
}

// ------------------------------------------------------------------------------------------------------------- in words

function goalSaid({ text }: Goal): string {
  return capital(text.trim());
}

interface About {
  readonly crop: Crop;
  readonly variety?: Variety | undefined;
  readonly canning?: CanningFact | undefined;
  readonly grams?: number | undefined;
  readonly plants?: Need["plants"];
  readonly each?: Yield | undefined;
  readonly grown: boolean;
}

/** "10 kg of leeks: about 48 leek plants, 43 in a good year and 53 in a poor one, at the 211 g a plant that 66 gave here in two seasons." */
function sentenceOf({ garden }: SeasonBook, goal: Goal, about: About): string {
  const { crop, variety, canning, grams, plants, each, grown } = about;
  const { units } = garden.settings;
  const produce = varietyName(variety, crop);
  const fresh =
    canning === undefined || grams === undefined || goal.jars === undefined
      ? undefined
      : `about ${sayWeight(grams, units)} of ${canning.fresh}${loadsSaid(goal.jars)}${canning.source.fromMemory ? ", by the guide's table from memory" : ""}`;
  if (plants === undefined || each === undefined) {
    const why = grown
      ? `nothing picked here so far tells what one plant of ${produce} gives, and the handbook doesn't either`
      : `${produce} never grew here, and the handbook has no yield for one plant`;
    return `${goalSaid(goal)}: ${fresh === undefined ? "" : `${fresh}; `}${why}.`;
  }
  const plantsOf = (n: number) => `${varietyName(variety, crop, 1)} ${n === 1 ? "plant" : "plants"}`;
  const begin = `${goalSaid(goal)}: ${fresh === undefined ? "" : `${fresh}, so `}`;
  if (each.from === "handbook") {
    const [few, most] = [plants.good, plants.poor ?? plants.good];
    const range = few === most ? `about ${sayNumber(few)}` : `between ${sayNumber(few)} and ${sayNumber(most)}`;
    return `${begin}${range} ${plantsOf(most)}, ${handbookSaid(each, produce, grown, units)}.`;
  }
  const poor =
    plants.poor !== undefined
      ? ` and ${sayNumber(plants.poor)} in a poor one`
      : `, and none would have done it in the ${sayPlural(each.failed, "season", "seasons")} in which all were lost`;
  const range = plants.good === plants.poor ? "" : `, ${sayNumber(plants.good)} in a good year${poor}`;
  return `${begin}about ${sayNumber(plants.usual)} ${plantsOf(plants.usual)}${range}, ${ownSaid(each, units)}.`;
}

function handbookSaid(
  { low, high, pieces, fromMemory }: Yield,
  produce: string,
  grown: boolean,
  units: "metric" | "us",
): string {
  const amount = (each: number) =>
    pieces === undefined ? sayWeight(each, units) : sayNumber(Math.round(each * 10) / 10);
  const range = amount(low) === amount(high) ? amount(low) : `${amount(low)} to ${amount(high)}`;
  return `at the ${range} a plant of handbooks${fromMemory === true ? ", from memory" : ""}, because ${grown ? `no finished planting of ${produce} here was counted and weighed` : `${produce} never grew here`}; one season of your own will tell more`;
}

function ownSaid(each: Yield, units: "metric" | "us"): string {
  const seasons = sayPlural(each.seasons, "season", "seasons");
  const gave = `${sayNumber(each.plants)} ${each.plants === 1 ? "plant" : "plants"}`;
  if (each.pieces !== undefined) return `because ${gave} gave ${sayNumber(each.pieces)} here in ${seasons}`;
  return `at the ${sayWeight(each.mean, units)} a plant that ${gave} gave here in ${seasons}`;
}

function loadsSaid({ count, size }: NonNullable<Goal["jars"]>): string {
  const { full, over } = cannerLoads(count, size);
  if (full === 0 || !Number.isInteger(count)) return "";
  const loads = sayPlural(full, "canner load", "canner loads");
  return over === 0 ? `, ${loads}` : `, ${loads} and ${sayPlural(over, "jar", "jars")} over`;
}
