/** `plotreel check`: every problem and hint in the records, all of them in one run. */
import type { Problem, Severity } from "../model.ts";
import { problemText } from "../records/index.ts";
import { EXIT } from "./command-error.ts";
import type { Effects } from "./effects.ts";
import type { Loaded } from "./load-garden.ts";

const NAMES: Readonly<Record<Severity, readonly [string, string]>> = {
  error: ["error", "errors"],
  warning: ["warning", "warnings"],
  hint: ["hint", "hints"],
};

export function check({ garden }: Loaded, options: { readonly json?: boolean | undefined }, effects: Effects): number {
  const { problems } = garden;
  if (options.json === true) effects.out(JSON.stringify({ problems }, null, 2));
  else {
    for (const problem of problems) effects.out(`${problemText(problem)}\n`);
    effects.out(summary(garden.events.length, garden.notes.length, problems));
  }
  return problems.some((problem) => problem.severity === "error") ? EXIT.problemsFound : EXIT.done;
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
