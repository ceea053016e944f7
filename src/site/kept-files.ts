/**
 * Files kept from one run to the next, by a key that stands for all they were made from. Every file is held against the
 * sum of its bytes before it is used, and the list against its own: a store that is damaged, half written or somebody
 * else's costs time and nothing else, and so does deleting it.
 *
 * Thousands of small files are read and written here one after the other; waiting for each by a promise would take longer
 * than the work.
 */
import { createHash, randomBytes } from "node:crypto";
import { linkSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, unlinkSync, writeFileSync } from "node:fs";
import path from "node:path";

export interface KeptFiles {
  /** Undefined when there is none, or it is not what it was. */
  get(key: string): KeptFile | undefined;
  /** Bytes that cannot be kept are only not there the next time. */
  put(key: string, bytes: Uint8Array): void;
  /** Writes a new file, whose folder must be there, and keeps it. */
  write(key: string, bytes: Uint8Array, target: string): void;
  /** Forgets what this run neither asked for nor put in. */
  save(): void;
}

export interface KeptFile {
  readonly bytes: Uint8Array;
  /** Puts the file there, as a second name for the kept one where the disk can. Its folder must be there. */
  placeAt(target: string): void;
}

const LIST = "list.json";

export function openKeptFiles(dir: string): KeptFiles {
  const before = readList(path.join(dir, LIST));
  const now = new Map<string, string>();
  attempt(() => mkdirSync(dir, { recursive: true }));
  const keptFile = (name: string, bytes: Uint8Array): KeptFile => ({
    bytes,
    placeAt(target) {
      if (!attempt(() => linkSync(path.join(dir, name), target))) writeFileSync(target, bytes);
    },
  });
  return {
    get(key) {
      const name = before.get(key);
      const bytes = name === undefined ? undefined : readWhole(path.join(dir, name));
      if (name === undefined || bytes === undefined) return undefined;
      if (digest(bytes) !== name) {
        attempt(() => rmSync(path.join(dir, name), { force: true }));
        return undefined;
      }
      now.set(key, name);
      return keptFile(name, bytes);
    },
    put(key, bytes) {
      const name = digest(bytes);
      if (attempt(() => writeWhole(path.join(dir, name), bytes))) now.set(key, name);
    },
    write(key, bytes, target) {
      writeFileSync(target, bytes);
      const name = digest(bytes);
      const file = path.join(dir, name);
      // One file under two names costs nothing. What lies there already may be damaged, and is written anew.
      const isKept = attempt(() => linkSync(target, file)) || attempt(() => writeWhole(file, bytes));
      if (isKept) now.set(key, name);
    },
    save() {
      // A store that cannot be written is only a slower next run.
      attempt(() => {
        const entries = JSON.stringify([...now]);
        writeWhole(path.join(dir, LIST), `${digest(Buffer.from(entries))}\n${entries}`);
        const names = new Set([LIST, ...now.values()]);
        for (const file of readdirSync(dir)) if (!names.has(file)) unlinkSync(path.join(dir, file));
      });
    },
  };
}

function readList(file: string): ReadonlyMap<string, string> {
  try {
    const [sum = "", entries = ""] = readFileSync(file, "utf8").split("\n");
    return new Map(digest(Buffer.from(entries)) === sum ? (JSON.parse(entries) as [string, string][]) : []);
  } catch {
    return new Map();
  }
}

function readWhole(file: string): Uint8Array | undefined {
  try {
    return readFileSync(file);
  } catch {
    return undefined;
  }
}

/** Beside, and renamed: a file is whole or not there, and one that is being served under another name stays as it is. */
function writeWhole(file: string, content: Uint8Array | string): void {
  const beside = `${file}.${randomBytes(4).toString("hex")}.part`;
  try {
    writeFileSync(beside, content);
    renameSync(beside, file);
  } catch (error) {
    rmSync(beside, { force: true });
    throw error;
  }
}

/** Whether it could be done. */
function attempt(work: () => void): boolean {
  try {
    work();
    return true;
  } catch {
    return false;
  }
}

function digest(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}
