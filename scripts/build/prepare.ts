/**
 * Makes what the program needs beside its code: the compiled templates of both sites, the scripts of the phone, style sheets
 * and lettering for pages that carry them in themselves. The build puts it into dist/prepared; in the clone the program runs
 * this file where what it needs is not there yet, or was made from other sources (src/store/prepared.ts). Templates take some
 * seconds, and are compiled again only after they changed.
 */
import { existsSync } from "node:fs";
import { chmod, copyFile, cp, mkdir, mkdtemp, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { sourcesDigest } from "../../src/store/tool-version.ts";
import { writePhoneScripts } from "./phone-scripts.ts";
import { CLONE, digestOf } from "./sources.ts";
import { compileTemplates, PAGE_FOLDERS } from "./templates.ts";

const CACHE = path.join(CLONE, ".cache");

/** Style sheets that pages carry in themselves. */
const SHEETS = ["tokens", "ground", "plates", "private", "recap", "print"] as const;
const LETTERING = "node_modules/@fontsource/alegreya-sans/files";
const WEIGHTS = [400, 500] as const;

const DAY = 24 * 60 * 60 * 1000;

/** Fills a new folder. */
export async function prepare(folder: string): Promise<void> {
  await cp(await templates(), path.join(folder, "templates"), { recursive: true });
  for (const name of ["phone", "styles", "fonts"]) await mkdir(path.join(folder, name), { recursive: true });
  await writePhoneScripts(path.join(folder, "phone"));
  for (const sheet of SHEETS)
    await copyFile(path.join(CLONE, "src/site/styles", `${sheet}.css`), path.join(folder, "styles", `${sheet}.css`));
  for (const weight of WEIGHTS)
    await copyFile(
      path.join(CLONE, LETTERING, `alegreya-sans-latin-${weight}-normal.woff2`),
      path.join(folder, "fonts", `${weight}.woff2`),
    );
  await copyFile(path.join(CLONE, "src/cli/start/towns.tsv"), path.join(folder, "towns.tsv"));
  await writeFile(path.join(folder, "version"), sourcesDigest());
}

/** Compiled once for their sources, the compiler, and how it is called. */
async function templates(): Promise<string> {
  const sources = PAGE_FOLDERS.map((name) => path.join(CLONE, "src/site", name));
  const how = await Promise.all(
    ["scripts/build/templates.ts", "src/site/compiled-pages.ts", "package-lock.json"].map((file) =>
      readFile(path.join(CLONE, file), "utf8"),
    ),
  );
  return madeOnce("templates", await digestOf(sources, ...how), compileTemplates);
}

/** A folder of the cache, whole or not there; those that nobody made for a day go. */
async function madeOnce(kind: string, key: string, make: (folder: string) => Promise<void>): Promise<string> {
  const all = path.join(CACHE, kind);
  const folder = path.join(all, key);
  if (existsSync(folder)) return folder;
  await mkdir(all, { recursive: true });
  for (const name of await readdir(all)) {
    const { mtimeMs } = await stat(path.join(all, name));
    if (Date.now() - mtimeMs > DAY) await rm(path.join(all, name), { recursive: true, force: true });
  }
  const work = await mkdtemp(path.join(all, "at-work-"));
  try {
    await make(work);
    // Nothing of it is anybody's own: whoever may read the sources may read it.
    await chmod(work, 0o755);
    await rename(work, folder).catch((error: unknown) => {
      // Two at once made the same.
      if (!existsSync(folder)) throw error;
    });
  } finally {
    await rm(work, { recursive: true, force: true });
  }
  return folder;
}

if (process.argv[1] === import.meta.filename) await madeOnce("prepared", sourcesDigest(), prepare);
