/** Files that are whole or as they were: written under another name beside, then renamed. */
import { randomBytes } from "node:crypto";
import { constants } from "node:fs";
import { copyFile, link, mkdir, open, readdir, rename, rm } from "node:fs/promises";
import path from "node:path";
import { isRunning } from "./running.ts";

/** Hidden, so that nobody takes half a file for a record; the number is that of the process. */
const PART = /^\.plotreel-(\d+)-[0-9a-f]{8}\.part$/;

/** Writes beside the target and renames, so that a file is old or new, never half. Makes its folder. */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  await throughPartFile(file, content, (beside) => rename(beside, file));
}

/** Like writeWhole, but gives false and changes nothing when something of that name is there, even in this very moment. */
export async function createText(file: string, text: string): Promise<boolean> {
  try {
    await throughPartFile(file, text, async (beside) => {
      await link(beside, file).catch(async (error: NodeJS.ErrnoException) => {
        if (error.code === "EEXIST") throw error;
        // A disk without links, such as a memory card.
        await copyFile(beside, file, constants.COPYFILE_EXCL);
      });
      await rm(beside);
    });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}

/** What a killed run left beside is cleared by the next one that writes there. */
export async function throughPartFile(
  file: string,
  content: string | Uint8Array,
  put: (beside: string) => Promise<unknown>,
): Promise<void> {
  const folder = path.dirname(file);
  await mkdir(folder, { recursive: true });
  await clearLitter(folder);
  const beside = path.join(folder, `.plotreel-${process.pid}-${randomBytes(4).toString("hex")}.part`);
  try {
    await writeFlushed(beside, content);
    await put(beside);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}

async function writeFlushed(file: string, content: string | Uint8Array): Promise<void> {
  const handle = await open(file, "wx");
  try {
    await handle.writeFile(content);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

async function clearLitter(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    const pid = PART.exec(name)?.[1];
    if (pid !== undefined && !isRunning(Number(pid))) await rm(path.join(folder, name), { force: true });
  }
}

/** For a maker that writes its file itself, in a folder that is there: `make` gets the name to write to. */
export async function makeWhole(file: string, make: (part: string) => Promise<unknown>): Promise<void> {
  const part = `${file}.${randomBytes(4).toString("hex")}.part`;
  try {
    await make(part);
    await rename(part, file);
  } catch (error) {
    await rm(part, { force: true });
    throw error;
  }
}
