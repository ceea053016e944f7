import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import { emptyFolder, run } from "../cli/run.ts";

export const today = "2026-07-18";

/** Made up for these tests. */
export const brought = (name: string) => path.join(import.meta.dirname, "brought", name);

/** A folder with a garden.md, and these files beside it. */
export function gardenWith(files: Readonly<Record<string, string>> = {}): string {
  const dir = emptyFolder();
  const all = { "garden.md": "---\nunits: metric\nlanguage: en-GB\n---\n", ...files };
  for (const [file, text] of Object.entries(all)) {
    mkdirSync(path.dirname(path.join(dir, file)), { recursive: true });
    writeFileSync(path.join(dir, file), text);
  }
  return dir;
}

export const ingest = (dir: string, ...args: readonly string[]) => run(["ingest", ...args], { cwd: dir, today });

export async function recordsIn(dir: string) {
  return readRecords(await openRecordsFolder(dir), { today });
}

/** Every file below a folder with its text, but for what the tool keeps by the way. */
export function filesIn(dir: string): Readonly<Record<string, string>> {
  const names = readdirSync(dir, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return Object.fromEntries(
    names
      .map((entry) => path.relative(dir, path.join(entry.parentPath, entry.name)))
      .filter((name) => !name.startsWith(".cache"))
      .sort()
      .map((name) => [name, readFileSync(path.join(dir, name), "utf8")]),
  );
}
