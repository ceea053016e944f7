/**
 * `npm run docs`: prints the pages of docs/ that are made from tables and from the commands' own help, and below every page of the
 * handbook the ways to the others.
 */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import path from "node:path";
import { handbookFiles, withWays } from "./docs/handbook.ts";
import { generatedPages } from "./docs/pages.ts";

const docs = path.join(import.meta.dirname, "..", "docs");
await mkdir(path.join(docs, "schemas"), { recursive: true });
for (const [name, page] of Object.entries(generatedPages)) {
  await writeFile(path.join(docs, name), await page());
  console.log(`docs/${name}`);
}
for (const name of handbookFiles) {
  if (Object.hasOwn(generatedPages, name)) continue;
  const file = path.join(docs, name);
  const page = await readFile(file, "utf8");
  if (withWays(name, page) !== page) await writeFile(file, withWays(name, page));
}
