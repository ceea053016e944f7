/**
 * The one place that calls Astro. Its `build` is marked experimental, so Astro is pinned exactly and everything we rely
 * on stands here.
 */
import path from "node:path";
import { type AstroInlineConfig, build, type ViteUserConfig } from "astro";
import { withoutDirectionControls } from "./without-direction-controls.ts";

type VitePlugin = Extract<NonNullable<NonNullable<ViteUserConfig["plugins"]>[number]>, { name: string }>;

export interface RootBuild {
  /** Folder of the Astro root within the work folder, absolute. */
  readonly root: string;
  /** Absolute; emptied first. */
  readonly outDir: string;
  /** Path below which the site is served: "/" or "/garden/". */
  readonly base: string;
  /** Address without path, for canonical links. */
  readonly address?: string | undefined;
  /** What `import data from "virtual:…"` gives the pages, by module name. One root gets one module, so that no page can ask for another root's. */
  readonly module: string;
  readonly data: unknown;
}

/** Builds one site. The current folder must be the work folder: Astro looks for packages from there. */
export async function buildRoot(site: RootBuild): Promise<void> {
  process.env.ASTRO_TELEMETRY_DISABLED = "1";
  const config: AstroInlineConfig = {
    configFile: false,
    logLevel: "warn",
    root: site.root,
    srcDir: site.root,
    outDir: site.outDir,
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
      plugins: [dataModule(site.module, site.data)],
      build: { assetsInlineLimit: (file: string) => (/\.(?:woff2|css|svg)$/u.test(file) ? false : undefined) },
      environments: { prerender: { resolve: { noExternal: true } } },
    },
  };
  await build(config);
}

/** Hands data to the pages without serialising it: the module reads it from a symbol of the global object. */
function dataModule(name: string, data: unknown): VitePlugin {
  const id = `virtual:${name}`;
  const key = `plotreel:${name}`;
  (globalThis as Record<symbol, unknown>)[Symbol.for(key)] = withoutDirectionControls(data);
  return {
    name: `plotreel-${name}`,
    resolveId: (asked: string) => (asked === id ? `\0${id}` : undefined),
    load: (asked: string) =>
      asked === `\0${id}` ? `export default globalThis[Symbol.for(${JSON.stringify(key)})];` : undefined,
  };
}
