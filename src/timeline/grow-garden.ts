/**
 * From records to the one model that pages and commands share: every event once, in order, then sorted by bed.
 *
 * Cost: sorting the events, and for each of them a look at the plantings of its name or bed.
 */
import type { Change, Event, EventKind, Garden, Photo, Records } from "../model.ts";
import { acquire } from "./arrivals.ts";
import { sow } from "./begin-plantings.ts";
import { ordering } from "./events-in-order.ts";
import { bedHistory, putUp, takeDown, testSoil } from "./gear-and-soil.ts";
import { giveAway, sell } from "./giving-away.ts";
import { comeUp, flower, fruit, measure, potOn, thin } from "./growth.ts";
import { clear, lose, move } from "./leaving.ts";
import { type Ledger, openLedger } from "./ledger.ts";
import { closeOldLots } from "./nursery-lots.ts";
import { pick, saveSeed } from "./pickings.ts";
import { plant } from "./planting-out.ts";
import { plan, preserve, remark } from "./remarks.ts";
import { askWhetherTheyLast, passTime, reportEndings } from "./season-turn.ts";
import { nextSeason } from "./seasons.ts";
import { comeBack, volunteer } from "./self-sown.ts";
import { done, fallDue, promise, promiseAloud, spokenPromises, toDo } from "./tasks-and-promises.ts";
import { endTrouble, openTrouble } from "./troubles.ts";
import { ask, work } from "./work.ts";

/** The events of one kind that one line gives: one for each plant it names. */
type Line = readonly [Event, ...Event[]];

interface Step {
  readonly kind: EventKind;
  readonly take: (ledger: Ledger, line: Line) => void;
}

function each(take: (ledger: Ledger, event: Event) => void): Step["take"] {
  return (ledger, line) => {
    for (const event of line) take(ledger, event);
  };
}

/**
 * What each kind of event does. The order of the rows is the order of events within one day, whatever files they stand in:
 * what is picked and cleared comes before what is sown and planted in its place, and work, troubles and measures after
 * both, so that "planted 12 leeks" and "watered the leeks" of one day fit together. What leaves again the plants that a line
 * above it in the same note began goes by the lines (events-in-order.ts).
 */
const steps: readonly Step[] = [
  { kind: "acquired", take: each(acquire) },
  { kind: "came back", take: each(comeBack) },
  { kind: "took down", take: each(takeDown) },
  { kind: "cured", take: each(endTrouble) },
  { kind: "picked", take: each(pick) },
  { kind: "saved seed", take: each(saveSeed) },
  { kind: "preserved", take: each(preserve) },
  { kind: "gave away", take: each(giveAway) },
  { kind: "sold", take: each(sell) },
  { kind: "lost", take: each(lose) },
  { kind: "moved", take: each(move) },
  { kind: "cleared", take: each(clear) },
  { kind: "put up", take: each(putUp) },
  { kind: "sowed", take: each(sow) },
  { kind: "volunteer", take: each(volunteer) },
  { kind: "up", take: each(comeUp) },
  { kind: "potted on", take: each(potOn) },
  { kind: "planted", take: each(plant) },
  { kind: "thinned", take: each(thin) },
  { kind: "flowered", take: each(flower) },
  { kind: "fruited", take: each(fruit) },
  { kind: "measured", take: each(measure) },
  { kind: "soil test", take: each(testSoil) },
  { kind: "trouble", take: each(openTrouble) },
  { kind: "doing", take: each(remark) },
  { kind: "did", take: work },
  { kind: "to do", take: each(toDo) },
  { kind: "promised", take: each(promise) },
  { kind: "done", take: each(done) },
  { kind: "asked", take: each(ask) },
  { kind: "plan", take: each(plan) },
];

const inOrder = ordering(steps.map(({ kind }) => kind));
const takers = new Map<EventKind, Step["take"]>(steps.map(({ kind, take }) => [kind, take]));

export function growGarden(records: Records, photos: readonly Photo[]): Garden {
  const events = inOrder(records);
  const ledger = openLedger(records, events);
  for (const bed of records.beds.values()) bedHistory(ledger, bed);
  const spoken = [...spokenPromises(records.episodes.values())];
  let day = "";
  for (const line of linesOf(events)) {
    const [event] = line;
    if (event.day !== day) {
      day = event.day;
      passTime(ledger, day);
      while (spoken[0] !== undefined && spoken[0].day <= day)
        promiseAloud(ledger, spoken.shift() as (typeof spoken)[0]);
    }
    takers.get(event.kind)?.(ledger, line);
  }
  for (const one of spoken) promiseAloud(ledger, one);
  finish(ledger);
  return {
    ...records,
    doubts: ledger.doubts,
    photos,
    changes: new Map([...ledger.beds].map(([id, bed]) => [id, bed.changes.toSorted(byDay)])),
    nurseryLots: [...ledger.lots.values()]
      .flat()
      .map(({ now }) => now)
      .sort((a, b) => compare(a.sown, b.sown) || compare(a.id, b.id)),
    followUps: ledger.promises
      .map(({ now }) => now)
      .sort((a, b) => compare(a.promisedOn, b.promisedOn) || compare(a.id, b.id)),
    plans: ledger.plans,
    tasks: ledger.tasks.filter(({ beds }) => beds.length === 0).map(({ now }) => now),
  };
}

/** Lets the calendar run on until all that is annual has ended, and writes down what falls due. */
function finish(ledger: Ledger): void {
  const { seasonStarts } = ledger.records.settings;
  if (ledger.lastDay !== "") passTime(ledger, nextSeason(nextSeason(ledger.lastDay, seasonStarts), seasonStarts));
  closeOldLots(ledger);
  reportEndings(ledger);
  askWhetherTheyLast(ledger);
  fallDue(ledger);
}

/** Events of one line stand together once they are in order. */
function linesOf(events: readonly Event[]): readonly Line[] {
  const lines: [Event, ...Event[]][] = [];
  for (const event of events) {
    const line = lines.at(-1);
    const same =
      line?.[0].kind === event.kind &&
      line[0].place.line === event.place.line &&
      line[0].place.file === event.place.file;
    if (same && line !== undefined) line.push(event);
    else lines.push([event]);
  }
  return lines;
}

function byDay(a: Change, b: Change): number {
  return compare(a.day, b.day);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
