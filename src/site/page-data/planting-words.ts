/** How a planting is told on a page: how many, since when, how it stands, what it gave. */

import { ageOf, plantsOf } from "../../facts/index.ts";
import { localeOf, sayPicked } from "../../language/index.ts";
import type { Day, Garden, GardenSettings, Planting } from "../../model.ts";
import { comesAsPlants, isBeingPicked } from "../../timeline/index.ts";
import { siteWords } from "../words/index.ts";

/** "Six plants in row 2, sown on 21 April and planted out on 24 May. In flower since 2 July. 1.4 kg picked so far." */
export function sayPlanting(garden: Garden, planting: Planting, on: Day): string {
  const { settings } = garden;
  const told = [beginning(garden, planting, on), ...standing(planting, settings, on), ...outcome(planting, settings)];
  return told.filter((sentence) => sentence !== "").join(" ");
}

function beginning(garden: Garden, planting: Planting, on: Day): string {
  const { settings } = garden;
  const { lasting, year } = ageOf(garden, planting, on).value;
  const locale = localeOf(settings);
  const day = (of: Day | undefined) => (of === undefined ? undefined : locale.day(of, on));
  return siteWords.sentences.planting.beginning({
    count: countOf(garden, planting, on),
    spot: planting.spot,
    sown: day(planting.sown),
    planted: planting.planted === planting.sown ? undefined : day(planting.planted),
    plantsFrom: planting.plantsFrom,
    from: planting.from,
    selfSown: planting.selfSown,
    asPlants: comesAsPlants(planting.crop),
    yearOfLife: lasting ? year : undefined,
    noted: locale.day(planting.since, on),
  });
}

/** What lives, or what has ended began with. */
function countOf(garden: Garden, planting: Planting, on: Day): Planting["count"] {
  const { alive, begun } = plantsOf(garden, planting, on).value;
  const count = planting.ended === undefined ? alive : begun;
  return count?.value === 0 ? undefined : count;
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
  const amount = sayPicked(picked, settings) ?? "";
  const total =
    amount !== "" ? said.picked(amount, ended === undefined) : picked.times > 0 ? said.pickedTimes(picked.times) : "";
  return [total, lost > 0 && stage !== "lost" ? said.lost(lost) : ""];
}
