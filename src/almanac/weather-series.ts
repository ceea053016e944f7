/**
 * One series of weather for a garden, out of all its files: each day's temperatures and rain from the nearest station that
 * has them complete. Short gaps are bridged and marked, long ones stay gaps and are said.
 */
import { addDays, daysBetween } from "../calendar.ts";
import type { Day, Position, Problem } from "../model.ts";
import { type PlainText, problem } from "../records/index.ts";
import type { StationDays, WeatherDay } from "./weather-collector.ts";
import { readWeather } from "./weather-files.ts";

export interface SeriesDay extends WeatherDay {
  /** The temperatures were not measured: they lie on the straight line between the days around a short gap. */
  readonly bridged?: true | undefined;
}

/** A stretch of days without temperatures that is too long to bridge; both ends belong to it. */
export interface WeatherGap {
  readonly from: Day;
  readonly to: Day;
  readonly days: number;
}

/** What one station gave to the series. */
export interface WeatherSource {
  readonly file: string;
  readonly station?: string | undefined;
  /** Kilometres from the garden; undefined when either place is not known. A plain file counts as measured in the garden: 0. */
  readonly distanceKm?: number | undefined;
  /** Metres the station stands higher than the garden. */
  readonly higherM?: number | undefined;
  /** Days whose temperatures came from it. */
  readonly temperatureDays: number;
  /** Days whose rain came from it. */
  readonly rainDays: number;
}

export interface Weather {
  /** Of the garden, for the length of its days and its half of the Earth. Private: never to be shown. */
  readonly latitude?: number | undefined;
  /** In order of day. */
  readonly days: ReadonlyMap<Day, SeriesDay>;
  readonly first?: Day | undefined;
  readonly last?: Day | undefined;
  /** Nearest first; those that gave nothing are kept, so that a page can say so. */
  readonly sources: readonly WeatherSource[];
  readonly gaps: readonly WeatherGap[];
  readonly bridgedDays: number;
  /** Values that the archives themselves flag as failed; they were left out. */
  readonly flagged: number;
  readonly problems: readonly Problem[];
}

/** Days of a gap that are bridged at most: over more, weather turns (common practice). */
const longestBridge = 3;

/** Gaps told as a problem, the longest ones; the rest stand in the series. */
const gapsTold = 3;

export const noWeather: Weather = {
  days: new Map(),
  sources: [],
  gaps: [],
  bridgedDays: 0,
  flagged: 0,
  problems: [],
};

/** Reads and merges a garden's weather files. Days after `today` are forecasts of somebody else's and are left out. */
export function gardenWeather(texts: readonly PlainText[], garden: Position | undefined, today: Day): Weather {
  const files = texts.map(({ file, text }) => readWeather(file, text));
  const stations = files
    .flatMap((file) =>
      file.stations.map((station) => ({ ...station, file: file.file, plain: file.layout === "plain" })),
    )
    .map((station) => ({ ...station, distanceKm: distanceOf(station, garden) }))
    .sort(
      (a, b) =>
        (a.distanceKm ?? Number.POSITIVE_INFINITY) - (b.distanceKm ?? Number.POSITIVE_INFINITY) ||
        b.days.size - a.days.size ||
        (a.file < b.file ? -1 : 1),
    );
  const merged = merge(stations, today);
  const days = [...merged.days.keys()];
  const { gaps, bridgedDays } = bridge(merged.days, days);
  const series = bridgedDays === 0 ? merged.days : new Map([...merged.days].sort(([a], [b]) => (a < b ? -1 : 1)));
  return {
    latitude: garden?.latitude,
    days: series,
    first: days[0],
    last: days.at(-1),
    sources: stations.map(({ file, station, position, distanceKm }, index) => ({
      file,
      station,
      distanceKm,
      higherM: higher(position, garden),
      temperatureDays: merged.temperatureDays[index] ?? 0,
      rainDays: merged.rainDays[index] ?? 0,
    })),
    gaps,
    bridgedDays,
    flagged: files.reduce((sum, { flagged }) => sum + flagged, 0),
    problems: [...files.flatMap(({ problems }) => problems), ...gapProblems(gaps, texts)],
  };
}

function merge(stations: readonly StationDays[], today: Day) {
  const [only, second] = stations;
  if (only !== undefined && second === undefined) return fromOne(only, today);
  const temperatureDays = stations.map(() => 0);
  const rainDays = stations.map(() => 0);
  const days = new Map<Day, SeriesDay>();
  const order = [...new Set(stations.flatMap((station) => [...station.days.keys()]))].sort();

  const count = (tally: number[], index: number) => {
    tally[index] = (tally[index] ?? 0) + 1;
  };
  for (const day of order) {
    if (day > today) continue;
    const known = stations.map((station) => station.days.get(day));
    const both = known.findIndex((one) => one?.tmax !== undefined && one.tmin !== undefined);
    const either = both >= 0 ? both : known.findIndex((one) => one?.tmax !== undefined || one?.tmin !== undefined);
    const wet = known.findIndex((one) => one?.rain !== undefined);
    if (either >= 0) count(temperatureDays, either);
    if (wet >= 0) count(rainDays, wet);
    if (either < 0 && wet < 0) continue;
    days.set(day, { tmax: known[either]?.tmax, tmin: known[either]?.tmin, rain: known[wet]?.rain });
  }
  return { days, temperatureDays, rainDays };
}

/** The same of a single station, whose days are in order already: what most gardens have. */
function fromOne(station: StationDays, today: Day) {
  const days = new Map<Day, SeriesDay>();
  let [temperatures, rains] = [0, 0];
  for (const [day, { tmax, tmin, rain }] of station.days) {
    const warm = tmax !== undefined || tmin !== undefined;
    if (day > today || (!warm && rain === undefined)) continue;
    if (warm) temperatures += 1;
    if (rain !== undefined) rains += 1;
    days.set(day, { tmax, tmin, rain });
  }
  return { days, temperatureDays: [temperatures], rainDays: [rains] };
}

/** Fills short gaps of temperature in place and lists the long ones. */
function bridge(days: Map<Day, SeriesDay>, order: readonly Day[]) {
  const gaps: WeatherGap[] = [];
  let bridgedDays = 0;
  let before: Day | undefined;
  for (const day of order) {
    const { tmax, tmin } = days.get(day) ?? {};
    if (tmax === undefined || tmin === undefined) continue;
    if (before !== undefined) {
      const missing = isNext(before, day) ? 0 : daysBetween(before, day) - 1;
      if (missing > longestBridge) gaps.push({ from: addDays(before, 1), to: addDays(day, -1), days: missing });
      else if (missing > 0) {
        bridgedDays += missing;
        fill(days, before, day, missing);
      }
    }
    before = day;
  }
  return { gaps, bridgedDays };
}

/** Whether a day follows another within its month: quicker than counting, and true of 29 days in 30. */
function isNext(before: Day, day: Day): boolean {
  return day.startsWith(before.slice(0, 8)) && Number(day.slice(8)) === Number(before.slice(8)) + 1;
}

function fill(days: Map<Day, SeriesDay>, before: Day, after: Day, missing: number): void {
  const [a, b] = [days.get(before), days.get(after)];
  const between = (from = 0, to = 0, step = 0) => from + ((to - from) * step) / (missing + 1);
  for (let step = 1; step <= missing; step += 1) {
    const day = addDays(before, step);
    days.set(day, {
      tmax: between(a?.tmax, b?.tmax, step),
      tmin: between(a?.tmin, b?.tmin, step),
      rain: days.get(day)?.rain,
      bridged: true,
    });
  }
}

function gapProblems(gaps: readonly WeatherGap[], texts: readonly PlainText[]): readonly Problem[] {
  const file = texts[0]?.file ?? "weather";
  const longest = gaps.toSorted((a, b) => b.days - a.days || (a.from < b.from ? -1 : 1));
  return longest.slice(0, gapsTold).map((gap, index) => {
    const more = index === gapsTold - 1 ? longest.length - gapsTold : 0;
    const rest = more <= 0 ? "" : ` ${more === 1 ? "One more gap is" : `${more} more gaps are`} shorter.`;
    return problem(
      "weather/gap",
      { file, line: 1, column: 1 },
      `No file has temperatures from ${gap.from} to ${gap.to}, ${gap.days} days.${rest}`,
      "Sums over that time say how many days they lack; another station's file can fill it.",
    );
  });
}

function distanceOf(
  { position, plain }: { readonly position?: Position | undefined; readonly plain: boolean },
  garden: Position | undefined,
): number | undefined {
  if (plain) return 0;
  return position === undefined || garden === undefined ? undefined : kilometresBetween(position, garden);
}

function higher(position: Position | undefined, garden: Position | undefined): number | undefined {
  return position?.elevation === undefined || garden?.elevation === undefined
    ? undefined
    : Math.round(position.elevation - garden.elevation);
}

/** Mean radius of the Earth, IUGG. */
const earthKm = 6371.0088;

/** Great-circle distance by the haversine formula (R. W. Sinnott, Sky and Telescope 68:159, 1984). */
export function kilometresBetween(a: Position, b: Position): number {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const north = radians(b.latitude - a.latitude);
  const east = radians(b.longitude - a.longitude);
  const chord =
    Math.sin(north / 2) ** 2 + Math.cos(radians(a.latitude)) * Math.cos(radians(b.latitude)) * Math.sin(east / 2) ** 2;
  return 2 * earthKm * Math.asin(Math.min(1, Math.sqrt(chord)));
}
