/** Every regular expression of the sources, by its pattern: written as a literal, or put together while the code is loaded. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

export interface FoundRegex {
  readonly source: string;
  readonly flags: string;
  /** "calendar.ts:152", the first place that has it. */
  readonly at: string;
}

const src = path.resolve(import.meta.dirname, "../../src");

export function regexLiterals(): ReadonlyMap<string, FoundRegex> {
  const found = new Map<string, FoundRegex>();
  for (const file of readdirSync(src, { recursive: true, encoding: "utf8" }).sort()) {
    if (!/\.(?:ts|astro)$/.test(file)) continue;
    const text = readFileSync(path.join(src, file), "utf8");
    for (const code of file.endsWith(".astro") ? scriptsOf(text) : [text]) {
      const tree = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
      const visit = (node: ts.Node): void => {
        if (ts.isRegularExpressionLiteral(node)) {
          const end = node.text.lastIndexOf("/");
          const regex = { source: node.text.slice(1, end), flags: node.text.slice(end + 1) };
          const line = tree.getLineAndCharacterOfPosition(node.getStart()).line + 1;
          if (!found.has(keyOf(regex))) found.set(keyOf(regex), { ...regex, at: `${file}:${line}` });
        }
        ts.forEachChild(node, visit);
      };
      visit(tree);
    }
  }
  return found;
}

/** Those that `load` makes from parts: tables of words become one pattern. */
export async function regexesMadeBy(load: () => Promise<unknown>): Promise<ReadonlyMap<string, FoundRegex>> {
  const found = new Map<string, FoundRegex>();
  const Original = globalThis.RegExp;
  globalThis.RegExp = new Proxy(Original, {
    construct(target, given: [string | RegExp, string?], newTarget) {
      const made = Reflect.construct(target, given, newTarget) as RegExp;
      // Who called: packages make many of their own while they are loaded.
      const [, , line = ""] = (new Error().stack ?? "").split("\n");
      const regex = { source: made.source, flags: made.flags };
      if (line.includes(`${src}/`) && !found.has(keyOf(regex)))
        found.set(keyOf(regex), { ...regex, at: line.slice(line.indexOf(src) + src.length + 1) });
      return made;
    },
  });
  try {
    await load();
  } finally {
    globalThis.RegExp = Original;
  }
  return found;
}

export function keyOf({ source, flags }: Pick<FoundRegex, "source" | "flags">): string {
  return `/${source}/${flags}`;
}

/** What an Astro page runs: its head, and the scripts in it. */
function scriptsOf(page: string): readonly string[] {
  const head = page.startsWith("---\n") ? page.slice(4, page.indexOf("\n---", 4)) : "";
  return [head, ...Array.from(page.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g), ([, code = ""]) => code)];
}
