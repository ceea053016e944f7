/**
 * Stands for all that results are made with beside a person's data: the tool's own sources, the packages it is built with, and
 * the program that runs it. Nobody has to remember to raise a number.
 */
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** What is shipped has its code in dist/, and beside it the digest of the sources it was built from. */
const SHIPPED = path.join(import.meta.dirname, "prepared", "version");

/** In the clone: what decides. The list of packages names the few that are not built in, too, each with its one version. */
const CLONE = path.join(import.meta.dirname, "..", "..");
const DECIDING = ["src", path.join("scripts", "build"), "package-lock.json"] as const;

/** Folders that work beside the sources leaves behind. */
const NOT_SOURCES = /(?:^|\/)\.[^/]*(?:\/|$)/u;

let version: string | undefined;
let sources: string | undefined;

/** Looked up once in a run. */
export function toolVersion(): string {
  version ??= createHash("sha256").update(JSON.stringify(process.versions)).update(sourcesDigest()).digest("hex");
  return version;
}

/** The same on every machine and under every version of Node. */
export function sourcesDigest(): string {
  sources ??= existsSync(SHIPPED) ? readFileSync(SHIPPED, "utf8") : digestOfClone();
  return sources;
}

function digestOfClone(): string {
  const hash = createHash("sha256");
  for (const file of DECIDING.flatMap(filesBelow))
    hash.update(`\0${file}\0`).update(readFileSync(path.join(CLONE, file)));
  return hash.digest("hex");
}

function filesBelow(name: string): readonly string[] {
  const whole = path.join(CLONE, name);
  if (path.extname(name) !== "") return [name];
  return readdirSync(whole, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(CLONE, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .filter((file) => !NOT_SOURCES.test(file))
    .sort();
}
