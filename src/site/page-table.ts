/**
 * Which template makes which files, and from what: the frame, and the parts of the site's data named here. What a file is
 * made from decides whether it has to be made again, so a template may read nothing else but addresses (`.href`), which
 * never change while the site lies below the same path; tests/site/page-table.test.ts reads the templates for it.
 */
import type { FieldSite, PublicSite } from "./page-data/shapes.ts";

export interface PageRow<Site> {
  /** Template, below the site's `pages` folder: "beds/[id]/index.astro" makes "beds/long-bed/index.html". */
  readonly template: string;
  readonly reads: readonly (keyof Site & string)[];
  /** The files of a site, with forward slashes, and what each of them shows. */
  files(site: Site): readonly PageFile[];
}

export interface PageFile {
  readonly file: string;
  readonly shows: unknown;
}

type Params = Readonly<Record<string, string>>;

/** A template that makes one file. */
function one<Site>(template: string, ...reads: readonly (keyof Site & string)[]): PageRow<Site> {
  return { template, reads, files: (site) => [{ file: fileOf(template), shows: reads.map((part) => site[part]) }] };
}

type ThingOf<List> = List extends readonly (infer Thing)[] ? Thing : never;

/** A template that makes a file for each thing of a list. */
function each<Site, Part extends keyof Site & string>(
  template: string,
  part: Part,
  params: (thing: ThingOf<Site[Part]>) => Params,
): PageRow<Site> {
  return {
    template,
    reads: [part],
    files: (site) =>
      (site[part] as readonly ThingOf<Site[Part]>[]).map((thing) => ({
        file: fileOf(template, params(thing)),
        shows: thing,
      })),
  };
}

const byId = ({ id }: { readonly id: string }): Params => ({ id });

export const PUBLIC_PAGES: readonly PageRow<PublicSite>[] = [
  one("index.astro", "home", "search"),
  one("404.astro"),
  one("search.astro", "search"),
  one("varieties/index.astro", "varieties"),
  one("varieties/filters.css.ts", "varieties"),
  one("varieties.csv.ts", "csv"),
  each<PublicSite, "varietyPages">("varieties/[id].astro", "varietyPages", byId),
  one("beds/index.astro", "beds"),
  each<PublicSite, "bedPages">("beds/[id]/index.astro", "bedPages", byId),
  each<PublicSite, "thenAndNow">("beds/[id]/then-and-now.astro", "thenAndNow", byId),
  one("episodes/index.astro", "episodes"),
  each<PublicSite, "episodePages">("episodes/[id].astro", "episodePages", byId),
  one("recaps/index.astro", "recaps"),
  each<PublicSite, "recaps">("recaps/[id].astro", "recaps", byId),
];

export const FIELD_PAGES: readonly PageRow<FieldSite>[] = [
  one("index.astro", "home"),
  each<FieldSite, "bedPages">("beds/[id]/index.astro", "bedPages", byId),
  each<FieldSite, "thenAndNow">("beds/[id]/then-and-now.astro", "thenAndNow", byId),
  one("viewpoints/index.astro", "viewpoints", "home"),
  each<FieldSite, "viewpoints">("viewpoints/[bed]/[name].astro", "viewpoints", ({ bedId, name }) => ({
    bed: bedId,
    name,
  })),
  each<FieldSite, "recaps">("recaps/[id].astro", "recaps", byId),
  one("naming/index.astro", "naming"),
  one("notes/index.astro", "notes"),
  each<FieldSite, "notePages">("notes/[id].astro", "notePages", byId),
];

const PARAM = /\[(\w+)\]/gu;

/** Where a template's page lies: every page but that for what is missing is the first of a folder of its own. */
function fileOf(template: string, params: Params = {}): string {
  return pageOf(template).replace(PARAM, (_, name: string) => params[name] ?? "");
}

function pageOf(template: string): string {
  if (template.endsWith(".ts")) return template.slice(0, -".ts".length);
  return template
    .replace(/(^|\/)404\.astro$/u, "$1404.html")
    .replace(/(?:(^|\/)index)?\.astro$/u, (_, start?: string) => `${start ?? "/"}index.html`);
}

/** The template of a file that the site has, without working out any part of the data that has nothing to do with it. */
export function templateOf<Site>(pages: readonly PageRow<Site>[], site: Site, file: string): string | undefined {
  return pages.find((row) => mayMake(row.template, file) && row.files(site).some((one) => one.file === file))?.template;
}

function mayMake(template: string, file: string): boolean {
  const parts = pageOf(template).split("/");
  const asked = file.split("/");
  return parts.length === asked.length && parts.every((part, index) => part.startsWith("[") || part === asked[index]);
}
