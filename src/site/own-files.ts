/**
 * What a published folder holds by our own hand. Publishing replaces whole folders, so before it does, everything in the
 * old one must be ours: somebody may have a folder named "public" for other reasons, or keep files of their own in it.
 */
import { readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";

/** Lies in each site and names its files. */
const LIST = ".plotreel.json";

/** What systems leave in any folder that somebody looked into. */
const LITTER: ReadonlySet<string> = new Set([".DS_Store", "Thumbs.db", "desktop.ini"]);

/** Files named in the sentence. */
const NAMED = 3;

/** A folder that publishing would replace holds what it did not make. */
export class ForeignFiles extends Error {
  constructor(folder: string, files: readonly string[]) {
    const named = files.slice(0, NAMED).join(", ");
    const more = files.length > NAMED ? ` and ${files.length - NAMED} more` : "";
    super(
      `${folder} holds files that Plotreel did not make (${named}${more}), and publishing would replace the folder, so it was left as it is. Move them out, or publish into another folder with --out.`,
    );
    this.name = "ForeignFiles";
  }
}

/** Throws `ForeignFiles` unless everything in the folder was published; nothing needs to be there. */
export async function refuseForeignFiles(folder: string): Promise<void> {
  const found = (await filesIn(folder)).filter((file) => !LITTER.has(path.basename(file)));
  const own = await ownFilesOf(folder);
  const foreign = new Set(found.filter((file) => file !== LIST && !own.has(file)).map(topOf));
  if (foreign.size > 0) throw new ForeignFiles(folder, [...foreign].sort());
}

/** To be called on a finished folder. */
export async function listOwnFiles(folder: string): Promise<void> {
  const files = (await filesIn(folder)).filter((file) => file !== LIST).sort();
  await writeFile(path.join(folder, LIST), `${JSON.stringify(files, null, 1)}\n`);
}

async function ownFilesOf(folder: string): Promise<ReadonlySet<string>> {
  try {
    return new Set(JSON.parse(await readFile(path.join(folder, LIST), "utf8")) as string[]);
  } catch {
    return new Set();
  }
}

async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true }).catch((error) => {
    if (error.code === "ENOENT") return [];
    throw error;
  });
  return entries
    .filter((entry) => !entry.isDirectory())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"));
}

/** A folder of version control holds thousands of files and is one thing to its owner. */
function topOf(file: string): string {
  return file.startsWith(".") ? (file.split("/")[0] ?? file) : file;
}
