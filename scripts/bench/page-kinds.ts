/** The kinds of pages a built site has, one for each page template, with the fullest page of each to look at. */
import { glob, readFile } from "node:fs/promises";
import path from "node:path";

export interface PageKind {
  /** Address with what varies in brackets: "varieties/[id]/"; the first page is "". */
  readonly kind: string;
  /** Address of the fullest page, relative to the site's first page. */
  readonly address: string;
  readonly file: string;
}

const PAGES = path.resolve(import.meta.dirname, "../../src/site");

/** Of one site of a garden. A template with no page in it is left out; a page with no template makes a kind of its own. */
export async function kindsOfPages(siteDir: string, site: "public" | "field"): Promise<readonly PageKind[]> {
  const templates: string[] = [];
  for await (const file of glob("**/*.astro", { cwd: path.join(PAGES, site, "pages") })) {
    const kind = file.replace(/\.astro$/u, "");
    templates.push(kind === "404" || /(?:^|\/)index$/u.test(kind) ? `${kind}.html` : `${kind}/index.html`);
  }
  const fullest = new Map<string, { size: number; file: string }>();
  for await (const file of glob("**/*.html", { cwd: siteDir })) {
    const kind = templates.find((template) => shapeOf(template).test(file)) ?? file;
    const { length: size } = await readFile(path.join(siteDir, file));
    if (size > (fullest.get(kind)?.size ?? 0)) fullest.set(kind, { size, file });
  }
  return [...fullest]
    .map(([kind, { file }]) => ({ kind: addressOf(kind), address: addressOf(file), file }))
    .sort((a, b) => (a.kind < b.kind ? -1 : 1));
}

function shapeOf(template: string): RegExp {
  return new RegExp(`^${template.replaceAll(".", "\\.").replace(/\[\w+\]/gu, "[^/]+")}$`, "u");
}

function addressOf(file: string): string {
  return file.replace(/(^|\/)index\.html$/u, "$1");
}
