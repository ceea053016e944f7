/**
 * The scripts that run on the phone: typed sources in phone/, stripped of their types and put one behind the other, every
 * part in one scope, when a list is made. Before them stands the reader of note lines, whose modules keep scopes of their own.
 */
import { readFileSync } from "node:fs";
import { stripTypeScriptTypes } from "node:module";
import { bundledModules, withoutRemarks } from "./bundled-modules.ts";

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
  script ??= withoutWarning(
    () => `${bundledModules(READER, ["readTyped", "typedNames"])}${PARTS.map(plainScript).join("")}`,
  );
  return script;
}

/** The worker that keeps `pages`: path in the site to SHA-256 in base64. */
export function offlineWorker(pages: Readonly<Record<string, string>>, version: string): string {
  return `const pages = ${JSON.stringify(pages)};\nconst version = ${JSON.stringify(version)};\n${plainScript("offline-worker")}`;
}

/** Without types, without the imports that the shared scope makes needless, without what is written for readers. */
function plainScript(part: string): string {
  const source = readFileSync(new URL(`phone/${part}.ts`, import.meta.url), "utf8");
  return withoutRemarks(
    withoutWarning(() => stripTypeScriptTypes(source))
      .replace(/^import\b[^;]*;$/gm, "")
      .replace(/^export (?=(?:async )?(?:function|const|class)\b)/gm, ""),
  );
}

/** Node says with every run that stripping is new in it; the person who asked for a list has no use for that. */
function withoutWarning<T>(work: () => T): T {
  const { emitWarning } = process;
  process.emitWarning = () => undefined;
  try {
    return work();
  } finally {
    process.emitWarning = emitWarning;
  }
}
