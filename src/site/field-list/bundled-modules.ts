/**
 * Scripts made small for the phone, by the bundler that Astro brings along: a module of the project with all it imports, its
 * tables among them, or source that stands alone. What needs Node cannot be bundled, and is refused.
 */
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

type Esbuild = typeof import("esbuild");

// As most commands make no list, it is loaded by the first one that does.
const esbuild = (): Esbuild => createRequire(import.meta.url)("esbuild");

const small = { minify: true, charset: "utf8", target: "es2022", legalComments: "none", logLevel: "silent" } as const;

/** Source of a script in which `exported` are constants, taken from the module at `entry`, and nothing else is. */
export function bundledModules(entry: URL, exported: readonly string[]): string {
  const names = `{ ${exported.join(", ")} }`;
  const { outputFiles } = esbuild().buildSync({
    ...small,
    stdin: {
      contents: `export ${names} from ${JSON.stringify(fileURLToPath(entry))};`,
      resolveDir: fileURLToPath(new URL(".", entry)),
    },
    bundle: true,
    write: false,
    format: "iife",
    globalName: "all",
    platform: "browser",
  });
  return `const ${names} = (() => {\n${outputFiles[0]?.text ?? ""}return all;\n})();\n`;
}

/** TypeScript without its types and without what is written for readers. */
export function smallScript(source: string): string {
  return esbuild().transformSync(source, { ...small, loader: "ts", format: "esm" }).code;
}
