/**
 * `npm run build`: dist/, all of the tool that is shipped. Its code and that of the packages it is built with become a few
 * modules, so what runs is what was tested, to the byte, and nothing is compiled where it is installed. Packages with parts in
 * machine code stay packages: they are the dependencies in package.json, all others are needed here only.
 */
import { mkdir, readFile, rm, writeFile } from "node:fs/promises";
import path from "node:path";
import { build } from "esbuild";
import { recordSchemas } from "../docs/record-schemas.ts";
import { licencesOf } from "./licences.ts";
import { prepare } from "./prepare.ts";
import { CLONE } from "./sources.ts";

/** The program, and what runs in threads of its own: src/photos finds both beside the code that starts them. */
const ENTRIES = {
  cli: "src/cli/main.ts",
  "heic-worker": "src/photos/heic-worker.ts",
  "measure-worker": "src/photos/measure-worker.ts",
} as const;

/** What engines in package.json names, too. */
const OLDEST_NODE = "node22.18";

/** Packages in the older form ask for parts of Node by a function that modules do not have. */
const REQUIRE =
  'import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);';

/** Makes the folder anew. */
export async function buildInto(dist: string): Promise<void> {
  await rm(dist, { recursive: true, force: true });
  await mkdir(dist, { recursive: true });
  const { metafile } = await build({
    absWorkingDir: CLONE,
    entryPoints: Object.entries(ENTRIES).map(([out, file]) => ({ in: file, out })),
    outdir: dist,
    bundle: true,
    splitting: true,
    format: "esm",
    platform: "node",
    target: OLDEST_NODE,
    charset: "utf8",
    banner: { js: REQUIRE },
    external: await shippedPackages(),
    legalComments: "none",
    metafile: true,
    logLevel: "warning",
  });
  await writeFile(path.join(dist, "licences.txt"), await licencesOf(Object.keys(metafile.inputs)));
  await mkdir(path.join(dist, "schemas"));
  for (const [name, schema] of Object.entries(recordSchemas))
    await writeFile(path.join(dist, "schemas", name), schema());
  await prepare(path.join(dist, "prepared"));
}

async function shippedPackages(): Promise<string[]> {
  const { dependencies = {}, optionalDependencies = {} } = JSON.parse(
    await readFile(path.join(CLONE, "package.json"), "utf8"),
  ) as Readonly<Record<string, Readonly<Record<string, string>>>>;
  return [...Object.keys(dependencies), ...Object.keys(optionalDependencies)];
}

if (process.argv[1] === import.meta.filename) await buildInto(path.join(CLONE, "dist"));
