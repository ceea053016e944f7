/**
 * Days in the cells of a table or at the head of a diary's entry. 3/4/24 is a day of which nobody can say which: the order of
 * day and month counts only when another day of the same file proves it, or the person says it.
 */
import { dayOf, parseDay, parseSince, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";

export const dayOrders = ["day-first", "month-first"] as const;
export type DayOrder = (typeof dayOrders)[number];

export interface DaysContext {
  readonly order: DayOrder | undefined;
  readonly today: Day;
  /** The year of days that say none. */
  readonly year?: number | undefined;
}

export type ReadDay =
  | { readonly day: Day }
  /** A month or a year only. */
  | { readonly rough: string }
  | { readonly doubt: string };

const inNumbers = /^(\d{1,2})[./-](\d{1,2})(?:[./-](\d{4}|\d{2}))?$/;

/** The order that one of these texts proves; undefined when none does, or one proves the contrary of another. */
export function provenOrder(texts: Iterable<string>): DayOrder | undefined {
  const proven = new Set<DayOrder>();
  for (const text of texts) {
    const [, first, second] = inNumbers.exec(withoutTime(text)) ?? [];
    if (Number(first) > 12 && Number(second) <= 12) proven.add("day-first");
    if (Number(second) > 12 && Number(first) <= 12) proven.add("month-first");
  }
  const [only] = proven;
  return proven.size === 1 ? only : undefined;
}

/** A spreadsheet writes midnight behind its days. */
function withoutTime(text: string): string {
  return text.trim().replace(/[ T]\d{1,2}:\d{2}(?::\d{2})?(?:\.\d+)?Z?$/, "");
}

export function readDay(text: string, context: DaysContext): ReadDay {
  const written = withoutTime(text);
  const numbers = inNumbers.exec(written);
  if (numbers !== null) return numbersRead(written, numbers, context);
  const exact = parseDay(written);
  if ("day" in exact) return notAhead(exact.day, written, context);
  const rough = parseSince(written);
  if ("day" in rough) return { rough: written };
  if (exact.refused === "two-digit year") {
    const [, head = "", year = ""] = /^(.*\D)(\d{2})$/.exec(written) ?? [];
    const whole = parseDay(`${head.replace(/['’]$/, "")}${fullYear(year, context.today)}`);
    if ("day" in whole) return notAhead(whole.day, written, context);
  }
  if (exact.refused === "no year") {
    if (context.year === undefined) return { doubt: `"${written}" does not say which year` };
    const whole = parseDay(`${written} ${context.year}`);
    if ("day" in whole) return notAhead(whole.day, written, context);
  }
  return { doubt: exact.what.replace(/\.$/, "") };
}

function numbersRead(written: string, numbers: RegExpExecArray, { order, today, year }: DaysContext): ReadDay {
  const [, first, second, last] = numbers;
  const saidYear = last === undefined ? year : fullYear(last, today);
  if (saidYear === undefined) return { doubt: `"${written}" does not say which year` };
  const dayFirst = dayOf(saidYear, Number(second), Number(first));
  const monthFirst = dayOf(saidYear, Number(first), Number(second));
  if (dayFirst === monthFirst && dayFirst !== undefined) return notAhead(dayFirst, written, { today });
  if (order === undefined) {
    const only = dayFirst === undefined ? monthFirst : monthFirst === undefined ? dayFirst : undefined;
    if (only !== undefined) return notAhead(only, written, { today });
    return {
      doubt: dayFirst === undefined ? `"${written}" is no day` : `"${written}" can be ${dayFirst} or ${monthFirst}`,
    };
  }
  const day = order === "day-first" ? dayFirst : monthFirst;
  return day === undefined
    ? { doubt: `"${written}" is no day when it is read ${order}` }
    : notAhead(day, written, { today });
}

function notAhead(day: Day, written: string, { today }: Pick<DaysContext, "today">): ReadDay {
  return day > today ? { doubt: `"${written}" is after today` } : { day };
}

/** "24" is the last year that ended so. */
export function fullYear(written: string, today: Day): number {
  if (written.length === 4) return Number(written);
  const thisCentury = Math.floor(yearOf(today) / 100) * 100 + Number(written);
  return thisCentury <= yearOf(today) ? thisCentury : thisCentury - 100;
}
