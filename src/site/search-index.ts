/**
 * Search over the finished public pages: an index that the reader's own browser looks into. The privacy gate reads what
 * it holds like every other file.
 */
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { close, createIndex } from "pagefind";

/** Where it lies in the site. */
const SEARCH_FOLDER = "pagefind";

/** What the indexer writes beside the index and our pages never ask for: its own boxes, buttons and styles. */
const NOT_OURS = /(?:^|-)(?:ui|modular-ui|component-ui|highlight)\b.*\.(?:js|css)$/u;

/** What is no sentence: an excerpt that ran through it would read as debris. */
const NO_SENTENCES =
  "table, nav, svg, figure, select, datalist, form, summary, h2, h3, time, dt, .new, .crop, .say, .at, .key, .on-film, .seen, .parts, .grow-this, .days";

/** Pages say by `data-pagefind-body` which part of them is searched. */
export async function indexForSearch(siteDir: string): Promise<void> {
  try {
    const { index, errors } = await createIndex({ excludeSelectors: NO_SENTENCES.split(", ") });
    if (index === undefined) throw new Error(errors.join(" "));
    const read = await index.addDirectory({ path: siteDir });
    const { files, errors: more } = await index.getFiles();
    const said = [...read.errors, ...more];
    if (said.length > 0) throw new Error(said.join(" "));
    // Written by us, not by the indexer: a full disk is then told like any other.
    for (const file of files) {
      if (NOT_OURS.test(file.path)) continue;
      const target = path.join(siteDir, SEARCH_FOLDER, file.path);
      await mkdir(path.dirname(target), { recursive: true });
      await writeFile(target, file.content);
    }
  } finally {
    await close();
  }
}
