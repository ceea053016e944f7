/** What viewers saw of a bed last time, and what stood in it a year ago. */
import type { BedState, Day, Planting } from "../model.ts";
import { cropName, living, sayLength, sayList, sayNumber, state } from "../timeline/index.ts";
import { bedVerb, theBed } from "./bed-names.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";
import type { Fact, Sentence } from "./brief.ts";
import { dayOnly, speechOf, yearBefore } from "./days-said.ts";
import { say } from "./sentence.ts";

/** More crops than this are told by the rest of their number. */
const mostNamed = 5;

/** "When viewers last saw it, on 13 June, the long bed was bare." Nothing for a bed that no tour ever showed. */
export function lastSeen(here: BedOnTheDay): readonly Sentence[] {
  const { episode, day } = here.since;
  if (episode === undefined) return [];
  const record = here.index.garden.episodes.get(episode);
  const date = dayOnly(day, speechOf(here));
  const held = whatStood(here.past, day, here);
  const bed = theBed(here.bed);
  const text =
    held === undefined
      ? `When viewers last saw ${bed}, on ${date}, ${bedVerb(here.bed, "it was", "they were")} bare.`
      : `On ${date} viewers saw ${bed} with ${held}.`;
  return [say(text, [record, ...groundsOf(here.past, here)])];
}

/** "This day last year the long bed held broad beans in flower and garlic." */
export function thisDayLastYear(here: BedOnTheDay): Fact | undefined {
  const day = yearBefore(here.day);
  if (here.bed.inUseSince !== undefined && here.bed.inUseSince > day) return undefined;
  const past = state(here.index.garden, here.bed.id, day);
  const held = whatStood(past, day, here);
  if (held === undefined || living(past).every((planting) => planting.perennial)) return undefined;
  const text = `This day last year ${theBed(here.bed)} held ${held}.`;
  return { ...say(text, groundsOf(past, here)), kind: "last year", plantings: [] };
}

function groundsOf(past: BedState, here: BedOnTheDay): { place: Planting["lastNote"]; private: boolean }[] {
  return living(past)
    .filter((planting) => planting.lastNote.file !== here.bed.place?.file)
    .map((planting) => ({ place: planting.lastNote, private: planting.private }));
}

/** "24 leeks at 12 cm, broad beans in flower and carrots just up"; undefined when nothing stood there. */
function whatStood(past: BedState, day: Day, here: BedOnTheDay): string | undefined {
  const { crops, varieties } = here.index.garden;
  const cropOf = (planting: Planting) =>
    planting.crop ?? (planting.variety === undefined ? undefined : varieties.get(planting.variety)?.crop);
  const groups = [...Map.groupBy(living(past), (planting) => cropOf(planting) ?? planting.variety ?? planting.id)];
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
  const words = {
    sown: " just sown",
    up: " just up",
    flowering: " in flower",
    fruiting: " in fruit",
    picking: " being picked",
  } as const;
  if (first.stage in words) return words[first.stage as keyof typeof words];
  const recent =
    first.heightCm !== undefined && plantings.length === 1 && first.heightOn !== undefined && first.heightOn <= day;
  return recent ? ` at ${sayLength(first.heightCm ?? 0, here.index.garden.settings.units)}` : "";
}

/** Whether a bed held nothing when viewers last saw it. */
export function wasBare(here: BedOnTheDay): boolean {
  return here.since.episode !== undefined && living(here.past).length === 0;
}
