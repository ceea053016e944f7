/**
 * The garden while its events are gone through in order. What stands here changes from event to event and never leaves
 * the room; what leaves it are the changes, which carry plantings, troubles and tasks as they became.
 */

import { seasonStart } from "../calendar.ts";
import { cropOf } from "../crop-of.ts";
import type {
  Change,
  Crop,
  Day,
  Doubt,
  Event,
  FollowUp,
  Note,
  NurseryLot,
  Plan,
  PlantIds,
  Planting,
  Records,
  Task,
  Trouble,
  UnassignedPicking,
  Variety,
} from "../model.ts";

/** A planting as it stands, and what the timeline keeps in mind about it. */
export interface Growing {
  now: Planting;
  /** Telling words of the line that began it, beside its name: "netted row". */
  readonly words: readonly string[];
  /** Last day it is taken to stand without a line that clears it; undefined for a perennial. */
  readonly endsBy: Day | undefined;
  /** It came back after a season had turned, so that it is no annual. */
  cameBack?: true | undefined;
  /** A later line showed that it stood longer than the calendar gave it: it is not given time twice. */
  readonly proven?: true;
  /** Set when the calendar ended it: what to take back if a later line shows that it still stood. */
  endedWithoutWord?: EndWithoutWord | undefined;
}

export interface EndWithoutWord {
  readonly change: Change;
  readonly before: Planting;
  readonly troubles: readonly { readonly trouble: OpenTrouble; readonly before: Trouble }[];
}

/** Plants that came from elsewhere and wait to be planted. */
export interface Arrival {
  readonly event: Event;
  /** Undefined when nobody counted. */
  left: number | undefined;
}

/** A nursery lot as it stands. */
export interface Lot {
  now: NurseryLot;
}

export interface OpenTrouble {
  now: Trouble;
}

/** A task or a promise, the beds it concerns, and its telling words, by which a `done:` line finds it. */
export type OpenThing = ATask | APromise;

interface Thing {
  readonly beds: readonly string[];
  readonly words: readonly string[];
}

export interface ATask extends Thing {
  readonly is: "task";
  now: Task;
}

export interface APromise extends Thing {
  readonly is: "promise";
  now: FollowUp;
}

/** What one bed holds at the point the events have come to. */
export interface BedLedger {
  readonly id: string;
  /** Plantings that live, in order of beginning. */
  living: Growing[];
  /** Plantings that ended, by plant key, in order of ending. */
  readonly ended: Map<string, Growing[]>;
  gear: readonly string[];
  troubles: OpenTrouble[];
  /** Troubles that ended with their plants. */
  readonly pastTroubles: OpenTrouble[];
  readonly unassigned: Map<string, UnassignedPicking>;
  readonly changes: Change[];
}

export interface Ledger {
  readonly records: Records;
  /** Crops a crop's word covers beside the crop itself, by id: beans are runner beans too. */
  readonly cropsCovered: ReadonlyMap<string, readonly string[]>;
  readonly beds: Map<string, BedLedger>;
  /** Living plantings of every bed by plant key. */
  readonly living: Map<string, Set<Growing>>;
  /** Open nursery lots by plant key, oldest first. */
  readonly openLots: Map<string, Lot[]>;
  /** Plant keys of open lots by crop, for lines that name only the crop. */
  readonly lotKeys: Map<string, Set<string>>;
  /** Every nursery lot by plant key. */
  readonly lots: Map<string, Lot[]>;
  /** Plants that came and were not planted yet, by plant key, oldest first. */
  readonly arrivals: Map<string, Arrival[]>;
  /** Plantings by the day they end without word. */
  readonly endings: Map<Day, Growing[]>;
  readonly tasks: ATask[];
  readonly promises: APromise[];
  readonly plans: Plan[];
  /** What is open, by each of its words: a `done:` line is compared only with what shares a word with it. */
  readonly openByWord: Map<string, Set<OpenThing>>;
  /** First day of the season the events have come to. */
  season: Day;
  /** Plantings whose season turned, and of which nobody knows whether they stand for years. */
  readonly ofUnknownLife: Set<Growing>;
  /** Plantings the calendar ended. */
  readonly endedWithoutWord: Set<Growing>;
  /** How many plantings began under one id, to tell them apart. */
  readonly ids: Map<string, number>;
  readonly notes: ReadonlyMap<string, Note>;
  /** Days of lines that begin a planting, by bed and plant key. */
  readonly starts: ReadonlyMap<string, readonly Day[]>;
  /** Day of the last event: until then the person went on writing. */
  readonly lastDay: Day;
  readonly doubts: Doubt[];
}

export function openLedger(records: Records, events: readonly Event[]): Ledger {
  return {
    records,
    cropsCovered: cropsCovered(records),
    beds: new Map(),
    living: new Map(),
    openLots: new Map(),
    lotKeys: new Map(),
    lots: new Map(),
    arrivals: new Map(),
    endings: new Map(),
    tasks: [],
    promises: [],
    plans: [],
    openByWord: new Map(),
    season: seasonStart(events[0]?.day ?? "1970-01-01", records.settings.seasonStarts),
    ofUnknownLife: new Set(),
    endedWithoutWord: new Set(),
    ids: new Map(),
    notes: new Map(records.notes.map((note) => [note.place.file, note])),
    starts: startsOf(records, events),
    lastDay: events.at(-1)?.day ?? "",
    doubts: [],
  };
}

/** "Beans" are runner beans and French beans too: crops of one family and use whose name ends in the same word. */
function cropsCovered({ crops }: Records): ReadonlyMap<string, readonly string[]> {
  const all = [...crops.values()];
  return new Map(
    all.map((crop) => {
      const covers = (other: Crop) =>
        other === crop ||
        (other.family === crop.family && other.use === crop.use && other.name.endsWith(` ${crop.name}`));
      return [crop.id, all.filter(covers).map(({ id }) => id)];
    }),
  );
}

function startsOf(records: Records, events: readonly Event[]): Map<string, Day[]> {
  const starts = new Map<string, Day[]>();
  for (const event of events) {
    const begins = event.kind === "sowed" || event.kind === "planted" || event.kind === "volunteer";
    if (!begins || event.bed === undefined || event.nursery) continue;
    const key = `${event.bed}/${plantKey(plantIds(records, event))}`;
    const days = starts.get(key);
    if (days === undefined) starts.set(key, [event.day]);
    else days.push(event.day);
  }
  return starts;
}

// --------------------------------------------------------------------------------------------------------------- plants

/** One key for a variety, another for plants of which the notes name only the crop. */
export function plantKey(ids: PlantIds): string {
  return ids.variety === undefined ? `crop/${ids.crop ?? ""}` : `variety/${ids.variety}`;
}

/** What a line names, with the crop that the variety's file gives. */
export function plantIds(records: Records, event: PlantIds): PlantIds {
  const crop = (event.variety === undefined ? undefined : records.varieties.get(event.variety)?.crop) ?? event.crop;
  return { variety: event.variety, crop };
}

export function varietyOf(ledger: Ledger, ids: PlantIds): Variety | undefined {
  return ids.variety === undefined ? undefined : ledger.records.varieties.get(ids.variety);
}

/** Whether plants stand from year to year, by their variety's file, else by their crop; undefined when neither says so. */
export function isPerennial(ledger: Ledger, ids: PlantIds): boolean | undefined {
  return varietyOf(ledger, ids)?.perennial ?? cropOf(ledger.records, ids)?.perennial;
}

// ----------------------------------------------------------------------------------------------------------------- beds

export function bedLedger(ledger: Ledger, id: string): BedLedger {
  let bed = ledger.beds.get(id);
  if (bed === undefined) {
    bed = {
      id,
      living: [],
      ended: new Map(),
      gear: [],
      troubles: [],
      pastTroubles: [],
      unassigned: new Map(),
      changes: [],
    };
    ledger.beds.set(id, bed);
  }
  return bed;
}

/** The beds a line speaks of: its own, else those its note is about. Empty when it could be any. */
export function bedsMeant(ledger: Ledger, event: Event): readonly string[] {
  if (event.bed !== undefined) return [event.bed];
  const { beds = [], bedsFrom } = ledger.notes.get(event.place.file) ?? {};
  return bedsFrom?.findLast(({ line }) => line <= event.place.line)?.beds ?? beds;
}

/** Whether the records keep a bed or variety to themselves. */
export function isPrivate(
  ledger: Ledger,
  ids: { readonly bed?: string | undefined; readonly variety?: string | undefined },
): boolean {
  const { beds, varieties } = ledger.records;
  return (
    (ids.bed !== undefined && beds.get(ids.bed)?.private === true) ||
    (ids.variety !== undefined && varieties.get(ids.variety)?.private === true)
  );
}
