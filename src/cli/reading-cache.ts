/**
 * What was read of a records folder, kept from one run to the next: parses of files, and what note bodies say. A key stands
 * for everything an entry depends on, and the stores are left aside when the reading code itself is another; so they are
 * never wrong, and deleting them costs time and nothing else. A command that reads again and again, as `watch` does, has them
 * at hand: it reads and writes the files once, and what changed after that is read once more by the next command.
 */
import path from "node:path";
import type { NoteBody, NoteCache, NoteReadings, ParsedNote } from "../records/index.ts";
import type { Effects } from "./effects.ts";

type CacheEffects = Pick<Effects, "readText" | "writeText" | "readerVersion">;

export interface ReadingCache {
  readonly files: NoteCache;
  readonly readings: NoteReadings;
  /** Files that were parsed in this run because the store did not have them. */
  readonly readAgain: number;
  readonly known: number;
  /** Writes what changed; a store that cannot be written is only a slower next run. */
  save(): Promise<void>;
}

export async function openReadingCache(effects: CacheEffects, cacheDir: string): Promise<ReadingCache> {
  const files = await openStore<ParsedNote>(effects, path.join(cacheDir, "parsed-files.json"));
  const readings = await openStore<NoteBody>(effects, path.join(cacheDir, "note-readings.json"));
  return {
    files,
    readings,
    get readAgain() {
      return files.added;
    },
    get known() {
      return files.kept;
    },
    async save() {
      await files.save();
      await readings.save();
    },
  };
}

/** What the command that has these effects read before, by file. */
const atHand = new WeakMap<CacheEffects, Map<string, ReadonlyMap<string, unknown>>>();

interface Store<Entry> {
  get(key: string): Entry | undefined;
  set(key: string, entry: Entry): void;
  readonly added: number;
  readonly kept: number;
  save(): Promise<void>;
}

/** One JSON file of entries by key. Entries that a run did not ask for are forgotten with its save. */
async function openStore<Entry>(effects: CacheEffects, file: string): Promise<Store<Entry>> {
  const reader = effects.readerVersion();
  const last = atHand.get(effects) ?? new Map<string, ReadonlyMap<string, unknown>>();
  atHand.set(effects, last);
  const known = last.get(file) as ReadonlyMap<string, Entry> | undefined;
  const before = known ?? (await readStore<Entry>(effects, file, reader));
  const now = new Map<string, Entry>();
  let added = 0;
  return {
    get(key) {
      const entry = before.get(key);
      if (entry !== undefined) now.set(key, entry);
      return entry;
    },
    set(key, entry) {
      added += 1;
      now.set(key, entry);
    },
    get added() {
      return added;
    },
    get kept() {
      return now.size - added;
    },
    async save() {
      last.set(file, now);
      if (known !== undefined || (added === 0 && now.size === before.size)) return;
      await effects.writeText(file, JSON.stringify({ reader, entries: [...now] })).catch(() => undefined);
    },
  };
}

async function readStore<Entry>(effects: CacheEffects, file: string, reader: string): Promise<Map<string, Entry>> {
  try {
    const store = JSON.parse((await effects.readText(file)) ?? "{}") as {
      reader?: string;
      entries?: [string, Entry][];
    };
    return new Map(store.reader === reader ? store.entries : []);
  } catch {
    return new Map();
  }
}
