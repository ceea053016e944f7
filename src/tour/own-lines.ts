/** What the notes tell of a bed in the person's own words and no fact holds, to be quoted where the film stands. */
import { addDays, seasonStart } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import { finderOf, type OwnLine, ownLinesOf } from "../garden/index.ts";
import { plainWords } from "../language/index.ts";
import type { Day, Garden, Gear, Variety } from "../model.ts";
import type { BedOnTheDay } from "./bed-on-the-day.ts";

export interface OwnLinesHere {
  /** Of this season, the latest first. */
  readonly now: readonly OwnLine[];
  /** Of the season before, the latest first. */
  readonly before: readonly OwnLine[];
}

const known = new WeakMap<Garden["readings"], Map<string, OwnLinesHere>>();

/** Lines that name the bed, and of those that name none what speaks of plants that grow or grew in it. */
export function ownLinesAt(here: BedOnTheDay): OwnLinesHere {
  const { readings } = here.index.garden;
  const ofGarden = known.get(readings) ?? new Map<string, OwnLinesHere>();
  known.set(readings, ofGarden);
  // What ended is counted from the film before, so that two tours on one day may differ.
  const key = `${here.bed.id} ${here.day} ${here.newsAfter}`;
  const found = ofGarden.get(key) ?? findLines(here);
  ofGarden.set(key, found);
  return found;
}

function findLines(here: BedOnTheDay): OwnLinesHere {
  const { garden } = here.index;
  const all = ownLinesOf(garden).filter(({ text }) => !isPlanning(text));
  const before = seasonStart(here.seasonEve, garden.settings.seasonStarts);
  const between = (from: Day, to: Day) => all.slice(firstFrom(all, from), firstFrom(all, addDays(to, 1)));
  const lots = [...here.growing, ...here.ended].map(({ planting }) => planting);
  const ofSeason = (from: Day, to: Day) => {
    const lines = between(from, to);
    const placed = lines.filter(({ beds }) => beds.includes(here.bed.id));
    const varieties = new Set([
      ...lots.flatMap(({ variety }) => variety ?? []),
      ...placed.flatMap((line) => line.varieties),
    ]);
    const crops = new Set([
      ...finderOf(garden).crops(plainWords(here.bed.title)),
      ...lots.flatMap((planting) => cropOf(garden, planting)?.id ?? []),
      ...placed.flatMap((line) => line.crops),
    ]);
    const speaksOfPlants = (line: OwnLine) =>
      line.varieties.length > 0
        ? line.varieties.some((id) => varieties.has(id))
        : line.crops.some((id) => crops.has(id));
    return lines
      .filter((line) => line.beds.includes(here.bed.id) || (line.beds.length === 0 && speaksOfPlants(line)))
      .toReversed();
  };
  return { now: ofSeason(here.season, here.day), before: ofSeason(before, here.seasonEve) };
}

/** The place of the first line of that day or a later one, in lines by day. */
function firstFrom(lines: readonly OwnLine[], day: Day): number {
  let [low, high] = [0, lines.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((lines[middle]?.day ?? "") < day) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What a person means to do: notes to oneself, which nobody reads out. */
const planning =
  /^(?:to ?do|need(?:s|ed)? to|have to|got to|must remember|remember to|remind|don['’]?t forget|next (?:year|time|week|film)|plans?|planning|before filming)\b|^(?:film(?:ing)?|shoot(?:ing)?|recording)\b.{0,20}\b(?:today|tomorrow|(?:mon|tues|wednes|thurs|fri|satur|sun)day|\d{1,2}\b)/i;

export function isPlanning(text: string): boolean {
  return planning.test(text.trim());
}

/** "No Black Krim" names what is not there. */
const absent = /^(?:no|none|without|left out)\b/i;

/** Gear and varieties that lines about this bed name, whether or not they are read for sure. */
export function namedInLines(here: BedOnTheDay): {
  readonly gear: readonly Gear[];
  readonly varieties: readonly Variety[];
} {
  const { gear, varieties } = here.index.garden;
  const lines = ownLinesAt(here).now.filter((line) => !absent.test(line.text));
  const placed = lines.filter(({ beds }) => beds.includes(here.bed.id));
  return {
    gear: unique(lines.flatMap((line) => line.gear)).flatMap((id) => gear.get(id) ?? []),
    varieties: unique(placed.flatMap((line) => line.varieties)).flatMap((id) => varieties.get(id) ?? []),
  };
}

/** Whether the notes tell of a bed in this season, though no fact holds it yet. */
export function isToldOf(here: BedOnTheDay): boolean {
  return ownLinesAt(here).now.some(({ asks }) => asks);
}

function unique(ids: readonly string[]): readonly string[] {
  return [...new Set(ids)];
}
