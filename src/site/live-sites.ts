/**
 * Both sites while records are edited: pages are made when somebody asks for them, from the newest garden, and open pages
 * reload by themselves. On this machine only; nothing is written but the work folder, so nothing of it is for viewers.
 */
import { createReadStream } from "node:fs";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import type { Garden } from "../model.ts";
import type { PublishedPhoto } from "../photos/index.ts";
import { type RootServer, serveRoot } from "./astro-build.ts";
import type { BuildOptions } from "./build-sites.ts";
import { fieldListPage } from "./field-list/field-list-page.ts";
import { fieldSite } from "./page-data/field-site.ts";
import { publicSite } from "./page-data/public-site.ts";
import type { FieldSite, PublicSite } from "./page-data/shapes.ts";
import { publicCaptions } from "./public-captions.ts";
import { publicGarden } from "./public-garden.ts";
import { typeOf } from "./static-server.ts";
import { copyToMatch } from "./viewpoint-photos.ts";
import { inWorkFolder } from "./work-folder.ts";

export type LiveMaterials = Omit<BuildOptions, "outDir" | "cacheDir" | "report">;

export interface LiveOptions extends LiveMaterials {
  readonly cacheDir: string;
}

export interface LiveSites {
  readonly publicUrl: string;
  readonly privateUrl: string;
  /** From now on pages show this garden; open pages reload. */
  show(garden: Garden, materials: LiveMaterials): void;
}

/** Serves until `whileServing` ends. */
export async function serveLiveSites(
  garden: Garden,
  { cacheDir, ...materials }: LiveOptions,
  whileServing: (sites: LiveSites) => Promise<void>,
): Promise<void> {
  await inWorkFolder(path.resolve(cacheDir), async (work) => {
    let shown = shownSites(garden, materials);
    const { base, address } = garden.settings;
    const servers: RootServer[] = [];
    try {
      const open = await serveRoot({
        root: path.join(work, "public"),
        base,
        address,
        module: "public-site",
        data: shown.pages,
        beside: (request, response) => sendBeside(shown.publicFiles, base, request, response),
      });
      servers.push(open);
      const own = await serveRoot({
        root: path.join(work, "field"),
        base: "/",
        module: "field-site",
        data: shown.field,
        beside: (request, response) => sendBeside(shown.privateFiles, "/", request, response),
      });
      servers.push(own);
      // The first page of each takes longest, so both are asked for before anybody is.
      for (const { url } of servers) fetch(url).catch(() => undefined);
      await whileServing({
        publicUrl: open.url,
        privateUrl: own.url,
        show(newest, given) {
          shown = shownSites(newest, given);
          open.show(shown.pages);
          own.show(shown.field);
        },
      });
    } finally {
      for (const server of servers) await server.close();
    }
  });
}

type BesideFile = { readonly text: string } | { readonly file: string };

/** What lies beside the pages, by path below the site. */
type Beside = ReadonlyMap<string, BesideFile>;

interface Shown {
  readonly pages: PublicSite;
  readonly field: FieldSite;
  readonly publicFiles: Beside;
  readonly privateFiles: Beside;
}

function shownSites(garden: Garden, materials: LiveMaterials): Shown {
  const { today, photos, briefs, fieldLists = [], comparisons = new Map(), weather, films } = materials;
  const open = publicGarden(garden);
  const pages = publicSite(open, today, photos, comparisons, weather, films && publicCaptions(garden, open, films));
  const field = fieldSite(
    garden,
    today,
    photos,
    briefs.map(({ name }) => name),
    fieldLists.map(({ tour }) => tour),
    comparisons,
    weather,
  );
  return {
    pages,
    field,
    publicFiles: new Map<string, BesideFile>([
      ...photoFiles(open, photos),
      ...photoFiles(open, comparisons),
      ...pages.files.map(({ path: at, text }) => [at, { text }] as const),
    ]),
    privateFiles: new Map<string, BesideFile>([
      ...photoFiles(garden, photos),
      ...photoFiles(garden, comparisons),
      ...briefs.map(({ name, html }) => [`briefs/${name}.html`, { text: html }] as const),
      ...fieldLists.map((list) => [`field-lists/${list.tour}.html`, { text: fieldListPage(list) }] as const),
      ...field.viewpoints.flatMap(({ last }) => {
        const copy = last && copyToMatch(photos.get(last.path));
        return copy === undefined ? [] : [[below(last?.src ?? ""), { file: copy.cachePath }] as const];
      }),
    ]),
  };
}

/** The path of an address at the root of a site. */
function below(address: string): string {
  return address.replace(/^\//u, "").split("/").map(decoded).join("/");
}

function photoFiles(garden: Garden, photos: ReadonlyMap<string, PublishedPhoto>) {
  return garden.photos.flatMap((photo) =>
    photo.day === undefined
      ? []
      : (photos.get(photo.path)?.files ?? []).map(
          ({ name, cachePath }) => [`photos/${name}`, { file: cachePath }] as const,
        ),
  );
}

/** False when nothing of that name lies beside the pages. */
function sendBeside(files: Beside, base: string, request: IncomingMessage, response: ServerResponse): boolean {
  const { pathname } = new URL(request.url ?? "/", "http://localhost");
  if (!pathname.startsWith(base)) return false;
  const wanted = pathname.slice(base.length).split("/").map(decoded).join("/");
  const found = files.get(wanted);
  if (found === undefined) return false;
  response.setHeader("content-type", typeOf(wanted));
  response.setHeader("cache-control", "no-store");
  if ("text" in found) response.end(found.text);
  else
    createReadStream(found.file)
      .on("error", () => response.writeHead(404).end())
      .pipe(response);
  return true;
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}
