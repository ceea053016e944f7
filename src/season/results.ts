/**
 * What a season brought in, by variety, crop, bed and site. Weights, pieces and volumes stand side by side and are never
 * turned into one another; a picking without an amount counts as a picking and nothing else, and that is said.
 */

import { daysBetween } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { earlier, type Picking, type Season } from "../garden/index.ts";
import type { Day, Picked, PickUnit, Price } from "../model.ts";
import { betweenDays } from "../order.ts";
import { pickedInAll } from "../picked.ts";
import { timed } from "./maturity.ts";
import { recapWords } from "./recap-words/words.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

export interface Result {
  /** Variety, crop, bed or site id; "" for what no record names. */
  readonly id: string;
  /** "Crown Prince, squash", "squash", "Long Bed". */
  readonly title: string;
  /** "Crown Prince squash": as it is said in a sentence. */
  readonly said: string;
  readonly beds: readonly string[];
  readonly sum: Picked;
  /** Pickings that say no amount. */
  readonly withoutAmount: number;
  /** Grams over all weighed grams of the season; undefined when nothing was weighed. */
  readonly share?: number | undefined;
  readonly perPlant?: PerPlant | undefined;
  /** Grams of one head, bulb or root, where every weighed picking was counted too. */
  readonly perPiece?: { readonly grams: number; readonly unit: PickUnit } | undefined;
  /** Grams from a metre of row, where lines tell the spacing. */
  readonly gramsPerRowMetre?: number | undefined;
  /** Grams from a square metre, of beds with a size. */
  readonly gramsPerSquareMetre?: number | undefined;
  /** Days from sowing or planting to the first picking, of the lot that came first, and what its variety promises. */
  readonly firstAfter?:
    | { readonly days: number; readonly counted: "sowing" | "planting"; readonly promised: number }
    | undefined;
  /** What it would have cost, at the person's own prices. Private. */
  readonly value?: { readonly sign: string; readonly signAfter: boolean; readonly amount: number } | undefined;
  /** Rests on something the person marked private. */
  readonly private: boolean;
}

/** Of plantings whose plants were counted, over their whole picking: leeks dug into the next season are not cut in two. */
export interface PerPlant {
  readonly plants: number;
  readonly grams?: number | undefined;
  /** Pieces that were never weighed. */
  readonly pieces?: { readonly count: number; readonly unit: PickUnit } | undefined;
}

export interface SeasonResults {
  readonly season: Season;
  readonly on: Day;
  readonly varieties: readonly Result[];
  readonly crops: readonly Result[];
  readonly beds: readonly Result[];
  readonly sites: readonly Result[];
  readonly total: Picked;
  readonly withoutAmount: number;
  /** Pickings that no planting could be credited with. */
  readonly unassigned: number;
}

/** What was picked in a season up to a day. `from` narrows it: a month, the days since the last recap. */
export function seasonResults(book: SeasonBook, season: Season, on: Day, from = season.from): SeasonResults {
  const pickings = pickingsBetween(book, from, earlier(on, season.to));
  const all = pickedInAll(pickings);
  const ofWhole = from === season.from;
  const lots = ofWhole ? book.lots.filter((lot) => lot.season === season.year) : [];
  const lotsOfVariety = Map.groupBy(lots, ({ planting }) => planting.variety);
  const lotsOfCrop = Map.groupBy(lots, ({ crop }) => crop?.id);
  const { varieties, crops, beds } = book.garden;
  const words = recapWords;
  const grouped = (key: (picking: Picking) => string | undefined) =>
    [...Map.groupBy(pickings, (picking) => key(picking) ?? "")].filter(([id]) => id !== "");
  const made = (id: string, group: readonly Picking[], named: { title: string; said: string }, own: readonly Lot[]) =>
    makeResult(book, { id, ...named }, group, own, all);
  const siteId = (picking: Picking) => beds.get(picking.bed)?.site;
  return {
    season,
    on,
    varieties: inOrder(
      grouped(({ variety }) => variety).map(([id, group]) => {
        const variety = varieties.get(id);
        const named = { variety, crop: cropOf(book.garden, variety) };
        return made(id, group, { title: words.label(named), said: words.plants(named) }, lotsOfVariety.get(id) ?? []);
      }),
    ),
    crops: inOrder(
      grouped(({ crop }) => crop).map(([id, group]) => {
        const plural = crops.has(id) ? words.plants({ crop: crops.get(id) }) : id;
        return made(id, group, { title: plural, said: plural }, lotsOfCrop.get(id) ?? []);
      }),
    ),
    beds: inOrder(
      grouped(({ bed }) => bed).map(([id, group]) => {
        const title = beds.get(id)?.title ?? id;
        return made(id, group, { title, said: title }, []);
      }),
    ),
    sites: inOrder(
      grouped(siteId).map(([id, group]) => {
        const title = book.garden.sites.get(id)?.title ?? id;
        return made(id, group, { title, said: title }, []);
      }),
    ),
    total: all,
    withoutAmount: pickings.filter(({ harvest }) => !hasAmount(harvest)).length,
    unassigned: pickings.filter(({ planting }) => planting === undefined).length,
  };
}

/** From the first day up to and with the last. */
export function pickingsBetween(book: SeasonBook, from: Day, to: Day): readonly Picking[] {
  return betweenDays(book.pickings, from, to);
}

export function hasAmount({ grams, litres, count }: Picking["harvest"]): boolean {
  return grams !== undefined || litres !== undefined || count !== undefined;
}

/** Heaviest first; then by pickings; then by name. */
function inOrder(results: readonly Result[]): readonly Result[] {
  return results.toSorted(
    (a, b) => b.sum.grams - a.sum.grams || b.sum.times - a.sum.times || (a.title < b.title ? -1 : 1),
  );
}

function makeResult(
  book: SeasonBook,
  words: { readonly id: string; readonly title: string; readonly said: string },
  pickings: readonly Picking[],
  lots: readonly Lot[],
  all: Picked,
): Result {
  const sum = pickedInAll(pickings);
  const beds = [...new Set(pickings.map(({ bed }) => bed))].sort();
  return {
    ...words,
    beds,
    sum,
    withoutAmount: pickings.filter(({ harvest }) => !hasAmount(harvest)).length,
    share: all.grams > 0 && sum.grams > 0 ? sum.grams / all.grams : undefined,
    perPlant: perPlant(lots),
    perPiece: perPiece(pickings),
    gramsPerRowMetre: perRowMetre(lots),
    gramsPerSquareMetre: perSquareMetre(book, words.id, sum),
    firstAfter: firstAfter(book, lots),
    value: worthOf(book, pickings),
    private: pickings.every((picking) => picking.private),
  };
}

/** Whether a planting tells what a plant gives: it has ended, and was picked, or lost most of its plants before it could be. */
export function toldItsYield({ planting, pickings, plants }: Lot): boolean {
  const failed = planting.lost > 0 && planting.lost * 2 >= (plants ?? 0);
  return planting.ended !== undefined && (pickings.length > 0 || failed);
}

/**
 * What each plant gave, the lost ones with them: of plantings that have ended, because one that is still picked has no yield a
 * plant yet. Undefined unless every one of them had its plants counted.
 */
export function perPlant(lots: readonly Lot[]): PerPlant | undefined {
  const told = lots.filter(toldItsYield);
  const pickings = told.flatMap((lot) => lot.pickings);
  if (pickings.length === 0 || told.some(({ plants }) => plants === undefined)) return undefined;
  const plants = told.reduce((sum, lot) => sum + (lot.plants ?? 0), 0);
  if (plants <= 0) return undefined;
  const sum = pickedInAll(pickings);
  const grams = pickings.every(({ harvest }) => harvest.grams !== undefined) ? sum.grams / plants : undefined;
  const [unit, other] = Object.entries(sum.counts);
  const countedAlone = sum.grams === 0 && sum.litres === 0 && unit !== undefined && other === undefined;
  const pieces = countedAlone && !sum.weightAlone ? { unit: unit[0] as PickUnit, count: unit[1] / plants } : undefined;
  return grams === undefined && pieces === undefined ? undefined : { plants, grams, pieces };
}

/** Pieces that are eaten one by one say nothing of a plant; a head, a bulb and a root are the plant. */
function perPiece(pickings: readonly Picking[]): Result["perPiece"] {
  const units = new Set(pickings.map(({ harvest }) => harvest.unit));
  const [unit] = units;
  const whole = unit === "head" || unit === "bulb" || unit === "root";
  if (!whole || units.size !== 1) return undefined;
  if (pickings.some(({ harvest }) => harvest.grams === undefined || harvest.count === undefined)) return undefined;
  const count = pickings.reduce((sum, { harvest }) => sum + (harvest.count?.value ?? 0), 0);
  const grams = pickings.reduce((sum, { harvest }) => sum + (harvest.grams ?? 0), 0);
  return count > 0 ? { grams: grams / count, unit } : undefined;
}

function perRowMetre(lots: readonly Lot[]): number | undefined {
  let [metres, grams] = [0, 0];
  for (const { planting, plants, pickings } of lots.filter(toldItsYield)) {
    const { spacingCm } = planting;
    if (plants === undefined || spacingCm === undefined || spacingCm <= 0) return undefined;
    if (pickings.some(({ harvest }) => harvest.grams === undefined)) return undefined;
    metres += (plants * spacingCm) / 100;
    grams += pickings.reduce((sum, { harvest }) => sum + (harvest.grams ?? 0), 0);
  }
  return metres > 0 ? grams / metres : undefined;
}

function perSquareMetre({ garden }: SeasonBook, bed: string, sum: Picked): number | undefined {
  const size = garden.beds.get(bed)?.size;
  const area = size === undefined ? 0 : size.length * size.width;
  return area > 0 && sum.grams > 0 ? sum.grams / area : undefined;
}

function firstAfter({ garden }: SeasonBook, lots: readonly Lot[]): Result["firstAfter"] {
  const reached = lots.flatMap((lot) => {
    const one = timed(garden, lot);
    return one?.reached === undefined || one.goal !== "picking" ? [] : [{ ...one, reached: one.reached }];
  });
  const [first] = reached.toSorted((a, b) => (a.reached < b.reached ? -1 : 1));
  return first === undefined
    ? undefined
    : { days: daysBetween(first.begun, first.reached), counted: first.counted, promised: first.catalogueDays };
}

/** Only what has a price is counted; undefined when nothing has. Prices of two currencies are not added up. */
function worthOf({ garden }: SeasonBook, pickings: readonly Picking[]): Result["value"] {
  const prices = garden.settings.prices ?? [];
  if (prices.length === 0) return undefined;
  let amount = 0;
  let price: Price | undefined;
  for (const picking of pickings) {
    const found = priceOf(garden, picking, prices);
    if (found === undefined || (price !== undefined && price.sign !== found.sign)) continue;
    const { grams, count, unit } = picking.harvest;
    const worth =
      found.perGram !== undefined && grams !== undefined
        ? found.perGram * grams
        : found.perPiece !== undefined && count !== undefined && unit === found.perPiece.unit
          ? found.perPiece.amount * count.value
          : undefined;
    if (worth === undefined) continue;
    price ??= found;
    amount += worth;
  }
  return price === undefined ? undefined : { sign: price.sign, signAfter: price.signAfter, amount };
}

/** The variety's own price before its crop's. */
function priceOf(
  { varieties, crops }: SeasonBook["garden"],
  picking: Picking,
  prices: readonly Price[],
): Price | undefined {
  const variety = picking.variety === undefined ? undefined : varieties.get(picking.variety);
  const crop = crops.get(picking.crop ?? "");
  const names = [variety?.title, variety?.id, crop?.name, crop?.plural, crop?.id, ...(crop?.alsoCalled ?? [])];
  for (const name of names) {
    const found = prices.find(({ of }) => name !== undefined && of.trim().toLowerCase() === name.toLowerCase());
    if (found !== undefined) return found;
  }
  return undefined;
}
