/** How long plantings really took against what their variety promises: what forecasts learn from. */
import { dayLength, daysAfter, YEAR_DAYS } from "../almanac/index.ts";
import { addDays, daysBetween } from "../calendar.ts";
import { type Maturity, maturityOf } from "../facts/index.ts";
import type { Day, Garden } from "../model.ts";
import type { Lot, SeasonBook } from "./season-book.ts";

/** One planting whose variety says how many days it takes. */
export interface Timed {
  readonly lot: Lot;
  readonly goal: Maturity["goal"];
  readonly counted: Maturity["counted"];
  /** The day from which the variety's days count. */
  readonly begun: Day;
  /** By the variety's record. */
  readonly catalogueDays: number;
  readonly reached?: Day | undefined;
}

/**
 * Crops that wait in the ground until somebody wants them: the day of their first picking tells of an appetite and not of a
 * crop. Common practice.
 */
const waiting: ReadonlySet<string> = new Set(
  "kale leek parsnip swede celeriac chard perpetual-spinach collard brussels-sprout salsify scorzonera jerusalem-artichoke oca".split(
    " ",
  ),
);

export function waits(crop: string | undefined): boolean {
  return crop !== undefined && waiting.has(crop);
}

/** Undefined when nothing says how long it takes. */
export function timed(garden: Garden, lot: Lot): Timed | undefined {
  const maturity = maturityOf(garden, lot.planting)?.value;
  if (maturity === undefined) return undefined;
  const { goal, counted, begun, days } = maturity;
  const reached = goal === "flower" ? (lot.firstFlower ?? lot.firstPicked) : lot.firstPicked;
  return {
    lot,
    goal,
    counted,
    begun,
    catalogueDays: days,
    reached: reached !== undefined && reached > begun ? reached : undefined,
  };
}

const known = new WeakMap<SeasonBook, readonly Timed[]>();

/** Every planting that can be timed, in order of beginning. */
export function allTimed(book: SeasonBook): readonly Timed[] {
  const made = known.get(book) ?? book.lots.flatMap((lot) => timed(book.garden, lot) ?? []);
  known.set(book, made);
  return made;
}

/** Plantings that live on a day, were begun by then, and have not reached their goal. */
export function stillWaiting(book: SeasonBook, on: Day): readonly Timed[] {
  return allTimed(book).filter(
    ({ lot: { planting }, reached, begun }) =>
      begun <= on && (reached ?? "9999") > on && (planting.ended ?? "9999") > on,
  );
}

/** Days between two days of the year, whatever their years: at most half a year. */
export function daysOfYearApart(a: Day, b: Day): number {
  const apart = Math.abs(daysBetween(`2000${a.slice(4)}`, `2000${b.slice(4)}`));
  return Math.min(apart, 366 - apart);
}

/**
 * Growers say that plants all but stop while the day is shorter than ten hours; here they go on at a third of their pace
 * (common practice). A variety's days are growing days unless they are so many that its winter is reckoned in.
 */
const shortDay = 10;
const shortDayPace = 1 / 3;
const winterReckonedIn = 150;

/** The day by which a variety's days have passed, in short days at their slower pace. */
export function promisedDay({ begun, catalogueDays }: Timed, latitude: number | undefined): Day {
  if (latitude === undefined || catalogueDays > winterReckonedIn) return addDays(begun, catalogueDays);
  const pace = paceAt(latitude);
  const next = daysAfter(begun);
  let days = 0;
  for (let grown = 0; grown < catalogueDays; days += 1) grown += pace[next()] ?? 1;
  return addDays(begun, days);
}

const paces = new Map<number, readonly number[]>();

/** By day of the year. */
function paceAt(latitude: number): readonly number[] {
  const known = paces.get(latitude);
  if (known !== undefined) return known;
  const made = Array.from({ length: YEAR_DAYS }, (_, at) =>
    dayLength(addDays("2000-01-01", at), latitude) < shortDay ? shortDayPace : 1,
  );
  paces.set(latitude, made);
  return made;
}
