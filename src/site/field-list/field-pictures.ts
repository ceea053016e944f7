/** Small pictures for the field list, carried as data so that no request leaves the page. */
import { readFile } from "node:fs/promises";
import type { PublishedPhoto } from "../../photos/index.ts";
import type { FieldPicture } from "./field-list-data.ts";

/** The smallest WebP copy of each photo, by photo path. */
export async function fieldPictures(
  copies: ReadonlyMap<string, PublishedPhoto>,
): Promise<ReadonlyMap<string, FieldPicture>> {
  const pictures = new Map<string, FieldPicture>();
  for (const [photo, { files, width, height }] of copies) {
    const [smallest] = files.filter(({ format }) => format === "webp").sort((a, b) => a.width - b.width);
    if (smallest === undefined) continue;
    const data = (await readFile(smallest.cachePath)).toString("base64");
    pictures.set(photo, {
      src: `data:image/webp;base64,${data}`,
      width: smallest.width,
      height: Math.round((smallest.width * height) / width),
    });
  }
  return pictures;
}
