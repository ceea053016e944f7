/**
 * Files kept from one run to the next, by a key that stands for all they were made from. Every file is held against the
 * sum of its bytes before it is used, and the list against its own: a store that is damaged, half written or somebody
 * else's costs time and nothing else, and so does deleting it.
 */
import { createHash, randomBytes } from "node:crypto";
import { link, mkdir, readdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";

export interface KeptFiles {
  /** Undefined when there is none, or it is not what it was. */
  get(key: string): Promise<KeptFile | undefined>;
  /** Bytes that cannot be kept are only not there the next time. */
  put(key: string, bytes: Uint8Array): Promise<KeptFile>;
  /** Forgets what this run neither asked for nor put in. */
  save(): Promise<void>;
}

export interface KeptFile {
  readonly bytes: Uint8Array;
  /** Puts the file there, as a second name for the kept one where the disk can. Its folder must be there. */
  placeAt(target: string): Promise<void>;
}

const LIST = "list.json";

export async function openKeptFiles(dir: string): Promise<KeptFiles> {
  const before = await readList(path.join(dir, LIST));
  const now = new Map<string, string>();
  await mkdir(dir, { recursive: true }).catch(() => undefined);
  const keptFile = (name: string, bytes: Uint8Array): KeptFile => ({
    bytes,
    async placeAt(target) {
      await link(path.join(dir, name), target).catch(() => writeFile(target, bytes));
    },
  });
  return {
    async get(key) {
      const name = before.get(key);
      if (name === undefined) return undefined;
      const bytes = await readFile(path.join(dir, name)).catch(() => undefined);
      if (bytes === undefined) return undefined;
      if (sumOf(bytes) !== name) {
        await rm(path.join(dir, name), { force: true }).catch(() => undefined);
        return undefined;
      }
      now.set(key, name);
      return keptFile(name, bytes);
    },
    async put(key, bytes) {
      const name = sumOf(bytes);
      await writeWhole(path.join(dir, name), bytes).then(
        () => now.set(key, name),
        () => undefined,
      );
      return keptFile(name, bytes);
    },
    async save() {
      const entries = JSON.stringify([...now]);
      try {
        await writeWhole(path.join(dir, LIST), Buffer.from(`${sumOf(Buffer.from(entries))}\n${entries}`));
        const names = new Set([LIST, ...now.values()]);
        for (const file of await readdir(dir)) if (!names.has(file)) await rm(path.join(dir, file), { force: true });
      } catch {
        // A store that cannot be written is only a slower next run.
      }
    },
  };
}

async function readList(file: string): Promise<ReadonlyMap<string, string>> {
  try {
    const [sum = "", entries = ""] = (await readFile(file, "utf8")).split("\n");
    return new Map(sumOf(Buffer.from(entries)) === sum ? (JSON.parse(entries) as [string, string][]) : []);
  } catch {
    return new Map();
  }
}

function sumOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** Written beside and renamed, so that a file is whole or not there. */
async function writeWhole(file: string, bytes: Uint8Array): Promise<void> {
  const beside = `${file}.${randomBytes(4).toString("hex")}.part`;
  try {
    await writeFile(beside, bytes);
    await rename(beside, file);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}
