/**
 * Plants needed next year for what the person wants: the goal over what a plant gave here, with the range that good and poor
 * years make; the handbook's yield, said to be that, where nothing of the crop has been weighed.
 */
import {
  type CanningFact,
  cannerLoads,
  canningCautions,
  canningFacts,
  gramsForJars,
  yieldPerPlant,
} from "../almanac/index.ts";
import type { Crop, Goal, Variety } from "../model.ts";
import { capital, sayNumber, sayPlural, sayWeight, varietyName } from "../timeline/index.ts";
import { type Ground, type Sentence, say } from "../tour/index.ts";
import { meantBy } from "./crop-words.ts";
import { hasAmount, sumPickings } from "./results.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

export interface Need {
  readonly goal: Goal;
  readonly crop?: Crop | undefined;
  readonly variety?: Variety | undefined;
  /** Fresh produce the goal takes, grams; undefined for goals in pieces. */
  readonly grams?: number | undefined;
  /** Plants at the mean, in a good year and in a poor one; undefined when nothing tells what a plant gives. */
  readonly plants?: { readonly usual: number; readonly good: number; readonly poor: number } | undefined;
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

function needOf(book: SeasonBook, goal: Goal): Need {
  const canning =
    goal.jars === undefined ? undefined : canningFacts.find(({ words }) => words.test(goal.what.toLowerCase()));
  const meant = meantBy(book, goal.what);
  const crop =
    meant.crop ??
    (canning === undefined ? undefined : meantBy(book, canning.crops[0]?.replaceAll("-", " ") ?? "").crop);
  const cautions = goal.jars === undefined ? [] : canningCautions(canning ?? unknownProduct);
  const base = { goal, crop, variety: meant.variety, product: canning?.product, cautions };
  if (crop === undefined) {
    return {
      ...base,
      basis: "none",
      sentence: say(`${goalSaid(goal)}: no crop is known by that name, so nothing can be reckoned.`, gardenFile),
    };
  }
  const grams =
    goal.grams ??
    (goal.jars !== undefined && canning !== undefined
      ? gramsForJars(canning, goal.jars.count, goal.jars.size)
      : undefined);
  if (goal.jars !== undefined && canning === undefined) {
    return {
      ...base,
      basis: "none",
      sentence: say(
        `${goalSaid(goal)}: the official guide's table has no row for it here, so take the amount from your tested recipe.`,
        gardenFile,
      ),
    };
  }
  const lots = (meant.variety === undefined ? book.lotsOfCrop(crop.id) : book.lotsOf(meant.variety.id)).filter(
    // A planting that is still picked has not given all it will.
    ({ pickings, plants, planting }) => pickings.length > 0 && plants !== undefined && planting.ended !== undefined,
  );
  const own = ownYield(lots, goal);
  const handbook = own === undefined ? handbookYield(crop.id, goal) : undefined;
  const each = own ?? handbook;
  const wanted = grams ?? goal.pieces?.count;
  const plants = each === undefined || wanted === undefined ? undefined : plantsFor(wanted, each);
  return {
    ...base,
    grams,
    plants,
    basis: own !== undefined ? "own" : handbook !== undefined ? "handbook" : "none",
    sentence: say(
      sentenceOf(book, goal, {
        crop,
        variety: meant.variety,
        canning,
        grams,
        plants,
        each,
        grown: book.lotsOfCrop(crop.id).length > 0,
      }),
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
  words: /^$/,
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
  readonly plants: number;
  readonly from: "own" | "handbook";
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
      : sumPickings(pickings).grams;
    return plants > 0 && amount > 0
      ? [
          {
            each: amount / plants,
            plants,
            amount,
            grounds: pickings.map(({ note }) => ({ note })),
          },
        ]
      : [];
  });
  const plants = seasons.reduce((sum, one) => sum + one.plants, 0);
  if (plants <= 0) return undefined;
  const mean = seasons.reduce((sum, { amount }) => sum + amount, 0) / plants;
  const each = seasons.map((one) => one.each);
  const several = each.length > 1;
  return {
    mean,
    low: several ? Math.min(...each) : mean * (1 - usualSpread),
    high: several ? Math.max(...each) : mean * (1 + usualSpread),
    pieces: wantsPieces ? seasons.reduce((sum, { amount }) => sum + amount, 0) : undefined,
    seasons: seasons.length,
    plants,
    from: "own",
    grounds: seasons.flatMap(({ grounds }) => grounds),
  };
}

function handbookYield(crop: string, goal: Goal): Yield | undefined {
  const fact = yieldPerPlant(crop);
  const each = goal.pieces === undefined ? fact?.value.grams : fact?.value.pieces;
  if (each === undefined || each <= 0) return undefined;
  return {
    mean: each,
    low: each * (1 - usualSpread),
    high: each * (1 + usualSpread),
    pieces: goal.pieces === undefined ? undefined : each,
    seasons: 0,
    plants: 0,
    from: "handbook",
    grounds: [],
  };
}

function plantsFor(wanted: number, { mean, low, high }: Yield): Need["plants"] {
  const count = (each: number) => Math.min(mostPlants, Math.max(1, Math.ceil(wanted / each - 1e-9)));
  return { usual: count(mean), good: count(high), poor: count(low) };
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
      : `about ${sayWeight(grams, units)} of ${canning.fresh}${loadsSaid(goal.jars)}`;
  if (plants === undefined || each === undefined) {
    const why = grown
      ? `nothing picked here so far tells what one plant of ${produce} gives, and the handbook doesn't either`
      : `${produce} never grew here, and the handbook has no yield for one plant`;
    return `${goalSaid(goal)}: ${fresh === undefined ? "" : `${fresh}; `}${why}.`;
  }
  const many = (n: number) => `${sayNumber(n)} ${varietyName(variety, crop, 1)} ${n === 1 ? "plant" : "plants"}`;
  const range =
    plants.good === plants.poor
      ? ""
      : `, ${sayNumber(plants.good)} in a good year and ${sayNumber(plants.poor)} in a poor one`;
  return `${goalSaid(goal)}: ${fresh === undefined ? "" : `${fresh}, so `}about ${many(plants.usual)}${range}, ${basisSaid(each, produce, grown, units)}.`;
}

function basisSaid(each: Yield, produce: string, grown: boolean, units: "metric" | "us"): string {
  const seasons = sayPlural(each.seasons, "season", "seasons");
  const gave = `${sayNumber(each.plants)} ${each.plants === 1 ? "plant" : "plants"}`;
  if (each.from === "handbook") {
    const amount = each.pieces === undefined ? sayWeight(each.mean, units) : sayNumber(Math.round(each.mean * 10) / 10);
    return `at a handbook's ${amount} a plant, because ${grown ? `no finished planting of ${produce} here was counted and weighed` : `${produce} never grew here`}`;
  }
  if (each.pieces !== undefined) return `because ${gave} gave ${sayNumber(each.pieces)} here in ${seasons}`;
  return `at the ${sayWeight(each.mean, units)} a plant that ${gave} gave here in ${seasons}`;
}

function loadsSaid({ count, size }: NonNullable<Goal["jars"]>): string {
  const { full, over } = cannerLoads(count, size);
  if (full === 0 || !Number.isInteger(count)) return "";
  const loads = sayPlural(full, "canner load", "canner loads");
  return over === 0 ? `, ${loads}` : `, ${loads} and ${sayPlural(over, "jar", "jars")} over`;
}
