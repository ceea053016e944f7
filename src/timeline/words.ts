/**
 * How numbers, days, ages, weights and names are said aloud in English: in commands, in the brief, and where a garden's own
 * language is English. Other languages are tables of the same in speech/. Days are written as the garden's English writes
 * them ("21 April", "April 21"), weights and lengths in its units. Everything here gives the same bytes on every machine: no
 * clock, no system time zone, no system language.
 */
import { daysBetween, yearOf } from "../calendar.ts";
import type { Count, Crop, Day, GardenSettings } from "../model.ts";

type Units = GardenSettings["units"];

const gramsPerOunce = 28.349523125;
const gramsPerPound = 453.59237;
const centimetresPerInch = 2.54;
/** US liquid quart and pint. */
const litresPerQuart = 0.946352946;
const litresPerPint = 0.473176473;
/** Mean length of a month of the Gregorian calendar: 146,097 days in 4,800 months. */
const daysPerMonth = 30.436875;

// -------------------------------------------------------------------------------------------------------------- numbers

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

// ------------------------------------------------------------------------------------------------------- days and ages

export interface DaySpeech {
  /** BCP 47 tag: garden.settings fits here. */
  readonly language: string;
  /** The day from which it is said: the year is left out when it goes without saying. */
  readonly near?: Day | undefined;
}

/** Making an Intl formatter costs a thousand times what using it does, and a season's sentences name thousands of days. */
const formatters = new Map<string, (day: Day) => string>();

function formatter(language: string, shape: string, options: Intl.DateTimeFormatOptions): (day: Day) => string {
  const key = `${language} ${shape}`;
  const known = formatters.get(key);
  if (known !== undefined) return known;
  const format = new Intl.DateTimeFormat(language, { ...options, timeZone: "UTC" });
  const said = new Map<Day, string>();
  const made = (day: Day) => {
    const words = said.get(day) ?? format.format(Date.parse(day));
    said.set(day, words);
    return words;
  };
  formatters.set(key, made);
  return made;
}

/**
 * "21 April", or "21 April 2025" when the year has to be said: no day to speak from is given, or it lies in another year
 * and more than half a year away ("28 December" is understood in March, not in November).
 */
export function sayDay(day: Day, { language, near }: DaySpeech): string {
  const understood = goesWithoutYear(day, near);
  const shape = understood ? "day" : "day of year";
  const options: Intl.DateTimeFormatOptions = { day: "numeric", month: "long" };
  return formatter(language, shape, understood ? options : { ...options, year: "numeric" })(day);
}

/** Whether a day said on another is understood without its year. */
export function goesWithoutYear(day: Day, near: Day | undefined): boolean {
  return near !== undefined && (yearOf(near) === yearOf(day) || Math.abs(daysBetween(day, near)) <= 183);
}

/** "Tuesday". */
export function sayWeekday(day: Day, { language }: DaySpeech): string {
  return formatter(language, "weekday", { weekday: "long" })(day);
}

/** "April", or "April 2025" when the year has to be said. */
export function sayMonth(day: Day, { language, near }: DaySpeech): string {
  const understood = near !== undefined && yearOf(near) === yearOf(day);
  const options: Intl.DateTimeFormatOptions = understood ? { month: "long" } : { month: "long", year: "numeric" };
  return formatter(language, understood ? "month" : "month of year", options)(day);
}

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
export function spanOf(days: number): Span {
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

// ------------------------------------------------------------------------------------------- weights, volumes, lengths

/** "650 g", "1.4 kg", "41.3 kg"; in US units "9 oz", "3.1 lb". */
export function sayWeight(grams: number, units: Units): string {
  if (units === "us") {
    const ounces = rounded(grams / gramsPerOunce, 1);
    return ounces < 16 ? `${ounces < 4 ? ounces : Math.round(ounces)} oz` : `${said(grams / gramsPerPound, 1)} lb`;
  }
  if (Math.round(grams) < 1000) return `${grams < 10 ? rounded(grams, 1) : Math.round(grams)} g`;
  return `${said(grams / 1000, grams < 10_000 ? 2 : 1)} kg`;
}

/** "500 ml", "1 litre", "2.5 litres"; in US units "3 pints", "2 quarts". */
export function sayVolume(litres: number, units: Units): string {
  if (units === "us") {
    const pints = rounded(litres / litresPerPint, 1);
    return pints < 4 ? unit(pints, "pint", "pints") : unit(rounded(litres / litresPerQuart, 1), "quart", "quarts");
  }
  return litres < 1 ? `${Math.round(litres * 1000)} ml` : unit(rounded(litres, 1), "litre", "litres");
}

/** "42 cm", "1.2 m"; in US units "16.5 inches", "5 feet 6 inches". `cm` is a height, length or distance in centimetres. */
export function sayLength(cm: number, units: Units): string {
  if (units === "us") {
    const inches = cm / centimetresPerInch;
    if (inches < 47.5) return unit(inches < 24 ? rounded(inches, 1) : Math.round(inches), "inch", "inches");
    const whole = Math.round(inches);
    const rest = whole % 12;
    return `${unit(Math.floor(whole / 12), "foot", "feet")}${rest === 0 ? "" : ` ${unit(rest, "inch", "inches")}`}`;
  }
  return rounded(cm, 0) < 100 ? `${cm < 10 ? rounded(cm, 1) : Math.round(cm)} cm` : `${said(cm / 100, 2)} m`;
}

function rounded(n: number, places: number): number {
  const factor = 10 ** places;
  return Math.round(n * factor) / factor;
}

function said(n: number, places: number): string {
  return groupedDigits.format(rounded(n, places));
}

/** Measures keep their digits: "1 inch", "3 pints". */
function unit(n: number, one: string, many: string): string {
  return `${groupedDigits.format(n)} ${n === 1 ? one : many}`;
}

// ---------------------------------------------------------------------------------------------------------------- names

/**
 * A variety as a gardener says it: "Musselburgh leeks", "one Musselburgh leek" (count 1), "Crown Prince squash".
 * The crop's word is left out when the title brings it ("Red Baron onion") or no crop is known.
 * Without a count the plural is said: a row of leeks.
 */
export function varietyName(
  variety: { readonly title: string } | undefined,
  crop: Crop | undefined,
  count?: number,
): string {
  if (variety === undefined) return crop === undefined ? "plants" : cropName(crop, count);
  if (crop === undefined) return variety.title;
  const word = cropName(crop, count);
  const words = ` ${plain(variety.title)} `;
  for (const known of [crop.plural, crop.name, ...crop.alsoCalled]) {
    const found = plain(known);
    const own = found === plain(crop.plural) || found === plain(crop.name);
    if (own && words.trim() === found) return word;
    // "Red Baron onion" becomes "Red Baron onions": the title's own crop word takes the number asked for.
    if (own && words.endsWith(` ${found} `)) {
      return `${variety.title.slice(0, variety.title.length - known.length)}${word}`;
    }
    if (words.includes(` ${found} `)) return variety.title;
  }
  return `${variety.title} ${word}`;
}

/** "leek" for one, "leeks" for any other number or none. */
export function cropName(crop: Crop, count?: number): string {
  return count === 1 ? crop.name : crop.plural;
}

/** Lower case without accents and hyphens, for comparing words only. */
function plain(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[-\s]+/g, " ")
    .trim();
}
