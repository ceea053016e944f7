/**
 * The place that calls Astro: it turns the templates of both sites into code that makes pages, once, when the tool is built,
 * and src/site/compiled-pages.ts runs that code. Astro's `build` is marked experimental, so Astro is pinned exactly and
 * everything we rely on stands in these two files.
 */
import { cp, mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import type { AstroInlineConfig, ViteUserConfig } from "astro";
import {
  BASE,
  type CompiledList,
  dataPlace,
  LIST,
  SITES,
  type SiteName,
  wordsPlace,
} from "../../src/site/compiled-pages.ts";
import { CLONE, filesIn } from "./sources.ts";

type VitePlugin = Extract<NonNullable<NonNullable<ViteUserConfig["plugins"]>[number]>, { name: string }>;

/** What pages are made of, below src/site; templates import nothing from beside these folders but types. */
export const PAGE_FOLDERS = ["public", "field", "components", "styles"] as const;

/** Fills `outDir` with a folder for each site: `code`, `assets`, and the list of both. */
export async function compileTemplates(outDir: string): Promise<void> {
  const before = process.cwd();
  const target = path.resolve(outDir);
  await mkdir(path.join(CLONE, ".cache"), { recursive: true });
  // Astro writes beside its sources, and looks for packages from the current folder.
  const work = await mkdtemp(path.join(CLONE, ".cache", "templates-at-work-"));
  try {
    for (const name of PAGE_FOLDERS)
      await cp(path.join(CLONE, "src/site", name), path.join(work, name), { recursive: true });
    await symlink(path.join(CLONE, "node_modules"), path.join(work, "node_modules"), "junction");
    process.chdir(work);
    for (const name of SITES) await compileSite(name, path.join(work, name), path.join(target, name));
  } finally {
    process.chdir(before);
    await rm(work, { recursive: true, force: true });
  }
}

async function compileSite(name: SiteName, root: string, target: string): Promise<void> {
  const { build } = await import("astro");
  const built = `${root}.built`;
  let pages: ReadonlyMap<string, { readonly styles: unknown }> = new Map();
  await build({
    ...settingsFor(name, root),
    outDir: built,
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
                await cp(path.join(built, ".prerender"), path.join(target, "code"), { recursive: true });
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
  await cp(built, path.join(target, "assets"), {
    recursive: true,
    filter: (file) => path.basename(file) !== ".prerender",
  });
  await dropPaths(path.join(target, "code"), path.dirname(root));
  const entry = (await readdir(path.join(target, "code"))).find((file) => /^prerender-entry\..*\.mjs$/u.test(file));
  if (entry === undefined) throw new Error(`Astro made no code of the ${name} templates.`);
  const list: CompiledList = {
    entry,
    assets: await filesIn(path.join(target, "assets")),
    styles: [...pages].map(([page, { styles }]) => [page, styles]),
  };
  await writeFile(path.join(target, LIST), JSON.stringify(list));
}

/** Astro names each template by its whole path; what is shipped tells nobody where it was built. */
async function dropPaths(folder: string, work: string): Promise<void> {
  for (const name of await filesIn(folder)) {
    const file = path.join(folder, name);
    const text = await readFile(file, "utf8");
    if (text.includes(work)) await writeFile(file, text.replaceAll(work, ""));
  }
}

function settingsFor(name: SiteName, root: string): AstroInlineConfig {
  process.env.ASTRO_TELEMETRY_DISABLED = "1";
  // The shell's own word for the program that runs, which Astro would copy into the code.
  delete process.env._;
  // For parts of a page that come later, which our pages have none of; without one Astro would draw a new one each time.
  process.env.ASTRO_KEY = Buffer.alloc(32).toString("base64");
  return {
    configFile: false,
    logLevel: "warn",
    root,
    srcDir: root,
    // Nothing is copied unseen: this folder does not exist, and photos come in by their own list.
    publicDir: path.join(root, "no-public-folder"),
    cacheDir: path.join(root, ".cache"),
    base: BASE,
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
          // The search field of the first page leads to the search without scripts.
          `form-action ${name === "public" ? "'self'" : "'none'"}`,
        ],
      },
    },
    vite: {
      cacheDir: path.join(root, ".vite"),
      plugins: [givenModule(`virtual:${name}-site`, dataPlace(name)), givenModule("virtual:words", wordsPlace(name))],
      build: { assetsInlineLimit: (file: string) => (/\.(?:woff2|css|svg)$/u.test(file) ? false : undefined) },
      // The code stands alone: it is kept, and run where no packages lie.
      environments: { prerender: { resolve: { noExternal: true as const } } },
    },
  };
}

/** Hands data to the pages without serialising it: the module reads it from a symbol of the global object. */
function givenModule(asked: string, place: symbol): VitePlugin {
  const id = `\0${asked}`;
  return {
    name: `plotreel-${asked}`,
    resolveId: (wanted: string) => (wanted === asked ? id : undefined),
    load: (wanted: string) =>
      wanted === id ? `export default globalThis[Symbol.for(${JSON.stringify(Symbol.keyFor(place))})];` : undefined,
  };
}
