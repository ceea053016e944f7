/** Where photo files are read from. A records folder is one; anything that can read a file is enough. */
import { constants } from "node:fs";
import { lstat, open } from "node:fs/promises";
import path from "node:path";
import { readFileAt } from "../records/index.ts";

export interface PhotoFolder {
  /** A whole file. Paths are relative to the records folder, with forward slashes. */
  read(path: string): Promise<Uint8Array>;
  /** The first bytes of a file, fewer when it is shorter. Without it whole files are read. */
  readonly readHead?: ((path: string, length: number) => Promise<Uint8Array>) | undefined;
  /** When the file was last changed, in milliseconds since 1970 UTC. Without it the file's own time is not used. */
  readonly modified?: ((path: string) => Promise<number | undefined>) | undefined;
}

/** The disk edge: reads below `dir`, never writes. */
export function openPhotoFolder(dir: string): PhotoFolder {
  const onDisk = (photo: string) => path.join(dir, ...photo.split("/"));
  return {
    read: async (photo) => readFileAt(onDisk(photo)),
    readHead: async (photo, length) => {
      // A pipe put in its place is not waited for.
      const file = await open(onDisk(photo), constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
      try {
        const head = Buffer.allocUnsafe(length);
        const { bytesRead } = await file.read(head, 0, length, 0);
        return head.subarray(0, bytesRead);
      } finally {
        await file.close();
      }
    },
    modified: async (photo) => (await lstat(onDisk(photo))).mtimeMs,
  };
}
