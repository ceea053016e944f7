/** What comes with the packages: under which licences, and whether each that is asked for is used. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { TrustRow } from "./table.ts";

/** Licences that go with MIT when nothing of theirs is changed or built in; weak copyleft only for libraries of their own. */
const FINE =
  /^\(?(?:MIT(?:-0)?|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|BlueOak-1\.0\.0|CC0-1\.0|CC-BY-[34]\.0|Unlicense|Python-2\.0|MPL-2\.0|LGPL-3\.0(?:-or-later)?|OFL-1\.1|Zlib|WTFPL|Artistic-2\.0)(?: (?:AND|OR) .+)?\)?$/;

/** Named by no file, for reasons of their own. */
const USED_OTHERWISE: Readonly<Record<string, string>> = {
  node: "runs the scripts",
  typescript: "npm run types",
  "@astrojs/check": "npm run types",
  "@biomejs/biome": "npm run lint",
};

const root = path.resolve(import.meta.dirname, "../..");

interface Locked {
  readonly license?: string;
  readonly integrity?: string;
}

export async function licenceRows(): Promise<readonly TrustRow[]> {
  const { packages } = JSON.parse(readFileSync(path.join(root, "package-lock.json"), "utf8")) as {
    packages: Record<string, Locked>;
  };
  const all = Object.entries(packages).filter(([name]) => name !== "");
  const counts = new Map<string, number>();
  for (const [, { license = "none named" }] of all) counts.set(license, (counts.get(license) ?? 0) + 1);
  const said = [...counts].sort((a, b) => b[1] - a[1]).map(([name, count]) => `${name} ${count}`);
  return [
    {
      what: "packages under a licence that goes with MIT",
      cases: all.length,
      failed: all
        .filter(([name, { license }]) => !isFine(name, license))
        .map(([name, { license }]) => `${name}: ${license ?? "names none"}`),
      seen: said.slice(0, 6).join(", "),
    },
    {
      what: "packages held against a sum",
      cases: all.length,
      failed: all.filter(([, { integrity }]) => integrity === undefined).map(([name]) => name),
    },
    usedRow(),
  ];
}

/** suncalc names none in its package.json; its file LICENSE is that of two-clause BSD. */
function isFine(name: string, license: string | undefined): boolean {
  return license === undefined ? name === "node_modules/suncalc" : FINE.test(license);
}

function usedRow(): TrustRow {
  const { dependencies, devDependencies, optionalDependencies } = JSON.parse(
    readFileSync(path.join(root, "package.json"), "utf8"),
  ) as Record<string, Record<string, string>>;
  const run = Object.keys({ ...dependencies, ...optionalDependencies });
  const asked = [...run, ...Object.keys(devDependencies ?? {})];
  const imported = new Map(["src", "scripts", "tests"].map((folder) => [folder, importsOf(folder)]));
  const everywhere = new Set([...imported.values()].flatMap((names) => [...names]));
  const unused = asked.filter(
    (name) => !everywhere.has(name) && USED_OTHERWISE[name] === undefined && !name.startsWith("@types/"),
  );
  // Of the code that is shipped only: tests may use what a package brings. Most of what it asks for is built into it.
  const unasked = [...(imported.get("src") ?? [])].filter(
    (name) => !asked.includes(name) && !asked.includes(`@types/${name}`),
  );
  return {
    what: "packages asked for and used, used and asked for",
    cases: asked.length,
    failed: [
      ...unused.map((name) => `${name} is used nowhere`),
      ...unasked.map((name) => `${name} is used in src and not asked for`),
    ],
  };
}

function importsOf(folder: string): ReadonlySet<string> {
  const found = new Set<string>();
  for (const file of readdirSync(path.join(root, folder), { recursive: true, encoding: "utf8" })) {
    if (!/\.(?:ts|astro|js|mjs|css)$/.test(file)) continue;
    const text = readFileSync(path.join(root, folder, file), "utf8");
    for (const [, name = ""] of text.matchAll(
      /(?:from|import|import\(|@import|require\(|resolve\()\s*["']((?:@[\w-]+\/)?[a-z][\w.-]*)(?:\/[^"']*)?["']/g,
    ))
      found.add(name);
  }
  return found;
}
