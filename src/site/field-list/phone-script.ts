/**
 * The scripts that run on the phone: typed sources in phone/, stripped of their types and put one behind the other when a
 * list is made. There is no bundler, because there is nothing to bundle: no package, and every part in one scope.
 */
import { readFileSync } from "node:fs";
import { stripTypeScriptTypes } from "node:module";

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
  "notes",
  "overview",
  "talking",
  "garden-mode",
  "start",
] as const;

/** One module script. */
export function phoneScript(): string {
  return PARTS.map(plainScript).join("");
}

/** The worker that keeps `pages`: path in the site to SHA-256 in base64. */
export function offlineWorker(pages: Readonly<Record<string, string>>, version: string): string {
  return `const pages = ${JSON.stringify(pages)};\nconst version = ${JSON.stringify(version)};\n${plainScript("offline-worker")}`;
}

/** Without types, without the imports that the shared scope makes needless, without what is written for readers. */
function plainScript(part: string): string {
  return withoutWarning(() => stripTypeScriptTypes(readFileSync(new URL(`phone/${part}.ts`, import.meta.url), "utf8")))
    .replace(/^import\b[^;]*;$/gm, "")
    .replace(/^export (?=(?:async )?(?:function|const|class)\b)/gm, "")
    .replace(/^[ \t]*\/\*\*[\s\S]*?\*\/$/gm, "")
    .replace(/[ \t]+$/gm, "")
    .replace(/\n{2,}/g, "\n");
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
