/** Runs what scripts/build/templates.ts made of a site's templates: a page when it is wanted, from the data the site has then. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { preparedFolder } from "../store/index.ts";

export const SITES = ["public", "field"] as const;
export type SiteName = (typeof SITES)[number];

/**
 * The path that templates are compiled with, as the path below which a site is served is only known when its pages are written.
 */
export const BASE = "/plotreel-base-put-in-when-written/";

/** The list's name beside `code` and `assets`. */
export const LIST = "list.json";

export interface CompiledList {
  /** Module below `code` that the others are loaded from. */
  readonly entry: string;
  /** What pages ask for: style sheets, scripts, fonts. Their names change with their bytes. */
  readonly assets: readonly string[];
  /** Of templates, by Astro's name for them. */
  readonly styles: readonly (readonly [template: string, styles: unknown])[];
}

/** Where the code finds a site's data, which its templates import from `virtual:public-site` or `virtual:field-site`. */
export function dataPlace(name: SiteName): symbol {
  return Symbol.for(`plotreel:${name}-site`);
}

/** And its words, from `virtual:words`. */
export function wordsPlace(name: SiteName): symbol {
  return Symbol.for(`plotreel:${name}-words`);
}

/** What we use of Astro's app, whose `render` adapters for servers use too. */
interface App {
  readonly manifest: { readonly routes: readonly { readonly routeData: Route }[] };
  readonly routeCache: { clearAll(): void };
  getComponentByRoute(route: Route): Promise<unknown>;
  render(request: Request, options: { readonly routeData: Route }): Promise<Response>;
  setInternals(internals: { readonly pagesByKeys: ReadonlyMap<string, { readonly styles: unknown }> }): void;
  setOptions(options: unknown): void;
}

interface Route {
  /** Template below the root: "pages/beds/[id].astro". */
  readonly component: string;
}

/** By path, relative, with forward slashes. */
export type Files = ReadonlyMap<string, Uint8Array>;

export interface PageMaker {
  /** What pages are made from, from now on. */
  give(site: object, words: object): void;
  /** A template's page at an address, below the site's base. */
  make(template: string, address: string): Promise<Buffer>;
}

/** What pages ask for, as it is for a site below `base`. */
export function assetsOf(name: SiteName, base: string): Files {
  return new Map(
    listOf(name).assets.map((file) => {
      const bytes = readFileSync(path.join(folderOf(name), "assets", file));
      return [file, /\.(?:css|js)$/u.test(file) ? withBase(bytes.toString(), base) : bytes];
    }),
  );
}

/** One process has the code once, so two sites of one name are made one after the other: each page with its own data. */
export async function openPages(name: SiteName, base: string): Promise<PageMaker> {
  const { app, holders, routes } = await codeOf(name);
  let given: Given = { site: {}, words: {} };
  return {
    give(site, words) {
      given = { site, words };
    },
    async make(template, address) {
      const routeData = routes.get(`pages/${template}`);
      if (routeData === undefined) throw new Error(`No template is called ${template}.`);
      const made = holders.turn.then(async () => {
        if (holders.shown !== given) {
          replace(holders.site, given.site);
          replace(holders.words, given.words);
          app.routeCache.clearAll();
          holders.shown = given;
        }
        const response = await app.render(new Request(new URL(BASE + address, "http://localhost")), { routeData });
        if (!response.ok && response.status !== 404)
          throw new Error(`${address} could not be made: ${response.status}.`);
        // Not as its text, which would lose the mark at the beginning of a table.
        return withBase(Buffer.from(await response.arrayBuffer()).toString(), base);
      });
      holders.turn = made.catch(() => undefined);
      return made;
    },
  };
}

function withBase(text: string, base: string): Buffer {
  return Buffer.from(text.replaceAll(BASE, base));
}

function folderOf(name: SiteName): string {
  return path.join(preparedFolder(), "templates", name);
}

function listOf(name: SiteName): CompiledList {
  return JSON.parse(readFileSync(path.join(folderOf(name), LIST), "utf8")) as CompiledList;
}

interface Given {
  readonly site: object;
  readonly words: object;
}

interface Code {
  readonly app: App;
  readonly routes: ReadonlyMap<string, Route>;
  readonly holders: Given & {
    /** Whose data they hold. */
    shown: Given | undefined;
    /** Ends when the page that is being made is made. */
    turn: Promise<unknown>;
  };
}

const loaded = new Map<SiteName, Promise<Code>>();

function codeOf(name: SiteName): Promise<Code> {
  const code = loaded.get(name) ?? loadCode(name);
  loaded.set(name, code);
  return code;
}

async function loadCode(name: SiteName): Promise<Code> {
  const { entry, styles } = listOf(name);
  const [site, words] = [heldAt(dataPlace(name)), heldAt(wordsPlace(name))];
  const file = path.join(folderOf(name), "code", entry);
  const { app } = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as { readonly app: App };
  app.setInternals({ pagesByKeys: new Map(styles.map(([page, own]) => [page, { styles: own }])) });
  app.setOptions({ settings: { scripts: [] }, logger: { options: { destination: { write: () => true } } } });
  const routes = new Map(app.manifest.routes.map(({ routeData }) => [routeData.component, routeData]));
  return { app, routes, holders: { site, words, shown: undefined, turn: Promise.resolve() } };
}

/** Node has a module once in a process, and that keeps the object it was given first. */
function heldAt(place: symbol): object {
  const all = globalThis as Record<symbol, object | undefined>;
  all[place] ??= {};
  return all[place];
}

/** The modules keep the object they were given once, so what it holds is changed. What is worked out late stays so. */
function replace(holder: object, data: object): void {
  for (const key of Object.keys(holder)) delete (holder as Record<string, unknown>)[key];
  Object.defineProperties(holder, Object.getOwnPropertyDescriptors(data));
}
