/** `plotreel check`: every problem and hint in the records, all of them in one run; with `--reading` what each line is taken to say. */
import type { LineReading, Problem, Severity } from "../model.ts";
import { namesOfGarden, problemData, problemText, readingData } from "../records/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";
import { noteNamed } from "./note-named.ts";
import { sayHowRead, sayOpen, sayReadings } from "./reading-words.ts";

const NAMES: Readonly<Record<Severity, readonly [string, string]>> = {
  error: ["error", "errors"],
  warning: ["warning", "warnings"],
  hint: ["hint", "hints"],
};

export interface CheckOptions {
  readonly json?: boolean | undefined;
  /** A note, or true for all. */
  readonly reading?: string | boolean | undefined;
}

export function check(loaded: Loaded, options: CheckOptions, effects: Effects): number {
  const { garden, recordsDir } = loaded;
  const { reading } = options;
  const only = typeof reading === "string" ? noteNamed(reading, garden, { cwd: effects.cwd, recordsDir }) : undefined;
  const of = <Thing>(all: readonly Thing[], file: (thing: Thing) => string) =>
    only === undefined ? all : all.filter((thing) => only.has(file(thing)));
  const problems = of(garden.problems, ({ file }) => file);
  const readings = of(garden.readings, ({ place }) => place.file);
  const wanted = reading !== undefined && reading !== false;
  if (options.json === true) {
    const names = namesOfGarden(garden);
    const data = wanted ? readings.map((line) => readingData(line, names)) : { problems: problems.map(problemData) };
    effects.out(JSON.stringify(data, null, 2));
  } else {
    for (const problem of problems) effects.out(`${problemText(problem)}\n`);
    if (wanted) showReadings(readings, loaded, effects);
    else effects.out(summary(garden.events.length, garden.notes.length, problems));
    const open = sayOpen(readings);
    if (open !== undefined) effects.out(wanted ? open : `${open} "plotreel check --reading" shows every line.`);
  }
  return problems.some((problem) => problem.severity === "error") ? EXIT.problemsFound : EXIT.done;
}

function showReadings(readings: readonly LineReading[], { garden }: Loaded, effects: Effects): void {
  for (const line of sayReadings(readings, garden, namesOfGarden(garden))) effects.out(line);
  if (readings.length > 0) effects.out("");
  effects.out(sayHowRead(readings));
}

function summary(lines: number, notes: number, problems: readonly Problem[]): string {
  const read = `${counted(lines, "log line", "log lines")} in ${counted(notes, "note", "notes")}`;
  const found = (Object.keys(NAMES) as Severity[])
    .map(
      (severity) => [problems.filter((problem) => problem.severity === severity).length, ...NAMES[severity]] as const,
    )
    .filter(([count]) => count > 0)
    .map(([count, one, many]) => counted(count, one, many));
  return found.length === 0 ? `${read}. Nothing to mend.` : `${read}: ${found.join(", ")}.`;
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
