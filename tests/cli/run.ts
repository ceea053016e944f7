import { cpSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { main } from "../../src/cli/main.ts";

export interface Ran {
  readonly exitCode: number;
  readonly out: string;
  readonly err: string;
  /** The folder the command ran in, absolute. */
  readonly cwd: string;
}

/** Runs one command in a folder of its own, as a person would, but with the terminal and the cache at hand. */
export async function run(
  argv: readonly string[],
  given: { cwd?: string; today?: string; keys?: readonly string[]; effects?: Partial<Effects> } = {},
): Promise<Ran> {
  const cwd = given.cwd ?? emptyFolder();
  const out: string[] = [];
  const err: string[] = [];
  const keys = [...(given.keys ?? [])];
  const effects: Effects = {
    ...realEffects(),
    cwd,
    terminal: false,
    // A person sits there where keys are given.
    canAsk: given.keys !== undefined,
    askKey: async () => keys.shift(),
    out: (line) => void out.push(line),
    err: (line) => void err.push(line),
    today: () => given.today ?? "2026-07-18",
    untilStopped: () => Promise.resolve(),
    cacheFor: () => path.join(cwd, ".cache"),
    ...given.effects,
  };
  const exitCode = await main(argv, effects);
  return { exitCode, out: out.join("\n"), err: err.join("\n"), cwd };
}

export function emptyFolder(): string {
  return mkdtempSync(path.join(tmpdir(), "plotreel-cli-"));
}

/** A folder whose content/ is a copy of one of the small gardens. */
export function folderWith(garden: string): string {
  const cwd = emptyFolder();
  cpSync(path.resolve(import.meta.dirname, "../gardens", garden), path.join(cwd, "content"), { recursive: true });
  return cwd;
}
