/** The field list of a brief with its small pictures, whose copies have a corner of the cache to themselves. */
import path from "node:path";
import { publishPhotos } from "../photos/index.ts";
import { type FieldList, makeFieldList, picturesWanted } from "../site/index.ts";
import type { CardSet } from "../tour/index.ts";
import type { Loaded } from "./load-garden.ts";

/** Pixels: as wide as a phone shows them, and small enough to carry. */
const WIDTH = 480;

export async function fieldListOf({ garden, recordsDir, cacheDir, report }: Loaded, cards: CardSet): Promise<FieldList> {
  const wanted = new Set(picturesWanted(cards.dossier));
  const photos = garden.photos.filter((photo) => wanted.has(photo.path));
  const { copies } = await publishPhotos(photos, {
    recordsDir,
    cacheDir: path.join(cacheDir, "field-list-photos"),
    widths: [WIDTH],
    onProgress: (done, total) => report.progress("Making small pictures", done, total),
  });
  report.end();
  return makeFieldList(cards, garden, copies);
}
