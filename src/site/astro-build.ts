/**
 * The place that calls Astro: it turns templates into code that makes pages, once for a version of the tool, and
 * compiled-pages.ts runs that code. Astro's `build` is marked experimental, so Astro is pinned exactly and everything we
 * rely on stands in these two files.
 */
import { readdir, readFile } from "node:fs/promises";
import path from "node:path";
import type { AstroInlineConfig, ViteUserConfig } from "astro";

type VitePlugin = Extract<NonNullable<NonNullable<ViteUserConfig["plugins"]>[number]>, { name: string }>;

/** By path, relative, with forward slashes. */
export type Files = ReadonlyMap<string, Uint8Array>;

/** One site's templates. */
export interface SiteRoot {
  /** Folder of the Astro root within the work folder, absolute. */
  readonly root: string;
  /** Path below which the site is served: "/" or "/garden/". */
  readonly base: string;
  /** Address without path, for canonical links. */
  readonly address?: string | undefined;
  /**
   * What templates import from `virtual:…`, by name: the site's data, and words. One root gets one name for its data, so
   * that no page can ask for another root's.
   */
  readonly modules: readonly string[];
}

export interface CompiledPages {
  /** Modules that make pages, the entry among them. */
  readonly code: Files;
  /** What pages ask for: style sheets, scripts, fonts. Their names change with their bytes. */
  readonly assets: Files;
  /** Of templates, by Astro's name for them. */
  readonly styles: readonly (readonly [template: string, styles: unknown])[];
}

/** Where the code finds what a module gives. */
export function placeOf(module: string): symbol {
  return Symbol.for(`plotreel:${module}`);
}

/** The current folder must be the work folder: Astro looks for packages from there, and writes there. */
export async function compilePages(site: SiteRoot): Promise<CompiledPages> {
  const { build } = await import("astro");
  const settings = settingsFor(site);
  const outDir = `${site.root}.built`;
  let code: Files = new Map();
  let pages: ReadonlyMap<string, { readonly styles: unknown }> = new Map();
  await build({
    ...settings,
    outDir,
    integrations: [
      {
        name: "plotreel",
        hooks: {
          "astro:build:setup": (given) => {
            pages = given.pages;
          },
          "astro:build:start": ({ setPrerenderer }) => {
            setPrerenderer({
              name: "plotreel",
              setup: async () => {
                code = await filesIn(path.join(outDir, ".prerender"));
              },
              // Pages are made later, by us.
              getStaticPaths: async () => [],
              render: async () => new Response(null),
            });
          },
        },
      },
    ],
  });
  return { code, assets: await filesIn(outDir), styles: [...pages].map(([name, { styles }]) => [name, styles]) };
}

async function filesIn(folder: string): Promise<Files> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
  return new Map(
    await Promise.all(
      files
        .sort()
        .map(async (file) => [path.relative(folder, file).split(path.sep).join("/"), await readFile(file)] as const),
    ),
  );
}

function settingsFor(site: SiteRoot): AstroInlineConfig {
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
      plugins: site.modules.map(givenModule),
      build: { assetsInlineLimit: (file: string) => (/\.(?:woff2|css|svg)$/u.test(file) ? false : undefined) },
      // The code stands alone: it is kept, and run where no packages lie.
      environments: { prerender: { resolve: { noExternal: true as const } } },
    },
  };
}

/** Hands data to the pages without serialising it: the module reads it from a symbol of the global object. */
function givenModule(name: string): VitePlugin {
  const id = `virtual:${name}`;
  return {
    name: `plotreel-${name}`,
    resolveId: (asked: string) => (asked === id ? `\0${id}` : undefined),
    load: (asked: string) =>
      asked === `\0${id}`
        ? `export default globalThis[Symbol.for(${JSON.stringify(Symbol.keyFor(placeOf(name)))})];`
        : undefined,
  };
}
