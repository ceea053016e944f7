/** Lots that can be told in one breath: one crop, sown and planted on the same days. */
import { cropName, cultivar, type Ground, isSingular, plantName, sayList, sayNumber } from "../language/index.ts";
import type { Crop } from "../model.ts";
import type { Lot } from "./bed-on-the-day.ts";

export interface Batch {
  /** From the first lot, for choosing words. */
  readonly id: string;
  readonly crop?: Crop | undefined;
  readonly lots: readonly [Lot, ...Lot[]];
  /** Plants alive in all; undefined as soon as one lot was not counted. */
  readonly plants?: number | undefined;
  readonly about: boolean;
}

/** Asked for by nearly every sentence of a bed, so each grouping of a list of lots is made once. */
const grouped = new WeakMap<readonly Lot[], Map<string, readonly Batch[]>>();

function groupOnce(name: string, lots: readonly Lot[], key: (lot: Lot) => string): readonly Batch[] {
  const known = grouped.get(lots) ?? new Map<string, readonly Batch[]>();
  grouped.set(lots, known);
  const batches =
    known.get(name) ??
    [...Map.groupBy(lots, key).values()].flatMap(([first, ...more]) =>
      first === undefined ? [] : [batchOf([first, ...more])],
    );
  known.set(name, batches);
  return batches;
}

/** Lots of one crop with one story, in the order in which the first lot of each stands. */
export function batchesOf(lots: readonly Lot[]): readonly Batch[] {
  return groupOnce("story", lots, ({ planting, crop, variety }) =>
    [
      crop?.id ?? variety?.id ?? planting.id,
      planting.sown,
      planting.planted,
      planting.plantsFrom,
      planting.movedFrom?.split("/")[0],
      planting.implied ? planting.since : "",
    ].join(" "),
  );
}

/** Lots of one variety in the bed, which are picked, lost and spoken of as one. */
export function byVariety(lots: readonly Lot[]): readonly Batch[] {
  return groupOnce("variety", lots, ({ planting, crop }) => planting.variety ?? crop?.id ?? planting.id);
}

/** Lots of one variety begun on the same days, wherever in the bed they stand. */
export function bySowing(lots: readonly Lot[]): readonly Batch[] {
  return groupOnce("sowing", lots, ({ planting, crop }) =>
    [planting.variety ?? crop?.id ?? planting.id, planting.sown, planting.planted].join(" "),
  );
}

export function batchOf(lots: readonly [Lot, ...Lot[]]): Batch {
  const counted = lots.every((lot) => lot.plants !== undefined);
  return {
    id: lots[0].planting.id,
    crop: lots[0].crop,
    lots,
    plants: counted ? lots.reduce((sum, lot) => sum + (lot.plants ?? 0), 0) : undefined,
    about: lots.some((lot) => lot.about),
  };
}

/** Everything the batch's own beginning rests on. */
export function groundsOf(batch: Batch): readonly Ground[] {
  return batch.lots.flatMap((lot) => [
    ...lot.grounds,
    { private: lot.planting.private || lot.variety?.private === true },
  ]);
}

/** Whether the batch is spoken of as one thing: "is", "it". Two kinds of basil are not. */
export function isOne(batch: Batch): boolean {
  if (new Set(batch.lots.map(cultivar)).size > 1) return false;
  return turnOf(batch) !== undefined || isSingular(batch.lots[0], batch.plants);
}

/** Picks the verb or pronoun that goes with a batch. */
export function agree(batch: Batch, one: string, many: string): string {
  return isOne(batch) ? one : many;
}

/**
 * The batch by name and number, as it begins a sentence: "24 Musselburgh leeks", "six Crown Prince and five Uchiki Kuri
 * squash", "Crown Prince and Uchiki Kuri squash" when nobody counted.
 */
export function numbered(batch: Batch): string {
  const [first] = batch.lots;
  const merged = mergeSame(batch.lots);
  if (merged.length === 1) {
    const { plants } = batch;
    return plants === undefined
      ? plantName(first)
      : `${batch.about ? "about " : ""}${sayNumber(plants)} ${countedName(first, plants)}`;
  }
  const words = merged.every(({ plants }) => plants === undefined || plants <= 12);
  const names = sayList(
    merged.map(({ lot, plants }) =>
      plants === undefined
        ? cultivar(lot)
        : `${lot.about ? "about " : ""}${words ? sayNumber(plants) : plants} ${cultivar(lot)}`,
    ),
  );
  return batch.crop === undefined ? names : `${names} ${cropName(batch.crop, 2)}`;
}

/** The same without the crop's word, for sentences that have just said it: "6 Crown Prince and 5 Uchiki Kuri". */
export function numberedCultivars(batch: Batch, more: (lot: Lot) => string = () => ""): string {
  return sayList(mergeSame(batch.lots).map(({ lot, plants }) => `${counted(lot, plants)}${cultivar(lot)}${more(lot)}`));
}

/** The batch by name alone: "Musselburgh leeks", "Crown Prince and Uchiki Kuri squash". */
export function named(batch: Batch): string {
  const [first] = batch.lots;
  const distinct = [...new Set(batch.lots.map(cultivar))];
  const turn = turnOf(batch);
  if (turn !== undefined) return `${turn} of ${plantName(first)}`;
  if (distinct.length === 1) return plantName(first, batch.plants);
  return batch.crop === undefined ? sayList(distinct) : `${sayList(distinct)} ${cropName(batch.crop, 2)}`;
}

/** "second sowing", when the batch is that and nothing else. */
export function turnOf({ lots }: Batch): string | undefined {
  const [{ turn, planting }] = lots;
  return lots.every((lot) => lot.turn === turn && lot.planting.variety === planting.variety) ? turn : undefined;
}

/** "the Musselburgh leeks", "the Crown Prince and Uchiki Kuri squash" */
export function theBatch(batch: Batch): string {
  return `the ${named(batch)}`;
}

/** A title that brings its own crop word can be no number's noun: "five Early Purple Sprouting plants". */
function countedName(lot: Lot, plants: number): string {
  const name = plantName(lot, plants);
  const noun = lot.crop === undefined || [lot.crop.name, lot.crop.plural].some((word) => name.endsWith(word));
  return noun ? name : `${name} ${plants === 1 ? "plant" : "plants"}`;
}

/** In a list of several, numbers keep their digits: "6 Crown Prince and 12 Uchiki Kuri". */
function counted(lot: Lot, plants: number | undefined): string {
  return plants === undefined ? "" : `${lot.about ? "about " : ""}${plants} `;
}

function mergeSame(lots: readonly Lot[]): readonly { readonly lot: Lot; readonly plants: number | undefined }[] {
  const merged = new Map<string, { lot: Lot; plants: number | undefined }>();
  for (const lot of lots) {
    const key = cultivar(lot);
    const known = merged.get(key);
    if (known === undefined) merged.set(key, { lot, plants: lot.plants });
    else known.plants = known.plants === undefined || lot.plants === undefined ? undefined : known.plants + lot.plants;
  }
  return [...merged.values()];
}
