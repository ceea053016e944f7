/**
 * One site build in a process of its own; prints { ms, peakMiB, … } as JSON.
 *
 *   node site-build.ts pages|whole RECORDS CACHE SIZES     builds, and writes the size of every page into the file SIZES
 *   node site-build.ts constant RECORDS CACHE SIZES        pages of the same number and sizes from constant data
 */
import { mkdir, readdir, readFile, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { buildSites, publicGarden } from "../../src/site/index.ts";
import { makePages } from "../../src/site/make-pages.ts";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { PUBLIC_PAGES } from "../../src/site/page-table.ts";
import { amongPageSources, inWorkFolder } from "../../src/site/work-folder.ts";

const [mode = "", recordsDir = "", cache = "", sizesFile = ""] = process.argv.slice(2);
const TODAY = "2026-11-20";
process.env.PLOTREEL_CACHE = cache;
const out = path.resolve(cache, `out-${mode}`);

const CONSTANT_PAGE = `---
export function getStaticPaths() {
  return globalThis[Symbol.for("constant")].map((text, id) => ({ params: { id: String(id) }, props: { text } }));
}
const { text } = Astro.props;
---
<html lang="en"><head><meta charset="utf-8" /><title>leek</title></head><body>{text}</body></html>
`;

const figures = mode === "constant" ? await constant() : mode === "whole" ? await whole() : await pages();
console.log(JSON.stringify({ ...figures, peakMiB: process.resourceUsage().maxRSS / 1024 }));

/** The public pages: from the garden in memory to files. */
async function pages() {
  const { garden, cacheDir } = await loadGarden({ records: recordsDir, today: TODAY }, realEffects());
  const ms = await inWorkFolder(path.resolve(cacheDir), async (work) => {
    const began = performance.now();
    const data = publicSite(publicGarden(garden), TODAY, new Map());
    await makePages({ name: "public", pages: PUBLIC_PAGES, base: "/" }, data, { cacheDir, work, outDir: out });
    return performance.now() - began;
  });
  const files = (await readdir(out, { recursive: true })).filter((file) => file.endsWith(".html"));
  const sizes = await Promise.all(files.map(async (file) => (await stat(path.join(out, file))).size));
  await writeFile(sizesFile, JSON.stringify(sizes));
  return { ms, pages: sizes.length, bytes: sizes.reduce((sum, size) => sum + size, 0) };
}

/** Both sites with everything around them: gate, search, swap. */
async function whole() {
  const { garden, cacheDir } = await loadGarden({ records: recordsDir, today: TODAY }, realEffects());
  const began = performance.now();
  const { pages: count } = await buildSites(garden, {
    outDir: out,
    cacheDir,
    today: TODAY,
    photos: new Map(),
    briefs: [],
  });
  return { ms: performance.now() - began, pages: count };
}

/** What Astro needs for the same number of pages with the same number of bytes when there is nothing to work out. */
async function constant() {
  const sizes = JSON.parse(await readFile(sizesFile, "utf8")) as number[];
  const ms = await inWorkFolder(path.resolve(cache), (work) =>
    amongPageSources(path.join(work, "constant"), async () => {
      const root = path.join(process.cwd(), "constant");
      await mkdir(path.join(root, "pages"), { recursive: true });
      await writeFile(path.join(root, "pages", "[id].astro"), CONSTANT_PAGE);
      const texts = sizes.map((size) => "leek ".repeat(Math.ceil(size / 5)).slice(0, size));
      (globalThis as Record<symbol, unknown>)[Symbol.for("constant")] = texts;
      const { build } = await import("astro");
      const began = performance.now();
      await build({
        configFile: false,
        logLevel: "warn",
        root,
        srcDir: root,
        outDir: out,
        vite: { environments: { prerender: { resolve: { noExternal: true } } } },
      });
      return performance.now() - began;
    }),
  );
  return { ms, pages: sizes.length };
}
