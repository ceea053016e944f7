/**
 * The content hash of each photo file. Hashing three megabytes takes as long as reading the dates of ten photos, so a
 * hash is remembered for as long as size, inode and both times of the file stay as they were. A file changed less than
 * two seconds before it was looked at is not remembered: its times could not show a second change.
 */
import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { readFile, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { readFileAt } from "../records/index.ts";
import { makeWhole } from "../store/index.ts";

interface Seen {
  /** Size, inode, time of change and time of content, as one text. */
  readonly state: string;
  /** SHA-256, hexadecimal. */
  readonly hash: string;
}

const settleMs = 2000;

export class SourceHashes {
  readonly #file: string;
  readonly #known: Map<string, Seen>;
  readonly #now: Map<string, Seen> = new Map();

  private constructor(file: string, known: Map<string, Seen>) {
    this.#file = file;
    this.#known = known;
  }

  static async open(cacheDir: string): Promise<SourceHashes> {
    const file = path.join(cacheDir, "sources.json");
    try {
      return new SourceHashes(
        file,
        new Map(Object.entries(JSON.parse(await readFile(file, "utf8")) as Record<string, Seen>)),
      );
    } catch {
      return new SourceHashes(file, new Map());
    }
  }

  /** The hash of a file, and its bytes when they had to be read for it; a film is read in pieces, and its bytes are not given. */
  async of(
    photo: string,
    onDisk: string,
    { inPieces = false }: { readonly inPieces?: boolean | undefined } = {},
  ): Promise<{ readonly hash: string; readonly bytes?: Buffer | undefined }> {
    const { size, ino, mtimeMs, ctimeMs } = await stat(onDisk);
    const state = `${size} ${ino} ${mtimeMs} ${ctimeMs}`;
    const known = this.#known.get(photo);
    if (known?.state === state) {
      this.#now.set(photo, known);
      return { hash: known.hash };
    }
    const bytes = inPieces ? undefined : readFileAt(onDisk);
    // Off the main thread, unlike createHash.
    const digest = bytes && (await crypto.subtle.digest("SHA-256", bytes));
    const seen = { state, hash: digest ? Buffer.from(digest).toString("hex") : await hashInPieces(onDisk) };
    if (Date.now() - Math.max(mtimeMs, ctimeMs) > settleMs) this.#now.set(photo, seen);
    return { hash: seen.hash, ...(bytes && { bytes }) };
  }

  async save(): Promise<void> {
    await makeWhole(this.#file, (part) => writeFile(part, JSON.stringify(Object.fromEntries(this.#now))));
  }
}

async function hashInPieces(file: string): Promise<string> {
  const digest = createHash("sha256");
  for await (const piece of createReadStream(file, { highWaterMark: 1_048_576 })) digest.update(piece as Buffer);
  return digest.digest("hex");
}
