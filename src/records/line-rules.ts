/** Rules of what a note's line says, its days, names and facts: those that the phone carries too. */
import type { Place, Problem, Severity } from "../model.ts";

export interface Rule {
  readonly severity: Severity;
  /**
   * Whether what it is said of counts as private until it is mended, because a wish to keep it back may stand where nobody
   * reads it. Errors do unless the rule says otherwise.
   */
  readonly doubt?: boolean;
}

export const lineRules = {
  "date/no-such-day": { severity: "error" },
  "date/two-digit-year": { severity: "error" },
  "date/no-year": { severity: "error" },
  "date/order-unclear": { severity: "error" },
  "date/not-a-date": { severity: "error" },
  "name/ambiguous": { severity: "warning" },
  "name/crop-taken": { severity: "hint" },
  "name/bed-taken": { severity: "hint" },
  "name/variety-taken": { severity: "hint" },
  "note/no-date": { severity: "error" },
  "note/two-dates": { severity: "warning" },
  "note/future": { severity: "warning" },
  "note/unknown-verb": { severity: "warning" },
  "note/unknown-variety": { severity: "warning" },
  "note/unknown-bed": { severity: "warning" },
  "note/two-varieties": { severity: "warning" },
  "note/no-plant": { severity: "warning" },
  "note/settled-no-dash": { severity: "hint" },
  "note/heading-not-bed": { severity: "hint" },
  "note/which-bed": { severity: "warning" },
  "note/sown-where": { severity: "hint" },
  "note/unclear-day": { severity: "warning" },
  "note/day-after-note": { severity: "warning" },
  "note/question": { severity: "hint" },
  "note/settled-unread": { severity: "warning" },
  "note/not-parsed": { severity: "warning" },
} as const satisfies Record<string, Rule>;

export type LineRule = keyof typeof lineRules;

export function lineProblem(rule: LineRule, place: Place, what: string, fix: string, expected?: string): Problem {
  return problemOf(lineRules[rule], rule, place, what, fix, expected);
}

export function problemOf(
  { severity }: Rule,
  rule: string,
  { file, line, column }: Place,
  what: string,
  fix: string,
  expected?: string,
): Problem {
  const found: Problem = { rule, severity, file, line, column, what, fix };
  return expected === undefined ? found : { ...found, expected };
}
