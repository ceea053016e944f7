/**
 * Modules of the project put into one script for the phone: each stripped of its types and wrapped in a scope of its own, the
 * imported before those that import them. They say all they need by named imports and exports; anything else is refused here.
 */
import { readFileSync } from "node:fs";
import { createRequire, stripTypeScriptTypes } from "node:module";
import { pathToFileURL } from "node:url";

/** Source of a script in which `exported` are constants, taken from the module at `entry`, and nothing else is. */
export function bundledModules(entry: URL, exported: readonly string[]): string {
  const numbers = new Map<string, number>();
  const parts: string[] = [];
  const entryNumber = add(entry, numbers, parts, []);
  return `const { ${exported.join(", ")} } = (() => {\n${parts.join("")}return m${entryNumber};\n})();\n`;
}

const imports = /^import\s*\{([^}]*)\}\s*from\s*"([^"]+)";?$/gm;
const reexports = /^export\s*\{([^}]*)\}\s*from\s*"[^"]+";?$/m;
const declared = /^export (?:async )?(?:function\*?|const|class) ([\w$]+)/gm;
const listed = /^export\s*\{([^}]*)\};?$/gm;

/** Gives the module's number; its imports are added before it. */
function add(file: URL, numbers: Map<string, number>, parts: string[], within: readonly string[]): number {
  const known = numbers.get(file.href);
  if (known !== undefined) return known;
  if (within.includes(file.href)) throw new Error(`${file.href} imports itself by way of others.`);
  const source = readFileSync(file, "utf8");
  const code = file.href.endsWith(".ts") ? stripTypeScriptTypes(source) : source;
  if (reexports.test(code)) throw new Error(`${file.href} hands on what it imports.`);
  const taken: string[] = [];
  const exported = [...code.matchAll(declared)].map(([, name = ""]) => name);
  let body = code.replace(imports, (_, names: string, from: string) => {
    const bound = names
      .split(",")
      .map((name) => name.trim())
      .filter((name) => name !== "");
    if (bound.length > 0) {
      const number = add(found(from, file), numbers, parts, [...within, file.href]);
      taken.push(`const { ${bound.map((name) => name.replace(/\s+as\s+/, ": ")).join(", ")} } = m${number};\n`);
    }
    return "";
  });
  body = body.replace(listed, (_, names: string) => {
    exported.push(
      ...names
        .split(",")
        .map((name) => name.trim())
        .filter((name) => name !== ""),
    );
    return "";
  });
  body = withoutRemarks(body.replace(/^export (?=(?:async )?(?:function|const|class)\b)/gm, ""));
  if (/^(?:import|export)\b/m.test(body))
    throw new Error(`${file.href} imports or exports in a way that is not bundled.`);
  const number = numbers.size;
  numbers.set(file.href, number);
  parts.push(`const m${number} = (() => {\n${taken.join("")}${body}return { ${exported.join(", ")} };\n})();\n`);
  return number;
}

/** A file beside it, or the one module of a package. */
function found(from: string, file: URL): URL {
  if (from.startsWith(".")) return new URL(from, file);
  // A package's module for bundlers lies beside the one for Node.
  return new URL("esm/mod.js", pathToFileURL(createRequire(import.meta.url).resolve(from)));
}

/** Without what is written for readers. */
export function withoutRemarks(code: string): string {
  return code
    .replace(/^[ \t]*\/\*\*[\s\S]*?\*\/$/gm, "")
    .replace(/^[ \t]*\/\/.*$/gm, "")
    .replace(/[ \t]+$/gm, "")
    .replace(/\n{2,}/g, "\n")
    .replace(/^\n/, "");
}
