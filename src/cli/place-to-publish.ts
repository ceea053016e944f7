/** Where sites may be written: anywhere but among the records, which would read them as photos and notes. */
import { realpath } from "node:fs/promises";
import path from "node:path";
import { recordFolders } from "../records/index.ts";
import { CommandError } from "./command-error.ts";

/** `outDir` when it may be used; both paths are absolute. */
export async function placeToPublish(outDir: string, recordsDir: string): Promise<string> {
  const [folder = ""] = path.relative(await really(recordsDir), await really(outDir)).split(path.sep);
  if (recordFolders.some((name) => name === folder)) {
    throw new CommandError(
      `${outDir} lies among your records, where the pages would be read as ${folder}. Give a folder outside ${path.join(recordsDir, folder)} with --out.`,
    );
  }
  return outDir;
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
