/** The table of pages against the templates themselves: what it says they read is what they read. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { FIELD_PAGES, type PageRow, PUBLIC_PAGES, templateOf } from "../../src/site/page-table.ts";

const SITE = path.resolve("src/site");
const sites: readonly [name: string, pages: readonly Pick<PageRow<never>, "template" | "reads">[]][] = [
  ["public", PUBLIC_PAGES],
  ["field", FIELD_PAGES],
];

function sourcesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.(?:astro|ts)$/u.test(file))
    .map((file) => file.split(path.sep).join("/"))
    .sort();
}

/** Parts of the site's data that a template names, beside addresses. */
function partsRead(source: string): readonly string[] {
  const named = [...source.matchAll(/\bsite\.(\w+)(?!\w)(?!\.href\b)/gu)].map(([, part]) => part ?? "");
  const taken = [...source.matchAll(/\{([^{}]*)\} = site;/gu)].flatMap(([, parts = ""]) =>
    parts.split(",").map((part) => part.trim().replace(/:.*$/u, "")),
  );
  return [...new Set([...named, ...taken])].filter((part) => part !== "frame").sort();
}

describe.each(sites)("the %s pages", (name, pages) => {
  it("stand in the table, each once", () => {
    expect(pages.map(({ template }) => template).toSorted()).toEqual(sourcesIn(path.join(SITE, name, "pages")));
  });

  it("read what the table says, and addresses", () => {
    for (const { template, reads } of pages) {
      const source = readFileSync(path.join(SITE, name, "pages", template), "utf8");
      expect({ template, reads: partsRead(source) }).toEqual({ template, reads: reads.toSorted() });
      // Parts are asked for by name; the whole of the data is never handed on.
      expect({ template, handedOn: /(?:[({,=]|\.{3})\s*site\s*[)},]/u.exec(source)?.[0] }).toEqual({ template });
    }
  });
});

it("components read nothing but what pages give them, and the words", () => {
  for (const file of sourcesIn(path.join(SITE, "components"))) {
    const asked = [...readFileSync(path.join(SITE, "components", file), "utf8").matchAll(/"virtual:([\w-]+)"/gu)];
    expect({ file, asked: asked.map(([, module]) => module).filter((module) => module !== "words") }).toEqual({
      file,
      asked: [],
    });
  }
});

it("finds the template of a file, and asks for no other part of the data", () => {
  const site = {
    get home(): never {
      throw new Error("The first page was not asked for.");
    },
    bedPages: [{ id: "long-bed" }],
    viewpoints: [{ bedId: "long-bed", name: "from the gate" }],
  } as unknown as Parameters<(typeof FIELD_PAGES)[number]["files"]>[0];
  expect(templateOf(FIELD_PAGES, site, "beds/long-bed/index.html")).toBe("beds/[id]/index.astro");
  expect(templateOf(FIELD_PAGES, site, "beds/short-bed/index.html")).toBeUndefined();
  expect(templateOf(FIELD_PAGES, site, "viewpoints/long-bed/from the gate/index.html")).toBe(
    "viewpoints/[bed]/[name].astro",
  );
});
