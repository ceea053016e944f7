/** The photo to match of each viewpoint, beside its camera page: whole, small enough for a phone to keep for the garden. */
import { copyFile, link, mkdir } from "node:fs/promises";
import path from "node:path";
import type { PublishedPhoto } from "../photos/index.ts";
import type { ViewpointPage } from "./page-data/shapes.ts";

/** Pixels across that a phone needs to lay one picture over another. */
const ENOUGH = 960;

export async function placeViewpointPhotos(
  siteDir: string,
  viewpoints: readonly ViewpointPage[],
  photos: ReadonlyMap<string, PublishedPhoto>,
): Promise<void> {
  for (const { last } of viewpoints) {
    const copy = last && copyToMatch(photos.get(last.path));
    if (last === undefined || copy === undefined) continue;
    const target = path.join(siteDir, ...last.src.split("/").map(decodeURIComponent));
    await mkdir(path.dirname(target), { recursive: true });
    await link(copy.cachePath, target).catch(() => copyFile(copy.cachePath, target));
  }
}

/** The largest copy that is not larger than a phone needs. */
export function copyToMatch(photo: PublishedPhoto | undefined): PublishedPhoto["files"][number] | undefined {
  const copies = photo?.files.filter(({ format }) => format === "webp") ?? [];
  return copies.findLast(({ width }) => width <= ENOUGH) ?? copies[0];
}
