/** What viewers saw of a bed last time, and what stood in it a year ago. */

import { daysBetween, yearBefore } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import {
  bedVerb,
  cropName,
  dayOnly,
  oneOf,
  type Sentence,
  say,
  sayLength,
  sayList,
  sayNumber,
  theBed,
} from "../language/index.ts";
import type { Day, Planting } from "../model.ts";
import { isBeingPicked } from "../timeline/index.ts";
import { type BedOnTheDay, livingOn, voiceOf } from "./bed-on-the-day.ts";
import type { Fact } from "./brief.ts";
import { mayHaveBeenSeen } from "./since.ts";

/** More crops than this are told by the rest of their number. */
const mostNamed = 5;

/** "When viewers last saw the long bed, on 13 June, it was bare." To viewers themselves it is "when you last saw". */
export function lastSeen(here: BedOnTheDay, viewers: "viewers" | "you" = "viewers"): readonly Sentence[] {
  const { episode, day } = here.since;
  if (episode === undefined) {
    if (mayHaveBeenSeen(here.index.garden, here.since, here.day)) return [];
    return [say(`No published tour has stopped at ${theBed(here.bed)} yet.`, [here.bed])];
  }
  const record = here.index.garden.episodes.get(episode);
  const date = dayOnly(day, voiceOf(here));
  const held = whatStood(here.past, day, here);
  const bed = theBed(here.bed);
  const text =
    held === undefined
      ? `When ${viewers} last saw ${bed}, on ${date}, ${bedVerb(here.bed, "it was", "they were")} bare.`
      : oneOf(here.bed.id, [
          `When ${viewers} last saw ${bed}, on ${date}, ${bedVerb(here.bed, "it", "they")} held ${held}.`,
          `On ${date} ${viewers} saw ${bed} with ${held}.`,
        ]);
  return [say(text, [record, ...groundsOf(here.past, here)])];
}

/** "This day last year the long bed held broad beans in flower and garlic." */
export function thisDayLastYear(here: BedOnTheDay): Fact | undefined {
  const day = yearBefore(here.day);
  if (here.bed.inUseSince !== undefined && here.bed.inUseSince > day) return undefined;
  const past = livingOn(here.index, here.now, day);
  const held = whatStood(past, day, here);
  if (held === undefined || shownIn(past).every((planting) => planting.perennial)) return undefined;
  const text = `This day last year ${theBed(here.bed)} held ${held}.`;
  return { ...say(text, groundsOf(past, here)), kind: "last year", plantings: [] };
}

function groundsOf(past: readonly Planting[], here: BedOnTheDay): { place: Planting["lastNote"] }[] {
  return shownIn(past)
    .filter((planting) => planting.lastNote.file !== here.bed.place?.file)
    .map((planting) => ({ place: planting.lastNote }));
}

/** What was there to be seen; a private planting was not spoken of then and is not now. */
function shownIn(past: readonly Planting[]): readonly Planting[] {
  return past.filter((planting) => !planting.private);
}

/** "24 leeks at 12 cm, broad beans in flower and carrots just up"; undefined when nothing stood there. */
function whatStood(past: readonly Planting[], day: Day, here: BedOnTheDay): string | undefined {
  const { crops, varieties } = here.index.garden;
  const idOf = (planting: Planting) => cropOf(here.index.garden, planting)?.id;
  const groups = [...Map.groupBy(shownIn(past), (planting) => idOf(planting) ?? planting.variety ?? planting.id)];
  const parts = groups.map(([id, plantings]) => {
    const crop = crops.get(id);
    const one = plantings.length === 1 ? plantings[0]?.count?.value : undefined;
    const name = crop === undefined ? (varieties.get(id)?.title ?? "plants") : cropName(crop, one);
    return `${name}${howItStood(plantings, day, here)}`;
  });
  if (parts.length === 0) return undefined;
  const named = parts.slice(0, parts.length > mostNamed + 1 ? mostNamed : parts.length);
  const rest = parts.length - named.length;
  return sayList(rest === 0 ? named : [...named, `${sayNumber(rest)} other crops`]);
}

function howItStood(plantings: readonly Planting[], day: Day, here: BedOnTheDay): string {
  const stages = new Set(plantings.map((planting) => planting.stage));
  const [first] = plantings;
  if (first === undefined || stages.size > 1) return "";
  if (first.stage === "sown" || first.stage === "up") {
    // "Just" is true for three weeks; a sowing nobody noted as up by then is simply there.
    const fresh = daysBetween(first.stageSince, day) <= 21;
    return fresh ? ` just ${first.stage}` : "";
  }
  const words = {
    flowering: " in flower",
    fruiting: " in fruit",
    picking: " being picked",
  } as const;
  if (first.stage === "picking" && !plantings.some((planting) => isBeingPicked(planting, day))) return "";
  if (first.stage in words) return words[first.stage as keyof typeof words];
  const recent =
    first.heightCm !== undefined && plantings.length === 1 && first.heightOn !== undefined && first.heightOn <= day;
  return recent ? ` at ${sayLength(first.heightCm ?? 0, here.index.garden.settings.units)}` : "";
}

/** Half a year: nobody remembers for longer that a bed was bare, and every bed is bare in winter. */
const stillRemembered = 183;

/** Whether a bed held nothing when viewers last saw it, not too long ago. */
export function wasBare(here: BedOnTheDay): boolean {
  const { episode, day } = here.since;
  return episode !== undefined && here.past.length === 0 && daysBetween(day, here.day) <= stillRemembered;
}
