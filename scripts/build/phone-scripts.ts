/**
 * The scripts that run on the phone, each a module of the project with all it imports, made small by esbuild. What needs Node
 * cannot be bundled, and is refused.
 */
import { writeFile } from "node:fs/promises";
import path from "node:path";
import { type BuildOptions, build, type Plugin } from "esbuild";
import * as reader from "../../src/records/typed-reading.ts";
import { CLONE } from "./sources.ts";

const SOURCES = path.join(CLONE, "src");

/** What the phone takes of the records room: what reads a line while it is typed. The rest reads files. */
const READER = path.join(SOURCES, "records/typed-reading.ts");
/** The constant that the reader's own script gives. */
const READS = "plotreelReader";

const carryingReader: Plugin = {
  name: "carrying-reader",
  setup({ onResolve }) {
    onResolve({ filter: /\/records\/index\.ts$/ }, () => ({ path: READER }));
  },
};

/** Pages of one site share the reader as a script of its own, which is asked only when a line is read. */
const besideReader: Plugin = {
  name: "beside-reader",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /\/records\/index\.ts$/ }, () => ({ path: READER, namespace: READS }));
    onLoad({ filter: /./, namespace: READS }, () => ({
      contents: Object.keys(reader)
        .map((name) => `export const ${name} = (...all) => ${READS}.${name}(...all);`)
        .join("\n"),
    }));
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
};

interface ScriptForm {
  /** What the module exports is a constant of that name. */
  readonly globalName?: string;
  /** The reader stands in a script beside it. */
  readonly beside?: boolean;
}

/** Source of a script that runs a module, below src. */
export async function phoneScriptOf(module: string, { globalName, beside = false }: ScriptForm = {}): Promise<string> {
  const { outputFiles } = await build({
    ...forThePhone,
    plugins: [beside ? besideReader : carryingReader],
    entryPoints: [path.join(SOURCES, module)],
    ...(globalName === undefined ? {} : { globalName }),
  });
  return outputFiles?.[0]?.text ?? "";
}

/** Fills a folder with the scripts of the pages that are used in the garden and their reader, of the worker that keeps them, of the box to write in, and of what is tapped on other pages. */
export async function writePhoneScripts(folder: string): Promise<void> {
  for (const [file, module, form] of [
    ["reader.js", "records/typed-reading", { globalName: READS }],
    ["list.js", "site/field-list/phone/start", { beside: true }],
    ["outdoors.js", "site/outdoors/phone/start", { beside: true }],
    ["worker.js", "site/field-list/phone/offline-worker", {}],
    ["write.js", "site/writing/start", {}],
    ["taps.js", "site/writing/start-taps", {}],
  ] as const)
    await writeFile(path.join(folder, file), await phoneScriptOf(`${module}.ts`, form));
}
