/** What plantings gave: so far this season, since viewers last saw the bed, and against last year by the same day. */
import { addDays } from "../calendar.ts";
import type { Change, Picked } from "../model.ts";
import { capital, changes } from "../timeline/index.ts";
import { agree, type Batch, batchOf, theBatch } from "./batches.ts";
import { theBed } from "./bed-names.ts";
import { type BedOnTheDay, type Lot, lotOf } from "./bed-on-the-day.ts";
import type { Fact, Sentence } from "./brief.ts";
import { lastSeasonStart, onDay, sinceDay, speechOf, yearBefore } from "./days-said.ts";
import { harvestBetween, sayHarvest, sayPickings } from "./harvest-sums.ts";
import { oneOf } from "./phrasing.ts";
import { thePlants } from "./plant-names.ts";
import { type Ground, say } from "./sentence.ts";

/** Lots of one variety in the bed, picked as one. */
export function pickedTogether(lots: readonly Lot[]): readonly Batch[] {
  const groups = Map.groupBy(lots, ({ planting, crop }) => planting.variety ?? crop?.id ?? planting.id);
  return [...groups.values()].flatMap(([first, ...more]) => (first === undefined ? [] : [batchOf([first, ...more])]));
}

function pickings(batch: Batch): readonly Change[] {
  return batch.lots.flatMap((lot) =>
    lot.changes.filter((change) => change.kind === "picked" && change.planting === lot.planting.id),
  );
}

export function pickedThisSeason(batch: Batch, here: BedOnTheDay): Picked {
  return harvestBetween(inOrder(pickings(batch)), addDays(here.season, -1), here.day);
}

export function pickedSinceSeen(batch: Batch, here: BedOnTheDay): Picked {
  return harvestBetween(inOrder(pickings(batch)), here.newsAfter, here.day);
}

function inOrder(all: readonly Change[]): readonly Change[] {
  return all.toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
}

/** "So far the Black Beauty aubergines have given 4.2 kg in five pickings since 3 July; by this day last year it was 3.1 kg." */
export function pickedFact(batch: Batch, here: BedOnTheDay): Fact | undefined {
  const picked = pickedThisSeason(batch, here);
  if (picked.times === 0 || picked.first === undefined) return undefined;
  const speech = speechOf(here);
  const sum = sayHarvest(picked, speech.settings);
  const who = theBatch(batch);
  const have = agree(batch, "has", "have");
  const last = lastYearByNow(batch, here);
  const against = last === undefined || !comparable(picked, last.picked) ? undefined : last;
  const compared = against === undefined ? "" : `; ${against.text}`;
  const text = () => {
    if (sum === undefined)
      return `${capital(who)} ${have} been picked ${sinceDay(picked.first ?? here.day, speech)}, not weighed.`;
    if (picked.times === 1)
      return `${capital(who)} ${have} given ${sum} so far, picked ${onDay(picked.first ?? here.day, speech)}${compared}.`;
    return oneOf(`${batch.id} picked`, [
      `So far ${who} ${have} given ${sum} ${sayPickings(picked.times)} ${sinceDay(picked.first ?? here.day, speech)}${compared}.`,
      `${capital(who)} ${have} given ${sum} so far, ${sayPickings(picked.times)} ${sinceDay(picked.first ?? here.day, speech)}${compared}.`,
    ]);
  };
  const grounds: Ground[] = [
    ...pickings(batch).filter((change) => change.day >= here.season),
    ...(against?.grounds ?? []),
  ];
  return { ...say(text(), grounds), kind: "picked", plantings: batch.lots.map((lot) => lot.planting.id) };
}

/** Both in weight, or both in the same unit: anything else would compare apples with stems. */
function comparable(a: Picked, b: Picked): boolean {
  const shape = ({ grams, litres, counts }: Picked) =>
    [grams > 0 ? "weight" : "", litres > 0 ? "volume" : "", ...Object.keys(counts)]
      .filter((each) => each !== "")
      .join(" ");
  return shape(a) !== "" && shape(a) === shape(b);
}

interface LastYear {
  readonly picked: Picked;
  /** "by this day last year it was 3.1 kg" */
  readonly text: string;
  readonly grounds: readonly Ground[];
}

/** What the variety had given by the same day of last year: in this bed, or in the one other bed it grew in. */
function lastYearByNow(batch: Batch, here: BedOnTheDay): LastYear | undefined {
  const variety = batch.lots[0].planting.variety;
  if (variety === undefined) return undefined;
  const { settings } = here.index.garden;
  const day = yearBefore(here.day);
  const from = addDays(lastSeasonStart(here.day, settings.seasonStarts), -1);
  const former = here.index.plantingsOf(variety, day).map((planting) => lotOf(here.index, planting, day));
  const byBed = Map.groupBy(former, (lot) => lot.planting.bed);
  const found = [...byBed].flatMap(([bed, lots]) => {
    const all = inOrder(lots.flatMap((lot) => lot.changes.filter((change) => change.planting === lot.planting.id)));
    const picked = harvestBetween(all, from, day);
    return picked.times === 0
      ? []
      : [{ bed, picked, all: all.filter((change) => change.kind === "picked" && change.day > from) }];
  });
  const own = found.find(({ bed }) => bed === here.bed.id) ?? (found.length === 1 ? found[0] : undefined);
  const sum = own === undefined ? undefined : sayHarvest(own.picked, settings);
  if (own === undefined || sum === undefined) return undefined;
  const bed = here.index.garden.beds.get(own.bed);
  const where = own.bed === here.bed.id || bed === undefined ? "" : ` in ${theBed(bed)}`;
  return { picked: own.picked, text: `by this day last year it was ${sum}${where}`, grounds: own.all };
}

/** "Another 2.1 kg of tomatoes came from here without a variety noted." One for each crop picked that way this season. */
export function pickedUnassigned(here: BedOnTheDay): readonly Fact[] {
  const { garden } = here.index;
  const season = changes(garden, here.bed.id, addDays(here.season, -1), here.day);
  const whole = season.filter((change) => change.effect.unassigned !== undefined);
  const byCrop = Map.groupBy(whole, (change) => change.effect.unassigned?.crop ?? "");
  return [...byCrop].flatMap(([id, all]) => {
    const crop = garden.crops.get(id);
    const sum = sayHarvest(harvestBetween(all, "", here.day), garden.settings);
    if (crop === undefined || sum === undefined) return [];
    const text = `${capital(sum)} of ${crop.plural} came from this bed this season without a word on which.`;
    return [{ ...say(text, all), kind: "picked", plantings: [] }];
  });
}

/** "4.2 kg of Black Beauty aubergines came off since the last tour, 6.1 kg so far this season." */
export function pickedSinceSentence(batch: Batch, here: BedOnTheDay): Sentence | undefined {
  const { settings } = here.index.garden;
  const since = pickedSinceSeen(batch, here);
  const season = pickedThisSeason(batch, here);
  const sum = sayHarvest(since, settings);
  if (since.times === 0 || sum === undefined) return undefined;
  const all = sayHarvest(season, settings);
  const total = season.times === since.times || all === undefined ? "" : `, ${all} so far this season`;
  const grounds = pickings(batch).filter((change) => change.day > here.newsAfter);
  const when = here.since.episode === undefined ? "this season" : here.since.text;
  const who = thePlants({ variety: batch.lots[0].variety, crop: batch.crop }, batch.plants);
  return say(
    oneOf(`${batch.id} since`, [
      `${capital(sum)} came off ${who} ${when}${total}.`,
      `${capital(who)} gave ${sum} ${when}${total}.`,
    ]),
    grounds,
  );
}

/** How many things were picked, as a rough size for ranking: kilograms plus pieces in tens. */
export function pickedSize(picked: Picked): number {
  const pieces = Object.values(picked.counts).reduce((sum, count) => sum + count, 0);
  return picked.grams / 1000 + picked.litres + pieces / 10;
}
