/** The clone's folders and files, for what is made from them. */
import { createHash } from "node:crypto";
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";

/** The project's own folder. */
export const CLONE = path.join(import.meta.dirname, "../..");

/** Every file below a folder, relative, with forward slashes, in order; folders that work leaves behind are passed over. */
export async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .filter((file) => !/(?:^|\/)\.(?:astro|cache|vite)\//u.test(file))
    .sort();
}

/** Stands for the bytes of all files below these folders, and for what else is named. */
export async function digestOf(folders: readonly string[], ...texts: readonly string[]): Promise<string> {
  const hash = createHash("sha256").update(JSON.stringify(texts));
  for (const folder of folders)
    for (const file of await filesIn(folder)) {
      const bytes = await readFile(path.join(folder, file));
      hash.update(`\0${file}\0${bytes.length}\0`).update(bytes);
    }
  return hash.digest("hex");
}
