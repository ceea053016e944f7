/** The disk on both sides of ingest: the folder that photos come from, which is only read, and the records' photos. */

import { createHash, randomBytes } from "node:crypto";
import { constants, type Dirent } from "node:fs";
import {
  appendFile,
  link,
  lstat,
  mkdir,
  open,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  rmdir,
  stat,
  utimes,
} from "node:fs/promises";
import { hostname } from "node:os";
import path from "node:path";
import { compare } from "../order.ts";
import { readFileAt } from "../records/index.ts";
import { listFile } from "./brought-in-list.ts";
import { openPhotoFolder } from "./photo-folder.ts";

export interface SourceFile {
  /** Relative, with forward slashes. */
  readonly path: string;
  readonly size: number;
  /** Milliseconds since 1970 UTC. */
  readonly modified: number;
  /** Links are not followed: they may lead anywhere. Of a folder that cannot be read only its name is known. */
  readonly kind: "file" | "link" | "unreadable" | "hidden";
}

export interface PhotoSource {
  /** Every file below the folder in order of path; of hidden folders only the name. */
  list(): Promise<readonly SourceFile[]>;
  read(path: string): Promise<Uint8Array>;
  /** The same in pieces, for what may be larger than memory. */
  chunks(path: string): AsyncIterable<Uint8Array>;
  /** Bytes from the middle of a file, fewer where it ends. */
  readonly readAt?: ((path: string, from: number, length: number) => Promise<Uint8Array>) | undefined;
  /** Whether the folder can still be read, or its card was pulled. */
  isThere(): Promise<boolean>;
}

export interface PhotoStore {
  /** Every file below photos/, paths relative to the records folder. */
  list(): Promise<readonly { readonly path: string; readonly size: number }[]>;
  /** SHA-256 of a file, hexadecimal. */
  hash(path: string): Promise<string>;
  /** Puts a whole new file under a name, or gives false when the name is taken. Never leaves half a file under it. */
  put(path: string, data: Uint8Array | AsyncIterable<Uint8Array>, modified: number): Promise<boolean>;
  /** The list of what was brought in, as it stands; empty when there is none. */
  listed(): Promise<string>;
  addToList(text: string): Promise<void>;
  /** Ends the run: takes away what broken-off runs left. */
  close(): Promise<void>;
}

export async function openPhotoSource(from: string, recordsDir: string): Promise<PhotoSource> {
  // Photos already in the records are not brought in again when the folder holds the records too.
  const ownPhotos = await realpath(path.join(recordsDir, "photos")).catch(() => undefined);
  const root = await realpath(from);
  return {
    list: async () => {
      const files: SourceFile[] = [];
      for await (const { file, kind } of filesBelow(root, "", ownPhotos)) {
        const state = await lstat(path.join(root, file)).catch(() => undefined);
        // What went away since its name was read was there all the same.
        files.push({
          path: file,
          size: state?.size ?? 0,
          modified: state?.mtimeMs ?? 0,
          kind: state ? kind : "unreadable",
        });
      }
      return files;
    },
    read: async (file) => readFileAt(path.join(root, ...file.split("/"))),
    chunks: (file) => piecesOf(path.join(root, ...file.split("/"))),
    readAt: openPhotoFolder(root).readAt,
    isThere: () =>
      readdir(root).then(
        (names) => names.length > 0,
        () => false,
      ),
  };
}

/** Pieces in which films are read. */
const pieceBytes = 1_048_576;

/** Hidden, so that the records do not see it; on the same disk as its photos, so that a finished file only changes its name. */
const incoming = ".incoming";
/** Whose it is: the machine, shortened, and the process. */
const PART = /^([0-9a-f]{8})-(\d+)-[0-9a-f]{8}\.part$/;
const thisMachine = createHash("sha256").update(hostname()).digest("hex").slice(0, 8);
const hourMs = 3_600_000;

export function openPhotoStore(recordsDir: string): PhotoStore {
  const photosDir = path.join(recordsDir, "photos");
  const aside = path.join(photosDir, incoming);
  const onDisk = (photo: string) => path.join(recordsDir, ...photo.split("/"));
  return {
    list: async () => {
      const files: { path: string; size: number }[] = [];
      for await (const { file, kind } of filesBelow(photosDir, "", undefined)) {
        const state = await stat(path.join(photosDir, file)).catch(() => undefined);
        if (kind !== "hidden" && state?.isFile() && `photos/${file}` !== listFile)
          files.push({ path: `photos/${file}`, size: state.size });
      }
      return files;
    },
    hash: async (photo) => {
      const digest = createHash("sha256");
      for await (const piece of piecesOf(onDisk(photo))) digest.update(piece);
      return digest.digest("hex");
    },
    listed: () =>
      readFile(onDisk(listFile), "utf8").catch((error: NodeJS.ErrnoException) => {
        if (error.code === "ENOENT" || error.code === "ENOTDIR") return "";
        throw error;
      }),
    addToList: (text) => appendFile(onDisk(listFile), text),
    put: async (photo, data, modified) => {
      await mkdir(aside, { recursive: true });
      await mkdir(path.dirname(onDisk(photo)), { recursive: true });
      const part = path.join(aside, `${thisMachine}-${process.pid}-${randomBytes(4).toString("hex")}.part`);
      try {
        await writeFlushed(part, data, modified);
        return await giveName(part, onDisk(photo));
      } finally {
        await rm(part, { force: true });
      }
    },
    close: async () => {
      for (const name of await readdir(aside).catch(() => [])) {
        const part = path.join(aside, name);
        const [, machine, pid] = PART.exec(name) ?? [];
        const left = await stat(part).catch(() => undefined);
        // A younger one may belong to another run: of this machine one can be asked, of others only the clock.
        const isLeft = machine === thisMachine ? !isAtWork(Number(pid)) : left && Date.now() - left.ctimeMs > hourMs;
        if (isLeft) await rm(part, { force: true });
      }
      await rmdir(aside).catch(() => undefined);
    },
  };
}

async function* piecesOf(file: string): AsyncGenerator<Uint8Array> {
  // A pipe put in its place is not waited for.
  const handle = await open(file, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    if (!(await handle.stat()).isFile()) throw new Error(`${file} is no file any more.`);
    const piece = Buffer.allocUnsafe(pieceBytes);
    for (;;) {
      const { bytesRead } = await handle.read(piece, 0, pieceBytes, null);
      if (bytesRead === 0) return;
      // A copy: whoever takes it may keep it.
      yield Uint8Array.from(piece.subarray(0, bytesRead));
    }
  } finally {
    await handle.close();
  }
}

/** Whether another process of this machine has this number. */
function isAtWork(pid: number): boolean {
  if (pid === process.pid) return false;
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

async function writeFlushed(
  file: string,
  data: Uint8Array | AsyncIterable<Uint8Array>,
  modified: number,
): Promise<void> {
  const handle = await open(file, "wx");
  try {
    await handle.writeFile(data);
    await handle.sync();
  } finally {
    await handle.close();
  }
  // The photo keeps the time of its source: it may be the only thing that tells its day.
  await utimes(file, new Date(modified), new Date(modified));
}

/** A link fails when the name is taken, where a rename would write over it. Disks without links (exFAT) get the rename. */
async function giveName(part: string, file: string): Promise<boolean> {
  try {
    await link(part, file);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EEXIST") return false;
    if (code !== "EPERM" && code !== "ENOTSUP" && code !== "EOPNOTSUPP" && code !== "ENOSYS" && code !== "EMLINK")
      throw error;
    if (
      await lstat(file).then(
        () => true,
        () => false,
      )
    )
      return false;
    await rename(part, file);
  }
  await flushFolder(path.dirname(file));
  return true;
}

/** Makes the new name itself last through a power cut, where the system lets folders be flushed. */
async function flushFolder(folder: string): Promise<void> {
  const handle = await open(folder).catch(() => undefined);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

async function* filesBelow(
  root: string,
  folder: string,
  except: string | undefined,
): AsyncGenerator<{ readonly file: string; readonly kind: SourceFile["kind"] }> {
  const here = path.join(root, folder);
  if (here === except) return;
  let entries: Dirent[];
  try {
    entries = await readdir(here, { withFileTypes: true });
  } catch {
    if (folder !== "") yield { file: folder, kind: "unreadable" };
    return;
  }
  entries.sort((a, b) => compare(a.name, b.name));
  for (const entry of entries) {
    const file = folder === "" ? entry.name : `${folder}/${entry.name}`;
    if (entry.name.startsWith(".")) {
      yield { file, kind: "hidden" };
      continue;
    }
    if (entry.isSymbolicLink()) yield { file, kind: "link" };
    else if (entry.isDirectory()) yield* filesBelow(root, file, except);
    else if (entry.isFile()) yield { file, kind: "file" };
  }
}
