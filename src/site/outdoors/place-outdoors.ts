/** Puts the page to write outdoors into the private site, and beside it the same as one file that asks for nothing. */
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { PublishedPhoto } from "../../photos/index.ts";
import { fieldPictures } from "../field-list/field-pictures.ts";
import type { OutdoorsPage, SpotOfPage } from "./outdoors-data.ts";
import { outdoorsHtml } from "./outdoors-page.ts";

export const OUTDOORS = "outdoors";
export const OUTDOORS_FILE = "write-outdoors-file.html";

export async function placeOutdoors(
  siteDir: string,
  page: OutdoorsPage,
  photos: ReadonlyMap<string, PublishedPhoto>,
): Promise<void> {
  const folder = path.join(siteDir, OUTDOORS);
  await mkdir(folder, { recursive: true });
  await writeFile(path.join(folder, OUTDOORS_FILE), await outdoorsAlone(page, photos));
  await writeFile(
    path.join(folder, "index.html"),
    outdoorsHtml(page, { worker: "../service-worker.js", file: OUTDOORS_FILE }),
  );
}

/** Everything inside it: small pictures as data. */
export async function outdoorsAlone(page: OutdoorsPage, photos: ReadonlyMap<string, PublishedPhoto>): Promise<string> {
  const wanted = page.spots.flatMap(({ last }) => last?.path ?? []);
  const copies = new Map(
    wanted.flatMap((photo) => (photos.has(photo) ? [[photo, photos.get(photo)]] : [])) as [string, PublishedPhoto][],
  );
  const pictures = await fieldPictures(copies);
  const spots = page.spots.map(({ last, ...spot }): SpotOfPage => {
    const picture = pictures.get(last?.path ?? "");
    return last === undefined || picture === undefined ? spot : { ...spot, last: { path: last.path, ...picture } };
  });
  return outdoorsHtml({ ...page, spots });
}
