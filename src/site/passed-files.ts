/**
 * Which bytes passed the privacy gate before, so that an unchanged page is not searched again for the same secrets. What
 * is kept are sums of bytes, under a sum of everything the verdict depends on: the tool and all that is secret. Bytes or
 * secrets that are any different are looked at as if nothing had ever passed.
 */
import { createHash, randomBytes } from "node:crypto";
import { mkdir, readFile, rename, rm, writeFile } from "node:fs/promises";
import path from "node:path";

export interface PassedFiles {
  has(bytes: Uint8Array): boolean;
  /** To be called when nothing was found in them. */
  add(bytes: Uint8Array): void;
  /** Forgets what this run did not ask for. A list that cannot be written is only a slower next run. */
  save(): Promise<void>;
}

interface List {
  readonly given: string;
  readonly passed: readonly string[];
}

/** `given` stands for all a verdict depends on beside the bytes. */
export async function openPassedFiles(file: string, given: string): Promise<PassedFiles> {
  const before = await readList(file, given);
  const now = new Set<string>();
  return {
    has(bytes) {
      const sum = sumOf(bytes);
      if (before.has(sum)) now.add(sum);
      return now.has(sum);
    },
    add: (bytes) => void now.add(sumOf(bytes)),
    async save() {
      const beside = `${file}.${randomBytes(4).toString("hex")}.part`;
      try {
        await mkdir(path.dirname(file), { recursive: true });
        await writeFile(beside, JSON.stringify({ given, passed: [...now] } satisfies List));
        await rename(beside, file);
      } catch {
        await rm(beside, { force: true }).catch(() => undefined);
      }
    },
  };
}

async function readList(file: string, given: string): Promise<ReadonlySet<string>> {
  try {
    const list = JSON.parse(await readFile(file, "utf8")) as List;
    return new Set(list.given === given ? list.passed : []);
  } catch {
    return new Set();
  }
}

function sumOf(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("base64");
}
