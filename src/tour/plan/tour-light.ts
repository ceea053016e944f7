/** Light along the tour: at every stop at its own time, and the start that puts most stops into good light. */

import {
  clock,
  type LightQuestion,
  type LightSpan,
  type LitBed,
  lightSpans,
  lightWorth,
  lowSun,
  type SunPosition,
  sayLight,
  spanAt,
  sunByMinute,
  sunDay,
  usualLowSun,
} from "../../almanac/index.ts";
import { capital } from "../../language/index.ts";
import type { Bed, Day, Garden, GardenSettings, Position } from "../../model.ts";
import { minutesOf } from "./clock.ts";
import type { StartScore } from "./plan.ts";

/** Hours in which filming may begin and end where garden.md says nothing. */
const usualHours = { from: "08:00", to: "18:00" } as const;

/** A tour that may begin after this may run past midnight, and its light is known for the day after as well. */
const late = "16:00";

/** Light counts as good from here on. */
const good = 0.9;

/** Another start is worth a word when its light is better by this much: one stop of ten. */
const clearlyBetter = 0.1;

/** Filming begins on a quarter of an hour. */
const quarter = 15;

export interface TourLight {
  /** Spans of a bed's light over the day, undefined when nothing tells. */
  readonly spansOf: (bed: Bed) => readonly LightSpan[] | undefined;
}

export function tourLight(garden: Garden, day: Day, start: string | undefined, overcast: boolean): TourLight {
  const { from, to } = garden.settings.filmBetween ?? usualHours;
  const pastMidnight = to < from || to > usualHours.to || (start ?? "") > late;
  const minutes = pastMidnight ? 2 * 1440 : 1440;
  const skies = new Map<string, readonly SunPosition[]>();
  const known = new Map<string, readonly LightSpan[] | undefined>();
  return {
    spansOf: (bed) => {
      const place = placeOf(garden, bed);
      if (place === undefined) return undefined;
      const sky = `${place.latitude} ${place.longitude}`;
      const question: LightQuestion = { day, timeZone: garden.settings.timeZone, place, overcast };
      const suns = skies.get(sky) ?? sunByMinute(question, minutes);
      skies.set(sky, suns);
      // Beds are lit alike when all is the same that their light is told from; lightSpans sees nothing else of them.
      const { size, facing, shade, viewpoints } = bed;
      const seen: LitBed = { size, facing, shade, viewpoints: viewpoints.map(({ looking }) => ({ looking })) };
      const alike = JSON.stringify([sky, seen]);
      if (!known.has(alike)) known.set(alike, lightSpans(seen, suns, question));
      return known.get(alike);
    },
  };
}

function placeOf({ settings, sites }: Garden, bed: Bed): Position | undefined {
  return (bed.site === undefined ? undefined : sites.get(bed.site)?.position) ?? settings.position;
}

/** A stop's light, and the middle of its time in the garden, minutes after the start. */
export interface LitStop {
  readonly spans: readonly LightSpan[] | undefined;
  readonly after: number;
}

/** Light of a stop in a film-maker's words, when filming begins at `start`, minutes since midnight. */
export function lightWords({ spans, after }: LitStop, start: number): string | undefined {
  if (spans === undefined) return undefined;
  const words = sayLight(spans, Math.floor(start + after));
  return words === "" ? undefined : words;
}

/** Of so few stops that nobody can say how a tour is lit, nothing is said: less than half of them. */
function tooFew(stops: readonly LitStop[], lit: readonly LitStop[]): boolean {
  return lit.length === 0 || lit.length * 2 < stops.length;
}

/**
 * One score for each quarter of an hour from which the tour still ends within the person's hours; none where the light of
 * most stops is unknown.
 */
export function startScores(
  stops: readonly LitStop[],
  minutes: number,
  { filmBetween = usualHours }: Pick<GardenSettings, "filmBetween">,
): readonly StartScore[] {
  const lit = stops.filter(({ spans }) => spans !== undefined);
  if (tooFew(stops, lit)) return [];
  const from = minutesOf(filmBetween.from);
  const to = minutesOf(filmBetween.to) + (filmBetween.to < filmBetween.from ? 1440 : 0);
  const first = Math.ceil(from / quarter) * quarter;
  const last = Math.max(first, to - minutes);
  const scores: StartScore[] = [];
  for (let start = first; start <= last; start += quarter) scores.push(scoreAt(lit, start));
  return scores;
}

/** The score of one start, minutes since midnight; `lit` are stops whose light is known. */
export function scoreAt(lit: readonly LitStop[], start: number): StartScore {
  const worths = lit.map((stop) => worthAt(stop, start + stop.after));
  return {
    start: clock(start),
    score: Math.round((worths.reduce((sum, worth) => sum + worth, 0) / Math.max(1, lit.length)) * 1000) / 1000,
    good: worths.filter((worth) => worth >= good).length,
  };
}

function worthAt({ spans = [] }: Pick<LitStop, "spans">, minute: number): number {
  const light = spanAt(spans, Math.floor(minute))?.light;
  return light === undefined ? 0 : lightWorth[light];
}

/** The best score; of equals the earliest, which leaves most of the light for a second take. */
export function bestStart(scores: readonly StartScore[]): StartScore | undefined {
  return scores.reduce<StartScore | undefined>(
    (best, one) => (best === undefined || one.score > best.score ? one : best),
    undefined,
  );
}

/**
 * Until when at least half of the stops are in good light, counted from the start: "light good to 10:40". Where the start
 * itself is worse than that, when the better light begins within the person's hours.
 */
export function lightAhead(
  stops: readonly LitStop[],
  start: number,
  scores: readonly StartScore[],
): string | undefined {
  const lit = stops.filter(({ spans }) => spans !== undefined);
  if (tooFew(stops, lit)) return undefined;
  const goodAt = (minute: number) => lit.filter((stop) => worthAt(stop, minute) >= good).length * 2 >= lit.length;
  const best = bestStart(scores);
  const own = scoreAt(lit, start);
  const better = best !== undefined && best.score - own.score >= clearlyBetter ? `, better from ${best.start}` : "";
  if (!goodAt(start)) {
    const dark = lit.every((stop) => worthAt(stop, start) === 0);
    if (dark) return `no daylight at the start${better}`;
    return better === "" ? "hard light for most stops" : `hard light${better}`;
  }
  if (lit.every(({ spans = [] }) => spanAt(spans, start)?.light === "even")) return "even light under cloud";
  const known = Math.max(...lit.map(({ spans = [] }) => spans.at(-1)?.until ?? 0));
  let until = start;
  while (until < known && goodAt(until)) until += 1;
  const all = until >= known ? "light good throughout" : `light good to ${clock(until)}`;
  return `${all}${better}`;
}

/** "Sunrise 5:09, sunset 21:42; low sun until 6:01 and from 20:50." Of the place where the tour begins. */
export function sunLine(garden: Garden, beds: readonly Bed[], day: Day): string | undefined {
  const { settings } = garden;
  const place = beds.map((bed) => placeOf(garden, bed)).find((found) => found !== undefined);
  if (place === undefined) return undefined;
  const { sunrise, sunset, polar } = sunDay(day, settings.timeZone, place);
  if (polar !== undefined) return polar === "day" ? "The sun stays up all day." : "The sun stays down all day.";
  const at = (instant: { toZonedDateTimeISO(zone: string): { hour: number; minute: number } } | undefined) => {
    const time = instant?.toZonedDateTimeISO(settings.timeZone);
    return time === undefined ? undefined : clock(time.hour * 60 + time.minute);
  };
  const { morning, evening } = lowSun(day, settings.timeZone, place, settings.lowSun ?? usualLowSun);
  const [until, from] = [at(morning?.ends), at(evening?.begins)];
  const low = [until === undefined ? undefined : `until ${until}`, from === undefined ? undefined : `from ${from}`]
    .filter((part) => part !== undefined)
    .join(" and ");
  const rising = [
    sunrise === undefined ? undefined : `sunrise ${at(sunrise)}`,
    sunset === undefined ? undefined : `sunset ${at(sunset)}`,
  ]
    .filter((part) => part !== undefined)
    .join(", ");
  if (rising === "") return undefined;
  return `${capital(rising)}${low === "" ? "" : `; low sun ${low}`}.`;
}
