/** The field list of a tour with its small pictures, and those of cards, whose copies have a corner of the cache to themselves. */
import path from "node:path";
import { publishPhotos } from "../photos/index.ts";
import type { RecapCards } from "../season/index.ts";
import { type CardPictures, type FieldList, fieldPictures, makeFieldList, picturesWanted } from "../site/index.ts";
import type { TourCards } from "../tour/index.ts";
import type { Loaded } from "./load-garden.ts";

/** Pixels: as wide as a phone shows them, and small enough to carry. */
const WIDTH = 480;

/** The views to match, small, by photo path: the phone and the paper carry the same. */
export async function cardPictures(loaded: Loaded, cards: TourCards): Promise<CardPictures> {
  return smallPictures(loaded, picturesWanted(cards.dossier));
}

/** The photos that the cards of a recap show. */
export async function recapPictures(loaded: Loaded, { cards }: RecapCards): Promise<CardPictures> {
  return smallPictures(
    loaded,
    cards.flatMap(({ photos }) => photos.map(({ path: file }) => file)),
  );
}

async function smallPictures(
  { garden, recordsDir, cacheDir, report }: Loaded,
  paths: readonly string[],
): Promise<CardPictures> {
  const wanted = new Set(paths);
  const photos = garden.photos.filter((photo) => wanted.has(photo.path));
  const { copies } = await publishPhotos(photos, {
    recordsDir,
    cacheDir: path.join(cacheDir, "field-list-photos"),
    widths: [WIDTH],
    onProgress: (done, total) => report.progress("Making small pictures", done, total),
  });
  report.end();
  return fieldPictures(copies);
}

export async function fieldListOf(loaded: Loaded, cards: TourCards): Promise<FieldList> {
  return makeFieldList(cards, loaded.garden, await cardPictures(loaded, cards));
}
