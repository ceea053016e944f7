/** How a planting is told on a page: how many, since when, how it stands, what it gave. */
import { yearOf } from "../../calendar.ts";
import type { Day, GardenSettings, Picked, PickUnit, Planting } from "../../model.ts";
import {
  capital,
  sayCount,
  sayDay,
  sayLength,
  sayList,
  sayNumber,
  sayPlural,
  sayVolume,
  sayWeight,
  sayYearOfLife,
} from "../../timeline/index.ts";

const UNIT_WORDS: Readonly<Record<PickUnit, readonly [string, string]>> = {
  stem: ["stem", "stems"],
  bunch: ["bunch", "bunches"],
  head: ["head", "heads"],
  fruit: ["fruit", "fruits"],
  pod: ["pod", "pods"],
  punnet: ["punnet", "punnets"],
  crate: ["crate", "crates"],
  root: ["root", "roots"],
  bulb: ["bulb", "bulbs"],
  ear: ["ear", "ears"],
  handful: ["handful", "handfuls"],
  piece: ["piece", "pieces"],
};

/** "1.4 kg", "12 stems", "1.4 kg and three bunches"; empty when only the fact of picking is known. */
export function sayPicked(picked: Pick<Picked, "grams" | "litres" | "counts">, units: GardenSettings["units"]): string {
  const pieces = (Object.keys(UNIT_WORDS) as PickUnit[]).flatMap((unit) => {
    const n = picked.counts[unit] ?? 0;
    return n > 0 ? [sayPlural(n, ...UNIT_WORDS[unit])] : [];
  });
  return sayList([
    ...(picked.grams > 0 ? [sayWeight(picked.grams, units)] : []),
    ...(picked.litres > 0 ? [sayVolume(picked.litres, units)] : []),
    ...pieces,
  ]);
}

/** "Six plants in row 2, sown on 21 April and planted out on 24 May. In flower since 2 July. 1.4 kg picked so far." */
export function sayPlanting(planting: Planting, settings: GardenSettings, on: Day): string {
  const sentences = [
    beginning(planting, settings, on),
    ...standing(planting, settings, on),
    ...outcome(planting, settings),
  ];
  return sentences.filter((sentence) => sentence !== "").join(" ");
}

function beginning(planting: Planting, settings: GardenSettings, on: Day): string {
  const day = (of: Day) => sayDay(of, { language: settings.language, near: on });
  const place = planting.spot === undefined ? "" : ` ${inSpot(planting.spot)}`;
  const many = howMany(planting);
  const plants = many === undefined ? "" : `${capital(many)}${place}`;
  const when = [
    planting.sown === undefined ? undefined : `sown on ${day(planting.sown)}`,
    planting.planted === undefined || planting.planted === planting.sown
      ? undefined
      : `planted ${planting.sown === undefined ? "" : "out "}on ${day(planting.planted)}`,
  ].filter((part) => part !== undefined);
  if (planting.perennial && yearOf(planting.since) < yearOf(on))
    return `${[plants, `${plants === "" ? "In" : "in"} ${sayYearOfLife(planting.since, on)} here`].filter(Boolean).join(", ")}.`;
  if (when.length === 0)
    return `${[plants, `${plants === "" ? "First" : "first"} noted on ${day(planting.since)}`].filter(Boolean).join(", ")}.`;
  const bought =
    planting.plantsFrom === undefined
      ? ""
      : planting.plantsFrom === "bought"
        ? "bought as plants and "
        : "given as plants and ";
  const told = `${bought}${when.join(" and ")}`;
  return plants === "" ? `${capital(told)}${place}.` : `${plants}, ${told}.`;
}

/** Seeds of a direct sowing are no plants, so their number is only said once it was thinned. */
function howMany(planting: Planting): string | undefined {
  const count = planting.ended === undefined ? planting.count : planting.began;
  const wereCounted = planting.planted !== undefined || planting.thinnedOut > 0 || planting.sown === undefined;
  if (count === undefined || count.value === 0 || !wereCounted) return undefined;
  return `${sayCount(count)} ${count.value === 1 && count.upTo === undefined ? "plant" : "plants"}`;
}

/** A spot as it is written may lack its preposition: "row 2", "the corner by the gate". */
function inSpot(spot: string): string {
  if (/^(?:in|on|at|by|between|along|under|near|behind|beside|next|up|against|around|among)\b/iu.test(spot))
    return spot;
  return /\b(?:end|side)\b/iu.test(spot) ? `at ${spot}` : `in ${spot}`;
}

function standing(planting: Planting, settings: GardenSettings, on: Day): readonly string[] {
  const since = sayDay(planting.stageSince, { language: settings.language, near: on });
  const stages: Readonly<Record<Planting["stage"], string>> = {
    sown: "",
    up: `Up since ${since}.`,
    growing: "",
    flowering: `In flower since ${since}.`,
    fruiting: `Setting fruit since ${since}.`,
    picking: `Being picked since ${since}.`,
    finished: `Finished on ${since}.`,
    lost: `Lost on ${since}.`,
  };
  const height =
    planting.ended === undefined && planting.heightCm !== undefined && planting.heightOn !== undefined
      ? // Squash are measured along the ground, beans up the pole: the number is sure, the direction is not.
        `Measured ${sayLength(planting.heightCm, settings.units)} on ${sayDay(planting.heightOn, { language: settings.language, near: on })}.`
      : "";
  return [stages[planting.stage], height];
}

function outcome(planting: Planting, settings: GardenSettings): readonly string[] {
  const amount = sayPicked(planting.picked, settings.units);
  const total =
    amount !== ""
      ? `${capital(amount)} picked${planting.ended === undefined ? " so far" : ""}.`
      : planting.picked.times > 0
        ? `Picked ${planting.picked.times === 1 ? "once" : `${sayNumber(planting.picked.times)} times`}.`
        : "";
  const losses = planting.lost > 0 && planting.stage !== "lost" ? `${capital(sayNumber(planting.lost))} lost.` : "";
  return [total, losses];
}
