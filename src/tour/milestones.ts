/** First times of a season: up, first flower, first fruit, first picking, each against last year's. */

import { daysBetween, lastSeasonStart, yearBefore } from "../calendar.ts";
import {
  againstLastYear,
  capital,
  inTurn,
  isSingular,
  onDay,
  plantName,
  type Sentence,
  say,
  sayPicked,
  sayPlural,
} from "../language/index.ts";
import type { Day, Event } from "../model.ts";
import { pickedInAll } from "../picked.ts";
import { habitOf } from "../timeline/index.ts";
import { agree, batchOf, theBatch } from "./batches.ts";
import { type BedOnTheDay, isNews, type Lot, voiceOf } from "./bed-on-the-day.ts";
import type { ShowKind } from "./brief.ts";
import { oncePerStop } from "./once.ts";
import { pickVerb } from "./picked-sentences.ts";

export type MilestoneKind = Extract<ShowKind, "up" | "first flower" | "first fruit" | "first picking" | "only picking">;
type MilestoneEvent = "up" | "flowered" | "fruited" | "picked";

export interface Milestone extends Sentence {
  readonly kind: MilestoneKind;
  readonly day: Day;
  readonly lot: Lot;
}

/** Latest first: what is picked has flowered, what has fruit has flowered. */
const milestoneKinds: readonly (readonly [MilestoneEvent, MilestoneKind])[] = [
  ["picked", "first picking"],
  ["fruited", "first fruit"],
  ["flowered", "first flower"],
  ["up", "up"],
];

/** A difference of more days than this comes from another sowing, not from another year. */
const mostDaysApart = 40;

/** First times since viewers last saw the bed, the latest stage of each sowing only. */
export const milestonesSince = oncePerStop(findMilestones);

function findMilestones(here: BedOnTheDay): readonly Milestone[] {
  const sowings = Map.groupBy(here.growing, ({ planting }) =>
    [planting.variety ?? planting.crop, planting.sown ?? planting.planted].join(" "),
  );
  return [...sowings.values()].flatMap((lots, turn) => {
    for (const [event, kind] of milestoneKinds) {
      const found = firstOfSeason(lots, event, here);
      if (found === undefined) continue;
      // What is new to viewers is told with its whole story, up included.
      if (kind === "up" && isNews(found.lot, here)) return [];
      const only = kind === "first picking" && habitOf(found.lot.crop).atOnce === true;
      return [milestone(found.lot, only ? "only picking" : kind, found.event, here, turn)];
    }
    return [];
  });
}

function firstOfSeason(
  lots: readonly Lot[],
  kind: MilestoneEvent,
  here: BedOnTheDay,
): { readonly lot: Lot; readonly event: Event } | undefined {
  const firsts = lots.flatMap((lot) => {
    const event = lot.events.find((each) => each.kind === kind && each.day >= here.season);
    return event === undefined ? [] : [{ lot, event }];
  });
  const first = firsts.toSorted((a, b) => (a.event.day < b.event.day ? -1 : 1))[0];
  return first !== undefined && first.event.day > here.newsAfter ? first : undefined;
}

function milestone(lot: Lot, kind: MilestoneKind, event: Event, here: BedOnTheDay, turn: number): Milestone {
  const before = lastYears(lot, event.kind as MilestoneEvent, here);
  const near = before !== undefined && Math.abs(daysBetween(yearBefore(event.day), before.day)) <= mostDaysApart;
  const compared = near ? againstLastYear(event.day, before.day) : undefined;
  const text = inTurn(here.bed.id, turn, waysToTell(lot, kind, event, compared, here));
  return { ...say(text, [event, near ? before : undefined]), kind, day: event.day, lot };
}

function waysToTell(
  lot: Lot,
  kind: MilestoneKind,
  event: Event,
  compared: string | undefined,
  here: BedOnTheDay,
): readonly [string, ...string[]] {
  const day = onDay(event.day, voiceOf(here));
  const batch = batchOf([lot]);
  const who = theBatch(batch);
  const Who = capital(who);
  const its = agree(batch, "its", "their");
  const end = compared === undefined ? "." : `, ${compared}.`;
  if (kind === "up") return [`${Who} came up ${day}${afterSowing(lot, event.day)}${end}`];
  if (kind === "first fruit")
    return [`${Who} set ${its} first fruit ${day}${end}`, `There is fruit on ${who}, the first ${day}${end}`];
  if (kind === "first flower") {
    return lot.crop?.use === "flower"
      ? [`${Who} opened ${day}${end}`, `${Who} came into flower ${day}${end}`]
      : [`${Who} came into flower ${day}${end}`, `${Who} showed ${its} first flower ${day}${end}`];
  }
  const verb = pickVerb(event, lot);
  const harvest = sayPicked(pickedInAll([{ harvest: event, day: event.day }]), here.index.garden.settings);
  const brought = harvest === undefined ? "" : `: ${harvest}`;
  const counted = [afterPlanting(lot, event.day), compared].filter((part) => part !== undefined).join(" and ");
  const tail = counted === "" ? "." : `. That is ${counted}.`;
  // One gooseberry bush, many gooseberries: what is picked is told without the number of plants.
  const produce = plantName(lot);
  const were = isSingular(lot) ? "was" : "were";
  if (kind === "only picking") return [`The ${produce} ${were} ${verb} ${day}${brought}${tail}`];
  return [
    `The first ${produce} ${were} ${verb} ${day}${brought}${tail}`,
    `${begun[verb] ?? "Picking"} of the ${produce} began ${day}${harvest === undefined ? "" : ` with ${harvest}`}${tail}`,
  ];
}

const begun: Readonly<Record<string, string>> = { cut: "Cutting", dug: "Digging", lifted: "Lifting" };

/** The same first time of last season, the earliest among the variety's plantings. */
export function lastYears(lot: Lot, kind: Event["kind"], here: BedOnTheDay): Event | undefined {
  const { variety } = lot.planting;
  if (variety === undefined) return undefined;
  const from = lastSeasonStart(here.day, here.index.garden.settings.seasonStarts);
  const to = here.season;
  let first: Event | undefined;
  for (const { events } of here.index.everyLotOf(variety)) {
    for (const event of events) {
      if (event.kind !== kind || event.day < from || event.day >= to) continue;
      if (first === undefined || event.day < first.day) first = event;
    }
  }
  return first;
}

function afterSowing({ planting }: Lot, day: Day): string {
  return planting.sown === undefined
    ? ""
    : `, ${sayPlural(daysBetween(planting.sown, day), "day", "days")} after sowing`;
}

function afterPlanting({ planting }: Lot, day: Day): string | undefined {
  if (planting.planted === undefined || planting.perennial) return undefined;
  const days = daysBetween(planting.planted, day);
  return days > 330 ? undefined : `${sayPlural(days, "day", "days")} after planting`;
}
