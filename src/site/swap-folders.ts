/** Handing over finished folders: what is served is the last complete site until the new one stands beside it. */
import { existsSync, renameSync } from "node:fs";
import { mkdir, rename, rm, stat } from "node:fs/promises";

/** Where a site is built before it goes live. */
export function nextFolder(live: string): string {
  return `${live}.next`;
}

function lastFolder(live: string): string {
  return `${live}.last`;
}

/** Makes room for a new build, and puts the last site back if an earlier run was stopped between two renames. */
export async function clearNext(live: string): Promise<void> {
  if (!(await exists(live)) && (await exists(lastFolder(live)))) await rename(lastFolder(live), live);
  await rm(nextFolder(live), { recursive: true, force: true });
  await rm(lastFolder(live), { recursive: true, force: true });
  await mkdir(nextFolder(live), { recursive: true });
}

/**
 * Puts the finished folders live together. No system swaps two folders for every program, so it takes two renames each;
 * nothing else may run between them, and `clearNext` mends what a stop between the two leaves.
 */
export async function putLive(folders: readonly string[]): Promise<void> {
  for (const live of folders) {
    if (existsSync(live)) renameSync(live, lastFolder(live));
    renameSync(nextFolder(live), live);
  }
  for (const live of folders) await rm(lastFolder(live), { recursive: true, force: true });
}

/** Throws away what was built, so that a failed run leaves nothing beside the live site. */
export async function dropNext(folders: readonly string[]): Promise<void> {
  for (const live of folders) await rm(nextFolder(live), { recursive: true, force: true });
}

async function exists(folder: string): Promise<boolean> {
  return stat(folder).then(
    () => true,
    () => false,
  );
}
