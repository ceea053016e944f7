/**
 * Where Astro may work: a copy of the page sources in the cache, with the tool's packages linked in. Astro writes beside
 * its sources and resolves packages from the current folder, and neither may happen in a person's records nor in an
 * installed, perhaps read-only, package.
 */
import { cp, mkdir, mkdtemp, readdir, rm, symlink } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { isRunning } from "../store/index.ts";

const SOURCES = path.dirname(fileURLToPath(import.meta.url));

/** What pages are made of; page data is handed over as values. */
const PAGE_FOLDERS = ["public", "field", "components", "styles"] as const;

/** Runs `work` with a fresh folder, and clears up whatever happens. */
export async function inWorkFolder<T>(cacheDir: string, work: (folder: string) => Promise<T>): Promise<T> {
  await mkdir(cacheDir, { recursive: true });
  await sweepAbandoned(cacheDir);
  const folder = await mkdtemp(path.join(cacheDir, `work-${process.pid}-`));
  try {
    return await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Runs `work` where Astro may: the folder is new, the page sources lie in it, and it is the current one. */
export async function amongPageSources<T>(folder: string, work: () => Promise<T>): Promise<T> {
  const before = process.cwd();
  try {
    for (const name of PAGE_FOLDERS) {
      await cp(path.join(SOURCES, name), path.join(folder, name), {
        recursive: true,
        filter: (file) => !/[/\\]\.(?:astro|cache|vite)(?:[/\\]|$)/u.test(file),
      });
    }
    await symlink(installedPackages(), path.join(folder, "node_modules"), "junction");
    process.chdir(folder);
    return await work();
  } finally {
    process.chdir(before);
  }
}

/** Removes the folders of runs that were killed; a process number in use may be somebody else's by now, and waits. */
async function sweepAbandoned(cacheDir: string): Promise<void> {
  for (const name of await readdir(cacheDir)) {
    const pid = Number(/^work-(\d+)-/u.exec(name)?.[1]);
    if (pid > 0 && !isRunning(pid)) await rm(path.join(cacheDir, name), { recursive: true, force: true });
  }
}

/** The node_modules folder that Astro itself was loaded from. */
export function installedPackages(): string {
  const entry = fileURLToPath(import.meta.resolve("astro"));
  const mark = `${path.sep}node_modules${path.sep}`;
  return entry.slice(0, entry.lastIndexOf(mark) + mark.length - 1);
}
