/** A problem found inside one file before it is known which file it is: what the cache of parsed files may keep. */
import type { Problem } from "../model.ts";
import { problem, type RuleName } from "./problem-rules.ts";

export interface FileProblem {
  readonly rule: RuleName;
  readonly line: number;
  readonly column: number;
  readonly what: string;
  readonly fix: string;
}

export function inFile(file: string, found: FileProblem): Problem {
  return problem(found.rule, { file, line: found.line, column: found.column }, found.what, found.fix);
}
