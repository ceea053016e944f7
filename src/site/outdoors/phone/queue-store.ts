/** Where the queue lies: in the phone's own database, entries and the bytes of photos apart. */
import type { QueueStore } from "./queue.ts";
import type { Queued } from "./shapes.ts";

const NAME = "plotreel outdoors";
const ENTRIES = "entries";
const FILES = "files";

/** A browser that has no database, or does not let this page have one, keeps things as long as the page is open. */
export async function openQueue(): Promise<QueueStore> {
  try {
    return inDatabase(await opened());
  } catch {
    return inMemory();
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const asked = indexedDB.open(NAME, 1);
    asked.onupgradeneeded = () => {
      asked.result.createObjectStore(ENTRIES, { keyPath: "id" });
      asked.result.createObjectStore(FILES);
    };
    asked.onsuccess = () => resolve(asked.result);
    asked.onerror = () => reject(asked.error);
    asked.onblocked = () => reject(new Error("blocked"));
  });
}

function inDatabase(database: IDBDatabase): QueueStore {
  /** Strict: told as done when the disk has it, and not when the system has promised to write it. */
  const change = (work: (entries: IDBObjectStore, files: IDBObjectStore) => void) =>
    new Promise<void>((resolve, reject) => {
      const doing = database.transaction([ENTRIES, FILES], "readwrite", { durability: "strict" });
      doing.oncomplete = () => resolve();
      doing.onabort = () => reject(doing.error);
      work(doing.objectStore(ENTRIES), doing.objectStore(FILES));
    });
  const answered = <Found>(asked: IDBRequest<Found>) =>
    new Promise<Found>((resolve, reject) => {
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
  return {
    lasts: true,
    async all() {
      const found = await answered<Queued[]>(database.transaction(ENTRIES).objectStore(ENTRIES).getAll());
      return found.sort((a, b) => a.time - b.time);
    },
    put: (entry, bytes) =>
      change((entries, files) => {
        entries.put(entry);
        if (bytes !== undefined) files.put(bytes, entry.id);
      }),
    bytesOf: (id) => answered(database.transaction(FILES).objectStore(FILES).get(id)),
    drop: (id) =>
      change((entries, files) => {
        entries.delete(id);
        files.delete(id);
      }),
  };
}

export function inMemory(): QueueStore {
  const entries = new Map<string, Queued>();
  const files = new Map<string, ArrayBuffer>();
  return {
    lasts: false,
    all: async () => [...entries.values()].sort((a, b) => a.time - b.time),
    async put(entry, bytes) {
      entries.set(entry.id, entry);
      if (bytes !== undefined) files.set(entry.id, bytes);
    },
    bytesOf: async (id) => files.get(id),
    async drop(id) {
      entries.delete(id);
      files.delete(id);
    },
  };
}
