/** Puts the field lists into the private site, and beside them the worker that keeps the site for a garden without signal. */
import { createHash } from "node:crypto";
import { mkdir, readdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { READER, readerScript } from "../phone-page.ts";
import type { FieldList } from "./field-list-data.ts";
import { fieldListPage } from "./field-list-page.ts";
import { offlineWorker } from "./phone-script.ts";

const FOLDER = "field-lists";
const WORKER = "service-worker.js";

/** Bytes a phone is asked to keep; beyond them only what filming needs is kept. */
const ROOM = 25_000_000;

/** The site must be whole but for these: the worker keeps what it finds in `siteDir`. */
export async function placeFieldLists(siteDir: string, lists: readonly FieldList[]): Promise<void> {
  const folder = path.join(siteDir, FOLDER);
  if (lists.length > 0) await mkdir(folder, { recursive: true });
  for (const list of lists) {
    const file = `${list.tour}-file.html`;
    await writeFile(path.join(folder, file), fieldListPage(list));
    const page = fieldListPage(list, {
      worker: `../${WORKER}`,
      reader: `../${READER}`,
      file: encodeURIComponent(file),
      outdoors: "../outdoors/write.html",
    });
    await writeFile(path.join(folder, `${list.tour}.html`), page);
  }
  await writeFile(path.join(siteDir, READER), readerScript());
  const pages = await pagesToKeep(siteDir);
  const version = createHash("sha256").update(JSON.stringify(pages)).digest("hex").slice(0, 16);
  await writeFile(path.join(siteDir, WORKER), offlineWorker(pages, version));
}

/** SHA-256 in base64 by path. Photos stay out: the lists carry their own, and the others would fill the phone. */
async function pagesToKeep(siteDir: string): Promise<Readonly<Record<string, string>>> {
  const files = (await readdir(siteDir, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(siteDir, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .filter((file) => !file.startsWith("photos/") && !file.endsWith("-file.html") && file !== WORKER)
    .sort((a, b) => Number(isForFilming(b)) - Number(isForFilming(a)) || (a < b ? -1 : 1));
  const pages: Record<string, string> = {};
  let bytes = 0;
  for (const file of files) {
    const content = await readFile(path.join(siteDir, ...file.split("/")));
    bytes += content.length;
    if (bytes > ROOM && !isForFilming(file)) break;
    pages[file] = createHash("sha256").update(content).digest("base64");
  }
  return pages;
}

function isForFilming(file: string): boolean {
  return [READER, `${FOLDER}/`, "outdoors/", "briefs/", "viewpoints/", "_astro/"].some((folder) =>
    file.startsWith(folder),
  );
}
