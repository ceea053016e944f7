/**
 * From records to the one model that pages and commands share: every event once, in order, then sorted by bed.
 *
 * Cost: sorting the events, and for each of them a look at the plantings of its name or bed.
 */
import type { Change, Event, EventKind, Garden, Photo, Records } from "../model.ts";
import { sortProblems } from "../records/index.ts";
import { plant, sow } from "./begin-plantings.ts";
import { bedHistory, putUp, takeDown, testSoil } from "./gear-and-soil.ts";
import { comeUp, flower, fruit, measure, potOn, thin } from "./growth.ts";
import { clear, giveAway, lose, move } from "./leaving.ts";
import { type Ledger, openLedger } from "./ledger.ts";
import { pick, saveSeed } from "./pickings.ts";
import { passTime, reportEndings } from "./season-turn.ts";
import { nextSeason } from "./seasons.ts";
import { done, fallDue, promise, promiseAloud, spokenPromises, toDo } from "./tasks-and-promises.ts";
import { endTrouble, openTrouble } from "./troubles.ts";
import { ask, work } from "./work.ts";

interface Step {
  readonly kind: EventKind;
  readonly take: (ledger: Ledger, event: Event) => void;
}

/**
 * What each kind of event does. The order of the rows is the order of events within one day, whatever files they stand in:
 * what is picked and cleared comes before what is sown and planted in its place, and work, troubles and measures after
 * both, so that "planted 12 leeks" and "watered the leeks" of one day fit together.
 */
const steps: readonly Step[] = [
  { kind: "took down", take: takeDown },
  { kind: "picked", take: pick },
  { kind: "saved seed", take: saveSeed },
  { kind: "gave away", take: giveAway },
  { kind: "lost", take: lose },
  { kind: "moved", take: move },
  { kind: "cleared", take: clear },
  { kind: "put up", take: putUp },
  { kind: "sowed", take: sow },
  { kind: "up", take: comeUp },
  { kind: "potted on", take: potOn },
  { kind: "planted", take: plant },
  { kind: "thinned", take: thin },
  { kind: "flowered", take: flower },
  { kind: "fruited", take: fruit },
  { kind: "measured", take: measure },
  { kind: "soil test", take: testSoil },
  { kind: "trouble", take: openTrouble },
  { kind: "did", take: work },
  { kind: "cured", take: endTrouble },
  { kind: "to do", take: toDo },
  { kind: "promised", take: promise },
  { kind: "done", take: done },
  { kind: "asked", take: ask },
];

const rank = new Map<EventKind, number>(steps.map(({ kind }, index) => [kind, index]));
const takers = new Map<EventKind, Step["take"]>(steps.map(({ kind, take }) => [kind, take]));

export function growGarden(records: Records, photos: readonly Photo[]): Garden {
  const events = records.events.toSorted(inOrder);
  const ledger = openLedger(records, events);
  for (const bed of records.beds.values()) bedHistory(ledger, bed);
  const spoken = [...spokenPromises(records.episodes.values())];
  let day = "";
  for (const event of events) {
    if (event.day !== day) {
      day = event.day;
      passTime(ledger, day);
      while (spoken[0] !== undefined && spoken[0].day <= day)
        promiseAloud(ledger, spoken.shift() as (typeof spoken)[0]);
    }
    takers.get(event.kind)?.(ledger, event);
  }
  for (const one of spoken) promiseAloud(ledger, one);
  finish(ledger);
  return {
    ...records,
    problems: sortProblems([...records.problems, ...ledger.problems]),
    photos,
    changes: new Map([...ledger.beds].map(([id, bed]) => [id, bed.changes.toSorted(byDay)])),
    nurseryLots: [...ledger.lots.values()]
      .flat()
      .map(({ now }) => now)
      .sort((a, b) => compare(a.sown, b.sown) || compare(a.id, b.id)),
    followUps: ledger.promises
      .map(({ now }) => now)
      .sort((a, b) => compare(a.promisedOn, b.promisedOn) || compare(a.id, b.id)),
    tasks: ledger.tasks.filter(({ beds }) => beds.length === 0).map(({ now }) => now),
  };
}

/** Lets the calendar run on until all that is annual has ended, and writes down what falls due. */
function finish(ledger: Ledger): void {
  const { seasonStarts } = ledger.records.settings;
  if (ledger.lastDay !== "") passTime(ledger, nextSeason(nextSeason(ledger.lastDay, seasonStarts), seasonStarts));
  reportEndings(ledger);
  fallDue(ledger);
}

function inOrder(a: Event, b: Event): number {
  return (
    compare(a.day, b.day) ||
    (rank.get(a.kind) ?? 0) - (rank.get(b.kind) ?? 0) ||
    compare(a.place.file, b.place.file) ||
    a.place.line - b.place.line ||
    a.place.column - b.place.column ||
    a.id.length - b.id.length ||
    compare(a.id, b.id)
  );
}

function byDay(a: Change, b: Change): number {
  return compare(a.day, b.day);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
