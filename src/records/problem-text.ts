/** A problem as text for the terminal: where and which rule, then what is wrong, then what to do. */
import type { Problem } from "../model.ts";

export function problemText(problem: Problem): string {
  const { file, line, column, severity, rule, what, fix } = problem;
  // The records folder as a whole has no lines to point at.
  const where = file === "." ? "" : `${file}:${line}:${column} `;
  return `${where}${severity} ${rule}\n  ${what}\n  ${fix}`;
}
