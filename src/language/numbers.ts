/**
 * Numbers, counts and lists as they are said aloud in English. Everything in this room gives the same bytes on every machine:
 * no clock, no system time zone, no system language.
 */
import type { Count } from "../model.ts";

const smallNumbers = "no one two three four five six seven eight nine ten eleven twelve".split(" ");
const smallOrdinals = "zeroth first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth".split(
  " ",
);
const groupedDigits = new Intl.NumberFormat("en", { maximumFractionDigits: 2 });

/** "seven", "24", "1,200", "1.5": words up to twelve, none is "no". */
export function sayNumber(n: number): string {
  return smallNumbers[n] ?? groupedDigits.format(n);
}

/** "third", "21st", "112th". */
export function sayOrdinal(n: number): string {
  const word = smallOrdinals[n];
  if (word !== undefined) return word;
  const teens = n % 100 >= 11 && n % 100 <= 13;
  return `${groupedDigits.format(n)}${teens ? "th" : (["th", "st", "nd", "rd"][n % 10] ?? "th")}`;
}

/** "six", "about ten", "8 to 10" becomes "eight to ten". Undefined (nobody counted) gives undefined. */
export function sayCount(count: Count): string;
export function sayCount(count: Count | undefined): string | undefined;
export function sayCount(count: Count | undefined): string | undefined {
  if (count === undefined) return undefined;
  const range = count.upTo === undefined || count.upTo === count.value ? "" : ` to ${sayNumber(count.upTo)}`;
  // "8 to 10" says by itself that nobody counted exactly.
  return `${count.approx && range === "" ? "about " : ""}${sayNumber(count.value)}${range}`;
}

/** "one leek", "three leeks", "no leeks", "1.5 crates". */
export function sayPlural(n: number, one: string, many: string): string {
  return `${sayNumber(n)} ${n === 1 ? one : many}`;
}

/** "a, b and c". */
export function sayList(parts: readonly string[], joint = "and"): string {
  if (parts.length <= 1) return parts[0] ?? "";
  return `${parts.slice(0, -1).join(", ")} ${joint} ${parts[parts.length - 1]}`;
}

/** First letter large: how a sentence begins. Digits and signs stay as they are. */
export function capital(text: string): string {
  const first = String.fromCodePoint(text.codePointAt(0) ?? 32);
  return text === "" ? "" : first.toUpperCase() + text.slice(first.length);
}

/** Ends a sentence with a full stop, unless the words bring their own ending. */
export function fullStop(text: string): string {
  return /[.!?…]["”’)]?$/.test(text) ? text : `${text}.`;
}

/** Digits as tables and measures have them: "1,200.5". */
export function digits(n: number): string {
  return groupedDigits.format(n);
}

/** "35 %", of a share 0 to 1. */
export function sayShare(share: number): string {
  return `${digits(Math.round(share * 100))} %`;
}
