/** What the page tests share: gardens read from disk and built once, their pages parsed, a browser to open them in. */
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import { parseHTML } from "linkedom";
import { readCaptionFiles } from "../../src/cli/film-captions.ts";
import type { Garden } from "../../src/model.ts";
import { openPhotoFolder, type PublishedPhoto, publishPhotos, readPhotos } from "../../src/photos/index.ts";
import { openRecordsFolder, readRecords } from "../../src/records/index.ts";
import type { FilmTexts } from "../../src/site/index.ts";
import { growGarden } from "../../src/timeline/index.ts";

export const today = "2026-07-18";

export async function readGarden(recordsDir: string): Promise<Garden> {
  const records = await readRecords(await openRecordsFolder(recordsDir), { today });
  const { photos } = await readPhotos(records, openPhotoFolder(recordsDir));
  return growGarden(records, photos);
}

export async function photoCopies(
  garden: Garden,
  recordsDir: string,
  cacheDir: string,
): Promise<ReadonlyMap<string, PublishedPhoto>> {
  const { copies } = await publishPhotos(garden.photos, { recordsDir, cacheDir: path.join(cacheDir, "photos") });
  return copies;
}

export async function filmTexts(garden: Garden, recordsDir: string): Promise<FilmTexts> {
  return { captions: await readCaptionFiles(await openRecordsFolder(recordsDir), garden.episodes.values()) };
}

export async function filesOf(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .sort();
}

export async function pagesOf(folder: string): Promise<ReadonlyMap<string, Document>> {
  const pages = new Map<string, Document>();
  for (const file of await filesOf(folder)) {
    if (file.endsWith(".html")) pages.set(file, parseHTML(await readFile(path.join(folder, file), "utf8")).document);
  }
  return pages;
}

/** Links, pictures and anchors that lead to nothing inside the folder; addresses of other places must be of the web or mail. */
export async function brokenLinks(folder: string, base: string): Promise<readonly string[]> {
  const files = new Set(await filesOf(folder));
  const pages = await pagesOf(folder);
  const broken: string[] = [];
  for (const [file, page] of pages) {
    const here = new URL(file.replace(/index\.html$/u, ""), `http://site.test${base}`);
    for (const address of addressesIn(page)) {
      // What a phone takes along, or is printed, carries its pictures in itself.
      if (/^(?:briefs|field-lists|outdoors)\//u.test(file) && address.startsWith("data:image/")) continue;
      if (!URL.canParse(address, here.href)) {
        broken.push(`${file}: ${address}`);
        continue;
      }
      const target = new URL(address, here);
      if (target.host !== "site.test") {
        if (!/^(?:https?|mailto):$/u.test(target.protocol)) broken.push(`${file}: ${address}`);
        continue;
      }
      const below = target.pathname.startsWith(base)
        ? decodeURIComponent(target.pathname.slice(base.length))
        : undefined;
      const wanted =
        below === undefined ? undefined : below === "" || below.endsWith("/") ? `${below}index.html` : below;
      if (wanted === undefined || !files.has(wanted)) broken.push(`${file}: ${address}`);
      else if (
        target.hash !== "" &&
        pages.get(wanted)?.getElementById(decodeURIComponent(target.hash.slice(1))) == null
      )
        broken.push(`${file}: ${address}`);
    }
  }
  return broken;
}

function addressesIn(page: Document): readonly string[] {
  const found: string[] = [];
  for (const element of page.querySelectorAll("[href], [src], [srcset]")) {
    for (const name of ["href", "src"]) {
      const value = element.getAttribute(name);
      if (value !== null) found.push(value);
    }
    for (const part of element.getAttribute("srcset")?.split(", ") ?? []) found.push(part.split(" ")[0] ?? "");
  }
  return found;
}
