/**
 * The cache of published copies: files named by what is in them, so that it is never wrong, only too large, and may be
 * deleted at any time. A manifest beside the copies is written last; copies without one do not count.
 */
import { createHash, randomBytes } from "node:crypto";
import { mkdir, readdir, readFile, rename, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import type { CopyFormat } from "./copy-recipe.ts";
import type { Copies } from "./make-copies.ts";

export interface PublishedFile {
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  readonly format: CopyFormat;
  /** File name for the site; tells nothing of the photo's own name. */
  readonly name: string;
  /** Absolute. */
  readonly cachePath: string;
}

export interface PublishedPhoto {
  /** Pixels of the largest copy. */
  readonly width: number;
  readonly height: number;
  /** CSS colour shown until the picture is there. */
  readonly placeholder: string;
  /** Narrowest first; of one width WebP before JPEG. */
  readonly files: readonly PublishedFile[];
}

/** What stands on disk beside the copies. */
interface Manifest {
  readonly width: number;
  readonly height: number;
  readonly placeholder: string;
  readonly files: readonly {
    readonly width: number;
    readonly height: number;
    readonly format: CopyFormat;
    readonly bytes: number;
  }[];
}

/** Unfinished files lie here, so that one look finds what a broken-off run left. */
const unfinished = "unfinished";
const dayMs = 86_400_000;
const keptUnasked = 30 * dayMs;

/** Enough of a SHA-256 that two photos never meet. */
export function copyKey(sourceHash: string, recipe: string): string {
  return createHash("sha256").update(`${sourceHash} ${recipe}`).digest("hex").slice(0, 32);
}

export class CopyCache {
  readonly #dir: string;

  constructor(dir: string) {
    this.#dir = dir;
  }

  async open(): Promise<void> {
    const folder = path.join(this.#dir, unfinished);
    await mkdir(folder, { recursive: true });
    for (const name of await readdir(folder)) {
      const file = path.join(folder, name);
      const left = await stat(file).catch(() => undefined);
      // Younger ones may belong to a run that is still at work.
      if (left && Date.now() - left.mtimeMs > dayMs) await rm(file, { force: true });
    }
  }

  /** The copies under a key, or undefined unless every one of them is there in full. */
  async find(key: string): Promise<PublishedPhoto | undefined> {
    try {
      const manifest = JSON.parse(await readFile(this.#manifest(key), "utf8")) as Manifest;
      const sizes = await Promise.all(manifest.files.map(async (file) => (await stat(this.#file(key, file))).size));
      if (manifest.files.some(({ bytes }, index) => bytes !== sizes[index])) return undefined;
      return this.#published(key, manifest);
    } catch {
      return undefined;
    }
  }

  async keep(key: string, { width, height, placeholder, copies }: Copies): Promise<PublishedPhoto> {
    await mkdir(this.#shard(key), { recursive: true });
    for (const copy of copies) await this.#write(this.#file(key, copy), copy.bytes);
    const files = copies.map((copy) => ({
      width: copy.width,
      height: copy.height,
      format: copy.format,
      bytes: copy.bytes.length,
    }));
    const manifest: Manifest = { width, height, placeholder, files };
    await this.#write(this.#manifest(key), JSON.stringify(manifest));
    return this.#published(key, manifest);
  }

  /**
   * Takes away what no photo asked for in a run over all of them and what has lain here for a month: copies of photos that
   * are gone, and ones made in an older way. What is younger may belong to another run, or to a photo that comes back.
   */
  async sweep(asked: ReadonlySet<string>): Promise<void> {
    for (const shard of await readdir(this.#dir)) {
      if (!/^[0-9a-f]{2}$/.test(shard)) continue;
      const folder = path.join(this.#dir, shard);
      for (const name of await readdir(folder)) {
        const key = /^[0-9a-f]{32}(?=[-.])/.exec(name)?.[0];
        if (key === undefined || asked.has(key)) continue;
        const left = await stat(path.join(folder, name)).catch(() => undefined);
        if (left && Date.now() - left.mtimeMs > keptUnasked) await rm(path.join(folder, name), { force: true });
      }
    }
  }

  #published(key: string, { width, height, placeholder, files }: Manifest): PublishedPhoto {
    return {
      width,
      height,
      placeholder,
      files: files.map((file) => ({
        width: file.width,
        height: file.height,
        format: file.format,
        name: nameOf(key, file),
        cachePath: this.#file(key, file),
      })),
    };
  }

  #shard(key: string): string {
    return path.join(this.#dir, key.slice(0, 2));
  }

  #manifest(key: string): string {
    return path.join(this.#shard(key), `${key}.json`);
  }

  #file(key: string, file: { readonly width: number; readonly format: CopyFormat }): string {
    return path.join(this.#shard(key), nameOf(key, file));
  }

  /** Writes aside and renames. Not flushed to the platter: after a power cut a short copy is seen by its size and made again. */
  async #write(file: string, content: Uint8Array | string): Promise<void> {
    const aside = path.join(this.#dir, unfinished, `${randomBytes(8).toString("hex")}.part`);
    try {
      await writeFile(aside, content);
      await rename(aside, file);
    } catch (error) {
      await rm(aside, { force: true });
      throw error;
    }
  }
}

function nameOf(key: string, { width, format }: { readonly width: number; readonly format: CopyFormat }): string {
  return `${key}-${width}.${format === "jpeg" ? "jpg" : format}`;
}
