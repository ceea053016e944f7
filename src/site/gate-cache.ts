/**
 * Which bytes passed the privacy gate before, so that an unchanged page is not searched again for the same secrets. What
 * is kept are sums of bytes, under a sum of everything the verdict depends on: the tool and all that is secret. Bytes or
 * secrets that are any different are looked at as if nothing had ever passed.
 */
import { createHash, createHmac } from "node:crypto";
import { readFile } from "node:fs/promises";
import { writeWhole } from "../store/index.ts";

export interface GateCache {
  has(bytes: Uint8Array): boolean;
  /** To be called when nothing was found in them. */
  add(bytes: Uint8Array): void;
  /** Forgets what this run did not ask for. A list that cannot be written is only a slower next run. */
  save(): Promise<void>;
}

interface List {
  readonly given: string;
  readonly passed: readonly string[];
  /** Over both, made with the secrets themselves, so that no slip of a disk or a hand lets bytes pass unseen. */
  readonly sum: string;
}

/** `given` stands for all a verdict depends on beside the bytes; `secret` is what nobody knows who has not the records. */
export async function openGateCache(file: string, given: string, secret: string): Promise<GateCache> {
  const sealOf = (passed: readonly string[]) =>
    createHmac("sha256", secret)
      .update(JSON.stringify([given, passed]))
      .digest("base64");
  const before = await readList(file, given, sealOf);
  const now = new Set<string>();
  return {
    has(bytes) {
      const sum = digest(bytes);
      if (before.has(sum)) now.add(sum);
      return now.has(sum);
    },
    add: (bytes) => void now.add(digest(bytes)),
    async save() {
      const passed = [...now];
      await writeWhole(file, JSON.stringify({ given, passed, sum: sealOf(passed) } satisfies List)).catch(
        () => undefined,
      );
    },
  };
}

async function readList(
  file: string,
  given: string,
  sealOf: (passed: readonly string[]) => string,
): Promise<ReadonlySet<string>> {
  try {
    const list = JSON.parse(await readFile(file, "utf8")) as List;
    return new Set(list.given === given && list.sum === sealOf(list.passed) ? list.passed : []);
  } catch {
    return new Set();
  }
}

function digest(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("base64");
}
