/** The colours of the other pages, carried inside a page that has to work from a file. */
import { readSchemes } from "./look/read-schemes.ts";
import { colourDeclarations } from "./look/tokens.ts";

/** Rules that set the tokens' colours. */
export function carriedTokens(): string {
  const { light, dark, paper } = readSchemes();
  return [
    `:root { color-scheme: light dark; ${colourDeclarations(light)} }`,
    `@media (prefers-color-scheme: dark) { :root { ${colourDeclarations(dark)} } }`,
    `@media print { :root { color-scheme: light; ${colourDeclarations(paper)} } }`,
  ].join("\n");
}
