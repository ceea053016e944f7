/**
 * The one place that calls Astro. Its `build` is marked experimental, so Astro is pinned exactly and everything we rely
 * on stands here.
 */
import { cp, rename } from "node:fs/promises";
import type { IncomingMessage, ServerResponse } from "node:http";
import path from "node:path";
import { type AstroInlineConfig, build, dev, type ViteUserConfig } from "astro";
import { countNewest, FOLLOW_PATH, newest } from "./components/follow.ts";
import type { SiteFrame } from "./page-data/shapes.ts";
import { withoutDirectionControls } from "./without-direction-controls.ts";
import { wordsIn } from "./words/index.ts";

type VitePlugin = Extract<NonNullable<NonNullable<ViteUserConfig["plugins"]>[number]>, { name: string }>;

/** One site's pages and what they show. */
export interface SiteRoot {
  /** Folder of the Astro root within the work folder, absolute. */
  readonly root: string;
  /** Path below which the site is served: "/" or "/garden/". */
  readonly base: string;
  /** Address without path, for canonical links. */
  readonly address?: string | undefined;
  /** What `import data from "virtual:…"` gives the pages, by module name. One root gets one module, so that no page can ask for another root's. */
  readonly module: string;
  readonly data: SiteData;
}

/** All that must be known of the data here: its language, which chooses the words of the pages. */
type SiteData = { readonly frame: Pick<SiteFrame, "language"> };

export interface RootBuild extends SiteRoot {
  /** Absolute; empty, or not there yet. */
  readonly outDir: string;
}

/** Builds one site. The current folder must be the work folder: Astro looks for packages from there. */
export async function buildRoot(site: RootBuild): Promise<void> {
  const settings = settingsFor(site, ...dataModules(site.module, site.data));
  const vite = { ...settings.vite, environments: { prerender: { resolve: { noExternal: true as const } } } };
  // Astro renames files from beside its root into its output, which only works within one disk.
  const built = `${site.root}.built`;
  await build({ ...settings, vite, outDir: built });
  await rename(built, site.outDir).catch(() => cp(built, site.outDir, { recursive: true }));
}

export interface RootServe extends SiteRoot {
  /** Sends what lies beside the pages; false when nothing does at that address. */
  readonly beside: (request: IncomingMessage, response: ServerResponse) => boolean;
}

export interface RootServer {
  /** Address of the site's first page. */
  readonly url: string;
  /** New data from now on; open pages reload. */
  show(data: SiteData): void;
  close(): Promise<void>;
}

/** What we use of Vite's server. */
interface ViteServer {
  readonly middlewares: {
    use(handle: (request: IncomingMessage, response: ServerResponse, next: () => void) => void): void;
  };
  readonly environments: Readonly<
    Record<
      string,
      { moduleGraph: { getModuleById(id: string): object | undefined; invalidateModule(known: object): void } }
    >
  >;
}

/** Serves one site on this machine, each page made when it is asked for. The current folder as for `buildRoot`. */
export async function serveRoot(site: RootServe): Promise<RootServer> {
  let vite: ViteServer | undefined;
  const beside = {
    name: "plotreel-beside",
    configureServer(server: ViteServer) {
      vite = server;
      server.middlewares.use((request, response, next) => {
        if (request.url === site.base + FOLLOW_PATH) follow(response);
        else if (!site.beside(request, response)) next();
      });
    },
  };
  countNewest();
  const followers = new Set<ServerResponse>();
  const follow = (response: ServerResponse) => {
    response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
    response.write(`data: ${newest()}\n\n`);
    followers.add(response);
    response.on("close", () => followers.delete(response));
  };
  const settings = settingsFor(site, ...dataModules(site.module, site.data), beside);
  const server = await dev({
    ...settings,
    server: { host: "127.0.0.1", port: 0 },
    // Pages follow the records, not the tool's sources, and nothing may reload them for any other reason.
    vite: { ...settings.vite, server: { hmr: false } },
  });
  return {
    url: `http://localhost:${server.address.port}${site.base}`,
    show(data) {
      for (const [name, given] of modulesOf(site.module, data)) {
        handOver(name, given);
        for (const { moduleGraph } of Object.values(vite?.environments ?? {})) {
          const known = moduleGraph.getModuleById(`\0virtual:${name}`);
          if (known !== undefined) moduleGraph.invalidateModule(known);
        }
      }
      const number = countNewest();
      for (const follower of followers) follower.write(`data: ${number}\n\n`);
    },
    close() {
      for (const follower of followers) follower.end();
      return server.stop();
    },
  };
}

function settingsFor(site: SiteRoot, ...plugins: readonly VitePlugin[]): AstroInlineConfig {
  process.env.ASTRO_TELEMETRY_DISABLED = "1";
  return {
    configFile: false,
    logLevel: "warn",
    root: site.root,
    srcDir: site.root,
    // Nothing is copied unseen: this folder does not exist, and photos come in by their own list.
    publicDir: path.join(site.root, "no-public-folder"),
    cacheDir: path.join(site.root, ".cache"),
    base: site.base,
    ...(site.address === undefined ? {} : { site: site.address }),
    trailingSlash: "always",
    build: { format: "directory", inlineStylesheets: "never" },
    // Astro's "jsx" way drops the space between inline elements on two lines.
    compressHTML: true,
    devToolbar: { enabled: false },
    markdown: { syntaxHighlight: false },
    image: { service: { entrypoint: "astro/assets/services/noop" } },
    security: {
      csp: {
        directives: [
          "default-src 'none'",
          "img-src 'self'",
          "font-src 'self'",
          "connect-src 'self'",
          "base-uri 'none'",
          "form-action 'none'",
        ],
      },
    },
    vite: {
      cacheDir: path.join(site.root, ".vite"),
      plugins: [...plugins],
      build: { assetsInlineLimit: (file: string) => (/\.(?:woff2|css|svg)$/u.test(file) ? false : undefined) },
    },
  };
}

/** Puts the data where the module finds it, and gives the place's name. */
function handOver(name: string, data: unknown): string {
  const key = `plotreel:${name}`;
  (globalThis as Record<symbol, unknown>)[Symbol.for(key)] = withoutDirectionControls(data);
  return key;
}

/** What pages and components import, by module name: the site's data, and the words of its language. */
function modulesOf(name: string, data: SiteData): readonly (readonly [name: string, data: unknown])[] {
  return [
    [name, data],
    ["words", wordsIn(data.frame.language)],
  ];
}

function dataModules(name: string, data: SiteData): readonly VitePlugin[] {
  return modulesOf(name, data).map(([module, given]) => dataModule(module, given));
}

/** Hands data to the pages without serialising it: the module reads it from a symbol of the global object. */
function dataModule(name: string, data: unknown): VitePlugin {
  const id = `virtual:${name}`;
  const key = handOver(name, data);
  return {
    name: `plotreel-${name}`,
    resolveId: (asked: string) => (asked === id ? `\0${id}` : undefined),
    load: (asked: string) =>
      asked === `\0${id}` ? `export default globalThis[Symbol.for(${JSON.stringify(key)})];` : undefined,
  };
}
