/** Puts the pictures into the public site that programs show where a page's address is passed on. */
import { copyFile, link, mkdir } from "node:fs/promises";
import path from "node:path";
import { cutCards, type PublishedPhoto } from "../photos/index.ts";
import { shareOf } from "./components/share-picture.ts";
import type { Picture, PublicSite } from "./page-data/shapes.ts";

/** Only pages that have a whole address can be passed on, so a site without one needs none of this. */
export async function placeSharedPictures(
  siteDir: string,
  { home, varietyPages, bedPages, episodePages }: PublicSite,
  photos: ReadonlyMap<string, PublishedPhoto>,
  cacheDir: string,
): Promise<void> {
  // A page names the small fallback; its card is cut from the largest copy.
  const largest = new Map(
    [...photos.values()].flatMap(({ files }) => {
      const from = files.at(-1)?.cachePath;
      return from === undefined ? [] : files.map(({ name }) => [name, from] as const);
    }),
  );
  const lead = [home, ...varietyPages, ...bedPages, ...episodePages].map(({ picture }) => picture);
  const cards = new Map(
    lead.flatMap((picture) => {
      const card = picture && cardOf(picture, largest);
      return card === undefined ? [] : [[card.name, card] as const];
    }),
  );
  const folder = path.join(siteDir, "photos");
  if (cards.size > 0) await mkdir(folder, { recursive: true });
  for (const [name, file] of await cutCards([...cards.values()], cacheDir)) {
    const target = path.join(folder, name);
    await link(file, target).catch(() => copyFile(file, target));
  }
}

function cardOf(picture: Picture, largest: ReadonlyMap<string, string>) {
  const share = shareOf(picture);
  const from = largest.get(path.posix.basename(picture.src));
  if (share === undefined || from === undefined) return undefined;
  return { name: path.posix.basename(share.src), from, width: share.width, height: share.height };
}
