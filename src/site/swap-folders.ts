/** Handing over finished folders: what is served is the last complete site until the new one takes its place. */
import { existsSync, renameSync, rmSync } from "node:fs";
import { mkdir, realpath, rename, stat } from "node:fs/promises";
import { exchangeFolders } from "./exchange-folders.ts";

/** Where a site is built before it goes live. */
export function nextFolder(live: string): string {
  return `${live}.next`;
}

function lastFolder(live: string): string {
  return `${live}.last`;
}

/** The folder itself where a person put a link to one, such as the folder their web server reads. */
export async function whereItLies(folder: string): Promise<string> {
  return realpath(folder).catch(() => folder);
}

/** Makes room for a new build, and puts the last site back if an earlier run was stopped between two renames. */
export async function clearNext(live: string): Promise<void> {
  if (!(await exists(live)) && (await exists(lastFolder(live)))) await rename(lastFolder(live), live);
  rmSync(nextFolder(live), { recursive: true, force: true });
  rmSync(lastFolder(live), { recursive: true, force: true });
  await mkdir(nextFolder(live), { recursive: true });
}

/**
 * Puts the finished folders live, each in one step: it changes places with the old one. A system that cannot do that
 * takes two renames for it; nothing else may run between them, and `clearNext` mends what a stop between the two leaves.
 */
export async function putLive(folders: readonly string[], exchange = exchangeFolders): Promise<void> {
  for (const live of folders) {
    if (!existsSync(live)) renameSync(nextFolder(live), live);
    else if (!exchange(nextFolder(live), live)) {
      renameSync(live, lastFolder(live));
      renameSync(nextFolder(live), live);
    }
  }
  for (const live of folders) {
    rmSync(nextFolder(live), { recursive: true, force: true });
    rmSync(lastFolder(live), { recursive: true, force: true });
  }
}

/** Throws away what was built, so that a failed run leaves nothing beside the live site. */
export async function dropNext(folders: readonly string[]): Promise<void> {
  for (const live of folders) rmSync(nextFolder(live), { recursive: true, force: true });
}

async function exists(folder: string): Promise<boolean> {
  return stat(folder).then(
    () => true,
    () => false,
  );
}
