/** Front matter of a parsed file checked against its schema, with what every record has. */
import type * as z from "zod";
import type { Problem } from "../model.ts";
import { inFile } from "./file-problem.ts";
import { nearestSpellings } from "./nearest-spelling.ts";
import type { ParsedFile } from "./parsed-files.ts";
import { checkFrontMatter } from "./schema-sentences.ts";

export interface CheckedRecord<Front> {
  /** Undefined when a needed key is missing. */
  readonly front: Front | undefined;
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
  return {
    front,
    private: isTrue(front) || broken || mayBePrivate(parsed, problems.length > 0),
    problems: problems
      // Of broken front matter nobody can say which keys are missing.
      .filter(({ rule }) => !broken || rule !== "record/missing-key")
      .map((found) => inFile(parsed.file, found)),
  };
}

function isTrue(front: unknown): boolean {
  return (front as { readonly private?: boolean } | undefined)?.private === true;
}

/**
 * Whether a person may have meant to keep this record private and wrote it so that it cannot be read: "private: ture",
 * "privat: true". What is in doubt stays private, as does every record whose front matter is broken.
 */
function mayBePrivate({ data }: ParsedFile, wrongKeys: boolean): boolean {
  if (!wrongKeys) return false;
  return Object.entries(data).some(([key, value]) => {
    if (key === "private") return typeof value !== "string" || !/^\s*(false|no)\s*$/i.test(value);
    return nearestSpellings(key, ["private"]).length > 0;
  });
}
