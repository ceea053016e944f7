/** Cuts of published copies for cards: what other programs show where a page's address is passed on. */
import { mkdir, stat } from "node:fs/promises";
import { availableParallelism } from "node:os";
import path from "node:path";
import pLimit from "p-limit";
import sharp from "sharp";
import { makeWhole } from "../store/index.ts";
import { jpegSettings } from "./copy-recipe.ts";
import { readySharp } from "./make-copies.ts";

export interface Card {
  /** File name for the site; stands for the photo and for how it is cut. */
  readonly name: string;
  /** The published copy it is cut from, absolute. */
  readonly from: string;
  /** Pixels, none larger than the copy's. */
  readonly width: number;
  readonly height: number;
}

/** Files of the cards by name; those of an earlier run are taken as they are. The cut keeps what draws the eye. */
export async function cutCards(cards: readonly Card[], cacheDir: string): Promise<ReadonlyMap<string, string>> {
  readySharp();
  const folder = path.join(cacheDir, "cards");
  await mkdir(folder, { recursive: true });
  const limit = pLimit(availableParallelism());
  const cut = await limit.map([...cards], async ({ name, from, width, height }) => {
    const file = path.join(folder, name);
    if (await isThere(file)) return [name, file] as const;
    const card = sharp(from).resize({ width, height, fit: "cover", position: "attention" }).jpeg(jpegSettings);
    await makeWhole(file, (part) => card.toFile(part));
    return [name, file] as const;
  });
  return new Map(cut);
}

async function isThere(file: string): Promise<boolean> {
  return stat(file).then(
    ({ size }) => size > 0,
    () => false,
  );
}
