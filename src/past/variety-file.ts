/** A variety's file as a person would write it, of what a row of a table says. */
import { stringify } from "yaml";
import { recordOf } from "./new-file.ts";
import type { RowFacts } from "./row-facts.ts";

/** `from` names the table; what its notes say stands in a remark, which no viewer sees. */
export function varietyFile(
  facts: RowFacts,
  { from, isPublic }: { readonly from: string; readonly isPublic: boolean },
): string {
  const { source: name, obtained, year, link } = facts;
  const source = Object.entries({ name, link, obtained, year }).filter(([, value]) => value !== undefined);
  const front = {
    title: facts.variety,
    ...(facts.crop !== undefined && { crop: facts.crop }),
    ...((!isPublic || facts.private) && { private: true }),
    ...(facts.botanical !== undefined && { botanical: facts.botanical }),
    ...(facts.sayAs !== undefined && { "say it as": facts.sayAs }),
    ...(facts.alsoSpelled !== undefined && { "also spelled": facts.alsoSpelled.split(/ ?[;,] ?/) }),
    ...(source.length > 0 && { source: Object.fromEntries(source) }),
    ...(facts.maturity !== undefined && { "days to maturity": facts.maturity }),
    ...(facts.perennial !== undefined && { perennial: facts.perennial }),
  };
  const lines = stringify(front, { lineWidth: 0 }).trimEnd().split("\n");
  return recordOf(lines, facts.notes.length === 0 ? "" : remark(from, facts.notes));
}

/** What closes a remark early would show the rest of it. */
function remark(from: string, notes: readonly string[]): string {
  const said = notes.map((note) => note.replace(/--+>?/g, "–").replaceAll("%%", "%"));
  return `<!-- From ${from.replace(/--+>?/g, "–")}:\n${said.join("\n")}\n-->\n`;
}
