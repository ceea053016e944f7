/** Seasons as the person counts them: years that begin on a day of their own. */
import { addDays, daysBetween, inYear, seasonStart, yearOf } from "../calendar.ts";
import type { Day } from "../model.ts";

export interface Season {
  /** The year in which it begins. */
  readonly year: number;
  /** "2026", or "2025/26" when it goes over New Year. */
  readonly label: string;
  readonly from: Day;
  /** Its last day. */
  readonly to: Day;
}

export function seasonOf(day: Day, seasonStarts: string): Season {
  return seasonBeginning(yearOf(seasonStart(day, seasonStarts)), seasonStarts);
}

export function seasonBeginning(year: number, seasonStarts: string): Season {
  const from = inYear(seasonStarts, year);
  const to = addDays(inYear(seasonStarts, year + 1), -1);
  const label = yearOf(to) === year ? String(year) : `${year}/${String(yearOf(to) % 100).padStart(2, "0")}`;
  return { year, label, from, to };
}

/** The season a person asks for: "2026", "2025/26", "2025-26"; undefined when it is none. */
export function seasonAsked(text: string, seasonStarts: string): Season | undefined {
  const parts = /^(\d{4})(?:[/-](\d{2}|\d{4}))?$/.exec(text.trim());
  if (parts === null) return undefined;
  const season = seasonBeginning(Number(parts[1]), seasonStarts);
  const second = parts[2];
  if (second === undefined) return season;
  return yearOf(season.to) !== season.year && String(yearOf(season.to)).endsWith(second) ? season : undefined;
}

/** The day of another season that lies as far into it, by the calendar; 29 February is the 28th where there is none. */
export function sameDayIn(season: Season, day: Day, from: Season): Day {
  const yearsOn = yearOf(day) - from.year;
  const there = inYear(day.slice(5), season.year + yearsOn);
  if (there < season.from) return season.from;
  if (there > season.to) return season.to;
  return there;
}

/** Weeks of a season, 0 for its first seven days. */
export function weekOf(season: Season, day: Day): number {
  return Math.floor(daysBetween(season.from, day) / 7);
}

/** The earlier of two days. */
export function earlier(a: Day, b: Day): Day {
  return [a, b].sort()[0] as Day;
}
