/** Records that answer to the same name, so that a note line which gives the name may mean either. */
import type { Bed, Gear, Problem, RecordFile, Variety } from "../model.ts";
import { normaliseName } from "./names.ts";
import { problem } from "./problem-rules.ts";

interface Named {
  readonly kind: "bed" | "variety" | "piece of gear";
  readonly record: Bed | Variety | Gear;
  readonly names: readonly string[];
}

/** One problem for each pair, at the second of the two. */
export function nameClashes(
  beds: Iterable<Bed>,
  varieties: Iterable<Variety>,
  gear: Iterable<Gear>,
): readonly Problem[] {
  const owners = new Map<string, Named[]>();
  const told = new Set<string>();
  const problems: Problem[] = [];
  for (const named of namedRecords(beds, varieties, gear)) {
    for (const name of named.names) {
      const key = normaliseName(name);
      const before = owners.get(key) ?? [];
      const first = before.find((other) => other.record !== named.record && mayBeMixedUp(other, named));
      const pair = `${first?.record.place?.file} ${named.record.place?.file}`;
      if (first !== undefined && !told.has(pair)) {
        told.add(pair);
        problems.push(clash(first, named, name));
      }
      owners.set(key, [...before, named]);
    }
  }
  return problems;
}

function* namedRecords(beds: Iterable<Bed>, varieties: Iterable<Variety>, gear: Iterable<Gear>): Generator<Named> {
  for (const record of beds) yield { kind: "bed", record, names: namesOfBed(record) };
  for (const record of varieties) yield { kind: "variety", record, names: namesOf(record, record.alsoSpelled) };
  for (const record of gear) yield { kind: "piece of gear", record, names: namesOf(record, record.alsoCalled) };
}

/**
 * What it was called before and is no more may be another's name by now: days tell them apart. Of a private bed they cannot,
 * where only prose has the name.
 */
function namesOfBed(bed: Bed): readonly string[] {
  if (bed.private) return namesOf(bed, bed.alsoCalled);
  const former = new Set((bed.was ?? []).map(({ name }) => normaliseName(name)));
  const title = normaliseName(bed.title);
  return namesOf(bed, bed.alsoCalled).filter(
    (name) => normaliseName(name) === title || !former.has(normaliseName(name)),
  );
}

/** An id that only repeats the title is no second name; most are, and looking each up again would double the work. */
function namesOf({ id, title }: RecordFile, also: readonly string[]): readonly string[] {
  const repeats = title.toLowerCase().replaceAll(" ", "-") === id;
  return repeats ? [title, ...also] : [title, id, ...also];
}

/**
 * A bed and the arch it is named after are told apart by what a line says of them, and so are two varieties of different
 * crops: the courgette Black Beauty and the aubergine.
 */
function mayBeMixedUp(a: Named, b: Named): boolean {
  if (a.kind === "variety" && b.kind === "variety") return (a.record as Variety).crop === (b.record as Variety).crop;
  return a.kind === b.kind || (a.kind === "bed" && b.kind === "variety");
}

function clash(first: Named, second: Named, name: string): Problem {
  const file = first.record.place?.file ?? first.record.id;
  return problem(
    "name/ambiguous",
    second.record.place ?? { file: second.record.id, line: 1, column: 1 },
    `The ${second.kind} "${second.record.title}" answers to "${name}", and so does the ${first.kind} "${first.record.title}" (${file}).`,
    first.kind === second.kind
      ? "Give one of them another name."
      : `Give one of them another name, or write "in ${first.record.title}" in notes when the bed is meant.`,
  );
}
