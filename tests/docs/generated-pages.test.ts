/** Pages that are printed from tables say what the tables say now. */
import { readFile } from "node:fs/promises";
import { expect, test } from "vitest";
import { generatedPages } from "../../scripts/docs/pages.ts";

test.each(Object.entries(generatedPages))("docs/%s is what `npm run docs` prints", async (name, page) => {
  expect(await readFile(`docs/${name}`, "utf8")).toBe(await page());
});
