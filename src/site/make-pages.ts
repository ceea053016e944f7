/**
 * Makes the pages of a site, and of those that were made before only what changed since. A page's bytes follow from the
 * tool's version, the path of the site, its frame and what the page shows; a page of which all of that is as
 * it was is taken as it was.
 */
import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { toolVersion } from "../store/index.ts";
import { assetsOf, type Files, openPages, type SiteName } from "./compiled-pages.ts";
import { openKeptFiles } from "./kept-files.ts";
import type { SiteFrame } from "./page-data/shapes.ts";
import type { PageRow } from "./page-table.ts";
import { siteWords } from "./words/index.ts";

/** All that is asked of a site's data here. */
interface SiteData {
  readonly frame: SiteFrame;
}

export interface SiteTemplates<Site extends SiteData> {
  /** Folder of the templates beside this file, which is also what its data is called: `virtual:public-site`. */
  readonly name: SiteName;
  readonly pages: readonly PageRow<Site>[];
  /** Path below which the site is served, with a slash at both ends. */
  readonly base: string;
}

export interface Places {
  /** Gets a folder for this site. */
  readonly cacheDir: string;
  readonly outDir: string;
}

/** Hears what is being done. */
export interface PagesReport {
  step(text: string): void;
  progress?(what: string, done: number, total: number): void;
}

/** Fills `outDir`. */
export async function makePages<Site extends SiteData>(
  templates: SiteTemplates<Site>,
  data: Site,
  { outDir, cacheDir }: Places,
  report?: PagesReport,
): Promise<void> {
  const kept = openKeptFiles(path.join(cacheDir, "pages", templates.name));
  const { name, base } = templates;
  const what = `Making the ${name} pages`;
  const assets = assetsOf(name, base);
  const around = sumOf(toolVersion(), name, base, ...namesAndSums(assets), JSON.stringify(data.frame));
  const wanted = templates.pages.flatMap(({ template, files }) =>
    files(data).map(({ file, shows }) => ({ template, file, key: sumOf(around, file, JSON.stringify(shows)) })),
  );
  const placeFor = placesIn(outDir);
  for (const [file, bytes] of assets) writeFileSync(placeFor(file), bytes);
  const missing = wanted.filter(({ file, key }) => {
    const before = kept.get(key);
    before?.placeAt(placeFor(file));
    return before === undefined;
  });
  report?.step(`${what}: ${sayChanged(missing.length, wanted.length)}`);
  if (missing.length > 0) {
    const maker = await openTemplates(templates);
    maker.show(data);
    for (const [index, { template, file, key }] of missing.entries()) {
      kept.write(key, await maker.make(template, file), placeFor(file));
      report?.progress?.(what, index + 1, missing.length);
    }
  }
  kept.save();
}

function sayChanged(changed: number, all: number): string {
  return changed === all ? String(all) : `${changed} of ${all} changed`;
}

/** A site whose pages are made when they are asked for. */
export interface OpenSite<Site> {
  /** What pages ask for, by path. */
  readonly assets: Files;
  show(data: Site): void;
  make(template: string, file: string): Promise<Buffer>;
}

/** Opens a site for making pages one by one; nothing of the pages themselves is kept. */
export async function openTemplates<Site extends SiteData>({
  name,
  base,
}: Omit<SiteTemplates<Site>, "pages">): Promise<OpenSite<Site>> {
  const maker = await openPages(name, base);
  return {
    assets: assetsOf(name, base),
    show: (data) => maker.give(data, siteWords),
    make: (template, file) => maker.make(template, addressOf(file)),
  };
}

/** "beds/long-bed/index.html" is asked for as "beds/long-bed/". */
function addressOf(file: string): string {
  const address = file === "404.html" ? "404/" : file.replace(/(^|\/)index\.html$/u, "$1");
  return address.split("/").map(encodeURIComponent).join("/");
}

/** Gives the place of a file, and sees that its folder is there. */
function placesIn(outDir: string): (file: string) => string {
  const folders = new Set<string>();
  return (file) => {
    const target = path.join(outDir, ...file.split("/"));
    const folder = path.dirname(target);
    if (!folders.has(folder)) mkdirSync(folder, { recursive: true });
    folders.add(folder);
    return target;
  };
}

/** Should the same sources ever be compiled to other assets, pages that ask for the old ones are made again. */
function* namesAndSums(files: Files): Generator<string> {
  for (const [name, bytes] of files) yield* [name, createHash("sha256").update(bytes).digest("hex")];
}

/** Of several texts, each with its length, so that none can borrow letters from the next. */
function sumOf(...texts: readonly string[]): string {
  const hash = createHash("sha256");
  for (const text of texts) hash.update(`${text.length} `).update(text);
  return hash.digest("hex");
}
