/**
 * The kinds of value that front matter keys have. Every scalar arrives as the text a person wrote; a field says how that
 * text is read, in which units, and why it may be refused.
 */

import * as z from "zod";
import { parseDay, parseMonthDay, parseSince, type RefusedDay } from "../../calendar.ts";
import type { Giver, Obtained } from "../../model.ts";
import type { RuleName } from "../problem-rules.ts";
import { ruleOfRefusedDay } from "../refused-days.ts";
import { forViewers, forYou } from "./meaning.ts";

/** A refusal with its own sentences, carried in a zod issue. */
export interface Refusal {
  readonly rule: RuleName;
  readonly what: string;
  readonly fix: string;
  /** The kind of value that is wanted. */
  readonly expected?: string | undefined;
}

type Reading<T> = { readonly value: T } | Refusal;

/** A field read from text by a function that gives a value or says why not. */
export function readAs<T>(read: (text: string) => Reading<T>) {
  return z.string().transform((text, context): T => {
    const reading = read(text.trim());
    if ("value" in reading) return reading.value;
    context.issues.push({ code: "custom", input: text, params: { ...reading } });
    return z.NEVER;
  });
}

export function wrongValue(what: string, fix: string, expected?: string): Refusal {
  return { rule: "record/wrong-value", what, fix, expected };
}

function refusedDay(refused: RefusedDay): Refusal {
  return { rule: ruleOfRefusedDay(refused), what: refused.what, fix: refused.fix, expected: "a date" };
}

export const text = z.string().transform((written) => written.trim());

/** A list of texts; one text stands for a list of one. */
export const texts = z.preprocess((value) => (typeof value === "string" ? [value] : value), z.array(text));

/** A list of names; one text may hold several, set off by commas. */
export const names = z.preprocess(
  (value) => (typeof value === "string" ? value.split(",").filter((name) => name.trim() !== "") : value),
  z.array(text),
);

export const truth = readAs((written): Reading<boolean> => {
  if (/^(true|yes)$/i.test(written)) return { value: true };
  if (/^(false|no)$/i.test(written)) return { value: false };
  return wrongValue(`"${written}" is neither true nor false.`, "Write true or false.", "true or false");
});

/** A plain number within bounds; `unit` words after it are allowed when given. */
export function number(bounds: { readonly from: number; readonly to: number; readonly unit?: RegExp }) {
  const expected = `a number from ${bounds.from} to ${bounds.to}`;
  return readAs((written): Reading<number> => {
    const bare = bounds.unit === undefined ? written : written.replace(bounds.unit, "").trim();
    if (/^[+-]?\d+,\d+$/.test(bare)) {
      const fix = `Write it with a point: ${bare.replace(",", ".")}.`;
      return wrongValue(`"${written}" has a comma in its number.`, fix, expected);
    }
    if (!/^[+-]?(\d+(?:\.\d*)?|\.\d+)$/.test(bare)) {
      return wrongValue(`"${written}" is not a number.`, `Write ${expected}.`, expected);
    }
    const value = Number(bare);
    if (value >= bounds.from && value <= bounds.to) return { value };
    return wrongValue(`${written} is outside the range this key can have.`, `Write ${expected}.`, expected);
  });
}

/** One of a few words, in any case. */
export function oneOf<const Word extends string>(words: readonly Word[]) {
  const word = readAs((written): Reading<Word> => {
    const lower = written.toLowerCase().replace(/[-_\s]+/g, " ");
    const found = words.find((known) => known.toLowerCase() === lower);
    if (found !== undefined) return { value: found };
    return wrongValue(`"${written}" is not a value of this key.`, `Write ${orList(words)}.`, orList(words));
  });
  return word.meta({ words });
}

export const day = readAs((written): Reading<string> => {
  const reading = parseDay(written);
  return "refused" in reading ? refusedDay(reading) : { value: reading.day };
});

/** A day, month or year: the first day of it. */
export const since = readAs((written): Reading<string> => {
  const reading = parseSince(written);
  return "refused" in reading ? refusedDay(reading) : { value: reading.day };
});

/** A day, month or year as exact as it was written: "2023-03-01", "2023-03" or "2023". */
export const roughDay = readAs((written): Reading<string> => {
  const reading = parseSince(written);
  if ("refused" in reading) return refusedDay(reading);
  return { value: reading.day.slice(0, { day: 10, month: 7, year: 4 }[reading.precision]) };
});

/** A day of every year, as "04-20". */
export const monthDay = readAs((written): Reading<string> => {
  const reading = parseMonthDay(written);
  return "refused" in reading ? refusedDay(reading) : { value: reading.monthDay };
});

/** A web address. Only http and https: the address ends up in a link that viewers follow. */
export const link = readAs((written): Reading<string> => {
  const address = URL.parse(written);
  if (address && (address.protocol === "https:" || address.protocol === "http:")) return { value: written };
  return wrongValue(`"${written}" is not a web address.`, "Write it out with https:// at the front.", "a web address");
});

/** Seconds. A bare number counts minutes: "12", "12 min", "1 h 10 min", "90 s". */
export const duration = readAs((written): Reading<number> => {
  const bare = /^\d+(\.\d+)?$/.exec(written);
  if (bare) return { value: Number(written) * 60 };
  const parts =
    /^(?:(\d+(?:\.\d+)?) ?h(?:ours?)?)? ?(?:(\d+(?:\.\d+)?) ?min(?:utes?)?)? ?(?:(\d+) ?s(?:ec(?:onds?)?)?)?$/i.exec(
      written.trim().replace(/\s+/g, " "),
    );
  if (!parts || parts[0] === "") {
    return wrongValue(
      `"${written}" is not a length of time.`,
      'Write it in minutes, for example "12 min".',
      "a length of time",
    );
  }
  return { value: Number(parts[1] ?? 0) * 3600 + Number(parts[2] ?? 0) * 60 + Number(parts[3] ?? 0) };
});

/** Seconds into a film, written "6:40" or "1:06:40". */
export const filmTime = readAs((written): Reading<number> => {
  const parts = /^(?:(\d{1,2}):)?(\d{1,3}):([0-5]\d)$/.exec(written);
  if (!parts) {
    return wrongValue(
      `"${written}" is not a time in a film.`,
      'Write minutes and seconds with a colon, for example "6:40".',
      "a time in a film",
    );
  }
  return { value: Number(parts[1] ?? 0) * 3600 + Number(parts[2]) * 60 + Number(parts[3]) };
});

/** A time of day, as "09:15". */
export const clock = readAs((written): Reading<string> => {
  const parts = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(written);
  if (!parts)
    return wrongValue(
      `"${written}" is not a time of day.`,
      'Write hours and minutes, for example "09:15".',
      "a time of day",
    );
  return { value: `${String(parts[1]).padStart(2, "0")}:${parts[2]}` };
});

/** Two times of day, as "08:00 to 12:00". */
export const clockSpan = readAs((written): Reading<{ readonly from: string; readonly to: string }> => {
  const parts = written.split(/(?:(?<!\s)\s+)?(?:\bto\b|–|—|(?<=\d)-)\s*/);
  const [from, to] = parts.map((part) => clock.safeParse(part).data);
  if (parts.length === 2 && from !== undefined && to !== undefined && from !== to) return { value: { from, to } };
  return wrongValue(
    `"${written}" is not a span of the day.`,
    'Write two times of day with "to" between them, for example "08:00 to 12:00".',
    "two times of day",
  );
});

/** A place in a photo: fractions of its width and height, from the upper left corner. */
export const framePoint = z.tuple([number({ from: 0, to: 1 }), number({ from: 0, to: 1 })]);

/** A point of a site's plan, metres. */
export const planPoint = z.strictObject({
  x: forViewers(
    "metres to the east of the site's south-west corner",
    "2",
    number({ from: -10_000, to: 10_000, unit: /(?<!\s)\s*m$/ }),
  ),
  y: forViewers("metres to the north of it", "5.5", number({ from: -10_000, to: 10_000, unit: /(?<!\s)\s*m$/ })),
});

const compassWords = [
  "north",
  "north-north-east",
  "north-east",
  "east-north-east",
  "east",
  "east-south-east",
  "south-east",
  "south-south-east",
  "south",
  "south-south-west",
  "south-west",
  "west-south-west",
  "west",
  "west-north-west",
  "north-west",
  "north-north-west",
];
const compassLetters = compassWords.map((word) => word.replace(/([nesw])[a-z]*-?/g, "$1"));

/** Degrees from north, eastward: a compass word ("south-west", "SSW") or a number of degrees. */
export const compass = readAs((written): Reading<number> => {
  const lower = written.toLowerCase().replace(/(?<!\s)\s*(°|degrees?)$/, "");
  const letters = lower.replace(/(north|east|south|west)[\s-]*/g, (_, word: string) => word.charAt(0));
  const point = compassLetters.indexOf(letters);
  if (point >= 0) return { value: point * 22.5 };
  if (/^\d+(\.\d+)?$/.test(lower) && Number(lower) <= 360) return { value: Number(lower) % 360 };
  return wrongValue(
    `"${written}" is not a compass direction.`,
    'Write a word such as "south-west", or degrees from north, from 0 to 360.',
  );
});

/**
 * Garden position. Private always. The name of a town tells no position and is kept for its writer alone; with a figure in
 * it, it may be meant as one.
 */
export const position = z.preprocess(
  (written) => (typeof written === "string" && /\p{L}/u.test(written) && !/\d/.test(written) ? undefined : written),
  z
    .strictObject({
      latitude: forYou("degrees, north of the equator above none", "54.3", number({ from: -90, to: 90 })),
      longitude: forYou("degrees, east of Greenwich above none", "-5.6", number({ from: -180, to: 180 })),
      elevation: forYou(
        "metres above the sea",
        "30",
        number({ from: -430, to: 8000, unit: /(?<!\s)\s*m$/ }).optional(),
      ),
    })
    .optional(),
);

const obtainedWords = [
  "bought",
  "swapped",
  "saved",
  "gifted",
  "lent",
  "paid promotion",
  "commission link",
  "own product",
  "discounted",
  "family business",
] as const;

/** A gift or a loan with who gave it: to a seller it is a tie that viewers are told of, to a neighbour none. */
const given = {
  "given by a seller": { obtained: "gifted", giver: "a seller" },
  "given by a person": { obtained: "gifted", giver: "a person" },
  "lent by a seller": { obtained: "lent", giver: "a seller" },
  "lent by a person": { obtained: "lent", giver: "a person" },
} as const satisfies Record<string, { obtained: Obtained; giver: Giver }>;

export const obtained = oneOf([...obtainedWords, ...(Object.keys(given) as (keyof typeof given)[])]);

/** What stands behind "obtained", as the two things it tells. */
export function howObtained(written: z.output<typeof obtained> | undefined): {
  readonly obtained?: Obtained | undefined;
  readonly giver?: Giver | undefined;
} {
  if (written === undefined) return {};
  return written in given ? given[written as keyof typeof given] : { obtained: written as Obtained };
}

/** "bought, swapped or saved" */
export function orList(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words.at(-1)}`;
}
