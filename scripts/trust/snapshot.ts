/** What lies in a folder: bytes, rights, links. */
import { createHash } from "node:crypto";
import { existsSync, lstatSync, readdirSync, readFileSync, readlinkSync } from "node:fs";
import path from "node:path";

/** By path: one word for all that must not change. */
export type Snapshot = ReadonlyMap<string, string>;

export function snapshotOf(folder: string): Snapshot {
  const found = new Map<string, string>();
  if (!existsSync(folder)) return found;
  for (const name of readdirSync(folder, { recursive: true, encoding: "utf8" }).sort()) {
    const file = path.join(folder, name);
    found.set(name, stateOf(file));
  }
  return found;
}

export function stateOf(file: string): string {
  const state = lstatSync(file);
  const rights = (state.mode & 0o7777).toString(8);
  if (state.isSymbolicLink()) return `link to ${readlinkSync(file)}`;
  if (state.isDirectory()) return `folder ${rights}`;
  if (!state.isFile()) return "neither file nor folder";
  const sum = createHash("sha256").update(readFileSync(file)).digest("hex").slice(0, 16);
  return `file ${rights} ${state.nlink} names ${state.size} bytes ${sum}`;
}

/** Paths whose word is neither that of one nor that of the other; what both lack may not be there. */
export function neitherNor(now: Snapshot, before: Snapshot, after: Snapshot): readonly string[] {
  return [...new Set([...now.keys(), ...before.keys(), ...after.keys()])]
    .filter((name) => now.get(name) !== before.get(name) && now.get(name) !== after.get(name))
    .map((name) => `${name}: ${now.get(name) ?? "gone"}`);
}

export function same(a: Snapshot, b: Snapshot): boolean {
  return a.size === b.size && neitherNor(a, b, b).length === 0;
}
