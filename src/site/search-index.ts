/**
 * Search over the finished public pages: an index that the reader's own browser looks into. Made after the privacy gate,
 * from the very bytes that passed it, so it can hold nothing the pages do not.
 */
import { readdir, rm } from "node:fs/promises";
import path from "node:path";
import { close, createIndex } from "pagefind";

/** Where it lies in the site. */
export const SEARCH_FOLDER = "pagefind";

/** What the indexer writes beside the index and our pages never ask for: its own boxes, buttons and styles. */
const NOT_OURS = /(?:^|-)(?:ui|modular-ui|component-ui|highlight)\b.*\.(?:js|css)$/u;

/** Pages say by `data-pagefind-body` which part of them is searched. */
export async function indexForSearch(siteDir: string): Promise<void> {
  try {
    const { index, errors } = await createIndex();
    if (index === undefined) throw new Error(errors.join(" "));
    const read = await index.addDirectory({ path: siteDir });
    const folder = path.join(siteDir, SEARCH_FOLDER);
    const written = await index.writeFiles({ outputPath: folder });
    const said = [...read.errors, ...written.errors];
    if (said.length > 0) throw new Error(said.join(" "));
    for (const file of await readdir(folder)) if (NOT_OURS.test(file)) await rm(path.join(folder, file));
  } finally {
    await close();
  }
}
