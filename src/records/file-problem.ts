/** A problem found inside one file before it is known which file it is: what the cache of parsed files may keep. */
import type { Problem } from "../model.ts";
import { problem, type RuleName } from "./problem-rules.ts";

export interface FileProblem {
  readonly rule: RuleName;
  readonly line: number;
  readonly column: number;
  readonly what: string;
  readonly fix: string;
  /** As in `Problem`. */
  readonly expected?: string | undefined;
}

export function inFile(file: string, found: FileProblem): Problem {
  const { rule, line, column, what, fix, expected } = found;
  return problem(rule, { file, line, column }, what, fix, expected);
}
