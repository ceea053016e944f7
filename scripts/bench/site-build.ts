/**
 * One site build in a process of its own; prints { ms, cpuMs, peakMiB, … } as JSON. Times begin with the garden in memory
 * and end with the last page on the disk; importing the program is not in them.
 *
 *   node site-build.ts pages|again RECORDS CACHE SIZES     public pages from nothing, or on another day: every page is made
 *                                                          again; writes sizes into SIZES
 *   node site-build.ts constant RECORDS CACHE SIZES        pages of the same number and sizes from constant data
 *   node site-build.ts whole RECORDS CACHE SIZES           both sites with everything around them
 */
import { mkdir, readdir, readFile, rm, stat, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "astro";
import { realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { buildSites, publicCaptions, publicGarden } from "../../src/site/index.ts";
import { makePages } from "../../src/site/make-pages.ts";
import { publicSite } from "../../src/site/page-data/public-site.ts";
import { PUBLIC_PAGES } from "../../src/site/page-table.ts";
import { preparedFolder } from "../../src/store/index.ts";

const [mode = "", recordsDir = "", cache = "", sizesFile = ""] = process.argv.slice(2);
const today = mode === "again" ? "2026-11-21" : "2026-11-20";
process.env.PLOTREEL_CACHE = cache;
const out = path.resolve(cache, "out-measured");
await rm(out, { recursive: true, force: true });

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

interface Time {
  /** Wall clock, and processor time of all threads. */
  readonly ms: number;
  readonly cpuMs: number;
}

function stopwatch(): () => Time {
  const began = performance.now();
  const used = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(used);
    return { ms: performance.now() - began, cpuMs: (user + system) / 1000 };
  };
}

async function pages() {
  const { garden, films, weather, cacheDir } = await loadGarden({ records: recordsDir, today }, realEffects());
  if (mode === "pages") await rm(path.join(cacheDir, "pages"), { recursive: true, force: true });
  // Templates are compiled when the tool is built.
  preparedFolder();
  const watch = stopwatch();
  const open = publicGarden(garden);
  const site = publicSite(open, today, new Map(), new Map(), weather, publicCaptions(garden, open, films));
  // The parts are worked out when they are asked for: asked for here, so that they can be told from the making.
  for (const part of Object.keys(site) as (keyof typeof site)[]) site[part];
  const data = watch();
  await makePages({ name: "public", pages: PUBLIC_PAGES, base: "/" }, site, { cacheDir, outDir: out });
  const time = watch();
  const files = (await readdir(out, { recursive: true })).filter((file) => file.endsWith(".html"));
  const sizes = await Promise.all(files.map(async (file) => (await stat(path.join(out, file))).size));
  await writeFile(sizesFile, JSON.stringify(sizes));
  const list = gzipSync(await readFile(path.join(out, "varieties", "index.html")), { level: 9 }).length;
  return { ...time, dataCpuMs: data.cpuMs, pages: sizes.length, listBytes: list };
}

async function whole() {
  const { garden, films, weather, cacheDir } = await loadGarden({ records: recordsDir, today }, realEffects());
  await rm(path.join(cacheDir, "pages"), { recursive: true, force: true });
  const watch = stopwatch();
  const options = { outDir: out, cacheDir, today, photos: new Map(), briefs: [], weather, films };
  const { pages: count } = await buildSites(garden, options);
  return { ...watch(), pages: count };
}

/** What Astro needs for the same number of pages with the same number of bytes when there is nothing to work out. */
async function constant() {
  const sizes = JSON.parse(await readFile(sizesFile, "utf8")) as number[];
  const root = path.resolve(cache, "constant");
  await rm(root, { recursive: true, force: true });
  await mkdir(path.join(root, "pages"), { recursive: true });
  // Astro looks for packages from the current folder.
  await symlink(path.join(import.meta.dirname, "../../node_modules"), path.join(root, "node_modules"), "junction");
  process.chdir(root);
  await writeFile(path.join(root, "pages", "[id].astro"), CONSTANT_PAGE);
  const around = CONSTANT_PAGE.slice(CONSTANT_PAGE.indexOf("<html")).length;
  const texts = sizes.map((size) => "leek ".repeat(Math.ceil(size / 5)).slice(0, Math.max(5, size - around)));
  (globalThis as Record<symbol, unknown>)[Symbol.for("constant")] = texts;
  const watch = stopwatch();
  const vite = { environments: { prerender: { resolve: { noExternal: true as const } } } };
  await build({ configFile: false, logLevel: "warn", root, srcDir: root, outDir: out, vite });
  const time = watch();
  return { ...time, pages: sizes.length };
}
