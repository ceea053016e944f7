/**
 * Stands for all that pages are made with beside a person's data: the tool's own sources, the packages it is installed
 * with, and the program that runs it. Nobody has to remember to raise a number.
 */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { installedPackages } from "./work-folder.ts";

const SOURCES = path.join(import.meta.dirname, "..");

/** Folders that work beside the sources leaves behind. */
const NOT_SOURCES = /(?:^|[/\\])(?:node_modules|\.[^/\\]*)(?:[/\\]|$)/u;

let version: string | undefined;

/** Looked up once in a run. */
export function toolVersion(): string {
  version ??= sumOfTool();
  return version;
}

function sumOfTool(): string {
  const hash = createHash("sha256").update(JSON.stringify(process.versions));
  const files = readdirSync(SOURCES, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(SOURCES, path.join(entry.parentPath, entry.name)))
    .filter((file) => !NOT_SOURCES.test(file))
    .sort();
  for (const file of files) hash.update(`\0${file}\0`).update(readFileSync(path.join(SOURCES, file)));
  // The list of everything installed, which npm writes; without it at least Astro itself is known.
  const packages = installedPackages();
  for (const file of [".package-lock.json", path.join("astro", "package.json")])
    hash.update("\0").update(textOf(path.join(packages, file)));
  return hash.digest("hex");
}

function textOf(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return "";
  }
}
