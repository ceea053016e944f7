/**
 * The words that are left of a line about several plants: in "Nantes, 2 rows; Boltardy, 1 row" each keeps those of its own
 * clause, and what stands in a clause without a plant is said of all. "3 rows of Boltardy, 2 rows of Nantes" are parted too.
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
    const parted = partedByNames(line, from, items);
    return (item) => (parted === undefined ? whole : parted.get(item));
  }
  return (item) => {
    const said = clauses
      .filter((clause) => !taken.includes(clause) || stands(item, clause))
      .flatMap((clause) => line.rest(clause.from, clause.to) ?? []);
    return said.length === 0 ? undefined : said.join(", ");
  };
}

/** Words left before or behind single names of a list; undefined where they are left before the first or behind the last alone. */
function partedByNames(
  line: Line,
  from: number,
  items: readonly PlantItem[],
): ReadonlyMap<PlantItem, string | undefined> | undefined {
  const starts = items.flatMap(({ at }) => (at === undefined ? [] : [at]));
  const inOrder = starts.every((at, index) => index === 0 || at > (starts[index - 1] ?? at));
  if (items.length < 2 || starts.length < items.length || !inOrder) return undefined;
  const joints = starts.slice(1).map((at, index) => lastJoint(line, starts[index] ?? from, at));
  if (joints.some((joint) => joint === undefined)) return undefined;
  const begins = [from, ...joints.map((joint) => (joint ?? from) + 1)];
  const ends = [...joints.map((joint) => joint ?? from), line.end];
  const parts = starts.map((at, index) => ({
    before: line.rest(begins[index] ?? from, at),
    behind: line.rest(at, ends[index]),
  }));
  const isBefore = parts.slice(1).some(({ before }) => before !== undefined);
  const isBehind = parts.slice(0, -1).some(({ behind }) => behind !== undefined);
  if (!isBefore && !isBehind) return undefined;
  const [first, last] = [parts[0]?.before, parts.at(-1)?.behind];
  return new Map(
    items.map((item, index) => {
      const own = parts[index];
      const said = [isBefore ? own?.before : first, isBehind ? own?.behind : last];
      const words = said.filter((part) => part !== undefined).join(", ");
      return [item, words === "" ? undefined : words];
    }),
  );
}

function lastJoint(line: Line, after: number, before: number): number | undefined {
  for (let at = before - 1; at > after; at--) if (/^(?:,|and|&|\+|plus|but)$/.test(line.lower(at))) return at;
  return undefined;
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
