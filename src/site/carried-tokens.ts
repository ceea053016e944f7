/** The colours of the other pages, carried inside a page that has to work from a file. */
import { readSchemes } from "./look/read-schemes.ts";
import { colourDeclarations } from "./look/tokens.ts";

/** Rules that set the tokens' colours: of the field pages, or black on white for what is read in full sun. */
export function carriedTokens(scheme: "field" | "sun"): string {
  const { light, dark, field, fieldDark, paper } = readSchemes();
  const [day, night] = scheme === "field" ? [field, fieldDark] : [light, dark];
  return [
    `:root { color-scheme: light dark; ${colourDeclarations(day)} }`,
    `@media (prefers-color-scheme: dark) { :root { ${colourDeclarations(night)} } }`,
    `@media print { :root { color-scheme: light; ${colourDeclarations(paper)} } }`,
  ].join("\n");
}
