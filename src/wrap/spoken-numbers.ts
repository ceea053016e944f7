/** Numbers and days as people say them, read from plain words: "thirty six", "1.8", "one point eight", "a dozen", "22nd of june". */
import { dayOf, monthNumber, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";

export interface SpokenNumber {
  readonly value: number;
  /** Index after its last word. */
  readonly end: number;
}

const ones =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const tens = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");
const ordinals =
  "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth".split(
    " ",
  );

const values = new Map<string, number>([
  ...ones.map((word, value) => [word, value] as const),
  ...tens.map((word, index) => [word, (index + 2) * 10] as const),
  ["dozen", 12],
  ["couple", 2],
]);
for (const [index, ten] of tens.entries()) {
  for (const [value, one] of ones.slice(1, 10).entries()) values.set(ten + one, (index + 2) * 10 + value + 1);
}
const ordinalValues = new Map<string, number>(ordinals.map((word, index) => [word, index + 1]));
for (const [index, ten] of tens.entries()) {
  for (const [value, one] of ordinals.slice(0, 9).entries()) ordinalValues.set(ten + one, (index + 2) * 10 + value + 1);
}
ordinalValues.set("thirtieth", 30);

/** A number beginning at a word; words are plain ("twentyfour" is written together where it had a hyphen). */
export function spokenNumber(words: readonly string[], at: number): SpokenNumber | undefined {
  const whole = wholeNumber(words, at);
  if (whole === undefined) return undefined;
  let { value, end } = whole;
  if (words[end] === "point") {
    let digits = "";
    for (let next = end + 1; digits.length < 3; next += 1) {
      const digit = ones.indexOf(words[next] ?? "");
      const written = /^\d$/.test(words[next] ?? "") ? Number(words[next]) : digit;
      if (written < 0 || written > 9) break;
      digits += written;
      end = next + 1;
    }
    if (digits !== "") return { value: Number(`${value}.${digits}`), end };
    end = whole.end;
  }
  if (words[end] === "and" && words[end + 1] === "a" && words[end + 2] === "half")
    return { value: value + 0.5, end: end + 3 };
  if (words[end] === "and" && words[end + 1] === "half") return { value: value + 0.5, end: end + 2 };
  if (words[end] === "dozen") return { value: value * 12, end: end + 1 };
  if (words[end] === "hundred" && value < 20) {
    value *= 100;
    end += 1;
    const rest = wholeNumber(words, words[end] === "and" ? end + 1 : end);
    if (rest !== undefined && rest.value < 100) return { value: value + rest.value, end: rest.end };
  }
  return { value, end };
}

/** What few words of a film do: a number may begin with it. */
export function beginsNumber(word: string): boolean {
  const first = word.charCodeAt(0);
  return (first >= 48 && first <= 57) || values.has(word) || word === "a" || word === "hundred" || word === "half";
}

function wholeNumber(words: readonly string[], at: number): SpokenNumber | undefined {
  const word = words[at] ?? "";
  if (!beginsNumber(word)) return undefined;
  if (/^\d+(?:\.\d+)?$/.test(word)) return { value: Number(word), end: at + 1 };
  if (word === "a" && (words[at + 1] === "dozen" || words[at + 1] === "couple")) {
    return { value: values.get(words[at + 1] as string) as number, end: at + 2 };
  }
  if (word === "hundred" && (values.has(words[at + 1] ?? "") || words[at + 1] === "and")) return { value: 1, end: at };
  if (word === "hundred" || (word === "a" && words[at + 1] === "hundred"))
    return { value: 1, end: word === "a" ? at + 1 : at };
  if (word === "half" && words[at + 1] === "a" && words[at + 2] === "dozen") return { value: 6, end: at + 3 };
  const value = values.get(word);
  if (value === undefined) return undefined;
  const next = values.get(words[at + 1] ?? "") ?? -1;
  return value >= 20 && value < 100 && value % 10 === 0 && next > 0 && next < 10
    ? { value: value + next, end: at + 2 }
    : { value, end: at + 1 };
}

export function beginsOrdinal(word: string): boolean {
  const first = word.charCodeAt(0);
  return (first >= 48 && first <= 57) || ordinalValues.has(word) || values.has(word);
}

/** "twenty-second", "22nd", "sixth": 22, 22, 6. */
export function spokenOrdinal(words: readonly string[], at: number): SpokenNumber | undefined {
  const word = words[at] ?? "";
  if (!beginsOrdinal(word)) return undefined;
  const written = /^(\d{1,2})(?:st|nd|rd|th)$/.exec(word)?.[1];
  if (written !== undefined) return { value: Number(written), end: at + 1 };
  const known = ordinalValues.get(word);
  if (known !== undefined) return { value: known, end: at + 1 };
  const ten = tens.indexOf(word);
  const one = ordinals.indexOf(words[at + 1] ?? "");
  return ten >= 0 && one >= 0 && one < 9 ? { value: (ten + 2) * 10 + one + 1, end: at + 2 } : undefined;
}

/** "the sixth of April", "November the ninth", "6th april": the last such day before the film, unless a year is said. */
export function spokenDay(
  words: readonly string[],
  at: number,
  filmed: Day,
): { readonly day: Day; readonly end: number } | undefined {
  const from = words[at] === "the" ? at + 1 : at;
  const first = spokenOrdinal(words, from);
  if (first !== undefined) {
    const month = words[first.end] === "of" ? first.end + 1 : first.end;
    return withMonth(monthNumber(words[month] ?? ""), first.value, month + 1, words, filmed);
  }
  const month = monthNumber(words[from] ?? "");
  if (month === undefined) return undefined;
  const next = words[from + 1] === "the" ? from + 2 : from + 1;
  const day = spokenOrdinal(words, next);
  return day === undefined ? undefined : withMonth(month, day.value, day.end, words, filmed);
}

function withMonth(
  month: number | undefined,
  day: number,
  end: number,
  words: readonly string[],
  filmed: Day,
): { readonly day: Day; readonly end: number } | undefined {
  if (month === undefined) return undefined;
  const year = /^(?:19|20)\d\d$/.test(words[end] ?? "") ? Number(words[end]) : undefined;
  const found = dayOf(year ?? yearOf(filmed), month, day);
  if (found === undefined) return undefined;
  if (year !== undefined) return { day: found, end: end + 1 };
  const before = found <= filmed ? found : dayOf(yearOf(filmed) - 1, month, day);
  return before === undefined ? undefined : { day: before, end };
}
