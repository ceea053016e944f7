/** Puts the page to write outdoors into the private site, and beside it the same as one file that asks for nothing. */
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import type { PublishedPhoto } from "../../photos/index.ts";
import { fieldPictures } from "../field-list/field-pictures.ts";
import { READER } from "../phone-page.ts";
import type { OutdoorsPage, SpotOfPage } from "./outdoors-data.ts";
import { outdoorsHtml } from "./outdoors-page.ts";

const FOLDER = "outdoors";
const FILE = "write-file.html";

/** Paths in the private site: the page, and the same as a file of its own. */
export const OUTDOORS = `${FOLDER}/write.html`;
export const OUTDOORS_ALONE = `${FOLDER}/${FILE}`;
/** What the page says of its place. */
export const outdoorsPlace = { file: FILE, reader: `../${READER}` } as const;

export async function placeOutdoors(
  siteDir: string,
  page: OutdoorsPage,
  photos: ReadonlyMap<string, PublishedPhoto>,
): Promise<void> {
  await mkdir(path.join(siteDir, FOLDER), { recursive: true });
  await writeFile(path.join(siteDir, OUTDOORS_ALONE), await outdoorsAlone(page, photos));
  await writeFile(
    path.join(siteDir, OUTDOORS),
    outdoorsHtml(page, { worker: "../service-worker.js", ...outdoorsPlace }),
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
