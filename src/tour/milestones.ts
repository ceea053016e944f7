/** First times of a season: up, first flower, first fruit, first picking, each against last year's. */
import { addDays, daysBetween } from "../calendar.ts";
import type { Day, Event } from "../model.ts";
import { capital, sayPlural } from "../timeline/index.ts";
import { agree, batchOf, theBatch } from "./batches.ts";
import { type BedOnTheDay, type Lot, lotOf } from "./bed-on-the-day.ts";
import type { Sentence, ShowKind } from "./brief.ts";
import { againstLastYear, lastSeasonStart, onDay, speechOf } from "./days-said.ts";
import { sayHarvest } from "./harvest-sums.ts";
import { isNews } from "./news-sentences.ts";
import { oneOf } from "./phrasing.ts";
import { type Ground, say } from "./sentence.ts";

export interface Milestone extends Sentence {
  readonly kind: Extract<ShowKind, "up" | "first flower" | "first fruit" | "first picking">;
  readonly day: Day;
  readonly lot: Lot;
}

const kinds = [
  ["picked", "first picking"],
  ["fruited", "first fruit"],
  ["flowered", "first flower"],
  ["up", "up"],
] as const;

/** First times since viewers last saw the bed, the latest stage of each variety only: fruit says that it flowered. */
export function milestonesSince(here: BedOnTheDay): readonly Milestone[] {
  const byVariety = Map.groupBy(
    here.growing,
    ({ planting }) => `${planting.variety ?? planting.crop} ${planting.sown ?? planting.planted ?? ""}`,
  );
  return [...byVariety.values()].flatMap((lots) => {
    for (const [event, kind] of kinds) {
      const found = firstOfSeason(lots, event, here);
      if (found === undefined) continue;
      // What is new to viewers is told with its whole story, up included.
      return kind === "up" && isNews(found.lot, here) ? [] : [milestone(found.lot, kind, found.event, here)];
    }
    return [];
  });
}

function firstOfSeason(
  lots: readonly Lot[],
  kind: "up" | "flowered" | "fruited" | "picked",
  here: BedOnTheDay,
): { readonly lot: Lot; readonly event: Event } | undefined {
  for (const lot of lots) {
    const event = lot.events.find((each) => each.kind === kind && each.day >= here.season);
    if (event !== undefined && event.day > here.newsAfter) return { lot, event };
  }
  return undefined;
}

function milestone(lot: Lot, kind: Milestone["kind"], event: Event, here: BedOnTheDay): Milestone {
  const speech = speechOf(here);
  const before = lastYears(lot, event.kind as "up" | "flowered" | "fruited" | "picked", here);
  const day = onDay(event.day, speech);
  const compared = before === undefined ? "" : `, ${againstLastYear(event.day, before.day)}`;
  const batch = batchOf([lot]);
  const who = theBatch(batch);
  const [have, their] = [agree(batch, "has", "have"), agree(batch, "its", "their")];
  const ways: Readonly<Record<Milestone["kind"], readonly [string, ...string[]]>> = {
    up: [`${capital(who)} came up ${day}${sinceSowing(lot, event.day)}${compared}.`],
    "first flower":
      lot.crop?.use === "flower"
        ? [`${capital(who)} opened ${day}${compared}.`, `${capital(who)} came into flower ${day}${compared}.`]
        : [
            `${capital(who)} came into flower ${day}${compared}.`,
            `${capital(who)} showed ${their} first flower ${day}${compared}.`,
          ],
    "first fruit": [
      `${capital(who)} set ${their} first fruit ${day}${compared}.`,
      `First fruit on ${who} ${day}${compared}.`,
    ],
    "first picking": [
      `The first picking of ${who} was ${day}${firstHarvest(event, here)}${sincePlanting(lot, event.day)}${compared}.`,
      `${capital(who)} ${have} been picked for the first time, ${day}${firstHarvest(event, here)}${sincePlanting(lot, event.day)}${compared}.`,
    ],
  };
  const grounds: Ground[] = [event, ...(before === undefined ? [] : [before])];
  return { ...say(oneOf(`${lot.planting.id} ${kind}`, ways[kind]), grounds), kind, day: event.day, lot };
}

/** The same first time of last season, the earliest among the variety's plantings. */
function lastYears(lot: Lot, kind: "up" | "flowered" | "fruited" | "picked", here: BedOnTheDay): Event | undefined {
  const { variety } = lot.planting;
  if (variety === undefined) return undefined;
  const from = lastSeasonStart(here.day, here.index.garden.settings.seasonStarts);
  const to = addDays(here.season, -1);
  const events = here.index
    .plantingsOf(variety, to)
    .flatMap((planting) => lotOf(here.index, planting, to).events)
    .filter((event) => event.kind === kind && event.day >= from);
  return events.toSorted((a, b) => (a.day < b.day ? -1 : 1))[0];
}

function sinceSowing({ planting }: Lot, day: Day): string {
  return planting.sown === undefined ? "" : ` after ${sayPlural(daysBetween(planting.sown, day), "day", "days")}`;
}

function sincePlanting({ planting }: Lot, day: Day): string {
  if (planting.planted === undefined || planting.perennial) return "";
  const days = daysBetween(planting.planted, day);
  return days > 330 ? "" : `, ${sayPlural(days, "day", "days")} after planting`;
}

function firstHarvest(event: Event, here: BedOnTheDay): string {
  const { grams, litres, count, unit } = event;
  const counts = count === undefined ? {} : { [unit ?? "piece"]: count.value };
  const sum = sayHarvest({ grams: grams ?? 0, litres: litres ?? 0, counts }, here.index.garden.settings);
  return sum === undefined ? "" : `: ${sum}`;
}
