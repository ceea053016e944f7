/** Copies of all photos for the pages, made once and then taken from the cache. */
import { availableParallelism } from "node:os";
import path from "node:path";
import pLimit from "p-limit";
import type { Photo, Problem, QuarterTurn } from "../model.ts";
import { readFileAt } from "../records/index.ts";
import { CopyCache, copyKey, type PublishedPhoto } from "./copy-cache.ts";
import { type CopyFormat, pageWidths, recipeKey, usualFormats } from "./copy-recipe.ts";
import { damageProblem } from "./damage.ts";
import { HeicPictures } from "./heic-pictures.ts";
import { imageKind } from "./image-kind.ts";
import { makeCopies, readySharp } from "./make-copies.ts";
import { noFilmProgram } from "./photo-problems.ts";
import { SourceHashes } from "./source-hashes.ts";
import { NoFilmProgram, stillFrame } from "./still-frame.ts";

export interface PublishOptions {
  /** Absolute. */
  readonly recordsDir: string;
  /** Absolute; made when it is not there. */
  readonly cacheDir: string;
  /** Pixels. */
  readonly widths?: readonly number[] | undefined;
  readonly formats?: readonly CopyFormat[] | undefined;
  /** Write the photo's credit into its copies: the only metadata they ever carry. */
  readonly creditInFiles?: boolean | undefined;
  /** These are all the photos there are: copies in the cache that none of them asks for may go. */
  readonly all?: boolean | undefined;
  /** Takes a picture out of a clip; the machine's own program unless given. */
  readonly still?: ((file: string) => Promise<Uint8Array>) | undefined;
  /** Photos worked on side by side. */
  readonly concurrency?: number | undefined;
  readonly onProgress?: ((done: number, total: number) => void) | undefined;
}

export interface PublishedPhotos {
  /** By photo path; a photo that cannot be opened is missing. */
  readonly copies: ReadonlyMap<string, PublishedPhoto>;
  readonly problems: readonly Problem[];
}

export async function publishPhotos(photos: readonly Photo[], options: PublishOptions): Promise<PublishedPhotos> {
  readySharp();
  const recipe = { widths: options.widths ?? pageWidths, formats: options.formats ?? usualFormats };
  const cache = new CopyCache(options.cacheDir);
  await cache.open();
  const hashes = await SourceHashes.open(options.cacheDir);
  const heic = new HeicPictures();
  const madeOf = async (bytes: Uint8Array, credit: string | undefined, turn: QuarterTurn | undefined) =>
    makeCopies(imageKind(bytes) === "heic" ? await heic.decode(bytes, Math.max(...recipe.widths)) : bytes, recipe, {
      credit,
      turn,
    });
  const found = new Map<string, PublishedPhoto>();
  const problems: Problem[] = [];
  const asked = new Set<string>();
  const refused: Photo[] = [];
  const unshown: string[] = [];
  const still = options.still ?? stillFrame;
  let done = 0;
  const copy = async ({ path: photo, credit: maker, turn, isClip }: Photo) => {
    const onDisk = path.join(options.recordsDir, ...photo.split("/"));
    const { hash, bytes } = await hashes.of(photo, onDisk, { inPieces: isClip });
    const credit = options.creditInFiles === true ? maker : undefined;
    const key = copyKey(hash, recipeKey(recipe, credit, turn));
    asked.add(key);
    const copies =
      (await cache.find(key)) ??
      (await cache.keep(key, await madeOf(isClip ? await still(onDisk) : (bytes ?? readFileAt(onDisk)), credit, turn)));
    found.set(photo, copies);
  };
  // One more than cores: while a photo is read, hashed or written, another keeps the core busy.
  const limit = pLimit(options.concurrency ?? availableParallelism() + 1);
  try {
    await limit.map(photos, async (photo) => {
      await copy(photo).catch(() => refused.push(photo));
      done += 1;
      options.onProgress?.(done, photos.length);
    });
    // The decoder keeps its words in one place for all pictures that are open, so that one may be refused in another's words.
    for (const photo of refused)
      await copy(photo).catch((error) => {
        if (error instanceof NoFilmProgram) unshown.push(photo.path);
        else problems.push(damageProblem(photo.path, error));
      });
    problems.push(...noFilmProgram(unshown));
  } finally {
    await heic.close();
    await hashes.save();
  }
  if (options.all === true) await cache.sweep(asked);
  const inOrder = photos.flatMap(({ path: photo }) => {
    const copies = found.get(photo);
    return copies ? [[photo, copies] as const] : [];
  });
  return { copies: new Map(inOrder), problems };
}
