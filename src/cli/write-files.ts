/**
 * How commands write files: whole or not at all, and changes to a person's own file byte by byte, in its own encoding,
 * with its rights and links. What a killed run left beside is cleared by the next one that writes there.
 */
import { isUtf8 } from "node:buffer";
import { randomBytes } from "node:crypto";
import { constants } from "node:fs";
import {
  chmod,
  chown,
  copyFile,
  type FileHandle,
  link,
  mkdir,
  open,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  stat,
} from "node:fs/promises";
import path from "node:path";
import { isRunning } from "../site/index.ts";

/** Hidden, so that nobody takes half a file for a record; the number is that of the process. */
const PART = /^\.plotreel-(\d+)-[0-9a-f]{8}\.part$/;

/** Writes beside the target and renames, so that a file is old or new, never half. Makes its folder. */
export async function writeWhole(file: string, content: string | Uint8Array): Promise<void> {
  await aside(file, content, (beside) => rename(beside, file));
}

/** Like writeWhole, but gives false and changes nothing when something of that name is there, even in this very moment. */
export async function createText(file: string, text: string): Promise<boolean> {
  try {
    await aside(file, text, async (beside) => {
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

async function aside(
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

// ------------------------------------------------------------------------------------------------------------- changing

/** Gives the text as it becomes, or one sentence why it is left as it is. */
export type TextChange = (text: string) => { readonly text: string } | { readonly refused: string };

/** Changes a person's own file; gives one sentence when it was left as it is. */
export async function editText(file: string, change: TextChange): Promise<{ readonly refused?: string }> {
  // Of a link the file it leads to is changed, and the link stays one.
  const target = await realpath(file);
  const before = await readFile(target);
  const encoding = encodingOf(before);
  const old = decode(before, encoding);
  if (encode(old, encoding)?.equals(before) !== true)
    return { refused: "Its letters cannot be written back as they are. Save it as UTF-8 first." };
  const changed = change(old);
  if ("refused" in changed) return changed;
  if (changed.text === old) return {};
  const after = encode(changed.text, encoding);
  if (after === undefined)
    return {
      refused: "It is written in Windows-1252, which has not all letters that would be added. Save it as UTF-8 first.",
    };
  if (!(await editBytes(target, before, after)))
    return { refused: "Another program changed it in this moment. Try again." };
  return {};
}

/** Puts new bytes in the place of those that were read; false, and nothing changed, when they are not there any more. */
export async function editBytes(file: string, before: Uint8Array, after: Uint8Array): Promise<boolean> {
  const target = await realpath(file);
  const { mode, nlink, uid, gid } = await stat(target);
  if (!(await readFile(target)).equals(before)) return false;
  if (nlink > 1) await overwrite(target, before, after);
  else {
    await aside(target, after, async (beside) => {
      await chown(beside, uid, gid).catch(() => undefined);
      await chmod(beside, mode);
      await rename(beside, target);
    });
  }
  return true;
}

/** A file of two names stays one file only if it is written where it is: from the first byte that differs, in one stroke. */
async function overwrite(file: string, before: Uint8Array, after: Uint8Array): Promise<void> {
  let from = 0;
  while (from < Math.min(before.length, after.length) && before[from] === after[from]) from += 1;
  const handle = await open(file, "r+");
  try {
    await writeAll(handle, after, from);
    if (after.length < before.length) await handle.truncate(after.length);
    await handle.sync();
  } catch (error) {
    // A full disk took a part of it: what stood there has its room still.
    await writeAll(handle, before, from);
    await handle.truncate(before.length);
    throw error;
  } finally {
    await handle.close();
  }
}

/** A disk that is almost full takes what it can and says so only when asked again. */
async function writeAll(handle: FileHandle, bytes: Uint8Array, from: number): Promise<void> {
  for (let at = from; at < bytes.length; ) at += (await handle.write(bytes, at, bytes.length - at, at)).bytesWritten;
}

type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

/** As the records are read. */
function encodingOf(bytes: Buffer): Encoding {
  if (isUtf8(bytes)) return "utf-8";
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  return "windows-1252";
}

function decode(bytes: Buffer, encoding: Encoding): string {
  return new TextDecoder(encoding, { ignoreBOM: true }).decode(bytes);
}

/** Undefined when the encoding has no such letter. */
function encode(text: string, encoding: Encoding): Buffer | undefined {
  if (encoding === "utf-8") return Buffer.from(text, "utf8");
  if (encoding === "utf-16le") return Buffer.from(text, "utf16le");
  if (encoding === "utf-16be") return Buffer.from(text, "utf16le").swap16();
  const bytes = Array.from(text, (letter) => windowsLetters.get(letter));
  return bytes.includes(undefined) ? undefined : Buffer.from(bytes as number[]);
}

const windowsLetters: ReadonlyMap<string, number> = new Map(
  Array.from({ length: 256 }, (_, byte) => [new TextDecoder("windows-1252").decode(new Uint8Array([byte])), byte]),
);
