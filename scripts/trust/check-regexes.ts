/**
 * Which regular expressions may take far longer than their text is long. `recheck` answers that, some seconds each for the
 * hard ones, so its answers are kept by pattern, and only a new pattern is asked about.
 */
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { type FoundRegex, keyOf } from "./find-regexes.ts";

/** The text that takes longest: `before`, `pump` as often as there is room, `after`. */
export interface Attack {
  readonly before: string;
  readonly pump: string;
  readonly after: string;
}

export interface Judged {
  /** Short sums of patterns that take as long as their text. */
  readonly safe: readonly string[];
  /** By pattern: those that take longer, and the text that shows how much. */
  readonly slow: Readonly<Record<string, Attack>>;
}

const file = path.resolve(import.meta.dirname, "../../tests/trust/judged-regexes.json");

export function judgedRegexes(): Judged {
  return JSON.parse(readFileSync(file, "utf8")) as Judged;
}

export function keepJudged({ safe, slow }: Judged): void {
  const sorted = Object.fromEntries(Object.entries(slow).sort(([a], [b]) => (a < b ? -1 : 1)));
  writeFileSync(file, `${JSON.stringify({ safe: [...new Set(safe)].sort(), slow: sorted }, null, 1)}\n`);
}

export function sumOf(regex: FoundRegex): string {
  return createHash("sha256").update(keyOf(regex)).digest("base64url").slice(0, 10);
}

/** Undefined when it takes as long as its text; a sentence when nobody can tell. */
export async function attackOn({ source, flags }: FoundRegex, seconds = 20): Promise<Attack | string | undefined> {
  const { check } = await import("recheck");
  const told = await check(source, flags, { timeout: seconds * 1000 });
  if (told.status === "safe") return undefined;
  if (told.status === "unknown") return `not known (${told.error.kind})`;
  const { pumps, suffix } = told.attack;
  const [first] = pumps;
  const pump = pumps.at(-1)?.pump ?? "";
  return { before: first?.prefix ?? "", pump, after: suffix };
}

/** Milliseconds of processor time on a text of this length, or `limit` when it took longer. */
export function timeOf({ source, flags }: FoundRegex, attack: Attack, length: number, limit: number): number {
  const times = Math.max(1, Math.floor((length - attack.before.length - attack.after.length) / attack.pump.length));
  const text = attack.before + attack.pump.repeat(times) + attack.after;
  const began = process.cpuUsage();
  try {
    vm.runInNewContext("new RegExp(source, flags).test(text)", { source, flags, text }, { timeout: limit });
  } catch {
    return limit;
  }
  return process.cpuUsage(began).user / 1000;
}
