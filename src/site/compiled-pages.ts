/** Runs what Astro made of a site's templates: a page when it is wanted, from the data the site has then. */
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { type CompiledPages, placeOf } from "./astro-build.ts";

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

export interface PageMaker {
  /** What each of the modules gives from now on. */
  give(modules: Readonly<Record<string, object>>): void;
  /** A template's page at an address, below the site's base. */
  make(template: string, address: string): Promise<Buffer>;
}

/** `folder` is the code's own from now on; `modules` are those it was compiled with. */
export async function openPages(
  { code, styles }: CompiledPages,
  folder: string,
  { base, modules }: { readonly base: string; readonly modules: readonly string[] },
): Promise<PageMaker> {
  for (const [file, bytes] of code) {
    await mkdir(path.dirname(path.join(folder, file)), { recursive: true });
    await writeFile(path.join(folder, file), bytes);
  }
  const entry = [...code.keys()].find((file) => /^prerender-entry\..*\.mjs$/u.test(file)) ?? "";
  const given = new Map(modules.map((module) => [module, {}]));
  for (const [module, holder] of given) (globalThis as Record<symbol, unknown>)[placeOf(module)] = holder;
  const { app } = (await import(pathToFileURL(path.join(folder, entry)).href)) as { readonly app: App };
  app.setInternals({ pagesByKeys: new Map(styles.map(([name, own]) => [name, { styles: own }])) });
  app.setOptions({ settings: { scripts: [] }, logger: { options: { destination: { write: () => true } } } });
  const routes = new Map(app.manifest.routes.map(({ routeData }) => [routeData.component, routeData]));
  // Now, and not when the first page is wanted, so that each site's modules find their own data.
  for (const route of routes.values()) await app.getComponentByRoute(route);
  return {
    give(data) {
      for (const [module, holder] of given) replace(holder, data[module] ?? {});
      app.routeCache.clearAll();
    },
    async make(template, address) {
      const routeData = routes.get(`pages/${template}`);
      if (routeData === undefined) throw new Error(`No template is called ${template}.`);
      const response = await app.render(new Request(new URL(base + address, "http://localhost")), { routeData });
      if (!response.ok && response.status !== 404) throw new Error(`${address} could not be made: ${response.status}.`);
      return Buffer.from(await response.arrayBuffer());
    },
  };
}

/** The modules keep the object they were given once, so what it holds is changed. What is worked out late stays so. */
function replace(holder: object, data: object): void {
  for (const key of Object.keys(holder)) delete (holder as Record<string, unknown>)[key];
  Object.defineProperties(holder, Object.getOwnPropertyDescriptors(data));
}
