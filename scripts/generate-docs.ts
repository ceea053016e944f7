/** `npm run docs`: prints the pages of docs/ that are made from tables and from the commands' own help. */
import { mkdir, writeFile } from "node:fs/promises";
import path from "node:path";
import { generatedPages } from "./docs/pages.ts";

const docs = path.join(import.meta.dirname, "..", "docs");
await mkdir(path.join(docs, "schemas"), { recursive: true });
for (const [name, page] of Object.entries(generatedPages)) {
  await writeFile(path.join(docs, name), await page());
  console.log(`docs/${name}`);
}
