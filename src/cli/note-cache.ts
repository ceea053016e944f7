/**
 * The disk store of parsed files: one JSON file per records folder, keyed by the content of what was parsed.
 * A key can only ever mean one text, so the store is never wrong; deleting it costs time and nothing else.
 */
import path from "node:path";
import type { NoteCache, ParsedNote } from "../records/index.ts";
import type { Effects } from "./effects.ts";

/** Raised whenever the parse or its shape changes, so that an older store is left aside. */
const STORE = "parsed-files-1.json";

export interface StoredNoteCache extends NoteCache {
  /** Files that were parsed in this run because the store did not have them. */
  readonly readAgain: number;
  readonly known: number;
  /** Writes the store if anything in it changed; a store that cannot be written is only a slower next run. */
  save(): Promise<void>;
}

export async function openNoteCache(
  effects: Pick<Effects, "readText" | "writeText">,
  cacheDir: string,
): Promise<StoredNoteCache> {
  const file = path.join(cacheDir, STORE);
  const before = await readStore(effects, file);
  const now = new Map<string, ParsedNote>();
  let readAgain = 0;
  return {
    get(hash) {
      const parsed = before.get(hash);
      if (parsed !== undefined) now.set(hash, parsed);
      return parsed;
    },
    set(hash, parsed) {
      readAgain += 1;
      now.set(hash, parsed);
    },
    get readAgain() {
      return readAgain;
    },
    get known() {
      return now.size - readAgain;
    },
    async save() {
      if (readAgain === 0 && now.size === before.size) return;
      await effects.writeText(file, JSON.stringify([...now])).catch(() => undefined);
    },
  };
}

async function readStore(effects: Pick<Effects, "readText">, file: string): Promise<Map<string, ParsedNote>> {
  try {
    const text = await effects.readText(file);
    return new Map(text === undefined ? [] : (JSON.parse(text) as [string, ParsedNote][]));
  } catch {
    return new Map();
  }
}
