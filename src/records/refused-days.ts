/** Why a date was not taken, under the rule that says so. */
import type { RefusedDay } from "../calendar.ts";
import type { RuleName } from "./problem-rules.ts";

const rules: Readonly<Record<RefusedDay["refused"], RuleName>> = {
  "no such day": "date/no-such-day",
  "two-digit year": "date/two-digit-year",
  "no year": "date/no-year",
  "order unclear": "date/order-unclear",
  "not a date": "date/not-a-date",
};

export function ruleOfRefusedDay({ refused }: RefusedDay): RuleName {
  return rules[refused];
}
