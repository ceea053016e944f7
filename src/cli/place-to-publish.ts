/**
 * Where sites may be written: anywhere but among the records, which would read them as photos and
 * notes, and inside a folder that is served, which would hand out the private pages.
 */
import { access, realpath } from "node:fs/promises";
import path from "node:path";
import { recordFolders } from "../records/index.ts";
import { CommandError } from "./command-error.ts";

/** What folders are called that a web server hands out, and what lies in them. */
const SERVED_NAMES: ReadonlySet<string> = new Set(["public", "public_html", "htdocs", "www", "wwwroot", "_site"]);
const SERVED_FILES = ["index.html", "_headers", ".nojekyll", ".plotreel.json"];

/** `outDir` when it may be used; both paths are absolute. */
export async function placeToPublish(outDir: string, recordsDir: string): Promise<string> {
  const [folder = ""] = path.relative(await really(recordsDir), await really(outDir)).split(path.sep);
  if (recordFolders.some((name) => name === folder)) {
    throw new CommandError(
      `${outDir} lies among your records, where the pages would be read as ${folder}. Give a folder outside ${path.join(recordsDir, folder)} with --out.`,
    );
  }
  const served = await servedAround(await really(outDir));
  if (served !== undefined) {
    throw new CommandError(
      `${outDir} lies inside ${served}, which looks like a folder that a web server hands out, and the private pages would lie in it for everybody to read. Give a folder outside it with --out.`,
    );
  }
  return outDir;
}

/** The nearest folder at or above this one that is served. */
async function servedAround(folder: string): Promise<string | undefined> {
  if (SERVED_NAMES.has(path.basename(folder).toLowerCase())) return folder;
  for (const file of SERVED_FILES) if (await exists(path.join(folder, file))) return folder;
  const above = path.dirname(folder);
  return above === folder ? undefined : servedAround(above);
}

async function exists(file: string): Promise<boolean> {
  return access(file).then(
    () => true,
    () => false,
  );
}

/** The path without links, as far as it exists. */
async function really(folder: string): Promise<string> {
  try {
    return await realpath(folder);
  } catch {
    const above = path.dirname(folder);
    return above === folder ? folder : path.join(await really(above), path.basename(folder));
  }
}
