/** Where photo files are read from. A records folder is one; anything that can read a file is enough. */
import { closeSync, constants, fstatSync, openSync, readSync } from "node:fs";
import { lstat } from "node:fs/promises";
import path from "node:path";
import { readFileAt } from "../records/index.ts";

export interface PhotoFolder {
  /** A whole file. Paths are relative to the records folder, with forward slashes. */
  read(path: string): Promise<Uint8Array>;
  /** The first bytes of a file, fewer when it is shorter. Without it whole files are read. */
  readonly readHead?: ((path: string, length: number) => Promise<Uint8Array>) | undefined;
  /** Bytes from the middle of a file, fewer where it ends. Without it only the head of a film is looked at. */
  readonly readAt?: ((path: string, from: number, length: number) => Promise<Uint8Array>) | undefined;
  /** When the file was last changed, in milliseconds since 1970 UTC. Without it the file's own time is not used. */
  readonly modified?: ((path: string) => Promise<number | undefined>) | undefined;
}

/** The disk edge: reads below `dir`, never writes. */
export function openPhotoFolder(dir: string): PhotoFolder {
  const onDisk = (photo: string) => path.join(dir, ...photo.split("/"));
  return {
    read: async (photo) => readFileAt(onDisk(photo)),
    readHead: async (photo, length) => part(onDisk(photo), 0, length),
    readAt: async (photo, from, length) => part(onDisk(photo), from, length),
    modified: async (photo) => (await lstat(onDisk(photo))).mtimeMs,
  };
}

/** At once: asking the disk for each step of it in turn costs more than reading the dates. */
function part(file: string, from: number, length: number): Uint8Array {
  // A pipe put in its place is not waited for.
  const handle = openSync(file, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const { size } = fstatSync(handle);
    const bytes = Buffer.allocUnsafe(Math.max(0, Math.min(length, size - from)));
    return bytes.subarray(0, readSync(handle, bytes, 0, bytes.length, from));
  } finally {
    closeSync(handle);
  }
}
