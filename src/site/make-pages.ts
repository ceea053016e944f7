/**
 * Makes the pages of a site, and of those that were made before only what changed since. A page's bytes follow from the
 * tool's version, the path and address of the site, its frame and what the page shows; a page of which all of that is as
 * it was is taken as it was.
 */
import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { type CompiledPages, compilePages, type Files } from "./astro-build.ts";
import { openPages, type PageMaker } from "./compiled-pages.ts";
import { type KeptFile, type KeptFiles, openKeptFiles } from "./kept-files.ts";
import type { SiteFrame } from "./page-data/shapes.ts";
import type { PageRow } from "./page-table.ts";
import { toolVersion } from "./tool-version.ts";
import { siteWords } from "./words/index.ts";
import { amongPageSources } from "./work-folder.ts";

/** All that is asked of a site's data here. */
interface SiteData {
  readonly frame: SiteFrame;
}

export interface SiteTemplates<Site extends SiteData> {
  /** Folder of the templates beside this file, which is also what its data is called: `virtual:public-site`. */
  readonly name: "public" | "field";
  readonly pages: readonly PageRow<Site>[];
  /** Path below which the site is served, with a slash at both ends. */
  readonly base: string;
  /** Address without path. */
  readonly address?: string | undefined;
}

export interface Places {
  /** Gets a folder for this site. */
  readonly cacheDir: string;
  /** A work folder of this run alone. */
  readonly work: string;
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
  { outDir, ...places }: Places & { readonly outDir: string },
  report?: PagesReport,
): Promise<void> {
  const kept = openKeptFiles(path.join(places.cacheDir, "pages", templates.name));
  const version = versionOf(templates);
  const what = `Making the ${templates.name} pages`;
  const compiled = await compiledOf(templates, version, kept, places, report);
  const around = sumOf(version, ...namesAndSums(compiled.assets), JSON.stringify(data.frame));
  const wanted = templates.pages.flatMap(({ template, files }) =>
    files(data).map(({ file, shows }) => ({ template, file, key: sumOf(around, file, JSON.stringify(shows)) })),
  );
  const placeFor = placesIn(outDir);
  for (const [file, bytes] of compiled.assets) writeFileSync(placeFor(file), bytes);
  const missing = wanted.filter(({ file, key }) => {
    const before = kept.get(key);
    before?.placeAt(placeFor(file));
    return before === undefined;
  });
  report?.step(`${what}: ${sayChanged(missing.length, wanted.length)}`);
  if (missing.length > 0) {
    const maker = await openSite(templates, compiled, places);
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
export async function openTemplates<Site extends SiteData>(
  templates: SiteTemplates<Site>,
  places: Places,
): Promise<OpenSite<Site>> {
  const kept = openKeptFiles(path.join(places.cacheDir, "pages", templates.name));
  return openSite(templates, await compiledOf(templates, versionOf(templates), kept, places), places);
}

async function openSite<Site extends SiteData>(
  templates: SiteTemplates<Site>,
  compiled: CompiledPages,
  { work }: Places,
): Promise<OpenSite<Site>> {
  const modules = modulesOf(templates);
  const maker: PageMaker = await openPages(compiled, path.join(work, `${templates.name}.code`), {
    base: templates.base,
    modules,
  });
  const [site = "", words = ""] = modules;
  return {
    assets: compiled.assets,
    show: (data) => maker.give({ [site]: data, [words]: siteWords }),
    make: (template, file) => maker.make(template, addressOf(file)),
  };
}

function modulesOf({ name }: { readonly name: string }): readonly string[] {
  return [`${name}-site`, "words"];
}

/** "beds/long-bed/index.html" is asked for as "beds/long-bed/". */
function addressOf(file: string): string {
  const address = file === "404.html" ? "404/" : file.replace(/(^|\/)index\.html$/u, "$1");
  return address.split("/").map(encodeURIComponent).join("/");
}

function versionOf({ name, base, address = "" }: Omit<SiteTemplates<never>, "pages">): string {
  return sumOf(toolVersion(), name, base, address);
}

const COMPILED = "compiled";

/** As it was kept, when every file of it is still there. */
async function compiledOf<Site extends SiteData>(
  templates: SiteTemplates<Site>,
  version: string,
  kept: KeptFiles,
  { work }: Places,
  report?: PagesReport,
): Promise<CompiledPages> {
  const fileKey = (kind: string, file: string) => sumOf(version, COMPILED, kind, file);
  const list = kept.get(sumOf(version, COMPILED));
  if (list !== undefined) {
    const listed = JSON.parse(Buffer.from(list.bytes).toString()) as CompiledList;
    const code = allOf(listed.code, (file) => kept.get(fileKey("code", file)));
    const assets = allOf(listed.assets, (file) => kept.get(fileKey("asset", file)));
    if (code !== undefined && assets !== undefined) return { code, assets, styles: listed.styles };
  }
  const { name, base, address } = templates;
  report?.step(`Preparing the templates of the ${name} pages, once for this version`);
  const folder = path.join(work, `${name}.templates`);
  const compiled = await amongPageSources(folder, () =>
    compilePages({ root: path.join(folder, name), base, address, modules: modulesOf(templates) }),
  );
  for (const [file, bytes] of compiled.code) kept.put(fileKey("code", file), bytes);
  for (const [file, bytes] of compiled.assets) kept.put(fileKey("asset", file), bytes);
  const listed: CompiledList = {
    code: [...compiled.code.keys()],
    assets: [...compiled.assets.keys()],
    styles: compiled.styles,
  };
  kept.put(sumOf(version, COMPILED), Buffer.from(JSON.stringify(listed)));
  return compiled;
}

interface CompiledList {
  readonly code: readonly string[];
  readonly assets: readonly string[];
  readonly styles: CompiledPages["styles"];
}

function allOf(names: readonly string[], get: (name: string) => KeptFile | undefined): Files | undefined {
  const files = new Map<string, Uint8Array>();
  for (const name of names) {
    const file = get(name);
    if (file === undefined) return undefined;
    files.set(name, file.bytes);
  }
  return files;
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

/** Should the same templates ever be compiled to other assets, pages that ask for the old ones are made again. */
function* namesAndSums(files: Files): Generator<string> {
  for (const [name, bytes] of files) yield* [name, createHash("sha256").update(bytes).digest("hex")];
}

/** Of several texts, each with its length, so that none can borrow letters from the next. */
function sumOf(...texts: readonly string[]): string {
  const hash = createHash("sha256");
  for (const text of texts) hash.update(`${text.length} `).update(text);
  return hash.digest("hex");
}
