/** The schemes as the style sheet has them now. */
import { readFileSync } from "node:fs";
import { readTokens, type Schemes } from "./tokens.ts";

export function readSchemes(): Schemes {
  return readTokens(readFileSync(new URL("../styles/tokens.css", import.meta.url), "utf8"));
}
