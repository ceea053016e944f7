/** The small words around a bed's name. */
import type { Line } from "./line.ts";

/** What a preposition says of the bed behind it. */
export type Role = "in" | "from" | "to";

export const articles = new Set(["the", "my", "our", "that", "this"]);
export const bedPrepositions = new Set(
  "in into from on onto at inside within to across through off over around round".split(" "),
);
/** A name in lower case is taken for a bed nobody described when it ends in one of these: "in the raised bed". */
export const bedNouns = new Set(
  "bed beds border patch plot tunnel polytunnel greenhouse glasshouse frame coldframe tub tubs trough planter planters pot pots barrel barrels terrace bank rockery orchard cage container containers allotment".split(
    " ",
  ),
);

export function roleOf(preposition: string, outOf: boolean): Role {
  if (outOf || preposition === "from" || preposition === "off") return "from";
  return preposition === "to" || preposition === "into" || preposition === "onto" ? "to" : "in";
}

export function afterArticle(line: Line, at: number): number {
  return articles.has(line.lower(at)) ? at + 1 : at;
}
