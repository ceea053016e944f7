/** The tables of the reader are plain text, "head: one, two" a line, because every browser that reads notes loads them. */
import { keysOf } from "../../name-trie.ts";

/** What a name is looked up by: its words in the form for comparing, apart by spaces. */
export function keyOf(name: string): string {
  return keysOf(name).join(" ");
}

export type TableRow = readonly [head: string, others: readonly string[]];

/** The rows of a table; a head that stands alone has no others. */
export function rowsOf(table: string): TableRow[] {
  return table
    .trim()
    .split("\n")
    .map((line) => {
      const at = line.indexOf(": ");
      return at < 0 ? [line, []] : [line.slice(0, at), line.slice(at + 2).split(", ")];
    });
}
