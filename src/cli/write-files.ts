/** Changes to a person's own file, byte by byte, in its own encoding, with its rights and links. */
import { isUtf8 } from "node:buffer";
import { chmod, chown, type FileHandle, open, readFile, realpath, rename, rm, stat } from "node:fs/promises";
import { throughPartFile } from "../store/index.ts";

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
    await throughPartFile(target, after, async (beside) => {
      await chown(beside, uid, gid).catch(() => undefined);
      await chmod(beside, mode);
      await rename(beside, target);
    });
  }
  return true;
}

/** Takes a file away that holds these bytes; false, and nothing changed, when others stand there by now. */
export async function removeBytes(file: string, bytes: Uint8Array): Promise<boolean> {
  if (!(await readFile(file)).equals(bytes)) return false;
  await rm(file);
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
