/** The weather of a season as it is told: frosts against the usual days, extremes, rain, heat against last year. */
import { FREEZE, frostYear, type WeatherSpan, weatherSpan } from "../almanac/index.ts";
import { addDays, daysBetween, inYear, yearOf } from "../calendar.ts";
import type { Day, GardenSettings } from "../model.ts";
import { capital, sayNumber, sayPlural } from "../timeline/index.ts";
import { dayOnly, type Ground, type Sentence, type Speech, say } from "../tour/index.ts";
import { heatStanding } from "./comparisons.ts";
import type { SeasonBook } from "./season-book.ts";
import type { Season } from "./seasons.ts";

export interface WeatherStory {
  readonly span: WeatherSpan;
  readonly sentences: readonly Sentence[];
  /** One sentence that can stand in the season's paragraph. */
  readonly short?: Sentence | undefined;
  readonly methods: readonly string[];
}

const millimetresPerInch = 25.4;
/** Share of the days told that must be in the files: of less, a hottest day or a last frost would only be the file's. */
const enough = 0.8;

/** Undefined when no file tells of the span. */
export function weatherStory(book: SeasonBook, season: Season, from: Day, to: Day): WeatherStory | undefined {
  const span = weatherSpan(book.weather, from, to);
  if (span.temperatureDays === 0 && span.rainDays === 0) return undefined;
  const speech: Speech = { settings: book.garden.settings, day: to };
  const days = daysBetween(from, to) + 1;
  const warmth = span.temperatureDays >= days * enough;
  const wet = span.rainDays >= days * enough;
  if (!warmth && !wet) {
    const few = say(tooFew(Math.max(span.temperatureDays, span.rainDays), days), sourcesOf(book));
    return { span, sentences: [few], methods: methodsOf(book, false) };
  }
  const frost = !warmth ? { sentences: [] } : frosts(book, season, span, speech, from === season.from);
  const heat = warmth && from === season.from ? heatSaid(book, season, to, speech) : undefined;
  const grounds = sourcesOf(book);
  const tell = (text: string | undefined) => (text === undefined ? [] : [say(text, grounds)]);
  const short = [frost.short, heat?.short].filter((part) => part !== undefined);
  return {
    span,
    sentences: [
      ...frost.sentences.flatMap(tell),
      ...tell(warmth ? extremes(span, speech) : undefined),
      ...tell(wet ? rain(span, speech) : undefined),
      ...tell(rainSinceTour(book, season, to, speech)),
      ...tell(heat?.text),
      ...tell(warmth ? gaps(span) : undefined),
    ],
    short: short.length === 0 ? undefined : say(`${capital(short.join(", and "))}.`, grounds),
    methods: methodsOf(book, heat !== undefined),
  };
}

function tooFew(known: number, days: number): string {
  const all = sayNumber(days);
  return `Of ${all} days the weather files have ${known === 1 ? "one" : `only ${sayNumber(known)}`}, too few to tell of frost, heat or rain.`;
}

function sourcesOf({ weather }: SeasonBook): readonly Ground[] {
  return [
    ...new Set(
      weather.sources.filter((source) => source.temperatureDays + source.rainDays > 0).map(({ file }) => file),
    ),
  ].map((file) => ({ place: { file, line: 1, column: 1 } }));
}

interface FrostTold {
  readonly sentences: readonly string[];
  readonly short?: string | undefined;
}

function frosts(book: SeasonBook, season: Season, span: WeatherSpan, speech: Speech, whole: boolean): FrostTold {
  const { settings } = book.garden;
  const nights =
    span.frosts === 0
      ? "There was no night of frost"
      : `There ${span.frosts === 1 ? "was" : "were"} ${sayPlural(span.frosts, "night", "nights")} of frost`;
  const hard = span.hardFrosts === 0 || span.frosts === 0 ? "" : `, ${sayNumber(span.hardFrosts)} of them hard`;

  if (!whole) return { sentences: [`${nights}${hard}.`] };
  // The southern summer's year begins in July; the frosts that frame the season's summer are wanted.
  const south = (book.weather.latitude ?? 1) < 0;
  const year =
    south && yearOf(season.from) === season.year && season.from.slice(5) < "07-01" ? season.year - 1 : season.year;
  const found = frostYear(book.weather.days, year, book.weather.latitude ?? 1, FREEZE);
  const known = (day: Day | undefined) =>
    day !== undefined && day >= season.from && day <= speech.day ? day : undefined;
  const [last, first] = [known(found.last), known(found.first)];
  const text = [
    last === undefined
      ? undefined
      : `The last frost of spring was on ${dayOnly(last, speech)}${againstUsual(last, settings.lastFrost)}.`,
    first === undefined
      ? undefined
      : `The first frost of autumn was on ${dayOnly(first, speech)}${againstUsual(first, settings.firstFrost)}.`,
    `${nights}${hard}${season.to > speech.day ? " so far" : ""}.`,
  ].filter((part) => part !== undefined);
  const free =
    found.frostFreeDays === undefined || last === undefined || first === undefined
      ? []
      : [`Between the two lay ${sayPlural(found.frostFreeDays, "day", "days")} without frost.`];
  return {
    sentences: [...text, ...free],
    short:
      last === undefined
        ? undefined
        : `the last frost came on ${dayOnly(last, speech)}${againstUsual(last, settings.lastFrost)}`,
  };
}

/** ", six days after the usual 20 April" */
function againstUsual(day: Day, usual: string | undefined): string {
  if (usual === undefined) return "";
  const apart = daysBetween(inYear(usual, yearOf(day)), day);
  if (apart === 0) return ", the usual day";
  const span = Math.abs(apart) === 7 ? "a week" : sayPlural(Math.abs(apart), "day", "days");
  return `, ${span} ${apart > 0 ? "after" : "before"} the usual day`;
}

function extremes({ hottest, coldest }: WeatherSpan, speech: Speech): string | undefined {
  if (hottest === undefined || coldest === undefined) return undefined;
  const { settings } = speech;
  return `The hottest day was ${dayOnly(hottest.day, speech)} with ${sayDegrees(hottest.value, settings)}, the coldest night ${dayOnly(coldest.day, speech)} with ${sayDegrees(coldest.value, settings)}.`;
}

function rain({ rain: fell, wetDays, dry, rainDays }: WeatherSpan, speech: Speech): string | undefined {
  if (fell === undefined || rainDays === 0) return undefined;
  const { settings } = speech;
  const spell =
    dry === undefined || dry.days < 5
      ? ""
      : `; the longest spell without was ${sayPlural(dry.days, "day", "days")}, from ${dayOnly(dry.from, speech)} to ${dayOnly(dry.to, speech)}`;
  if (wetDays === 0)
    return `No rain was measured${dry === undefined ? "" : ` in ${sayPlural(rainDays, "day", "days")}`}.`;
  return `It rained ${sayRain(fell, settings)} on ${sayPlural(wetDays, "day", "days")}${spell}.`;
}

/** What viewers have not seen the garden through: only while the season lasts, and only where every day was read. */
function rainSinceTour(book: SeasonBook, season: Season, to: Day, speech: Speech): string | undefined {
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
  const since = `Since the last film on ${dayOnly(last, speech)}`;
  return span.wetDays === 0
    ? `${since} no rain has fallen.`
    : `${since} it has rained ${sayRain(span.rain, speech.settings)} on ${sayPlural(span.wetDays, "day", "days")}.`;
}

interface HeatTold {
  readonly text: string;
  readonly short?: string | undefined;
}

/** Degree days below which two years are not compared. */
const leastHeat = 50;
/** Days apart below which two years are called alike: a warm afternoon makes more. */
const alike = 2;

function heatSaid(book: SeasonBook, season: Season, to: Day, speech: Speech): HeatTold | undefined {
  const standing = heatStanding(book, season, to);
  if (standing === undefined) return undefined;
  const { settings } = speech;
  const now = `${sayHeat(standing.heat, settings)} above ${sayDegrees(standing.scale.base, settings)}`;
  const begun = `Since ${dayOnly(season.from, speech)} there were ${now}`;
  // A few degree days of midwinter are no head start.
  if (standing.lastYear === undefined || Math.max(standing.heat, standing.lastYear) < leastHeat)
    return { text: `${begun}.` };
  const then = `${sayHeat(standing.lastYear, settings, false)} by the same day last year`;
  const ahead = standing.daysAhead;
  const apart =
    ahead === undefined
      ? standing.heat > standing.lastYear
        ? "more than last year had had by then"
        : "less than last year had had by then"
      : Math.abs(ahead) <= alike
        ? "level with last year"
        : `${sayPlural(Math.abs(ahead), "day", "days")} ${ahead > 0 ? "ahead of" : "behind"} last year`;
  return {
    text: `${begun}, against ${then}: ${apart.replace(/ (?:of )?last year$/, "")}.`,
    short: ahead === undefined ? undefined : `in warmth the season is ${apart}`,
  };
}

function gaps({ missingDays, temperatureDays }: WeatherSpan): string | undefined {
  if (missingDays <= 3 || temperatureDays === 0) return undefined;
  return `${capital(sayPlural(missingDays, "day", "days"))} of this time have no temperatures in the files, so frosts and heat may be told too low.`;
}

function methodsOf(book: SeasonBook, heat: boolean): readonly string[] {
  const { weather, garden } = book;
  const { units } = garden.settings;
  const used = weather.sources.filter((source) => source.temperatureDays > 0 || source.rainDays > 0);
  const sources = used.map(({ station, distanceKm, higherM, temperatureDays, rainDays }) => {
    const own = distanceKm === 0;
    const away =
      distanceKm === undefined
        ? ""
        : `, ${units === "us" ? `${Math.round(distanceKm / 1.609344)} miles` : `${Math.round(distanceKm)} km`} from the garden`;
    const height =
      higherM === undefined || Math.abs(higherM) < 30
        ? ""
        : ` and ${Math.abs(higherM)} m ${higherM > 0 ? "higher" : "lower"}`;
    return `${own ? "a file taken as measured in the garden" : `station ${station ?? "without a name"}${away}${height}`} (${Math.max(temperatureDays, rainDays)} days)`;
  });
  return [
    `Weather: daily minimum, maximum and rain from ${sources.length === 0 ? "no file" : sources.join("; ")}; each day from the nearest that has it whole.${weather.bridgedDays === 0 ? "" : ` ${capital(sayPlural(weather.bridgedDays, "day", "days"))} in gaps of three days at most lie on a straight line between their neighbours.`}`,
    ...(heat
      ? [
          "Heat: degree days by the simple average, the middle of the day's highest and lowest temperature less 4.4 °C (40 °F), never below nothing (first reading of McMaster and Wilhelm, 1997).",
        ]
      : []),
  ];
}

/** "24.3 °C", "76 °F", with a true minus sign. */
export function sayDegrees(celsius: number, { units }: GardenSettings): string {
  const degrees = units === "us" ? celsius * 1.8 + 32 : celsius;
  const rounded = units === "us" ? Math.round(degrees) : Math.round(degrees * 10) / 10;
  return `${String(rounded).replace("-", "−")} °${units === "us" ? "F" : "C"}`;
}

function sayRain(millimetres: number, { units }: GardenSettings): string {
  if (units === "us") return `${Math.round((millimetres / millimetresPerInch) * 10) / 10} inches`;
  return `${millimetres < 10 ? millimetres : Math.round(millimetres)} mm`;
}

/** "810 degree days": a sum in Fahrenheit degrees is 1.8 times one in Celsius degrees. */
export function sayHeat(degreeDays: number, { units }: GardenSettings, withUnit = true): string {
  const sum = Math.round(units === "us" ? degreeDays * 1.8 : degreeDays);
  const said = sum >= 10_000 ? String(sum) : sayNumber(sum);
  return withUnit ? `${said} ${sum === 1 ? "degree day" : "degree days"}` : said;
}

/** "110 days are left to the usual first frost on 5 November." */
export function frostLeft(book: SeasonBook, on: Day, days: number): string | undefined {
  const { settings } = book.garden;
  if (settings.firstFrost === undefined || days <= 0) return undefined;
  const day = addDays(on, days);
  return `${capital(sayPlural(days, "day", "days"))} ${days === 1 ? "is" : "are"} left to the usual first frost on ${dayOnly(day, { settings, day: on })}.`;
}
