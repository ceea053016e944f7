/** The lettering of the other pages, carried inside a page: there may be no network in the garden. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

const WEIGHTS = [400, 500];

/** Font faces for a style sheet, under a name of the page's own. */
export function carriedFonts(family: string): string {
  const require = createRequire(import.meta.url);
  return WEIGHTS.map((weight) => {
    const file = require.resolve(`@fontsource/alegreya-sans/files/alegreya-sans-latin-${weight}-normal.woff2`);
    const data = readFileSync(file).toString("base64");
    return `@font-face{font-family:"${family}";font-weight:${weight};src:url(data:font/woff2;base64,${data}) format("woff2")}`;
  }).join("");
}
