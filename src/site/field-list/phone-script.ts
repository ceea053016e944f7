/**
 * The scripts that run on the phone: typed sources in phone/, put one behind the other, every part in one scope, and made
 * small when a list is made. Before them stands the reader of note lines, whose modules keep a scope of their own.
 */
import { readFileSync } from "node:fs";
import { bundledModules, smallScript } from "./bundled-modules.ts";

/** What reads a line while it is typed. */
const READER = new URL("../../records/typed-reading.ts", import.meta.url);

/** In the order in which they build on one another. */
const PARTS = [
  "ticks",
  "plan-clock",
  "take-home",
  "pacing",
  "page",
  "keeping",
  "stops",
  "shots",
  "typed",
  "notes",
  "overview",
  "talking",
  "garden-mode",
  "start",
] as const;

let script: string | undefined;

/** One module script. */
export function phoneScript(): string {
  script ??= `${bundledModules(READER, ["readTyped", "typedNames"])}${smallScript(PARTS.map(inOneScope).join(""))}`;
  return script;
}

/** The worker that keeps `pages`: path in the site to SHA-256 in base64. */
export function offlineWorker(pages: Readonly<Record<string, string>>, version: string): string {
  return `const pages = ${JSON.stringify(pages)};\nconst version = ${JSON.stringify(version)};\n${smallScript(inOneScope("offline-worker"))}`;
}

/** Without the imports and exports that the shared scope makes needless. */
function inOneScope(part: string): string {
  return readFileSync(new URL(`phone/${part}.ts`, import.meta.url), "utf8")
    .replace(/^import\b[^;]*;$/gm, "")
    .replace(/^export (?=(?:async )?(?:function|const|class|interface|type)\b)/gm, "");
}
