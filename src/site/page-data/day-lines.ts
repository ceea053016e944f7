/** What the notes say of a day, line by line as it was written, each with the way to it. */
import type { Change, Day, LineReading, Note } from "../../model.ts";
import type { Jump } from "./note-pages.ts";
import type { Link } from "./shapes.ts";
import type { View } from "./view.ts";

export interface DayLines {
  /** Of a bed, or of the whole garden. */
  on(day: Day, bed?: string): readonly Link[];
  /** On which anything was written about a bed. */
  daysOf(bed: string): readonly Day[];
  /** Whether a line of its day says it. */
  says(change: Change): boolean;
}

export function dayLines({ garden, links }: View, jump: Jump): DayLines {
  const notes = new Map(garden.notes.map((note) => [note.place.file, note]));
  const bedsOf = bedsOfEvents(garden.changes.values());
  const dayOf = new Map(garden.events.map(({ id, day }) => [id, day]));
  const whole = new Map<Day, LineReading[]>();
  const byBed = new Map<string, Map<Day, LineReading[]>>();
  const add = (reading: LineReading, day: Day, beds: Iterable<string>) => {
    entry(whole, day, () => []).push(reading);
    for (const bed of beds)
      entry(
        entry(byBed, bed, () => new Map<Day, LineReading[]>()),
        day,
        () => [],
      ).push(reading);
  };
  for (const reading of garden.readings) {
    const note = notes.get(reading.place.file);
    if (note === undefined) continue;
    // A fact counts for the day it happened on, whichever day it was written down.
    const days = new Set(reading.events.map(({ day }) => day));
    for (const day of days) {
      const named = new Set<string>();
      for (const { id, day: on, bed, toBed } of reading.events)
        if (on === day)
          for (const one of [bed, toBed, ...(bedsOf.get(id) ?? [])]) if (one !== undefined) named.add(one);
      add(reading, day, named.size === 0 ? bedsAt(note, reading.place.line) : named);
    }
    if (days.size === 0) add(reading, note.day, bedsAt(note, reading.place.line));
  }
  return {
    on: (day, bed) =>
      ((bed === undefined ? whole : byBed.get(bed))?.get(day) ?? []).map(({ place: { file, line }, text }) => ({
        href: jump(file, line).href ?? links.notes,
        text,
      })),
    daysOf: (bed) => [...(byBed.get(bed)?.keys() ?? [])],
    says: ({ event, day }) => event !== undefined && dayOf.get(event) === day,
  };
}

/** Also of those that name no bed, by the plantings they were about. */
function bedsOfEvents(changes: Iterable<readonly Change[]>): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const ofBed of changes)
    for (const { event, bed } of ofBed) if (event !== undefined) entry(found, event, () => []).push(bed);
  return found;
}

function entry<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}

/** The beds that a line speaks of when it names none. */
function bedsAt({ beds, bedsFrom }: Note, at: number): readonly string[] {
  return bedsFrom?.findLast(({ line }) => line <= at)?.beds ?? beds;
}
