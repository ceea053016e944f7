/**
 * The words that are left of a line about several plants: in "Nantes, 2 rows; Boltardy, 1 row" each keeps those of its own
 * clause, and what stands in a clause without a plant is said of all.
 */
import type { Line } from "./line.ts";
import type { PlantItem } from "./plant-scan.ts";

interface Clause {
  readonly from: number;
  readonly to: number;
}

/** Gives what is left for each of the items. */
export function detailsOf(
  line: Line,
  from: number,
  items: readonly PlantItem[],
): (item: PlantItem) => string | undefined {
  const clauses = clausesOf(line, from);
  const taken = clauses.filter((clause) => items.some((item) => stands(item, clause)));
  if (taken.length < 2) {
    const whole = line.rest(from);
    return () => whole;
  }
  return (item) => {
    const said = clauses
      .filter((clause) => !taken.includes(clause) || stands(item, clause))
      .flatMap((clause) => line.rest(clause.from, clause.to) ?? []);
    return said.length === 0 ? undefined : said.join(", ");
  };
}

function stands({ at }: PlantItem, { from, to }: Clause): boolean {
  return at !== undefined && from <= at && at < to;
}

/** The stretches between semicolons, those within brackets aside. */
function clausesOf(line: Line, from: number): readonly Clause[] {
  const clauses: Clause[] = [];
  let [start, depth] = [from, 0];
  for (let at = from; at < line.end; at++) {
    const mark = line.words[at]?.text;
    if (mark === "(") depth += 1;
    else if (mark === ")") depth -= 1;
    else if (mark === ";" && depth <= 0) {
      clauses.push({ from: start, to: at });
      start = at + 1;
    }
  }
  return [...clauses, { from: start, to: line.end }];
}
