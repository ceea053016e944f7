/** The lettering of the other pages, carried inside a page: there may be no network in the garden. */
import { readFileSync } from "node:fs";
import path from "node:path";
import { preparedFolder } from "../store/index.ts";

const WEIGHTS = [400, 500];

/** Font faces for a style sheet, under a name of the page's own. */
export function carriedFonts(family: string): string {
  return WEIGHTS.map((weight) => {
    const data = readFileSync(path.join(preparedFolder(), "fonts", `${weight}.woff2`)).toString("base64");
    return `@font-face{font-family:"${family}";font-weight:${weight};src:url(data:font/woff2;base64,${data}) format("woff2")}`;
  }).join("");
}
