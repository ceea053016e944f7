/** What package.json says against what the sources ask for. */
import { readFileSync } from "node:fs";
import { globSync } from "tinyglobby";
import { describe, expect, it } from "vitest";

const manifest = JSON.parse(readFileSync("package.json", "utf8")) as {
  readonly engines: { readonly node: string };
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly optionalDependencies: Readonly<Record<string, string>>;
};

/** Names of packages that code asks for, without the parts of Node and the modules that templates are given. */
function askedFor(patterns: readonly string[]): ReadonlySet<string> {
  const asked = new Set<string>();
  for (const file of globSync([...patterns])) {
    const text = readFileSync(file, "utf8");
    const imports =
      /(?:^import|\bfrom|\bimport\(|\burl\(|\brequire\(|createRequire\(import\.meta\.url\)\() ?"((?:@[a-z0-9-]+\/)?[a-z0-9][\w.-]*)(?:\/[^"\n]*)?"/gmu;
    for (const [, name = ""] of text.matchAll(imports)) asked.add(name);
  }
  return asked;
}

const runtime = askedFor(["src/**/*.{ts,astro,css}", "bin/*.js"]);
const everywhere = askedFor(["src/**/*.{ts,astro,css}", "{bin,scripts,tests}/**/*.{ts,js}", "*.{ts,mjs}"]);
const declared = { ...manifest.dependencies, ...manifest.optionalDependencies, ...manifest.devDependencies };

/** Used as commands, for their types, or read as a file: no module asks for them. */
const NOT_IMPORTED = ["@astrojs/check", "@biomejs/biome", "@types/node", "axe-core", "node", "typescript"];

describe("packages", () => {
  it("are declared where anything asks for them", () => {
    // Types of trees, whose packages hold nothing else.
    const types = { mdast: "@types/mdast", hast: "@types/hast" } as Readonly<Record<string, string>>;
    expect([...everywhere].filter((name) => declared[types[name] ?? name] === undefined)).toEqual([]);
  });

  it("are asked for where they are declared", () => {
    const unused = Object.keys(declared).filter(
      (name) => !everywhere.has(name) && !everywhere.has(name.replace("@types/", "")) && !NOT_IMPORTED.includes(name),
    );
    expect(unused).toEqual([]);
  });

  it("that are shipped beside the program are asked for by it, each in one version", () => {
    const shipped = { ...manifest.dependencies, ...manifest.optionalDependencies };
    expect(Object.keys(shipped).filter((name) => !runtime.has(name))).toEqual([]);
    expect(Object.values(declared).filter((version) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/u.test(version))).toEqual([]);
  });
});

it("one version of Node is the oldest, wherever it is told", () => {
  const [, oldest = ""] = /^>=(\d+\.\d+)$/u.exec(manifest.engines.node) ?? [];
  const [major, minor] = oldest.split(".");
  expect(readFileSync("README.md", "utf8").match(/Node \d[\d.]*/gu)).toEqual([`Node ${oldest}`]);
  expect(readFileSync("bin/plotreel.js", "utf8")).toContain(
    `major < ${major} || (major === ${major} && minor < ${minor})`,
  );
  expect(readFileSync("bin/plotreel.js", "utf8")).toContain(`needs Node ${oldest} or newer`);
  expect(readFileSync("scripts/build/build.ts", "utf8")).toContain(`"node${oldest}"`);
});
