/**
 * The scripts that run on the phone, each a module of the project with all it imports, made small by esbuild. What needs Node
 * cannot be bundled, and is refused.
 */
import { writeFile } from "node:fs/promises";
import path from "node:path";
import { type BuildOptions, build, type Plugin } from "esbuild";
import { CLONE } from "./sources.ts";

const SOURCES = path.join(CLONE, "src");

/** The phone takes no more of the records room than what reads a line while it is typed; the rest reads files. */
const readerOfLines: Plugin = {
  name: "reader-of-lines",
  setup({ onResolve }) {
    onResolve({ filter: /\/records\/index\.ts$/ }, () => ({ path: path.join(SOURCES, "records/typed-reading.ts") }));
  },
};

const forThePhone: BuildOptions = {
  bundle: true,
  write: false,
  minify: true,
  charset: "utf8",
  target: "es2022",
  format: "iife",
  platform: "browser",
  legalComments: "none",
  logLevel: "silent",
  plugins: [readerOfLines],
};

/** Source of a script that runs a module, below src; with a name, what the module exports is a constant of that name. */
export async function phoneScriptOf(module: string, globalName?: string): Promise<string> {
  const { outputFiles } = await build({
    ...forThePhone,
    entryPoints: [path.join(SOURCES, module)],
    ...(globalName === undefined ? {} : { globalName }),
  });
  return outputFiles?.[0]?.text ?? "";
}

/** Fills a folder with the scripts of the field list, of the page to write outdoors, of the worker that keeps it, of the box to write in, and of what is tapped on other pages. */
export async function writePhoneScripts(folder: string): Promise<void> {
  for (const [file, module] of [
    ["list.js", "field-list/phone/start"],
    ["outdoors.js", "outdoors/phone/start"],
    ["worker.js", "field-list/phone/offline-worker"],
    ["write.js", "writing/start"],
    ["taps.js", "writing/start-taps"],
  ] as const)
    await writeFile(path.join(folder, file), await phoneScriptOf(`site/${module}.ts`));
}
