/** How a planting is told on a page: how many, since when, how it stands, what it gave. */

import { yearOf } from "../../calendar.ts";
import { type Amount, type Locale, localeOf, sayList } from "../../language/index.ts";
import type { Day, GardenSettings, Picked, PickUnit, Planting } from "../../model.ts";
import { comesAsPlants, isBeingPicked, yearOfLife } from "../../timeline/index.ts";
import { siteWords } from "../words/index.ts";

/** In the order in which they are told. */
const UNITS: readonly PickUnit[] = [
  ...(["stem", "bunch", "head", "fruit", "pod", "punnet"] as const),
  ...(["crate", "root", "bulb", "ear", "handful", "piece"] as const),
];

/** What was picked, without when. */
export type PickedAmount = Pick<Picked, "grams" | "litres" | "counts" | "weighed" | "weightAlone">;

/**
 * "1.4 kg", "12 stems", "28 bulbs, 1.9 kg", "1.4 kg and three bunches"; empty when only the fact of picking is known.
 * Pieces that were weighed are no more than the weight: they are told where all of it was counted, before it.
 */
export function sayPicked(picked: PickedAmount, settings: Pick<GardenSettings, "language" | "units">): string {
  const locale = localeOf(settings);
  const { sentences } = siteWords;
  const { counts, weighed, weightAlone } = picked;
  const measured = sayMeasured(picked, locale);
  const pieces = (count: (unit: PickUnit) => number) =>
    UNITS.flatMap((unit) => (count(unit) > 0 ? [sentences.pieces(count(unit), unit)] : []));
  const alone = pieces((unit) => (counts[unit] ?? 0) - (weighed[unit] ?? 0));
  const together = pieces((unit) => weighed[unit] ?? 0);
  if (alone.length > 0 || weightAlone || together.length === 0) return sayList([...measured, ...alone]);
  return `${sayList(together)}, ${sayList(measured)}`;
}

/** The same, with its weights and volumes in the other units: "1.4 kg and three bunches", "3.1 lb". */
export function pickedAmount(picked: PickedAmount, settings: Pick<GardenSettings, "language" | "units">): Amount {
  const locale = localeOf(settings);
  const other = sayMeasured(picked, locale.otherUnits);
  return { text: sayPicked(picked, settings), other: other.length === 0 ? undefined : sayList(other) };
}

function sayMeasured(
  { grams, litres }: Pick<Picked, "grams" | "litres">,
  { weight, volume }: Pick<Locale, "weight" | "volume">,
): readonly string[] {
  return [...(grams > 0 ? [weight(grams)] : []), ...(litres > 0 ? [volume(litres)] : [])];
}

/** "Six plants in row 2, sown on 21 April and planted out on 24 May. In flower since 2 July. 1.4 kg picked so far." */
export function sayPlanting(planting: Planting, settings: GardenSettings, on: Day): string {
  const told = [beginning(planting, settings, on), ...standing(planting, settings, on), ...outcome(planting, settings)];
  return told.filter((sentence) => sentence !== "").join(" ");
}

function beginning(planting: Planting, settings: GardenSettings, on: Day): string {
  const locale = localeOf(settings);
  const day = (of: Day | undefined) => (of === undefined ? undefined : locale.day(of, on));
  const isOld = planting.perennial && yearOf(planting.since) < yearOf(on);
  return siteWords.sentences.planting.beginning({
    count: countOf(planting),
    spot: planting.spot,
    sown: day(planting.sown),
    planted: planting.planted === planting.sown ? undefined : day(planting.planted),
    plantsFrom: planting.plantsFrom,
    from: planting.from,
    selfSown: planting.selfSown,
    asPlants: comesAsPlants(planting.crop),
    yearOfLife: isOld ? yearOfLife(planting.since, on, settings.seasonStarts) : undefined,
    noted: locale.day(planting.since, on),
  });
}

/** Seeds of a direct sowing are no plants, so their number is only said once it was thinned. */
function countOf(planting: Planting): Planting["count"] {
  const count = planting.ended === undefined ? planting.count : planting.began;
  // What nobody counted at the beginning was counted when it was thinned.
  const wasThinned = planting.thinnedOut > 0 || planting.began === undefined;
  const wereCounted = planting.planted !== undefined || wasThinned || planting.sown === undefined;
  return count === undefined || count.value === 0 || !wereCounted ? undefined : count;
}

function standing(planting: Planting, settings: GardenSettings, on: Day): readonly string[] {
  const locale = localeOf(settings);
  const { planting: said } = siteWords.sentences;
  const height =
    planting.ended === undefined && planting.heightCm !== undefined && planting.heightOn !== undefined
      ? // Squash are measured along the ground, beans up the pole: the number is sure, the direction is not.
        said.measured(locale.length(planting.heightCm), locale.day(planting.heightOn, on))
      : "";
  const { last } = planting.picked;
  const since = locale.day(planting.stageSince, on);
  const stage =
    planting.takenToBeOver === true
      ? said.takenToBeOver(since)
      : planting.stage === "picking" && last !== undefined && !isBeingPicked(planting, on)
        ? said.lastPicked(locale.day(last, on))
        : said.standing(planting.stage, since);
  return [stage, height];
}

function outcome(planting: Planting, settings: GardenSettings): readonly string[] {
  const { planting: said } = siteWords.sentences;
  const { picked, ended, lost, stage } = planting;
  const amount = sayPicked(picked, settings);
  const total =
    amount !== "" ? said.picked(amount, ended === undefined) : picked.times > 0 ? said.pickedTimes(picked.times) : "";
  return [total, lost > 0 && stage !== "lost" ? said.lost(lost) : ""];
}
