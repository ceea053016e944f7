/** The colours of the other pages, carried inside a page that has to work from a file. */
import { readFileSync } from "node:fs";
import { colourDeclarations, readTokens } from "./look/tokens.ts";

/** Rules that set the tokens' colours: of the field pages, or black on white for what is read in full sun. */
export function carriedTokens(scheme: "field" | "sun"): string {
  const { light, dark, field, fieldDark, paper } = readTokens(
    readFileSync(new URL("./styles/tokens.css", import.meta.url), "utf8"),
  );
  const [day, night] = scheme === "field" ? [field, fieldDark] : [light, dark];
  return [
    `:root { color-scheme: light dark; ${colourDeclarations(day)} }`,
    `@media (prefers-color-scheme: dark) { :root { ${colourDeclarations(night)} } }`,
    `@media print { :root { color-scheme: light; ${colourDeclarations(paper)} } }`,
  ].join("\n");
}
