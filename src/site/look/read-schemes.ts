/** The schemes as the style sheet has them now. */
import { preparedText } from "../../store/index.ts";
import { readTokens, type Schemes } from "./tokens.ts";

export function readSchemes(): Schemes {
  return readTokens(preparedText("styles/tokens.css"));
}
