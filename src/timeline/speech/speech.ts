/**
 * How one language says numbers, days, spans and amounts. Every sentence for viewers is put together from these, so that a new
 * language is a new table and no branch anywhere.
 */
import type { Count, Crop, Day, GardenSettings } from "../../model.ts";

/** Units as Intl calls them. */
export type MarkUnit = "inch" | "centimeter" | "kilogram" | "pound";

export type Units = GardenSettings["units"];

/** An amount in the garden's own units, and in the others. */
export interface Amount {
  /** "1.4 kg" */
  readonly text: string;
  /** "3.1 lb"; undefined where both ways would say the same, as of pieces. */
  readonly other?: string | undefined;
}

export interface Speech {
  /** BCP 47 tag of what is said: "en-GB", "de-AT". */
  readonly tongue: string;
  readonly units: Units;

  /** Words up to twelve, then digits: "seven", "24", "1,200"; none is "no" and its like. */
  number(n: number): string;
  /** "third", "21st". */
  ordinal(n: number): string;
  /** "six", "about ten", "eight to ten". */
  count(count: Count): string;
  /** "three leeks". `one` is the whole phrase for a single one, with its article or number: "one leek", "eine Bohne". */
  many(n: number, one: string, many: string): string;
  /** Digits as tables have them: "1,200.5". */
  digits(n: number): string;
  /** "35 %", of a share 0 to 1; the space does not break. */
  share(share: number): string;
  list(parts: readonly string[], joint?: "and" | "or"): string;
  /** A phrase in quotation marks. */
  quoted(text: string): string;

  /** "21 April", with its year where that does not go without saying when it is said on `near`. */
  day(day: Day, near?: Day): string;
  /** How a sentence says when: "on 21 April", "am 21. April". */
  onDay(day: Day, near?: Day): string;
  weekday(day: Day): string;
  /** "Monday 13 July", "Montag, 13. Juli". */
  weekdayAndDay(day: Day, near?: Day): string;
  month(day: Day, near?: Day): string;
  /** "Apr", as charts have it. */
  shortMonth(day: Day): string;
  /** A span: "one day", "26 days", "just over eight weeks". */
  age(days: number): string;
  /** A span after "since" and its like: "seit acht Wochen", "nach einem Tag". */
  ageAfter(days: number): string;
  /** A span that something lies away or lasts: "einen Tag danach". */
  ageLong(days: number): string;

  /** In the garden's units: "1.4 kg", "3.1 lb". */
  weight(grams: number): string;
  volume(litres: number): string;
  length(cm: number): string;
  temperature(celsius: number): string;
  /** A figure at a mark of an axis: "40 cm", "2.5 kg"; the space does not break. */
  mark(n: number, unit: MarkUnit): string;
  /** In the units that the garden does not use. */
  readonly otherUnits: Pick<Speech, "weight" | "volume" | "length" | "temperature">;

  /** "leeks", of one "leek". */
  crop(crop: Crop, count?: number): string;
  /** "one leek", "eine Tomate": a single one by its name, of a crop that may not be known. */
  one(name: string, crop: Crop | undefined): string;
  /** "Musselburgh leeks", of one "Musselburgh leek". */
  variety(variety: { readonly title: string } | undefined, crop: Crop | undefined, count?: number): string;
}
