/** Small gardens for the timeline's tests, written as lists of what happened. */

import { timelineProblems } from "../../src/garden/index.ts";
import { changeSentence } from "../../src/language/index.ts";
import type {
  Bed,
  Change,
  Count,
  Episode,
  EpisodePromise,
  Event,
  EventKind,
  Garden,
  Gear,
  Note,
  Problem,
  Records,
  Variety,
} from "../../src/model.ts";
import { crops, sortProblems } from "../../src/records/index.ts";
import { changes, growGarden } from "../../src/timeline/index.ts";

/** What a line says beside its day and kind; counts may be plain numbers. */
export type Said = Partial<Omit<Event, "count">> & { readonly count?: number | Count; readonly file?: string };

/** A line: its day, what kind of event it tells of, and what it says. */
export type Line = readonly [day: string, kind: EventKind, said?: Said];

export interface SmallGarden {
  readonly lines: readonly Line[];
  readonly beds?: Readonly<Record<string, Partial<Bed>>>;
  readonly varieties?: Readonly<Record<string, Partial<Variety>>>;
  readonly gear?: Readonly<Record<string, Partial<Gear>>>;
  readonly episodes?: readonly (Partial<Episode> & { readonly id: string; readonly day: string })[];
  /** Beds a note is about, by file. */
  readonly noteBeds?: Readonly<Record<string, readonly string[]>>;
  readonly settings?: Partial<Records["settings"]>;
}

/** Old kinds that gardeners know; each has its crop. */
const knownVarieties: Readonly<Record<string, readonly [title: string, crop: string | undefined]>> = {
  musselburgh: ["Musselburgh", "leek"],
  "crown-prince": ["Crown Prince", "squash"],
  boltardy: ["Boltardy", "beetroot"],
  aquadulce: ["Aquadulce Claudia", "broad-bean"],
  "nero-di-toscana": ["Nero di Toscana", "kale"],
  "black-beauty": ["Black Beauty", "courgette"],
  "gardeners-delight": ["Gardener’s Delight", "tomato"],
  "ailsa-craig": ["Ailsa Craig", "tomato"],
  solent: ["Solent Wight", "garlic"],
  victoria: ["Victoria", "rhubarb"],
  matucana: ["Matucana", "sweet-pea"],
  "french-breakfast": ["French Breakfast", "radish"],
  "little-gem": ["Little Gem", "lettuce"],
  charlotte: ["Charlotte", "potato"],
  mystery: ["Mystery from the swap", undefined],
};

export const bedTitles: Readonly<Record<string, string>> = {
  "long-bed": "Long Bed",
  "squash-bed": "Squash Bed",
  "bean-row": "Bean Row",
  tunnel: "Tunnel",
};

export function recordsOf(small: SmallGarden): Records {
  const events = small.lines.map((line, index) => eventOf(line, index + 1));
  const varieties = new Map<string, Variety>();
  for (const id of new Set([...Object.keys(knownVarieties), ...Object.keys(small.varieties ?? {})])) {
    const [title, crop] = knownVarieties[id] ?? [id, undefined];
    varieties.set(id, {
      ...file(id, title),
      crop,
      alsoSpelled: [],
      perennial: undefined,
      ...small.varieties?.[id],
    });
  }
  const beds = new Map<string, Bed>();
  for (const id of new Set([...Object.keys(bedTitles), ...Object.keys(small.beds ?? {})])) {
    beds.set(id, {
      ...file(id, bedTitles[id] ?? id),
      alsoCalled: [],
      shade: [],
      built: [],
      filled: [],
      viewpoints: [],
      place: { file: `beds/${id}.md`, line: 1, column: 1 },
      ...small.beds?.[id],
    });
  }
  return {
    settings: {
      name: "Test garden",
      southern: false,
      timeZone: "Europe/London",
      units: "metric",
      language: "en-GB",
      seasonStarts: "01-01",
      narrationRate: 130,
      photoGapDays: 14,
      kit: [],
      weights: {},
      base: "/",
      body: "",
      ...small.settings,
    },
    sites: new Map(),
    beds,
    varieties,
    crops: new Map(crops.map((crop) => [crop.id, crop])),
    gear: new Map(
      Object.entries(small.gear ?? {}).map(([id, gear]) => [id, { ...file(id, id), alsoCalled: [], ...gear }]),
    ),
    trials: new Map(),
    episodes: new Map((small.episodes ?? []).map((episode) => [episode.id, episodeOf(episode)])),
    notes: notesOf(events, small.noteBeds ?? {}),
    events,
    readings: [],
    words: [],
    photoFiles: [],
    clipFiles: [],
    asideFiles: [],
    sounds: [],
    photoSidecars: new Map(),
    weatherFiles: [],
    problems: [],
  };
}

/** A change as it is told. */
export type ToldChange = Change & { readonly text: string };

/** A garden with the words that others make of it: the sentence of each change, and what it was in doubt about. */
export interface ToldGarden extends Garden {
  readonly changes: ReadonlyMap<string, readonly ToldChange[]>;
}

export function grow(small: SmallGarden): ToldGarden {
  return inWords(growGarden(recordsOf(small), []));
}

export function inWords(garden: Garden): ToldGarden {
  const told = (change: Change): ToldChange => ({ ...change, text: changeSentence(change, garden) });
  return {
    ...garden,
    problems: sortProblems([...garden.problems, ...timelineProblems(garden)]),
    changes: new Map([...garden.changes].map(([bed, all]) => [bed, all.map(told)])),
  };
}

/** What changed in a bed after `from`, up to and with `to`, as it is told. */
export function toldChanges(garden: Garden, bed: string, from: string, to: string): readonly ToldChange[] {
  return changes(garden, bed, from, to).map((change) => ({ ...change, text: changeSentence(change, garden) }));
}

/** Problems as "rule what", the way a test reads them. */
export function told(problems: readonly Problem[]): readonly string[] {
  return problems.map(({ rule, what }) => `${rule}: ${what}`);
}

export function rulesOf(problems: readonly Problem[]): readonly string[] {
  return problems.map(({ rule }) => rule);
}

export function promised(what: string, more: Partial<EpisodePromise> = {}): EpisodePromise {
  return { what, place: { file: "episodes/one/index.md", line: 9, column: 3 }, ...more };
}

function eventOf([day, kind, said = {}]: Line, line: number): Event {
  const { count, file: named, ...rest } = said;
  const place = { file: named ?? `notes/${day}.md`, line, column: 1 };
  return {
    id: `${place.file}:${line}`,
    kind,
    day,
    verb: kind,
    text: kind,
    place,
    private: false,
    more: [],
    ...(count === undefined ? {} : { count: typeof count === "number" ? { value: count, approx: false } : count }),
    ...rest,
  };
}

function notesOf(events: readonly Event[], beds: Readonly<Record<string, readonly string[]>>): readonly Note[] {
  return [...new Map(events.map((event) => [event.place.file, event.day]))].map(([path, day]) => ({
    id: path.replace(/^notes\/|\.md$/g, ""),
    day,
    beds: beds[path] ?? [],
    private: false,
    story: [],
    photos: [],
    place: { file: path, line: 1, column: 1 },
  }));
}

function episodeOf(episode: Partial<Episode> & { readonly id: string; readonly day: string }): Episode {
  return {
    ...file(episode.id, episode.id),
    status: "published",
    stops: [],
    promised: [],
    must: [],
    keep: [],
    skip: [],
    captions: [],
    ...episode,
  };
}

function file(id: string, title: string) {
  return { id, title, private: false, body: "", described: true };
}
