/** English, in the words of words.ts. */
import { cropName, sayAge, sayCount, sayList, sayNumber, sayOrdinal, varietyName } from "../words.ts";
import { amountsIn, marksIn } from "./amounts.ts";
import { daysIn } from "./days.ts";
import type { Speech, Units } from "./speech.ts";

const measures = { pint: ["pint", "pints"], quart: ["quart", "quarts"] } as const;

export function englishSpeech(tongue: string, units: Units): Speech {
  const digits = new Intl.NumberFormat(tongue, { maximumFractionDigits: 2 });
  const days = daysIn(tongue);
  return {
    tongue,
    units,
    ...days,
    ...amountsIn(tongue, units, measures),
    mark: marksIn(tongue),
    otherUnits: amountsIn(tongue, units === "us" ? "metric" : "us", measures),
    number: sayNumber,
    ordinal: sayOrdinal,
    count: (count) => sayCount(count),
    many: (n, one, many) => (n === 1 ? one : `${sayNumber(n)} ${many}`),
    digits: (n) => digits.format(n),
    share: (share) => `${digits.format(Math.round(share * 100))}\u00a0%`,
    list: (parts, joint = "and") => sayList(parts, joint),
    quoted: (text) => `“${text}”`,
    onDay: (day, near) => `on ${days.day(day, near)}`,
    age: sayAge,
    ageAfter: sayAge,
    ageLong: sayAge,
    one: (name) => `one ${name}`,
    crop: cropName,
    variety: varietyName,
  };
}
