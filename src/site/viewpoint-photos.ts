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
    const copies = (last && photos.get(last.path)?.files)?.filter(({ format }) => format === "jpeg") ?? [];
    const copy = copies.findLast(({ width }) => width <= ENOUGH) ?? copies[0];
    if (last === undefined || copy === undefined) continue;
    const target = path.join(siteDir, ...last.src.split("/").map(decodeURIComponent));
    await mkdir(path.dirname(target), { recursive: true });
    await link(copy.cachePath, target).catch(() => copyFile(copy.cachePath, target));
  }
}
