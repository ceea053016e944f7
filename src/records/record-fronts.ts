/** Front matter of a parsed file checked against its schema, with what every record has. */
import type * as z from "zod";
import type { Problem } from "../model.ts";
import { isDoubt } from "./doubts.ts";
import { inFile } from "./file-problem.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { checkFrontMatter } from "./schema-sentences.ts";

export interface CheckedRecord<Front> {
  /** Undefined when a needed key is missing. */
  readonly front: Front | undefined;
  /** Marked so, or in doubt: what stands beside an error may not say all that was meant. */
  readonly private: boolean;
  readonly problems: readonly Problem[];
}

export function checkRecord<Schema extends z.ZodObject>(
  schema: Schema,
  kind: string,
  parsed: ParsedFile,
): CheckedRecord<z.output<Schema>> {
  const { front, problems } = checkFrontMatter(schema, kind, parsed.data, parsed.places);
  const broken = parsed.problems.some(({ rule }) => rule.startsWith("front-matter/"));
  const found = problems
    // Of broken front matter nobody can say which keys are missing.
    .filter(({ rule }) => !broken || rule !== "record/missing-key")
    .map((one) => inFile(parsed.file, one));
  return {
    front,
    private: isTrue(front) || [...found, ...parsed.problems.map((one) => inFile(parsed.file, one))].some(isDoubt),
    problems: found,
  };
}

function isTrue(front: unknown): boolean {
  return (front as { readonly private?: boolean } | undefined)?.private === true;
}
