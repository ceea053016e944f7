/** Problems as they are told: as text for the terminal, and as data for programs. */
import type { Problem } from "../model.ts";
import { chapterOf } from "./manual.ts";

/** Where and which rule, then what is wrong, then what to do. */
export function problemText(problem: Problem): string {
  const { file, line, column, severity, rule, what, fix } = problem;
  // The records folder as a whole has no lines to point at.
  const where = file === "." ? "" : `${file}:${line}:${column} `;
  return `${where}${severity} ${rule}\n  ${what}\n  ${fix}`;
}

/** `see`: the page and heading of the manual that explain the rule. */
export function problemData(problem: Problem): Problem & { readonly see?: string | undefined } {
  return { ...problem, see: chapterOf(problem.rule)?.page };
}
