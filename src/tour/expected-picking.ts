/** When picking should begin, from the variety's days to maturity, with what it took here before. */
import { addDays, daysBetween } from "../calendar.ts";
import type { Day } from "../model.ts";
import { capital, sayPlural } from "../timeline/index.ts";
import { agree, type Batch, batchOf, theBatch } from "./batches.ts";
import { theBed } from "./bed-names.ts";
import { type BedOnTheDay, type Lot, lotOf } from "./bed-on-the-day.ts";
import type { Fact } from "./brief.ts";
import { onDay, speechOf } from "./days-said.ts";
import { oneOf } from "./phrasing.ts";
import { firstDayOf } from "./planting-sentences.ts";
import { type Ground, say } from "./sentence.ts";

/** Days past the expected day after which the packet is simply wrong for this garden and is not quoted any more. */
const longPast = 45;

/** The day from which a lot should be ready; undefined when its variety gives no days, or they count from a day unknown. */
export function readyFrom({ planting, variety }: Lot): Day | undefined {
  const maturity = variety?.maturity;
  if (maturity === undefined || planting.perennial) return undefined;
  const begun = maturity.from === "planting" ? planting.planted : planting.sown;
  return begun === undefined ? undefined : addDays(begun, maturity.days);
}

/** What ends the wait: the first flower of what is grown for flowers, else the first picking. */
function goal({ crop }: Lot): "flowered" | "picked" {
  return crop?.use === "flower" ? "flowered" : "picked";
}

/** "Picking expected from about 2 September: 95 days from planting, and last year it took 101 here." */
export function expectedFact(lot: Lot, here: BedOnTheDay): Fact | undefined {
  const ready = readyFrom(lot);
  const maturity = lot.variety?.maturity;
  const reached = lot.events.some((event) => event.kind === goal(lot) || event.kind === "picked");
  if (ready === undefined || maturity === undefined || reached) return undefined;
  const speech = speechOf(here);
  const batch = batchOf([lot]);
  const flower = goal(lot) === "flowered";
  const days = sayPlural(maturity.days, "day", "days");
  const taken = daysTakenBefore(lot, here);
  const late = daysBetween(ready, here.day);
  if (late > longPast) return undefined;
  const before = taken === undefined ? "" : `, and ${taken.text}`;
  const text =
    late > 0
      ? overdueText(batch, days, maturity.from, ready, here, flower)
      : oneOf(`${lot.planting.id} ready`, [
          `${flower ? "First flowers" : "Picking"} of ${theBatch(batch)} expected from about ${plain(onDay(ready, speech))}: ${days} from ${maturity.from}${before}.`,
          `${capital(theBatch(batch))} should be ${flower ? "in flower" : "ready"} from about ${plain(onDay(ready, speech))}, ${days} from ${maturity.from}${before}.`,
        ]);
  const grounds: Ground[] = [
    ...lot.grounds,
    ...(lot.variety === undefined ? [] : [lot.variety]),
    ...(taken?.grounds ?? []),
  ];
  return { ...say(text, grounds), kind: "expected", plantings: [lot.planting.id] };
}

function overdueText(batch: Batch, days: string, from: string, ready: Day, here: BedOnTheDay, flower: boolean): string {
  const speech = speechOf(here);
  const were = agree(batch, "was", "were");
  return `By ${agree(batch, "its", "their")} ${days} from ${from}, ${theBatch(batch)} ${were} due to ${flower ? "flower" : "be ready"} ${onDay(ready, speech)}; ${flower ? "no flower" : "nothing picked"} yet.`;
}

function plain(said: string): string {
  return said.replace(/^on /, "");
}

interface Taken {
  readonly days: number;
  /** "last year it took 101 days here" */
  readonly text: string;
  readonly grounds: readonly Ground[];
}

/** Days the variety took in the last season in which it got there, counted as its maturity is counted. */
export function daysTakenBefore(lot: Lot, here: BedOnTheDay): Taken | undefined {
  const { variety, planting } = lot;
  const maturity = variety?.maturity;
  if (variety === undefined || maturity === undefined) return undefined;
  const dayBefore = addDays(planting.sown ?? planting.planted ?? planting.since, -1);
  const former = here.index
    .plantingsOf(variety.id, dayBefore)
    .filter((other) => other.id !== planting.id)
    .map((other) => lotOf(here.index, other, here.day));
  const told = former.flatMap((other) => {
    const from = maturity.from === "planting" ? other.planting.planted : other.planting.sown;
    const reached = firstDayOf(other, goal(lot)) ?? firstDayOf(other, "picked");
    return from === undefined || reached === undefined || reached >= here.day
      ? []
      : [{ other, reached, days: daysBetween(from, reached) }];
  });
  const ownBed = told.filter(({ other }) => other.planting.bed === here.bed.id);
  const last = (ownBed.length > 0 ? ownBed : told).toSorted((a, b) => (a.reached < b.reached ? -1 : 1)).at(-1);
  if (last === undefined) return undefined;
  const years = yearsBefore(last.reached, here);
  const bed = here.index.garden.beds.get(last.other.planting.bed);
  const where = last.other.planting.bed === here.bed.id ? " here" : bed === undefined ? "" : ` in ${theBed(bed)}`;
  const grounds = [
    ...last.other.grounds,
    ...last.other.events.filter((event) => event.day === last.reached).slice(0, 1),
  ];
  return { days: last.days, text: `${years} it took ${last.days}${where}`, grounds };
}

/** "last year", "in 2024", "earlier this year". */
function yearsBefore(day: Day, here: BedOnTheDay): string {
  if (day >= here.season) return "earlier this year";
  const years = Number(here.season.slice(0, 4)) - Number(day.slice(0, 4));
  return years === 1 ? "last year" : `in ${day.slice(0, 4)}`;
}
