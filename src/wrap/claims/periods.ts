/** When a thing was, as people say it of what is past: "the twelfth of April", "the first week of August", "last Saturday", "in 2014". */
import {
  addDays,
  dayOf,
  daysInMonth,
  monthNumber,
  weekday,
  weekdayNumber,
  yearBefore,
  yearOf,
} from "../../calendar.ts";
import type { Day } from "../../model.ts";
import { isOfFeast, lastFeast } from "../../records/index.ts";
import { beginsNumber, beginsOrdinal, spokenDay, spokenNumber, spokenOrdinal } from "../spoken-numbers.ts";

/** The first and the last day that may be meant; `end` is the index after its last word. */
export interface Period {
  readonly from: Day;
  readonly to: Day;
  readonly end: number;
}

/** The last such time before the film, unless a year is said. Words are plain. */
export function spokenPeriod(words: readonly string[], at: number, filmed: Day): Period | undefined {
  if (!beginsPeriod(words[at] ?? "")) return undefined;
  return (
    near(words, at, filmed) ??
    ago(words, at, filmed) ??
    feast(words, at, filmed) ??
    monthOfLastYear(words, at, filmed) ??
    exact(words, at, filmed) ??
    partOfMonth(words, at, filmed) ??
    month(words, at, filmed) ??
    year(words, at, filmed)
  );
}

const known = new Map<string, boolean>();

/** Few words of a film do, and they are asked for again and again. */
function beginsPeriod(word: string): boolean {
  let begins = known.get(word);
  if (begins === undefined) {
    begins =
      opens.has(word) ||
      beginsNumber(word) ||
      beginsOrdinal(word) ||
      monthNumber(word) !== undefined ||
      isOfFeast(word);
    if (known.size > 100_000) known.clear();
    known.set(word, begins);
  }
  return begins;
}

/** "Halloween", "Valentine's Day", "Easter weekend", "the week before Christmas". */
function feast(words: readonly string[], at: number, filmed: Day): Period | undefined {
  const isWeekOf = words[at] === "the" && /^(?:week|weekend|day)$/.test(words[at + 1] ?? "");
  const before = isWeekOf && /^(?:before|after)$/.test(words[at + 2] ?? "");
  const of = isWeekOf && words[at + 2] === "of";
  const from = before || of ? at + (words[at + 3] === "the" ? 4 : 3) : at;
  const named = lastFeast(words.slice(from, from + 4), filmed);
  if (named === undefined) return undefined;
  const end = from + named.words;
  const { day } = named;
  if (before)
    return words[at + 2] === "before"
      ? { from: addDays(day, -10), to: addDays(day, -1), end }
      : { from: addDays(day, 1), to: addDays(day, 10), end };
  if (of && words[at + 1] !== "day") return { from: addDays(day, -7), to: addDays(day, 7), end };
  if (/^(?:weekend|week|time)$/.test(words[end] ?? ""))
    return { from: addDays(day, -7), to: addDays(day, 7), end: end + 1 };
  return { from: addDays(day, -1), to: addDays(day, 1), end };
}

/** "last year in August" */
function monthOfLastYear(words: readonly string[], at: number, filmed: Day): Period | undefined {
  if (words[at] !== "last" || words[at + 1] !== "year" || words[at + 2] !== "in") return undefined;
  const number = monthNumber(words[at + 3] ?? "");
  if (number === undefined) return undefined;
  const year = yearOf(filmed) - 1;
  const [first, last] = [dayOf(year, number, 1) as Day, dayOf(year, number, daysInMonth(year, number)) as Day];
  return { from: addDays(first, -1), to: addDays(last, 1), end: at + 4 };
}

function near(words: readonly string[], at: number, filmed: Day): Period | undefined {
  const [word = "", next = ""] = [words[at], words[at + 1]];
  // "Two weeks ago yesterday"
  if (word === "yesterday") return words[at - 1] === "ago" ? undefined : only(addDays(filmed, -1), at + 1);
  // "Three weeks today" tells how long.
  if (word === "today" && lengths.has(words[at - 1] ?? "")) return undefined;
  if (/^(?:today|tonight)$/.test(word) || (word === "this" && /^(?:morning|afternoon)$/.test(next)))
    return only(filmed, at + (word === "this" ? 2 : 1));
  if (word === "last" && next === "weekend") {
    const saturday = addDays(filmed, -((weekday(filmed) - (weekdayNumber("saturday") ?? 0) + 7) % 7 || 7));
    return { from: addDays(saturday, -1), to: addDays(saturday, 2), end: at + 2 };
  }
  if (word === "last" && next === "week") return { from: addDays(filmed, -13), to: addDays(filmed, -1), end: at + 2 };
  if (word === "last" && next === "month") return { from: addDays(filmed, -62), to: addDays(filmed, -10), end: at + 2 };
  if (word === "this" && next === "week") return { from: addDays(filmed, -7), to: filmed, end: at + 2 };
  const named = word === "last" || word === "on" ? weekdayNumber(next) : undefined;
  if (named === undefined) return undefined;
  const back = (weekday(filmed) - named + 7) % 7 || 7;
  const day = addDays(filmed, -back);
  // "Last Saturday" said on a Thursday may be the one before.
  return {
    from: word === "last" ? addDays(day, -7) : day,
    to: day,
    end: at + 2,
  };
}

const lengths: ReadonlyMap<string, readonly [days: number, slack: number]> = new Map([
  ["day", [1, 1]],
  ["days", [1, 1]],
  ["week", [7, 4]],
  ["weeks", [7, 5]],
  ["fortnight", [14, 4]],
  ["month", [30.4, 16]],
  ["months", [30.4, 20]],
  ["year", [365.25, 240]],
  ["years", [365.25, 300]],
]);

/** "two weeks ago", "twenty five years ago", "a week ago today", "three weeks before". */
function ago(words: readonly string[], at: number, filmed: Day): Period | undefined {
  const length = spokenLength(words, at);
  if (length === undefined || !/^(?:ago|back|before|since)$/.test(words[length.end] ?? "")) return undefined;
  // "A week before that other film" is reckoned from the film.
  if (words[length.end] === "before" && words[length.end + 1] !== undefined) return undefined;
  const end = words[length.end + 1] === "today" ? length.end + 2 : length.end + 1;
  return {
    from: addDays(filmed, -Math.round(length.days + length.slack)),
    to: addDays(filmed, -Math.max(0, Math.round(length.days - length.slack))),
    end,
  };
}

/** Days of the longest time that anybody tells of in a garden; captions hold mangled numbers too. */
const LONGEST_TOLD = 1000 * 366;

/** "three weeks", "a fortnight", "ten years": days, and by how many they may differ as people round. */
export function spokenLength(
  words: readonly string[],
  at: number,
): { readonly days: number; readonly slack: number; readonly end: number } | undefined {
  const number =
    /^an?$/.test(words[at] ?? "") && lengths.has(words[at + 1] ?? "")
      ? { value: 1, end: at + 1 }
      : spokenNumber(words, at);
  const unit = number === undefined ? undefined : lengths.get(words[number.end] ?? "");
  if (number === undefined || unit === undefined) return undefined;
  const days = number.value * unit[0];
  if (days > LONGEST_TOLD) return undefined;
  return { days, slack: Math.max(unit[1], days * 0.1), end: number.end + 1 };
}

function exact(words: readonly string[], at: number, filmed: Day): Period | undefined {
  const said = spokenDay(words, at, filmed);
  if (said !== undefined) return withYear(words, said.day, said.day, said.end, filmed);
  const first = words[at] === "the" ? at + 1 : at;
  const which = words[first];
  if (!/^(?:first|last)$/.test(which ?? "") || words[first + 1] !== "day" || words[first + 2] !== "of")
    return undefined;
  const number = monthNumber(words[first + 3] ?? "");
  if (number === undefined) return undefined;
  const [from, to] = daysOf(number, filmed);
  const day = which === "first" ? from : to;
  return withYear(words, day, day, first + 4, filmed);
}

const parts: ReadonlyMap<string, readonly [from: number, to: number]> = new Map([
  ["beginning", [1, 10]],
  ["start", [1, 10]],
  ["early", [1, 10]],
  ["middle", [10, 21]],
  ["mid", [10, 21]],
  ["late", [20, 31]],
  ["end", [21, 31]],
]);
const opens: ReadonlySet<string> = new Set([
  ..."yesterday today tonight this last on an the about first nineteen twenty two".split(" "),
  ...parts.keys(),
]);
/** Days by which a part of a month is rounded. */
const ROUNDED = 3;

/** "the first week of August", "middle of April", "late May". */
function partOfMonth(words: readonly string[], at: number, filmed: Day): Period | undefined {
  const first = words[at] === "the" || words[at] === "about" ? at + 1 : at;
  const start = words[first] === "the" ? first + 1 : first;
  const week = words[start + 1] === "week";
  const part = week ? weekOf(words, start) : parts.get(words[start] ?? "");
  if (part === undefined) return undefined;
  const after = week ? start + 2 : start + 1;
  const at2 = words[after] === "of" ? after + 1 : after;
  const number = monthNumber(words[at2] ?? "");
  if (number === undefined) return undefined;
  const [begins, ends] = daysOf(number, filmed);
  const from = addDays(begins, part[0] - 1 - ROUNDED);
  const to = addDays(begins, part[1] - 1 + ROUNDED);
  return withYear(words, from, part[1] > 28 ? addDays(ends, ROUNDED) : to, at2 + 1, filmed);
}

function weekOf(words: readonly string[], at: number): readonly [number, number] | undefined {
  if (words[at] === "last") return [22, 31];
  const nth = spokenOrdinal(words, at)?.value;
  return nth === undefined || nth > 4 ? undefined : [7 * nth - 6, 7 * nth];
}

/** "in October", "since March", "October": the month itself, and a day beside it. */
function month(words: readonly string[], at: number, filmed: Day): Period | undefined {
  const number = monthNumber(words[at] ?? "");
  // "May" and "march" are verbs too.
  if (
    number === undefined ||
    !/^(?:in|since|of|last|november|december|october|september|august|july|june|april|february|january)$/.test(
      words[at - 1] ?? "in",
    )
  )
    return undefined;
  if (/^(?:may|march)$/.test(words[at] ?? "") && !/^(?:in|since|of|last)$/.test(words[at - 1] ?? "")) return undefined;
  const [from, to] = daysOf(number, filmed);
  return withYear(words, addDays(from, -1), addDays(to, 1), at + 1, filmed);
}

/** "2014", "two thousand and fourteen", "twenty nineteen", "nineteen ninety two". */
function year(words: readonly string[], at: number, filmed: Day): Period | undefined {
  const said = spokenYear(words, at);
  if (said === undefined || !/^(?:in|since|of|back|from)$/.test(words[at - 1] ?? "") || said.year > yearOf(filmed))
    return undefined;
  return { from: `${said.year}-01-01`, to: `${said.year}-12-31`, end: said.end };
}

function spokenYear(words: readonly string[], at: number): { readonly year: number; readonly end: number } | undefined {
  const word = words[at] ?? "";
  if (/^(?:19|20)\d\d$/.test(word)) return { year: Number(word), end: at + 1 };
  if (word === "two" && words[at + 1] === "thousand") {
    const from = words[at + 2] === "and" ? at + 3 : at + 2;
    const rest = spokenNumber(words, from);
    return rest !== undefined && rest.value < 100
      ? { year: 2000 + rest.value, end: rest.end }
      : { year: 2000, end: at + 2 };
  }
  if (word !== "nineteen" && word !== "twenty") return undefined;
  const rest = spokenNumber(words, at + 1);
  return rest !== undefined && rest.value >= 10 && rest.value < 100
    ? { year: (word === "nineteen" ? 1900 : 2000) + rest.value, end: rest.end }
    : undefined;
}

/** A month's days: of the last one that began before the film. */
function daysOf(number: number, filmed: Day): readonly [Day, Day] {
  const of = (year: number) =>
    [dayOf(year, number, 1) as Day, dayOf(year, number, daysInMonth(year, number)) as Day] as const;
  const own = of(yearOf(filmed));
  return own[0] <= filmed ? own : of(yearOf(filmed) - 1);
}

function withYear(words: readonly string[], from: Day, to: Day, end: number, filmed: Day): Period {
  const after = /^(?:of|in)$/.test(words[end] ?? "") ? end + 1 : end;
  const said = spokenYear(words, after);
  if (said !== undefined) {
    const by = said.year - yearOf(to);
    return { from: moved(from, by), to: moved(to, by), end: said.end };
  }
  if (words[end] === "last" && words[end + 1] === "year" && yearOf(from) === yearOf(filmed))
    return { from: yearBefore(from), to: yearBefore(to), end: end + 2 };
  return { from, to, end };
}

function moved(day: Day, years: number): Day {
  return dayOf(yearOf(day) + years, Number(day.slice(5, 7)), Math.min(28, Number(day.slice(8)))) ?? day;
}

function only(day: Day, end: number): Period {
  return { from: day, to: day, end };
}
