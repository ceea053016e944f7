/** How long something is: "26 days", "just over eight weeks". */
import { sayPlural } from "./numbers.ts";

/** Mean length of a month of the Gregorian calendar: 146,097 days in 4,800 months. */
const daysPerMonth = 30.436875;

/**
 * An age or a span in natural words: "one day", "nine days", "26 days", "three weeks", "just over eight weeks", "about five
 * months", "two years". Exact to the day up to six weeks; no span is said more exactly than it is.
 */
export function sayAge(days: number): string {
  const { near, n, unit } = spanOf(days);
  if (n === 0) return "less than a day";
  if (near === "about" && unit === "year" && n === 1) return "about a year";
  return `${nearness[near]}${sayPlural(n, unit, `${unit}s`)}`;
}

const nearness = { exactly: "", over: "just over ", nearly: "nearly ", about: "about " } as const;

/** A span in one unit, and how near that is to the truth. Less than a day is no days. */
export interface Span {
  readonly near: keyof typeof nearness;
  readonly n: number;
  readonly unit: "day" | "week" | "month" | "year";
}

/** Exact to the day up to six weeks; after that no unit is said more exactly than anybody remembers. */
function spanOf(days: number): Span {
  if (days < 1) return { near: "exactly", n: 0, unit: "day" };
  if (days < 42)
    return days % 7 === 0 && days > 7
      ? { near: "exactly", n: days / 7, unit: "week" }
      : { near: "exactly", n: Math.round(days), unit: "day" };
  if (days < 119) {
    const weeks = Math.round(days / 7);
    return { near: side(days - weeks * 7), n: weeks, unit: "week" };
  }
  const months = Math.round(days / daysPerMonth);
  if (months < 23) return { near: "about", ...(months === 12 ? { n: 1, unit: "year" } : { n: months, unit: "month" }) };
  const years = Math.round(days / (daysPerMonth * 12));
  const over = days - years * daysPerMonth * 12;
  return {
    near: Math.abs(over) <= 3 ? "exactly" : Math.abs(over) <= 91 ? side(over) : "about",
    n: years,
    unit: "year",
  };
}

function side(over: number): Span["near"] {
  return over === 0 ? "exactly" : over > 0 ? "over" : "nearly";
}
