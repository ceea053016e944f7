/** A small garden whose names the lines of these tests use, and reading one line of it. */
import type { Bed, Event, Gear, Problem, Site, Variety } from "../../src/model.ts";
import {
  buildNames,
  crops,
  type Names,
  namesOnceHeard,
  readNoteLine,
  type UnitSystem,
} from "../../src/records/index.ts";

/** A Wednesday. */
export const noteDay = "2026-05-20";
export const place = { file: "notes/2026-05-20.md", line: 7, column: 3 };

const beds: readonly Bed[] = [
  bed("long-bed", "Long Bed"),
  bed("cold-frame", "Cold Frame"),
  bed("squash-bed", "Squash Bed"),
  bed("brassica-bed", "Brassica Bed"),
  bed("tunnel-north", "Tunnel North"),
  bed("step-pots", "Step Pots", "harbour-yard"),
  bed("herb-trough", "Herb Trough", "harbour-yard"),
];
const varieties: readonly Variety[] = [
  variety("musselburgh", "Musselburgh", "leek"),
  variety("black-beauty", "Black Beauty", "courgette"),
  variety("crown-prince", "Crown Prince", "squash"),
  variety("uchiki-kuri", "Uchiki Kuri", "squash"),
  variety("aquadulce-claudia", "Aquadulce Claudia", "broad-bean", ["Aquadulce"]),
  variety("cafe-au-lait", "Café au Lait", "dahlia"),
  variety("little-gem", "Little Gem", "lettuce"),
  variety("boltardy", "Boltardy", "beetroot"),
  variety("sungold", "Sungold F1", "tomato"),
  variety("gardeners-delight", "Gardener’s Delight", "tomato"),
  variety("lady-in-red", "Lady in Red", "bean"),
];
const gear: readonly Gear[] = [
  { ...record("arch", "Arch"), alsoCalled: [] },
  { ...record("mesh-tunnel", "Mesh tunnel"), alsoCalled: ["mesh"] },
];
const sites: readonly Site[] = [{ ...record("harbour-yard", "Harbour Yard"), gates: [], mustPass: [] }];
const records = { beds, varieties, gear, crops, sites };

/** Names as a first reading has them; each call has its own record of names taken. */
export function gardenNames(): Names {
  return buildNames(records);
}

export function gardenNamesOnceHeard(names: Names): Names {
  return namesOnceHeard(records, names.taken());
}

function record(id: string, title: string) {
  return { id, title, private: false, body: "", described: true };
}

function bed(id: string, title: string, site?: string): Bed {
  return { ...record(id, title), site, alsoCalled: [], shade: [], built: [], filled: [], viewpoints: [] };
}

function variety(id: string, title: string, crop: string, alsoSpelled: string[] = []): Variety {
  return { ...record(id, title), crop, alsoSpelled, perennial: false };
}

export interface Reading {
  /** Default beds of the note. */
  readonly beds?: readonly string[];
  readonly more?: readonly string[];
  readonly units?: UnitSystem;
  readonly names?: Names;
}

/** Reads one line; undefined when it is story. */
export function readLine(text: string, { beds: noteBeds = [], more = [], units, names = gardenNames() }: Reading = {}) {
  const note = { id: "2026-05-20", day: noteDay, private: false };
  return readNoteLine({ text, more, place }, { note, beds: noteBeds, names, units });
}

/**
 * What an event says beside its line: the day only where it is not the note's, a plain count as a number, measures to a
 * millionth (their exact factors are checked in units.test.ts).
 */
export type Facts = Readonly<Record<string, unknown>>;

export function factsOf(event: Event): Facts {
  const { id, verb, text, place: _place, private: _private, more, day, count, ...facts } = event;
  return Object.fromEntries(
    Object.entries({
      ...facts,
      day: day === noteDay ? undefined : day,
      count: count === undefined || count.approx || count.upTo !== undefined ? count : count.value,
      more: more.length === 0 ? undefined : more,
    })
      .filter(([, value]) => value !== undefined)
      .map(([key, value]) => [key, typeof value === "number" ? Math.round(value * 1e6) / 1e6 : value]),
  );
}

/** The facts of every event of a line, and the problems as "rule: what fix". */
export function told(text: string, reading: Reading = {}): readonly Facts[] | "story" {
  const read = readLine(text, reading);
  return read === undefined || read.events.length === 0 ? "story" : read.events.map(factsOf);
}

export function problemsOf(text: string, reading: Reading = {}): readonly string[] {
  return (readLine(text, reading)?.problems ?? []).map(({ rule, what, fix }: Problem) => `${rule}: ${what} ${fix}`);
}
