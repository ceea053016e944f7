/** When picking should begin, from the variety's days to maturity, with what it took here before. */

import { daysBetween } from "../calendar.ts";
import { maturityOf } from "../facts/index.ts";
import { dayOnly, type Ground, inBed, onDay, oneOf, sayPlural, type Voice } from "../language/index.ts";
import type { Day } from "../model.ts";
import type { Batch } from "./batches.ts";
import { type BedOnTheDay, type Lot, voiceOf } from "./bed-on-the-day.ts";
import type { Fact } from "./brief.ts";
import { basisSaid, type ExpectedWindow, isUseful, spanSaid } from "./expected-window.ts";
import { oncePerPlants } from "./once.ts";
import { firstDayOf } from "./planting-sentences.ts";
import { factOf } from "./subjects.ts";

/** Days past the expected day after which the packet is simply wrong for this garden and is not quoted any more. */
const longPast = 45;

/** The likely day by this garden's past, where that was reckoned; else the packet's. */
export function expectedDay(lot: Lot, here: BedOnTheDay): Day | undefined {
  const packet = maturityOf(here.index.garden, lot.planting)?.value.ready;
  return packet === undefined ? undefined : (here.windows?.get(lot.planting.id)?.likely ?? packet);
}

/** "from about 2 September" by the packet, "about 6 September" where this garden's past was reckoned with. */
export function aboutWhen(lot: Lot, day: Day, here: BedOnTheDay): string {
  const known = here.windows?.has(lot.planting.id) === true;
  return `${known ? "" : "from "}about ${dayOnly(day, voiceOf(here))}`;
}

/** The event that ends the wait. */
const ends = { flower: "flowered", picking: "picked" } as const;

/** "Picking expected from about 2 September: 95 days from planting, and last year it took 101 here." */
export const expectedFact = oncePerPlants(findExpectedFact);

function findExpectedFact(batch: Batch, here: BedOnTheDay): Fact | undefined {
  const [lot] = batch.lots;
  const maturity = maturityOf(here.index.garden, lot.planting)?.value;
  const reason = reasonToExpect(batch, here);
  if (maturity === undefined || reason === undefined) return undefined;
  const { ready } = maturity;
  const late = daysBetween(ready, here.day);
  if (late > longPast || (late > 0 && siblingPicked(batch, here))) return undefined;
  const voice = voiceOf(here);
  const flower = maturity.goal === "flower";
  const window = here.windows?.get(lot.planting.id);
  const { count, before } = reason;
  const grounds: Ground[] = [...reason.counted, ...(late > 0 ? [] : reason.told)];
  return factOf(
    "expected",
    batch,
    ({ who, Who, was, its, it }) => {
      if (late > 0) {
        return `By ${its} ${count}, ${who} ${was} due to ${flower ? "flower" : "be ready"} ${onDay(ready, voice)}; ${flower ? "no flower" : "nothing picked"} yet${window === undefined ? "" : stillToCome(window, voice)}.`;
      }
      if (window !== undefined) {
        const span = isUseful(window) ? ` ${spanSaid(window, voice)}` : "";
        return `${Who} should be ${flower ? "in flower" : "ready"}${span}, most likely about ${dayOnly(window.likely, voice)}${basisSaid(window)}: ${count}${before}.`;
      }
      const day = dayOnly(ready, voice);
      const named = who === it ? "" : ` of ${who}`;
      return oneOf(`${batch.id} ready`, [
        `${flower ? "First flowers" : "Picking"}${named} expected from about ${day}: ${count}${before}.`,
        `${Who} should be ${flower ? "in flower" : "ready"} from about ${day}, ${count}${before}.`,
      ]);
    },
    grounds,
  );
}

/** ", and most likely about 20 August by this garden's own records": of what the packet's day has not brought. */
function stillToCome(window: ExpectedWindow, voice: Voice): string {
  if (window.to < voice.day) return "";
  const when =
    window.likely > voice.day ? `most likely about ${dayOnly(window.likely, voice)}` : spanSaid(window, voice);
  return `, and now ${when}${basisSaid(window)}`;
}

/** While another lot of the variety in this bed is picked, nobody can say that nothing came from these. */
function siblingPicked({ lots }: Batch, here: BedOnTheDay): boolean {
  const { variety } = lots[0].planting;
  return here.growing.some(
    (other) =>
      variety !== undefined &&
      other.planting.variety === variety &&
      !lots.includes(other) &&
      other.events.some(({ kind }) => kind === "picked"),
  );
}

/** Why a batch is expected at all, in words with the lines they rest on. */
export interface ReasonToExpect {
  /** "95 days from planting" */
  readonly count: string;
  readonly counted: readonly Ground[];
  /** ", and last year it took 101 here"; "" when it never got there before. */
  readonly before: string;
  readonly told: readonly Ground[];
}

/** Undefined when the batch is there already, or nothing says how long it takes. */
export function reasonToExpect({ lots }: Batch, here: BedOnTheDay): ReasonToExpect | undefined {
  const [lot] = lots;
  const maturity = maturityOf(here.index.garden, lot.planting)?.value;
  if (maturity === undefined) return undefined;
  const end = ends[maturity.goal];
  if (lots.some(({ events }) => events.some(({ kind }) => kind === end || kind === "picked"))) return undefined;
  const taken = daysTakenBefore(lot, end, here);
  return {
    count: `${sayPlural(maturity.days, "day", "days")} from ${maturity.counted}`,
    counted: [...lot.grounds, ...(lot.variety === undefined ? [] : [lot.variety])],
    before: taken === undefined ? "" : `, and ${taken.text}`,
    told: taken?.grounds ?? [],
  };
}

interface Taken {
  readonly days: number;
  /** "last year it took 101 here" */
  readonly text: string;
  readonly grounds: readonly Ground[];
}

/** Days the variety took the last time it got there, counted as its maturity is counted: in this bed if it ever grew here. */
function daysTakenBefore({ variety, planting }: Lot, end: "flowered" | "picked", here: BedOnTheDay): Taken | undefined {
  if (variety === undefined) return undefined;
  const told = here.index.everyLotOf(variety.id).flatMap((other) => {
    const former = other.planting;
    if (former.id === planting.id || former.since >= planting.since) return [];
    const from = maturityOf(here.index.garden, former)?.value.begun;
    const reached = firstDayOf(other, end) ?? firstDayOf(other, "picked");
    return from === undefined || reached === undefined || reached >= here.day
      ? []
      : [{ other, reached, days: daysBetween(from, reached) }];
  });
  const ownBed = told.filter(({ other }) => other.planting.bed === here.bed.id);
  const last = (ownBed.length > 0 ? ownBed : told).toSorted((a, b) => (a.reached < b.reached ? -1 : 1)).at(-1);
  if (last === undefined) return undefined;
  const bed = here.index.garden.beds.get(last.other.planting.bed);
  const where = last.other.planting.bed === here.bed.id ? " here" : bed === undefined ? "" : ` ${inBed(bed)}`;
  const began = last.other.events.filter(({ kind }) => kind === "sowed" || kind === "planted");
  const grounds = [...began, ...last.other.events.filter((event) => event.day === last.reached).slice(0, 1)];
  return { days: last.days, text: `${yearSaid(last.reached, here)} it took ${last.days}${where}`, grounds };
}

/** "last year", "in 2024", "earlier this year". */
function yearSaid(day: Day, here: BedOnTheDay): string {
  if (day >= here.season) return "earlier this year";
  const years = Number(here.season.slice(0, 4)) - Number(day.slice(0, 4));
  return years === 1 ? "last year" : `in ${day.slice(0, 4)}`;
}
