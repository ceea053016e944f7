/** The years of a variety as strips above one another: what each strip draws, and the same in words. */
import { addDays, daysBetween } from "../../calendar.ts";
import type { Span } from "../../facts/index.ts";
import type { Season } from "../../garden/index.ts";
import { type Amount, capital, digits, pickedAmount, pieceWords, sayPlural } from "../../language/index.ts";
import type { Day, Picked, Variety } from "../../model.ts";
import type { PerPlant } from "../../season/index.ts";
import type { StripBar, YearStrip, YearStrips } from "./plate-shapes.ts";
import type { View } from "./view.ts";
import { inRows, type LotLife, type YearLife, yearLives } from "./year-lives.ts";

/** Marks of the beginning of every third month: more would run into one another on a phone. */
const MONTHS_APART = 3;

export function yearStrips(
  view: View,
  variety: Variety,
  picked: ReadonlyMap<number, Picked>,
  yields: ReadonlyMap<number, PerPlant>,
): YearStrips | undefined {
  const years = yearLives(view, variety);
  const [newest] = years;
  if (newest === undefined) return undefined;
  return {
    months: monthsOf(view, newest.season),
    years: years.map((year) => stripOf(view, year, picked.get(year.season.year), yields.get(year.season.year))),
  };
}

function monthsOf({ locale }: View, season: Season): YearStrips["months"] {
  const days: Day[] = [];
  const first = season.from.endsWith("-01") ? season.from : `${addDays(season.from, 31).slice(0, 7)}-01`;
  for (let day = first; day <= season.to; day = `${addDays(day, 32).slice(0, 7)}-01`) days.push(day);
  return days.map((day, index) => ({
    at: shareOf(season, day),
    text: index % MONTHS_APART === 0 ? locale.shortMonth(day) : undefined,
  }));
}

function stripOf(
  view: View,
  { season, lots }: YearLife,
  picked: Picked | undefined,
  yielded: PerPlant | undefined,
): YearStrip {
  const rows = inRows(lots);
  const amount = picked && amountOf(view, picked);
  return {
    year: season.label,
    rows: rows.length,
    bars: rows.flatMap((row, index) => row.flatMap((lot) => barsOf(season, lot, index))),
    told: told(view, season, lots),
    amount,
    each: yielded && eachPlant(view, yielded),
  };
}

function barsOf(season: Season, { raised, grown, picked }: LotLife, row: number): readonly StripBar[] {
  const bar = (kind: StripBar["kind"], span: Span | undefined): readonly StripBar[] => {
    if (span === undefined) return [];
    const from = shareOf(season, span.from);
    return [{ kind, row, from, width: round(shareOf(season, addDays(span.to, 1)) - from) }];
  };
  return [...bar("raised", raised), ...bar("grown", grown), ...bar("picked", picked)];
}

/** Hundredths of the year before the day. */
function shareOf({ from, to }: Season, day: Day): number {
  return round((100 * daysBetween(from, day)) / (daysBetween(from, to) + 1));
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

/** "Sown on 25 April, planted on 30 May, picked four times from 2 September to 1 October." */
function told(view: View, season: Season, lots: readonly LotLife[]): string {
  const { strip } = view.words.sentences;
  const days = (all: readonly (Day | undefined)[]) =>
    [...new Set(all.filter((day) => day !== undefined))].sort().map((day) => view.locale.day(day, season.to));
  const pickings = [...new Set(lots.flatMap((lot) => lot.pickings))].sort();
  const parts = [
    strip.sown(days(lots.map(({ sown }) => sown))),
    strip.planted(days(lots.map(({ planted }) => planted))),
    strip.picked(days([pickings[0], pickings.at(-1)]), pickings.length),
  ].filter((part) => part !== "");
  return parts.length === 0 ? strip.stood : `${capital(parts.join(", "))}.`;
}

/** "1.4 kg and three bunches", in other units "3.1 lb". */
export function amountOf({ garden, words }: View, picked: Picked): Amount {
  const { text, other } = pickedAmount(picked, garden.settings);
  return { text: capital(text) || words.variety.notMeasured, other };
}

function eachPlant({ locale, words }: View, { grams, pieces }: PerPlant): string {
  const { strip } = words.sentences;
  if (grams !== undefined) return strip.each(locale.weight(grams));
  if (pieces === undefined) return "";
  const count = Math.round(pieces.count * 10) / 10;
  const [one, many] = pieceWords[pieces.unit];
  return strip.each(Number.isInteger(count) ? sayPlural(count, one, many) : `${digits(count)} ${many}`);
}
