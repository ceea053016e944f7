/** How one garden's English says days and amounts: its day order, its spelling, its units. */
import type { Day, GardenSettings } from "../model.ts";
import {
  chartUnit,
  type Measures,
  sayLength,
  saySide,
  sayTemperature,
  sayVolume,
  sayWeight,
  type Units,
} from "./amounts.ts";
import { sayDay, sayMonth, sayShortMonth, sayWeekdayAndDay } from "./days.ts";
import { digits, sayShare } from "./numbers.ts";

/** An amount in the garden's own units, and in the others. */
export interface Amount {
  /** "1.4 kg" */
  readonly text: string;
  /** "3.1 lb"; undefined where both ways would say the same, as of pieces. */
  readonly other?: string | undefined;
}

/** In one kind of units: "1.4 kg", "3.1 lb". */
export interface Amounts {
  weight(grams: number): string;
  volume(litres: number): string;
  length(cm: number): string;
  /** Of a bed. */
  side(metres: number): string;
  temperature(celsius: number): string;
}

export interface Locale extends Amounts {
  /** BCP 47 tag: "en-GB". */
  readonly tag: string;
  readonly units: Units;
  /** "21 April", with its year where that does not go without saying when it is said on `near`. */
  day(day: Day, near?: Day): string;
  /** "on 21 April". */
  onDay(day: Day, near?: Day): string;
  /** "Monday 13 July". */
  weekdayAndDay(day: Day, near?: Day): string;
  month(day: Day, near?: Day): string;
  /** "Apr", as charts have it. */
  shortMonth(day: Day): string;
  /** "35 %", of a share 0 to 1; the space does not break. */
  share(share: number): string;
  /** A figure at a mark of an axis: "40 cm", "2.5 kg"; the space does not break. */
  mark(n: number, of: "weight" | "length"): string;
  /** In the units that the garden does not use. */
  readonly otherUnits: Amounts;
}

/** Pages ask for it thousands of times. */
const made = new Map<string, Locale>();

export function localeOf({ language, units }: Measures): Locale {
  const key = `${language} ${units}`;
  const known = made.get(key) ?? newLocale(language, units);
  made.set(key, known);
  return known;
}

function newLocale(language: GardenSettings["language"], units: Units): Locale {
  return {
    tag: language,
    units,
    day: (day, near) => sayDay(day, { language, near }),
    onDay: (day, near) => `on ${sayDay(day, { language, near })}`,
    weekdayAndDay: (day, near) => sayWeekdayAndDay(day, { language, near }),
    month: (day, near) => sayMonth(day, { language, near }),
    shortMonth: (day) => sayShortMonth(day, { language }),
    share: (share) => sayShare(share).replace(" ", "\u00a0"),
    mark: (n, of) => `${digits(Math.round(n * 10) / 10)}\u00a0${chartUnit(of, units).sign}`,
    ...amountsIn({ language, units }),
    otherUnits: amountsIn({ language, units: units === "us" ? "metric" : "us" }),
  };
}

function amountsIn(measures: Measures): Amounts {
  const { units } = measures;
  return {
    weight: (grams) => sayWeight(grams, units),
    volume: (litres) => sayVolume(litres, measures),
    length: (cm) => sayLength(cm, units),
    side: (metres) => saySide(metres, units),
    temperature: (celsius) => sayTemperature(celsius, units),
  };
}
