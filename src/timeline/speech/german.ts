/**
 * German. Phrases stand so that no case has to be worked out: "am 3. Mai", "nach zwei Wochen", and for single things the
 * whole phrase with its article.
 */
import type { Count } from "../../model.ts";
import { type Span, sayList, spanOf } from "../words.ts";
import { amountsIn, marksIn } from "./amounts.ts";
import { daysIn } from "./days.ts";
import { germanArticle, germanCropName, germanVarietyName } from "./german-crops.ts";
import type { Speech, Units } from "./speech.ts";

const measures = { pint: ["Pint", "Pints"], quart: ["Quart", "Quarts"] } as const;

const smallNumbers = "keine ein zwei drei vier fünf sechs sieben acht neun zehn elf zwölf".split(" ");
const smallOrdinals = "nullte erste zweite dritte vierte fünfte sechste siebte achte neunte zehnte elfte zwölfte".split(
  " ",
);

const near: Readonly<Record<Span["near"], string>> = { exactly: "", over: "gut ", nearly: "knapp ", about: "rund " };

/** One as a subject, after "nach", and as a length of time; several, and several after "nach". */
const spans: Readonly<Record<Span["unit"], Readonly<Record<"bare" | "after" | "long", readonly [string, string]>>>> = {
  day: { bare: ["ein Tag", "Tage"], after: ["einem Tag", "Tagen"], long: ["einen Tag", "Tage"] },
  week: { bare: ["eine Woche", "Wochen"], after: ["einer Woche", "Wochen"], long: ["eine Woche", "Wochen"] },
  month: { bare: ["ein Monat", "Monate"], after: ["einem Monat", "Monaten"], long: ["einen Monat", "Monate"] },
  year: { bare: ["ein Jahr", "Jahre"], after: ["einem Jahr", "Jahren"], long: ["ein Jahr", "Jahre"] },
};

export function germanSpeech(tongue: string, units: Units): Speech {
  const digits = new Intl.NumberFormat(tongue, { maximumFractionDigits: 2 });
  const number = (n: number) => smallNumbers[n] ?? digits.format(n);
  const days = daysIn(tongue);
  const span = (length: number, form: "bare" | "after" | "long") => {
    const { near: how, n, unit } = spanOf(length);
    if (n === 0) return `weniger als ${spans.day[form][0]}`;
    const [one, many] = spans[unit][form];
    return `${near[how]}${n === 1 ? one : `${number(n)} ${many}`}`;
  };
  return {
    tongue,
    units,
    ...days,
    ...amountsIn(tongue, units, measures),
    mark: marksIn(tongue),
    otherUnits: amountsIn(tongue, units === "us" ? "metric" : "us", measures),
    number,
    ordinal: (n) => smallOrdinals[n] ?? `${digits.format(n)}.`,
    count: ({ value, upTo, approx }: Count) =>
      upTo === undefined || upTo === value
        ? `${approx ? "etwa " : ""}${number(value)}`
        : `${number(value)} bis ${number(upTo)}`,
    many: (n, one, many) => (n === 1 ? one : `${number(n)} ${many}`),
    digits: (n) => digits.format(n),
    share: (share) => `${digits.format(Math.round(share * 100))}\u00a0%`,
    list: (parts, joint = "and") => sayList(parts, joint === "and" ? "und" : "oder"),
    quoted: (text) => `„${text}“`,
    onDay: (day, from) => `am ${days.day(day, from)}`,
    age: (length) => span(length, "bare"),
    ageAfter: (length) => span(length, "after"),
    ageLong: (length) => span(length, "long"),
    one: (name, crop) => `${germanArticle(crop)} ${name}`,
    crop: (crop, count) => germanCropName(crop, count, tongue),
    variety: (variety, crop, count) => germanVarietyName(variety, crop, count, tongue),
  };
}
