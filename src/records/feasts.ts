/** Days that people reckon by without a date: feasts on fixed days, and those that go by Easter. */
import { addDays, dayOf, weekday, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";

interface Feast {
  /** As it is said: part of a regular expression, without groups. */
  readonly name: string;
  readonly inYear: (year: number) => Day;
  /** Elsewhere it is another day: only where people write the month first. */
  readonly monthFirst?: true;
}

const on = (month: number, date: number) => (year: number) => dayOf(year, month, date) as Day;

/** The first, second … Monday of a month. */
const mondayOf = (year: number, month: number, which: number) => weekdayOf(year, month, 1, which);

/** The first, second … Monday (1), Thursday (4) … of a month. */
function weekdayOf(year: number, month: number, wanted: number, which: number): Day {
  const first = dayOf(year, month, 1) as Day;
  return addDays(first, ((wanted + 7 - weekday(first)) % 7) + 7 * (which - 1));
}

const byEaster = (days: number) => (year: number) => addDays(easter(year), days);

export const feasts: readonly Feast[] = [
  { name: "new year'?s eve", inYear: on(12, 31) },
  { name: "new year(?:'?s)?(?: day)?", inYear: on(1, 1) },
  { name: "burns night", inYear: on(1, 25) },
  { name: "australia day", inYear: on(1, 26) },
  { name: "valentine'?s(?: day)?", inYear: on(2, 14) },
  { name: "(?:st|saint) david'?s day", inYear: on(3, 1) },
  { name: "(?:(?:st|saint) patrick'?s|paddy'?s|patrick'?s) day", inYear: on(3, 17) },
  { name: "republic day", inYear: on(1, 26) },
  { name: "candlemas|(?:the )?chandeleur", inYear: on(2, 2) },
  { name: "waitangi day", inYear: on(2, 6) },
  { name: "lady day", inYear: on(3, 25) },
  { name: "king'?s day", inYear: on(4, 27) },
  { name: "earth day", inYear: on(4, 22) },
  { name: "madaraka day", inYear: on(6, 1) },
  { name: "juneteenth", inYear: on(6, 19) },
  { name: "(?:st|saint) john'?s eve", inYear: on(6, 23) },
  { name: "(?:st|saint) john'?s day", inYear: on(6, 24) },
  { name: "michaelmas(?: day)?", inYear: on(9, 29) },
  { name: "(?:la )?(?:saint|st)-? ?jean(?: baptiste)?", inYear: on(6, 24) },
  { name: "canada day", inYear: on(7, 1) },
  { name: "mashujaa day", inYear: on(10, 20) },
  { name: "jamhuri day", inYear: on(12, 12) },
  { name: "all saints'?(?: day)?", inYear: on(11, 1) },
  { name: "remembrance (?:day|sunday)|veterans'? day", inYear: on(11, 11) },
  { name: "saint andrew'?s (?:day|night)|st andrew'?s (?:day|night)", inYear: on(11, 30) },
  { name: "(?:may day|first of may)", inYear: on(5, 1) },
  { name: "memorial day|decoration day", inYear: (year) => addDays(mondayOf(year, 6, 1), -7) },
  { name: "labor day", inYear: (year) => mondayOf(year, 9, 1) },
  { name: "thanksgiving(?: day)?", inYear: (year) => weekdayOf(year, 11, 4, 4), monthFirst: true },
  { name: "august bank holiday", inYear: (year) => addDays(mondayOf(year, 9, 1), -7) },
  { name: "columbus day", inYear: (year) => mondayOf(year, 10, 2) },
  { name: "may bank holiday", inYear: (year) => mondayOf(year, 5, 1) },
  { name: "anzac day", inYear: on(4, 25) },
  { name: "midsummer(?:'?s)?(?: day)?", inYear: on(6, 24) },
  { name: "(?:fourth|4th) of july", inYear: on(7, 4) },
  // New Zealand's, from Saturday on; elsewhere nobody says it so.
  { name: "labour weekend", inYear: (year) => addDays(mondayOf(year, 10, 4), -2) },
  { name: "hallowe'?en", inYear: on(10, 31) },
  { name: "bonfire night|guy fawkes(?: night)?", inYear: on(11, 5) },
  { name: "boxing day|(?:st|saint) stephen'?s day", inYear: on(12, 26) },
  { name: "christmas eve", inYear: on(12, 24) },
  { name: "christmas|xmas", inYear: on(12, 25) },
  { name: "hogmanay", inYear: on(12, 31) },
  { name: "shrove tuesday|pancake day", inYear: byEaster(-47) },
  { name: "good friday", inYear: byEaster(-2) },
  { name: "easter saturday", inYear: byEaster(-1) },
  { name: "easter monday", inYear: byEaster(1) },
  { name: "easter(?: sunday)?", inYear: easter },
  { name: "whitsun|pentecost", inYear: byEaster(49) },
  { name: "corpus christi", inYear: byEaster(60) },
];

const feastWords = new Set(
  feasts.flatMap(({ name }) =>
    name
      .replaceAll("'?", "")
      .split(/[^a-z0-9]+/)
      .map(withoutS),
  ),
);

/** Whether a feast may be called by words of which this is one; true of a few that no feast begins with. */
export function isOfFeast(word: string): boolean {
  return feastWords.has(withoutS(word.replace("'", "")));
}

function withoutS(word: string): string {
  return word.replace(/s$/, "");
}

/** The last time that the feast with which words begin was on or before a day, and how many words it takes. */
export function lastFeast(
  words: readonly string[],
  to: Day,
): { readonly day: Day; readonly words: number } | undefined {
  if (!beginsAsFeast.test(words.slice(0, 4).join(" "))) return undefined;
  for (let length = Math.min(4, words.length); length > 0; length -= 1) {
    const feast = feastNamed(words.slice(0, length).join(" "));
    if (feast === undefined || feast.monthFirst === true) continue;
    const day = feast.inYear(yearOf(to));
    return { day: day <= to ? day : feast.inYear(yearOf(to) - 1), words: length };
  }
  return undefined;
}

/** One look in place of one for each feast and length: few words of a text begin one. */
const beginsAsFeast = new RegExp(`^(?:${feasts.map(({ name }) => name).join("|")})`, "i");

const patterns = feasts.map((feast) => ({ ...feast, whole: new RegExp(`^(?:${feast.name})$`, "i") }));

function feastNamed(written: string): Feast | undefined {
  return patterns.find(({ whole }) => whole.test(written));
}

/** The first time it is on or after a day; the feast as it was written. */
export function nextFeast(written: string, from: Day, monthFirst = false): Day | undefined {
  const feast = feastNamed(written);
  if (feast === undefined || (feast.monthFirst === true && !monthFirst)) return undefined;
  const day = feast.inYear(yearOf(from));
  return day < from ? feast.inYear(yearOf(from) + 1) : day;
}

/** Western Easter Sunday, by J. Meeus, Astronomical Algorithms (1991), chapter 8, for every Gregorian year. */
export function easter(year: number): Day {
  const [a, b, c] = [year % 19, Math.floor(year / 100), year % 100];
  const [d, e] = [Math.floor(b / 4), b % 4];
  const g = Math.floor((b - Math.floor((b + 8) / 25) + 1) / 3);
  const h = (19 * a + b - d - g + 15) % 30;
  const l = (32 + 2 * e + 2 * Math.floor(c / 4) - h - (c % 4)) % 7;
  const m = Math.floor((a + 11 * h + 22 * l) / 451);
  const days = h + l - 7 * m + 114;
  return dayOf(year, Math.floor(days / 31), (days % 31) + 1) as Day;
}
