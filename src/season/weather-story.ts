/** The weather of a season as it is told: frosts against the usual days, extremes, rain, heat against last year. */
import { FREEZE, frostYear, type WeatherSpan, weatherSpan } from "../almanac/index.ts";
import { addDays, daysBetween, inYear, yearOf } from "../calendar.ts";
import type { Season } from "../garden/index.ts";
import { type Ground, type Sentence, say, type Voice } from "../language/index.ts";
import type { Day } from "../model.ts";
import { heatStanding } from "./comparisons.ts";
import type { HeatFacts } from "./recap-words/facts.ts";
import { recapWords } from "./recap-words/words.ts";
import type { SeasonBook } from "./season-book.ts";

export interface WeatherStory {
  readonly span: WeatherSpan;
  readonly sentences: readonly Sentence[];
  /** One sentence that can stand in the season's paragraph. */
  readonly short?: Sentence | undefined;
  readonly methods: readonly string[];
}

/** Share of the days told that must be in the files: of less, a hottest day or a last frost would only be the file's. */
const enough = 0.8;

/** Undefined when no file tells of the span. */
export function weatherStory(book: SeasonBook, season: Season, from: Day, to: Day): WeatherStory | undefined {
  const span = weatherSpan(book.weather, from, to);
  if (span.temperatureDays === 0 && span.rainDays === 0) return undefined;
  const voice: Voice = { settings: book.garden.settings, day: to };
  const { weather: words } = recapWords;
  const days = daysBetween(from, to) + 1;
  const warmth = span.temperatureDays >= days * enough;
  const wet = span.rainDays >= days * enough;
  if (!warmth && !wet) {
    const few = words.tooFew(Math.max(span.temperatureDays, span.rainDays), days);
    return { span, sentences: [say(few, sourcesOf(book))], methods: methodsOf(book, false) };
  }
  const whole = from === season.from;
  const frost = warmth && whole ? frostsOf(book, season, to) : {};
  const heat = warmth && whole ? heatOf(book, season, to) : undefined;
  const grounds = sourcesOf(book);
  const tell = (text: string | undefined) => (text === undefined ? [] : [say(text, grounds)]);
  const { last, first } = frost;
  const short = words.short(last, heat, voice);
  const { hottest, coldest, rain } = span;
  return {
    span,
    sentences: [
      ...tell(last && words.lastFrost(last.day, last.apart, voice)),
      ...tell(first && words.firstFrost(first.day, first.apart, voice)),
      ...tell(warmth ? words.nights(span.frosts, span.hardFrosts, whole && season.to > to) : undefined),
      ...tell(frost.freeDays === undefined ? undefined : words.frostFree(frost.freeDays)),
      ...tell(warmth && hottest && coldest ? words.extremes(hottest, coldest, voice) : undefined),
      ...tell(
        wet && rain !== undefined && span.rainDays > 0 ? words.rain({ ...span, millimetres: rain }, voice) : undefined,
      ),
      ...tell(rainSinceTour(book, season, to, voice)),
      ...tell(heat && words.heat(heat, voice)),
      ...tell(warmth && span.missingDays > 3 && span.temperatureDays > 0 ? words.gaps(span.missingDays) : undefined),
    ],
    short: short === undefined ? undefined : say(short, grounds),
    methods: methodsOf(book, heat !== undefined),
  };
}

function sourcesOf({ weather }: SeasonBook): readonly Ground[] {
  return [
    ...new Set(
      weather.sources.filter((source) => source.temperatureDays + source.rainDays > 0).map(({ file }) => file),
    ),
  ].map((file) => ({ place: { file, line: 1, column: 1 } }));
}

interface Frost {
  readonly day: Day;
  /** Days after the usual one; undefined where none is known. */
  readonly apart: number | undefined;
}

/** The frosts that frame a season's summer, as far as they are known. */
function frostsOf(
  book: SeasonBook,
  season: Season,
  to: Day,
): { readonly last?: Frost | undefined; readonly first?: Frost | undefined; readonly freeDays?: number | undefined } {
  const { settings } = book.garden;
  // The southern summer's year begins in July; the frosts that frame the season's summer are wanted.
  const south = (book.weather.latitude ?? 1) < 0;
  const year =
    south && yearOf(season.from) === season.year && season.from.slice(5) < "07-01" ? season.year - 1 : season.year;
  const found = frostYear(book.weather.days, year, book.weather.latitude ?? 1, FREEZE);
  const known = (day: Day | undefined, usual: string | undefined): Frost | undefined =>
    day !== undefined && day >= season.from && day <= to
      ? { day, apart: usual === undefined ? undefined : daysBetween(inYear(usual, yearOf(day)), day) }
      : undefined;
  const [last, first] = [known(found.last, settings.lastFrost), known(found.first, settings.firstFrost)];
  return { last, first, freeDays: last === undefined || first === undefined ? undefined : found.frostFreeDays };
}

/** What viewers have not seen the garden through: only while the season lasts, and only where every day was read. */
function rainSinceTour(book: SeasonBook, season: Season, to: Day, voice: Voice): string | undefined {
  if (to >= season.to) return undefined;
  const tours = [...book.garden.episodes.values()].filter(({ status, day }) => status === "published" && day < to);
  const last = tours
    .map(({ day }) => day)
    .sort()
    .at(-1);
  if (last === undefined || last < season.from) return undefined;
  const span = weatherSpan(book.weather, addDays(last, 1), to);
  // Today's reading comes tomorrow.
  if (span.rain === undefined || span.rainDays < daysBetween(last, to) - 1) return undefined;
  return recapWords.weather.rainSince(last, span.rain, span.wetDays, voice);
}

/** Degree days below which two years are not compared: a few of midwinter are no head start. */
const leastHeat = 50;

function heatOf(book: SeasonBook, season: Season, to: Day): HeatFacts | undefined {
  const standing = heatStanding(book, season, to);
  if (standing === undefined) return undefined;
  const { heat, lastYear, days, daysAhead, scale } = standing;
  const compared = lastYear !== undefined && Math.max(heat, lastYear) >= leastHeat;
  const gaps = days !== undefined && days.inBoth < days.of;
  return {
    since: season.from,
    heat,
    base: scale.base,
    ...(compared ? { lastYear, daysAhead } : {}),
    ...(gaps ? { days } : {}),
  };
}

function methodsOf({ weather, garden }: SeasonBook, heat: boolean): readonly string[] {
  const { weather: words } = recapWords;
  const sources = weather.sources
    .filter((source) => source.temperatureDays > 0 || source.rainDays > 0)
    .map(({ temperatureDays, rainDays, ...source }) =>
      words.source({ ...source, days: Math.max(temperatureDays, rainDays) }, garden.settings),
    );
  return [words.method(sources, weather.bridgedDays), ...(heat ? [words.heatMethod] : [])];
}

/** "110 days are left to the usual first frost on 5 November." */
export function frostLeft(book: SeasonBook, on: Day, days: number): string | undefined {
  const { settings } = book.garden;
  if (settings.firstFrost === undefined || days <= 0) return undefined;
  return recapWords.weather.frostLeft(days, addDays(on, days), { settings, day: on });
}
